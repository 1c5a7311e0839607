import type { Finding } from '../finding/finding.ts';
import { roundedDigits } from '../quantity/digits.ts';
import type { Still } from '../trial/flow.ts';
import type { Run } from '../trial/run.ts';
import type { MediaFile } from '../trial/series.ts';
import { stillLeftOut } from './flow-fields.ts';
import { isBareName, nearestSpare } from './inside.ts';
import type { Told } from './note.ts';
import { leftOutOf, type Parts } from './parts.ts';
import { pictureKind, pictureSize } from './picture.ts';
import * as say from './texts-media.ts';

const mostBytes = 40e6;
const mostPixels = 50e6;

interface There {
  readonly media: ReadonlyMap<string, MediaFile> | null;
  /** Every clip, captions file and still that a note names. */
  readonly named: ReadonlySet<string>;
}

/** The stills of one run as files in `pictures/` of the series. Null media: nobody looked which files there are. */
export function checkStills(run: Run, home: string, there: There): Parts<Still> {
  const findings: Finding[] = [];
  const kept = run.stills.filter((still) => {
    const told = troubleOf(still.file, home, there);
    if (told) findings.push(...leftOutOf(run, still, 'file', told, stillLeftOut));
    return told === null;
  });
  return { kept, findings };
}

/** The first thing that stands against showing a file; an SVG is refused whatever it holds, and whether or not it is there. */
function troubleOf(file: string, home: string, { media, named }: There): Told | null {
  if (!isBareName(file)) return say.notBare(file, home, 'file: F-01-290.png');
  if (/\.svgz?$/i.test(file)) return say.stillSvg();
  if (media === null) return null;
  const found = media.get(`${home}${file}`);
  if (!found) return say.stillMissing(file, home, nearestSpare(file, home, { paths: media.keys(), named }));
  return troubleIn(found);
}

function troubleIn({ head, size }: MediaFile): Told | null {
  const kind = pictureKind(head);
  if (kind === 'SVG') return say.stillSvg();
  if (kind === null) return say.notPicture();
  if (size > mostBytes) return say.stillHeavy(roundedDigits(size / 1e6, 1));
  const pixels = pictureSize(head);
  if (pixels === null) return say.stillSizeUnknown(head.length < size);
  const count = pixels.width * pixels.height;
  return count > mostPixels ? say.stillLarge(pixels.width, pixels.height, roundedDigits(count / 1e6, 1)) : null;
}
