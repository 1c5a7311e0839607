import { coverage, readSpread, trimmed } from './amount.ts';
import { plain } from './number.ts';
import type { Dimension, ReadText } from './quantity.ts';
import * as texts from './texts.ts';
import { differenceToSI } from './units.ts';

/** `value` SI when absolute, a fraction otherwise; `k` null when the text states limits. */
export interface AccuracyRead {
  readonly asWritten: string;
  readonly of: 'absolute' | 'reading' | 'range';
  readonly value: number;
  readonly k: number | null;
}

/** Reads what an instrument promises: `± 0.05 % of range`, `± 0.5 % of reading`, `± 0.3 N·m`, `± 0.3 K (k=2)`. */
export function readAccuracy(text: string, dimension: Dimension): ReadText<AccuracyRead> {
  const line = plain(text);
  const from = /^\s*(±|\+\/-|\+-)?/.exec(line)![0].length;
  const { body: stated, k } = coverage(line, from);
  const whole = trimmed(line, from, line.length);
  const asWritten = text.trim();
  if (k === 'unclear') {
    const why = 'The part in brackets is not a coverage factor such as (k=2).';
    return { ok: false, trouble: texts.plusMinusUnclear(whole, asWritten, why) };
  }
  const base = bases.find(({ words }) => words.test(stated));
  const amount = readSpread(base ? stated.replace(base.words, '') : stated, from, base ? 'ratio' : dimension);
  if ('code' in amount) return { ok: false, trouble: amount };
  if (amount.number <= 0)
    return { ok: false, trouble: texts.plusMinusUnclear(whole, asWritten, 'It is not a positive amount.') };
  if (!base && amount.unit.dimension === 'ratio' && dimension !== 'ratio')
    return { ok: false, trouble: texts.accuracyBase(amount.at) };
  const value = differenceToSI(amount.unit, amount.number) + amount.more;
  return { ok: true, value: { asWritten, of: base?.of ?? 'absolute', value, k } };
}

const bases: readonly { readonly of: 'range' | 'reading'; readonly words: RegExp }[] = [
  { of: 'range', words: /\s*(of (the )?(range|full scale|span)|\bFS|\bf\.s\.)\s*$/i },
  { of: 'reading', words: /\s*(of (the )?(reading|value)|\brdg)\s*$/i },
];
