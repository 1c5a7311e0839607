/** How numbers are written in a log, as its map declares. */
export interface Dialect {
  readonly decimal: '.' | ',';
  readonly thousands: string | null;
  /** Further missing words of the map, beside the common ones. */
  readonly missing: readonly string[];
}

export type Refusal = 'ambiguous' | 'thousands' | 'decimal' | 'digits' | 'notation' | 'word';

export type CellReading =
  | { readonly kind: 'number'; readonly value: number; readonly mended: readonly ('space' | 'minus')[] }
  | { readonly kind: 'missing'; readonly word: string }
  | { readonly kind: 'refused'; readonly why: Refusal };

/** A cell that is not a plain number: a missing word, a number in other clothes, or something that is refused. */
export function readOddCell(asFound: string, dialect: Dialect): CellReading {
  const mended: ('space' | 'minus')[] = [];
  const trimmed = asFound.trim();
  if (/^[^\S ]|[^\S ]$/u.test(asFound)) mended.push('space');
  if (dialect.missing.includes(trimmed) || missingWord.test(trimmed)) return { kind: 'missing', word: trimmed };
  const text = trimmed.replace(/^\u2212/u, '-').replace(/([eE])\u2212/u, '$1-');
  if (text !== trimmed) mended.push('minus');
  const plain = ungrouped(text, dialect.thousands);
  const number = plainNumber(plain, dialect.decimal);
  if (number !== null) return { kind: 'number', value: number, mended };
  return { kind: 'refused', why: whyRefused(text, dialect.decimal) };
}

/** Common practice, no source: what loggers and spreadsheets write where there is no reading. */
const missingWord = /^(|nan|n\/?a|n\.a\.|#n\/a|-{1,3}|[+-]?inf(inity)?|#div\/0!|ol|over)$/iu;

function plainNumber(text: string, decimal: '.' | ','): number | null {
  const strict =
    decimal === '.'
      ? /^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?$/u.test(text)
      : /^[+-]?(\d+(,\d*)?|,\d+)([eE][+-]?\d+)?$/u.test(text);
  return strict ? Number(text.replace(',', '.')) : null;
}

/** Takes declared separators out of a number that is grouped by threes throughout; any other text is left as it is. */
function ungrouped(text: string, thousands: string | null): string {
  if (thousands === null) return text;
  const mark = /^\s$/u.test(thousands) ? String.raw`\s` : `\\u{${thousands.codePointAt(0)!.toString(16)}}`;
  const grouped = new RegExp(`^[+-]?\\d{1,3}(${mark}\\d{3})+(?!\\d)`, 'u').exec(text);
  if (grouped === null) return text;
  return grouped[0].replace(new RegExp(mark, 'gu'), '') + text.slice(grouped[0].length);
}

function whyRefused(text: string, decimal: '.' | ','): Refusal {
  const other = decimal === '.' ? ',' : '.';
  const [mark, others] = [decimal === '.' ? String.raw`\.` : ',', other === '.' ? String.raw`\.` : ','];
  if (new RegExp(`^[+-]?[1-9]\\d{0,2}${others}\\d{3}$`, 'u').test(text)) return 'ambiguous';
  if (new RegExp(`^[+-]?\\d*${others}\\d+([eE][+-]?\\d+)?$`, 'u').test(text)) return 'decimal';
  if (new RegExp(`^[+-]?\\d{1,3}([\\s'’${others}]\\d{3})+(${mark}\\d*)?$`, 'u').test(text)) return 'thousands';
  if (/^[+-]?(0x[0-9a-f]+|[\d.,]+d[+-]?\d+)$/iu.test(text)) return 'notation';
  if (/[^\P{Nd}0-9]/u.test(text)) return 'digits';
  return 'word';
}
