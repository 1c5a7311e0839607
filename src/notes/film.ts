/** What a clip is by its first bytes; only these three play in a browser without more. */
export type FilmKind = 'WebM' | 'MP4' | 'Ogg' | null;

const holds = (bytes: Uint8Array, word: string, at: number): boolean =>
  Array.from(word).every((sign, i) => bytes[at + i] === sign.charCodeAt(0));

/** First place of a word of Latin-1 signs from `from` on, before `to`; -1 when it is not there. */
function find(bytes: Uint8Array, word: string, from: number, to = bytes.length): number {
  for (
    let at = bytes.indexOf(word.charCodeAt(0), from);
    at >= 0 && at < to;
    at = bytes.indexOf(word.charCodeAt(0), at + 1)
  )
    if (holds(bytes, word, at)) return at;
  return -1;
}

/**
 * source             WebM: EBML header with DocType "webm" (RFC 8794, RFC 9559) · MP4: a file type box first (ISO/IEC 14496-12)
 *                    · Ogg: capture pattern OggS (RFC 3533)
 */
export function filmKind(head: Uint8Array): FilmKind {
  if (holds(head, '\x1aE\xdf\xa3', 0)) return find(head, 'webm', 0, 64) >= 0 ? 'WebM' : null;
  if (holds(head, 'ftyp', 4)) return holds(head, 'qt  ', 8) ? null : 'MP4';
  return holds(head, 'OggS', 0) ? 'Ogg' : null;
}

/**
 * Whether an MP4 says in its first bytes where it was filmed: a box `loci` (3GPP TS 26.244), a box `©xyz`, or a key of
 * location by ISO 6709. A box has its length before its name.
 */
export const saysWhereFilmed = (head: Uint8Array): boolean =>
  ['loci', '\xa9xyz'].some((name) => hasBox(head, name)) || find(head, 'location.ISO6709', 0) >= 0;

function hasBox(bytes: Uint8Array, name: string): boolean {
  for (let at = find(bytes, name, 4); at >= 0; at = find(bytes, name, at + 1)) {
    const length = ((bytes[at - 4]! << 24) | (bytes[at - 3]! << 16) | (bytes[at - 2]! << 8) | bytes[at - 1]!) >>> 0;
    if (length >= 12 && length <= 0xffff) return true;
  }
  return false;
}
