import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type Sharp from 'sharp';
import type { MadeStill } from './stills.ts';
import {
  animation,
  damaged,
  noDecoder,
  notAPicture,
  storedInPasses,
  tooManyPixels,
  type StillTrouble,
} from './texts.ts';

/** Widths that a page shows, CSS pixels and twice as many; a narrower picture keeps its own. */
const widths = [640, 1280] as const;
/** Beyond this a column of a page is no picture any more. */
const mostHeight = 4096;
const mostPixels = 50e6;
/** A picture that comes line by line needs little room; one stored in passes has to be held whole. */
const mostHeld_bytes = 300e6;

/**
 * A picture in at most two widths, as WebP and as JPEG: turned the way it was held, on white where it is transparent, in sRGB,
 * and without anything that a camera or a program wrote into it. The same picture gives the same bytes.
 */
export async function encodeStill(input: {
  readonly place: string;
  readonly into: string;
  readonly name: string;
}): Promise<MadeStill | StillTrouble> {
  const sharp = await decoder();
  if (sharp === null) return noDecoder();
  const open = (limitInputPixels: number | false) =>
    sharp(input.place, { limitInputPixels, failOn: 'error', sequentialRead: true, animated: false });
  try {
    // Only its head is read, whatever it says of its size.
    const told = await open(false).metadata();
    const trouble = troubleIn(told);
    if (trouble !== null) return trouble;
    const sizes = sizesOf(told);
    const largest = sizes.at(-1)!;
    const { data, info } = await open(mostPixels)
      .rotate()
      .resize({ ...largest, fit: 'fill' })
      .flatten({ background: '#ffffff' })
      .toColourspace('srgb')
      .raw()
      .toBuffer({ resolveWithObject: true });
    const raw = { width: info.width, height: info.height, channels: info.channels };
    const made: MadeStill['sizes'][number][] = [];
    for (const size of sizes) {
      const file = (ending: string) => join(input.into, `${input.name}-${size.width}.${ending}`);
      const picture = () => sharp(data, { raw }).resize({ ...size, fit: 'fill' });
      await writeFile(file('webp'), await picture().webp({ quality: 82 }).toBuffer());
      await writeFile(file('jpg'), await picture().jpeg({ quality: 82, chromaSubsampling: '4:4:4' }).toBuffer());
      made.push({ width: size.width, webp: file('webp'), jpeg: file('jpg') });
    }
    return { ...largest, sizes: made };
  } catch (trouble) {
    // Trouble of the disk is not the picture's.
    if (trouble instanceof Error && 'syscall' in trouble) throw trouble;
    return damaged();
  }
}

/** What can be told before a pixel is decoded. */
function troubleIn(told: Sharp.Metadata): StillTrouble | null {
  const { format, width = 0, height = 0, pages = 1 } = told;
  if (format !== 'png' && format !== 'jpeg' && format !== 'webp') return notAPicture();
  if (pages > 1) return animation();
  if (width * height > mostPixels) return tooManyPixels(width * height, mostPixels);
  const held_bytes = width * height * (told.channels ?? 4) * (format === 'jpeg' || told.depth === 'ushort' ? 2 : 1);
  if (told.isProgressive === true && held_bytes > mostHeld_bytes) return storedInPasses(held_bytes, mostHeld_bytes);
  return width < 1 || height < 1 ? damaged() : null;
}

/** Never larger than the picture, and no second size that is hardly another. */
function sizesOf(told: Sharp.Metadata): readonly { readonly width: number; readonly height: number }[] {
  // From 5 on the camera was held on its side.
  const lies = (told.orientation ?? 1) >= 5;
  const [width, height] = lies ? [told.height!, told.width!] : [told.width!, told.height!];
  const most = Math.min(width, Math.max(1, Math.floor((width * mostHeight) / height)));
  const widest = Math.min(most, widths[1]);
  return [...(widths[0] * 1.25 < widest ? [widths[0]] : []), widest].map((each) => ({
    width: each,
    height: Math.max(1, Math.round((height * each) / width)),
  }));
}

/** Loaded when the first picture asks for it; null where its machine code does not run. */
let loaded: Promise<typeof Sharp | null> | null = null;
export const decoder = (): Promise<typeof Sharp | null> =>
  (loaded ??= import('sharp').then(
    ({ default: sharp }) => {
      sharp.cache(false);
      sharp.concurrency(1);
      return sharp;
    },
    () => null,
  ));
