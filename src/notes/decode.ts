import { lineStarts } from '../finding/place.ts';
import type { SourceFile } from '../trial/series.ts';
import type { NoteText } from './note.ts';

/** Why a file cannot be read as text; `text` is what of it can be shown, and `offset` where in that. */
export interface Undecoded {
  readonly ok: false;
  readonly why: 'too-large' | 'utf-16' | 'zero-bytes' | 'not-utf-8';
  readonly text: NoteText;
  readonly offset: number;
  /** The first byte that is not UTF-8. */
  readonly byte: number;
}

/** A text file in UTF-8; line ends are made one and a byte order mark is dropped, so that columns are those of an editor. */
export function decodeText(
  { path, bytes }: SourceFile,
  largest: number,
): { readonly ok: true; readonly text: NoteText } | Undecoded {
  const whole = bytes.length <= largest;
  const loose = asText(path, new TextDecoder('utf-8').decode(bytes.subarray(0, whole ? bytes.length : 1000)));
  const no = (why: Undecoded['why'], offset = 0, byte = 0): Undecoded => ({
    ok: false,
    why,
    text: loose,
    offset,
    byte,
  });
  if (!whole) return no('too-large');
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) return no('utf-16');
  if (bytes.includes(0)) return no('zero-bytes');
  const good = goodLength(bytes);
  if (good === bytes.length) return { ok: true, text: loose };
  const before = asText(path, new TextDecoder('utf-8').decode(bytes.subarray(0, good))).text.length;
  return no('not-utf-8', before, bytes[good] ?? 0);
}

function asText(file: string, decoded: string): NoteText {
  const text = decoded.replace(/\r\n?/g, '\n');
  return { file, text, starts: lineStarts(text) };
}

/** Bytes up to the first one that is not UTF-8, by halving. */
function goodLength(bytes: Uint8Array): number {
  if (decodes(bytes, false)) return bytes.length;
  let good = 0;
  let bad = bytes.length + 1;
  while (bad - good > 1) {
    const middle = (good + bad) >> 1;
    if (decodes(bytes.subarray(0, middle), true)) good = middle;
    else bad = middle;
  }
  return Math.min(good, bytes.length - 1);
}

function decodes(bytes: Uint8Array, cut: boolean): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: cut });
    return true;
  } catch {
    return false;
  }
}
