import { carriageReturn, lineFeed } from './lines.ts';

/** What one pass over the bytes shows before any cell is read. */
export interface Survey {
  readonly lf: number;
  readonly crlf: number;
  readonly cr: number;
  /** Offset of the first byte that no text has, or −1. */
  readonly firstControl: number;
  readonly ascii: boolean;
}

/** Four bytes at a time: a word of plain characters is passed over whole, and only the others are looked at. */
export function survey(bytes: Uint8Array): Survey {
  const seen = { lf: 0, crlf: 0, cr: 0, firstControl: -1, ascii: true };
  const aligned = Math.min(bytes.length, (4 - (bytes.byteOffset & 3)) & 3);
  const count = (bytes.length - aligned) >> 2;
  const words = count > 0 ? new Int32Array(bytes.buffer, bytes.byteOffset + aligned, count) : new Int32Array(0);
  look(bytes, 0, aligned, seen);
  for (let at = 0; at < words.length; at++) {
    const word = words[at]!;
    const beyond = word & topBits;
    const below = (word - eachSpace) & ~word & topBits;
    if ((beyond | below) !== 0) look(bytes, aligned + 4 * at, aligned + 4 * at + 4, seen);
  }
  look(bytes, aligned + 4 * words.length, bytes.length, seen);
  return seen;
}

const topBits = 0x80808080 | 0;
const eachSpace = 0x20202020;

function look(bytes: Uint8Array, from: number, to: number, seen: { -readonly [K in keyof Survey]: Survey[K] }): void {
  for (let at = from; at < to; at++) {
    const byte = bytes[at]!;
    if (byte >= 128) seen.ascii = false;
    else if (byte === lineFeed) {
      if (at > 0 && bytes[at - 1] === carriageReturn) seen.crlf++;
      else seen.lf++;
    } else if (byte === carriageReturn) {
      if (bytes[at + 1] !== lineFeed) seen.cr++;
    } else if (byte < 32 && byte !== tab && seen.firstControl < 0) seen.firstControl = at;
  }
}

const tab = 9;

/** Offset of the first byte that is not UTF-8 (RFC 3629: shortest form, no surrogates, up to U+10FFFF), or −1. */
export function firstNotUtf8(bytes: Uint8Array): number {
  for (let at = 0; at < bytes.length;) {
    const lead = bytes[at]!;
    if (lead < 0x80) {
      at++;
      continue;
    }
    const follow =
      lead >= 0xc2 && lead < 0xe0 ? 1 : lead >= 0xe0 && lead < 0xf0 ? 2 : lead >= 0xf0 && lead < 0xf5 ? 3 : 0;
    if (follow === 0) return at;
    const second = bytes[at + 1] ?? 0;
    const low = lead === 0xe0 ? 0xa0 : lead === 0xf0 ? 0x90 : 0x80;
    const high = lead === 0xed ? 0x9f : lead === 0xf4 ? 0x8f : 0xbf;
    if (second < low || second > high) return at;
    for (let next = 2; next <= follow; next++) {
      if (((bytes[at + next] ?? 0) & 0xc0) !== 0x80) return at;
    }
    at += follow + 1;
  }
  return -1;
}
