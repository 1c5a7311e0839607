import type { Trouble } from './quantity.ts';
import * as texts from './texts.ts';

/** A number at the head of a text, where it ends, and one in its last digit typed. */
export interface Scanned {
  readonly value: number;
  readonly end: number;
  readonly step: number;
}

/** Spaces of every width, minus signs and en dashes as their plain selves; each sign keeps its place. */
export const plain = (text: string): string =>
  text.replace(/[\u00a0\u2000-\u200a\u202f\t]/g, ' ').replace(/[\u2212\u2012\u2013]/g, '-');

/** Reads the number that begins at `from`; never guesses: what has two readings is refused with both named. */
export function scanNumber(text: string, from: number): Scanned | Trouble {
  const sign = /^\s*([+-]? ?)/.exec(text.slice(from))!;
  const start = from + sign[0].length;
  const body = text.slice(start);
  const refused = refuse(body, start);
  if (refused) return refused;
  const read = readFraction(body) ?? readDecimal(body);
  if (!read) return texts.numberUnclear(numberLike(body, start), body.trim());
  if ('readings' in read) {
    const unit = body.slice(read.length).trim();
    return texts.numberComma({ offset: start, length: read.length }, body.slice(0, read.length), read.readings, unit);
  }
  if (!Number.isFinite(read.value)) return texts.numberNotFinite({ offset: start, length: read.length });
  const end = start + read.length;
  if (/^(\s*[\d.,:'’/½¼¾⅛⅜⅝⅞](?!\p{L}|\/[\p{L}°])|[eE][+-]?\d)/u.test(text.slice(end)))
    return texts.numberUnclear(numberLike(body, start), body.trim());
  const value = sign[1]!.startsWith('-') && read.value !== 0 ? -read.value : read.value;
  return { value, end, step: read.step };
}

interface Read {
  readonly value: number;
  readonly step: number;
  readonly length: number;
}

function refuse(body: string, offset: number): Trouble | null {
  const place = numberLike(body, offset);
  const word = body.slice(0, place.length);
  if (body.trim() === '') return texts.numberMissing({ offset, length: 0 }, '');
  if (/^(inf(inity)?|nan|∞)(?!\p{L})/iu.test(body)) return texts.numberNotFinite(place);
  if (!/^[\d.,½¼¾⅛⅜⅝⅞]/.test(body)) return texts.numberMissing({ offset, length: body.trimEnd().length }, body.trim());
  if (/^\d+([/-])\d+\1\d+/.test(body) || /^\d{1,2}\.\d{1,2}\.\d{2,4}(?!\d)/.test(body))
    return texts.dateNotNumber(place, word);
  if (/^\d+:\d/.test(body)) return texts.clockNotNumber(place, word);
  if (/^0\d/.test(body)) return texts.leadingZero(place, word);
  if (!mixedFraction.test(body) && /^[\d.,]*\d\s*(-|\.{2,}|to )\s*\d/.test(body)) return texts.numberRange(place, word);
  return null;
}

const mixedFraction = /^(\d+)[ -](\d+)\/(\d+)(?![\d/])/;
const vulgar: Readonly<Record<string, number>> = {
  '½': 0.5,
  '¼': 0.25,
  '¾': 0.75,
  '⅛': 0.125,
  '⅜': 0.375,
  '⅝': 0.625,
  '⅞': 0.875,
};
/** What a rule or a measuring cup is divided in. 85/90 is no fraction but a grade. */
const divisions = [2, 3, 4, 8, 16, 32, 64];

function readFraction(body: string): Read | null {
  const sign = /^(\d*) ?([½¼¾⅛⅜⅝⅞])/.exec(body);
  if (sign) {
    const part = vulgar[sign[2]!]!;
    return {
      value: Number(sign[1]) + part,
      step: part % 0.25 ? 1 / 8 : part % 0.5 ? 1 / 4 : 1 / 2,
      length: sign[0].length,
    };
  }
  const typed = mixedFraction.exec(body) ?? /^()(\d+)\/(\d+)(?![\d/])/.exec(body);
  if (!typed) return null;
  const [whole, top, bottom] = [Number(typed[1]), Number(typed[2]), Number(typed[3])];
  if (!divisions.includes(bottom) || top >= bottom) return null;
  return { value: whole + top / bottom, step: 1 / bottom, length: typed[0].length };
}

function readDecimal(body: string): Read | { readonly readings: readonly string[]; readonly length: number } | null {
  const token = /^(?:\d{1,3}(?: \d{3})+(?:[.,]\d+)?(?![\d.,/])|[\d.,]*\d)/.exec(body)?.[0];
  if (token === undefined) return null;
  if (/^[1-9]\d{0,2},\d{3}$/.test(token))
    return { readings: [token.replace(',', '.'), token.replace(',', '')], length: token.length };
  const digits = asPoint(token);
  if (digits === null) return null;
  const exponent = /^[eE][+-]?\d{1,4}(?![\p{L}\d])/u.exec(body.slice(token.length))?.[0] ?? '';
  const value = Number(digits + exponent);
  if (value === 0 && /[1-9]/.test(digits)) return null;
  const decimals = digits.split('.')[1]?.length ?? 0;
  return { value, step: Number(`1e${-decimals + Number(exponent.slice(1))}`), length: token.length + exponent.length };
}

/** The same digits with a decimal point and no thousands; null when the signs between them contradict each other. */
function asPoint(token: string): string | null {
  if (token.includes(' ')) return token.replace(/ /g, '').replace(',', '.');
  if (/^\d*\.?\d+$/.test(token)) return token;
  if (/^\d+,\d+$/.test(token)) return token.replace(',', '.');
  if (/^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(token)) return token.replace(/,/g, '');
  if (/^[1-9]\d{0,2}(\.\d{3}){2,}$|^[1-9]\d{0,2}(\.\d{3})+,\d+$/.test(token))
    return token.replace(/\./g, '').replace(',', '.');
  return null;
}

function numberLike(body: string, offset: number): { offset: number; length: number } {
  return {
    offset,
    length: Math.max(1, /^[\d.,:/'’½¼¾⅛⅜⅝⅞ -]*[\d½¼¾⅛⅜⅝⅞](?:[eE][+-]?\d+)?|^\S+/.exec(body)?.[0].length ?? 1),
  };
}
