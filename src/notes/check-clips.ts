import type { Finding } from '../finding/finding.ts';
import type { Clip } from '../trial/flow.ts';
import type { Run } from '../trial/run.ts';
import type { MediaFile } from '../trial/series.ts';
import { filmKind, saysWhereFilmed } from './film.ts';
import { filmLeftOut } from './flow-fields.ts';
import { isBareName, nearestSpare } from './inside.ts';
import { leftOutOf, type Parts, partAt } from './parts.ts';
import * as say from './texts-media.ts';

/** Names that a code may not have: codes before it and runs, in lower case. */
export interface CodesTaken {
  readonly codes: Set<string>;
  readonly runs: readonly string[];
  /** Every clip, captions file and still that a note names. */
  readonly named: ReadonlySet<string>;
}

/** The clips of one run as files, and their codes. Null media: nobody looked which files there are. */
export function checkClips(
  run: Run,
  home: string,
  { media, taken }: { readonly media: ReadonlyMap<string, MediaFile> | null; readonly taken: CodesTaken },
): Parts<Clip> {
  const findings: Finding[] = [];
  const kept = run.clips.flatMap((clip): Clip[] => {
    const told =
      media === null || !isBareName(clip.file)
        ? outside(clip, home, run)
        : checkFile(clip, home, run, { media, named: taken.named });
    const code = checkCode(clip, run, taken);
    findings.push(...told, ...code);
    if (told.some((f) => f.level === 'error')) return [];
    return [code.length > 0 ? { ...clip, code: null } : clip];
  });
  return { kept, findings };
}

const outside = (clip: Clip, home: string, run: Run): Finding[] =>
  isBareName(clip.file)
    ? []
    : leftOutOf(run, clip, 'file', say.notBare(clip.file, home, 'file: F-01.webm'), filmLeftOut);

function checkFile(
  clip: Clip,
  home: string,
  run: Run,
  { media, named }: { readonly media: ReadonlyMap<string, MediaFile>; readonly named: ReadonlySet<string> },
): Finding[] {
  const file = media.get(`${home}${clip.file}`);
  const tell = (told: Parameters<typeof leftOutOf>[3]): Finding[] => leftOutOf(run, clip, 'file', told, filmLeftOut);
  if (!file) {
    const near = nearestSpare(clip.file, home, { paths: media.keys(), named });
    return clip.kept === null ? tell(say.clipMissing(clip.file, near)) : [];
  }
  const kind = filmKind(file.head);
  if (kind === null) return tell(say.notFilm());
  if (!endings[kind].test(clip.file)) return tell(say.filmEnding(clip.file, kind, endingNames[kind]));
  return kind === 'MP4' && saysWhereFilmed(file.head) ? tell(say.whereFilmed()) : [];
}

const endings = { WebM: /\.webm$/i, MP4: /\.(mp4|m4v)$/i, Ogg: /\.(ogv|ogg)$/i } as const;
const endingNames = { WebM: '.webm', MP4: '.mp4 or .m4v', Ogg: '.ogv or .ogg' } as const;

/** Case alone does not tell two codes apart, since some disks do not. */
function checkCode(clip: Clip, run: Run, { codes, runs }: CodesTaken): Finding[] {
  if (clip.code === null) return [];
  const code = clip.code.toLowerCase();
  const again = codes.has(code);
  codes.add(code);
  // further clips of a run are addressed by its id and a number
  const ofRun = runs.some(
    (id) => code === id || (code.startsWith(`${id}-`) && /^\d+$/.test(code.slice(id.length + 1))),
  );
  if (!again && !ofRun) return [];
  return [
    {
      ...partAt(run, clip, 'code', ofRun ? say.codeIsRun(clip.code) : say.codeTwice(clip.code)),
      effect: say.codeLeftOut,
    },
  ];
}
