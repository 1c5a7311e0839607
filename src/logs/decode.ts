import type { Collector } from './collect.ts';
import { lineHolding, placeIn, type LogText } from './lines.ts';
import { firstNotUtf8, survey, type Survey } from './survey.ts';
import * as say from './texts.ts';

/** The largest log that is read, MB. */
export const mostMegabytes = 400;

/**
 * Bytes → UTF-8 text without a byte order mark, or null when the file is no text. UTF-8 passes as it is; anything else is decoded
 * to a string and written again as UTF-8, so that the scanner knows one encoding. Nothing is replaced silently.
 */
export function decodeLog(
  given: { readonly file: string; readonly bytes: Uint8Array; readonly encoding: string | null },
  found: Collector,
): { readonly text: LogText; readonly survey: Survey } | null {
  const top = { file: given.file, line: 1, column: 1 };
  const refuse = (finding: ReturnType<typeof say.notText>): null => {
    found.add('error', () => finding);
    return null;
  };
  const megabytes = Math.round(given.bytes.length / 1e6);
  if (megabytes > mostMegabytes) return refuse(say.tooLarge(top, megabytes, mostMegabytes));
  const looksLike = signature(given.bytes);
  if (looksLike !== null) return refuse(say.notText(top, looksLike));

  const label = encodingOf(given.bytes, given.encoding);
  if (label.from === 'pattern') found.add('warning', () => say.utf16Unmarked(top, label.name));
  const bytes = label.name === 'utf-8' ? withoutMark(given.bytes) : recoded(given.bytes, label.name);
  if (bytes === 'unknown') return refuse(say.encodingUnknown(top, label.name));
  if (bytes === 'malformed') return refuse(say.notInEncoding(top, label.name, null));
  if (label.from === 'mark') found.note('1 byte order mark dropped');
  if (label.name !== 'utf-8') found.note(`decoded from ${label.name}`);

  const text: LogText = { file: given.file, bytes };
  const seen = survey(bytes);
  if (seen.firstControl >= 0) return refuse(controlFinding(text, seen.firstControl, given.bytes.length - bytes.length));
  const bad = seen.ascii ? -1 : firstNotUtf8(bytes);
  if (bad >= 0) {
    const offset = bad + given.bytes.length - bytes.length;
    return refuse(say.notInEncoding(placeIn(text, lineHolding(bytes, bad), bad, bad + 1), 'UTF-8', offset));
  }
  noteLineEnds(seen, found);
  return { text, survey: seen };
}

function controlFinding(text: LogText, at: number, dropped: number): ReturnType<typeof say.notText> {
  const { bytes } = text;
  const place = placeIn(text, lineHolding(bytes, at), at, at + 1);
  if (bytes[at] !== 0) return say.controlByte(place, at + dropped, bytes[at]!);
  return say.nulBytes(
    place,
    at + dropped,
    bytes.subarray(at).every((byte) => byte === 0),
  );
}

function encodingOf(
  bytes: Uint8Array,
  declared: string | null,
): { name: string; from: 'mark' | 'map' | 'pattern' | 'rule' } {
  if (starts(bytes, [0xef, 0xbb, 0xbf])) return { name: 'utf-8', from: 'mark' };
  if (starts(bytes, [0xff, 0xfe])) return { name: 'utf-16le', from: 'mark' };
  if (starts(bytes, [0xfe, 0xff])) return { name: 'utf-16be', from: 'mark' };
  if (declared !== null) {
    const name = declared.toLowerCase();
    return { name: name === 'utf8' ? 'utf-8' : name, from: 'map' };
  }
  const pattern = zeroPattern(bytes);
  return pattern === null ? { name: 'utf-8', from: 'rule' } : { name: pattern, from: 'pattern' };
}

/** Latin text in UTF-16 has a zero in every second byte: nearly all of one parity, nearly none of the other. */
function zeroPattern(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const pairs = Math.min(bytes.length >> 1, 500);
  let [even, odd] = [0, 0];
  for (let pair = 0; pair < pairs; pair++) {
    if (bytes[2 * pair] === 0) even++;
    if (bytes[2 * pair + 1] === 0) odd++;
  }
  if (pairs < 4) return null;
  if (odd > 0.9 * pairs && even < 0.1 * pairs) return 'utf-16le';
  return even > 0.9 * pairs && odd < 0.1 * pairs ? 'utf-16be' : null;
}

const withoutMark = (bytes: Uint8Array): Uint8Array => (starts(bytes, [0xef, 0xbb, 0xbf]) ? bytes.subarray(3) : bytes);

function recoded(bytes: Uint8Array, label: string): Uint8Array | 'unknown' | 'malformed' {
  let decoder: TextDecoder;
  try {
    decoder = new TextDecoder(label, { fatal: true });
  } catch {
    return 'unknown';
  }
  try {
    return new TextEncoder().encode(decoder.decode(bytes));
  } catch {
    return 'malformed';
  }
}

const starts = (bytes: Uint8Array, mark: readonly number[]): boolean => mark.every((byte, at) => bytes[at] === byte);

/** First bytes of what people rename to .csv. Common practice, no source; each is the published mark of its format. */
const signatures: readonly (readonly [readonly number[], string])[] = [
  [[0x50, 0x4b, 0x03, 0x04], 'a spreadsheet or a zip archive'],
  [[0xd0, 0xcf, 0x11, 0xe0], 'a spreadsheet or document of the older binary form'],
  [[0x25, 0x50, 0x44, 0x46], 'a PDF'],
  [[0x1f, 0x8b], 'a gzip archive'],
  [[0x37, 0x7a, 0xbc, 0xaf], 'a 7z archive'],
  [[0x50, 0x41, 0x52, 0x31], 'a Parquet table'],
  [[0x89, 0x48, 0x44, 0x46], 'an HDF5 file'],
  [[0x89, 0x50, 0x4e, 0x47], 'a PNG picture'],
  [[0xff, 0xd8, 0xff], 'a JPEG picture'],
  [[0x7b, 0x5c, 0x72, 0x74, 0x66], 'an RTF document'],
  [[0x53, 0x51, 0x4c, 0x69, 0x74, 0x65], 'a SQLite database'],
];

function signature(bytes: Uint8Array): string | null {
  const known = signatures.find(([mark]) => starts(bytes, mark));
  if (known !== undefined) return known[1];
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, 200)).replace(/^\u00ef\u00bb\u00bf/u, '');
  return /^\s*<(!doctype|html|\?xml|table)/iu.test(head) ? 'a web page or an XML file' : null;
}

function noteLineEnds(seen: Survey, found: Collector): void {
  const kinds = [
    [seen.crlf, 'CR LF'],
    [seen.lf, 'LF'],
    [seen.cr, 'CR'],
  ] as const;
  const used = kinds.filter(([count]) => count > 0);
  if (used.length > 1 || seen.cr > 0) found.note(`line ends: ${used.map(([n, name]) => `${n} ${name}`).join(', ')}`);
}
