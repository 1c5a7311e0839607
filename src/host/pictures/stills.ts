import { rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import type { Finding } from '../../finding/finding.ts';
import type { MediaFile } from '../../trial/series.ts';
import { ownFolder } from '../disk/own-folder.ts';
import { placeInBook } from '../disk/inside.ts';
import { encodeStill } from './encode.ts';
import {
  animation,
  damaged,
  noDecoder,
  notAPicture,
  stillNameTwice,
  stillNotDecoded,
  stillsWithoutDecoder,
  tooManyBytes,
  type StillTrouble,
} from './texts.ts';

/** A still in the sizes of a page; the files lie in the store until the site takes them over. */
export interface MadeStill {
  readonly width: number;
  readonly height: number;
  /** From narrow to wide. */
  readonly sizes: readonly { readonly width: number; readonly webp: string; readonly jpeg: string }[];
}

/** Made pictures on their way to the site; `preview` keeps one over rebuilds, so that a picture is decoded once. */
export interface StillStore {
  readonly folder: () => string;
  readonly known: Map<string, MadeStill | StillTrouble>;
  readonly close: () => void;
}

/** Its folder is made when the first picture needs it. */
export function stillStore(): StillStore {
  let folder: string | null = null;
  return {
    folder: () => (folder ??= ownFolder(tmpdir(), 'dipmark-stills-')),
    known: new Map(),
    close: () => {
      if (folder !== null) rmSync(folder, { recursive: true, force: true });
    },
  };
}

export interface StillWanted {
  /** Path in the book. */
  readonly source: string;
  /** Below the site's root, without size and ending. */
  readonly address: string;
}

/** Largest picture that is decoded, bytes: beyond it no sum is known either. */
const mostBytes = 64 * 2 ** 20;

/**
 * Decodes every still that a page shows, one after the other, and makes its sizes: `check`, `build` and `preview` all come
 * here and so say the same. A picture that is not there is the notes' business and has no finding here.
 */
export async function makeStills(input: {
  readonly folder: string;
  readonly wanted: readonly StillWanted[];
  readonly media: readonly MediaFile[];
  readonly store: StillStore;
  readonly tell?: (done: number, all: number) => void;
}): Promise<{
  readonly stills: ReadonlyMap<string, MadeStill | null>;
  readonly findings: readonly Finding[];
  readonly undecoded: readonly string[];
}> {
  const { folder, wanted, store, tell } = input;
  const media = new Map(input.media.map((file) => [file.path, file]));
  const sources = new Map<string, string>();
  const stills = new Map<string, MadeStill | null>();
  const findings: Finding[] = [];
  const noneDecoded: string[] = [];
  for (const [i, { source, address }] of wanted.entries()) {
    const shown = sources.get(address);
    if (shown === source) continue;
    if (shown !== undefined) {
      findings.push(stillNameTwice(source, shown));
      continue;
    }
    sources.set(address, source);
    tell?.(i, wanted.length);
    const file = media.get(source);
    const made = file === undefined ? null : await decoded(folder, file, store);
    stills.set(address, made !== null && 'sizes' in made ? made : null);
    if (made === null || !('says' in made)) continue;
    // said once: it is of the machine, not of the picture
    if (made.says === noDecoder().says) noneDecoded.push(source);
    else findings.push(stillNotDecoded(source, made));
  }
  const [first] = noneDecoded;
  return {
    stills,
    undecoded: noneDecoded,
    findings: first === undefined ? findings : [...findings, stillsWithoutDecoder(first, noneDecoded.length)],
  };
}

async function decoded(folder: string, file: MediaFile, store: StillStore): Promise<MadeStill | StillTrouble> {
  if (file.sha256 === null || file.size > mostBytes) return tooManyBytes(file.size, mostBytes);
  if (!isPicture(file.head)) return notAPicture();
  // A decoder would give its first frame without a word.
  if (isAnimatedPng(latin(file.head))) return animation();
  const known = store.known.get(file.sha256);
  if (known !== undefined) return known;
  const place = placeInBook(folder, file.path);
  if (place === null) return damaged();
  const made = await encodeStill({ place, into: store.folder(), name: file.sha256 });
  store.known.set(file.sha256, made);
  return made;
}

/** By its first bytes, before any decoder sees it: PNG, JPEG or WebP. */
const isPicture = (head: Uint8Array): boolean =>
  /^\x89PNG\r\n\x1a\n|^\xff\xd8\xff|^RIFF[^]{4}WEBP/.test(latin(head.subarray(0, 12)));

/** `acTL` is the head of an animation; it stands before the pixels or not at all (PNG specification, third edition). */
const isAnimatedPng = (head: string): boolean =>
  head.startsWith('\x89PNG') && head.slice(0, Math.max(0, head.indexOf('IDAT'))).includes('acTL');

const latin = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');
