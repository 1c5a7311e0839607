import { coverage, readAmount, readSpread, trimmed } from './amount.ts';
import { plain, scanNumber } from './number.ts';
import type { Dimension, PlusMinus, Quantity, ReadText, Trouble } from './quantity.ts';
import * as texts from './texts.ts';
import { differenceToSI, toSI, unitNamed, type Unit } from './units.ts';

export { readAccuracy, type AccuracyRead } from './accuracy.ts';

/** Reads a quantity as people write it. What has two readings is refused with both named. */
export function readQuantity(
  text: string,
  dimension: Dimension | readonly Dimension[],
  hint: { readonly field?: string } = {},
): ReadText<Quantity> {
  const dimensions = typeof dimension === 'string' ? [dimension] : dimension;
  const line = plain(text);
  const sign = /±|\+\/-|\+-/.exec(line);
  const main = readAmount(line.slice(0, sign?.index), 0, { dimensions, field: hint.field });
  if ('code' in main) return refused(main);
  const value = toSI(main.unit, main.number) + main.more;
  if (main.unit.dimension === 'temperature' && value < 0) return refused(texts.belowAbsoluteZero(main.at, text.trim()));
  const read = { asWritten: text.trim(), value, unit: main.unit.name, step: differenceToSI(main.unit, main.step) };
  if (!sign) return { ok: true, value: read };
  const plusMinus = readPlusMinus(line, sign.index + sign[0].length, main.unit, value);
  return 'code' in plusMinus ? refused(plusMinus) : { ok: true, value: { ...read, plusMinus } };
}

/** A change of a quantity in a time, SI per second: `2 K/s`, `50 rpm/s`, `5 N·m/min`. */
export function readRate(
  text: string,
  dimension: Dimension,
  hint: { readonly field?: string } = {},
): ReadText<Quantity> {
  if (dimension === 'temperature' || dimension === 'temperature-difference')
    return readQuantity(text, 'temperature-rate', hint);
  const per = /\s*\/\s*(s|min|h)\s*$/.exec(text);
  const read = readQuantity(per ? text.slice(0, per.index) : text, dimension, hint);
  if (!read.ok) return read;
  const place = { offset: 0, length: text.trimEnd().length };
  if (!per) return refused(texts.rateMissing(place, text.trim()));
  const { value, unit, step } = read.value;
  const time_s = toSI(unitNamed(per[1]!, 'time')!, 1);
  const asWritten = text.trim();
  return { ok: true, value: { asWritten, value: value / time_s, step: step / time_s, unit: `${unit}/${per[1]!}` } };
}

/** A plain number without unit; nothing may stand after it. */
export function readNumber(text: string): ReadText<number> {
  const line = plain(text);
  const scanned = scanNumber(line, 0);
  if ('code' in scanned) return refused(scanned);
  const rest = line.slice(scanned.end).trim();
  if (rest === '') return { ok: true, value: scanned.value };
  return refused(texts.numberHasMore({ offset: line.indexOf(rest, scanned.end), length: rest.length }, rest));
}

/** After the sign ±: an amount in the unit of the value or its kind of difference, or a percentage of the value. */
function readPlusMinus(line: string, from: number, unit: Unit, value: number): PlusMinus | Trouble {
  const { body, k } = coverage(line, from);
  const at = trimmed(body, from, body.length);
  const text = line.slice(at.offset).trim();
  if (k === 'unclear')
    return texts.plusMinusUnclear(at, text, 'The part in brackets is not a coverage factor such as (k=2).');
  const amount = readSpread(body, from, unit.dimension);
  if ('code' in amount)
    return amount.code === 'unit-missing' ? texts.plusMinusUnclear(at, text, 'It has no unit.') : amount;
  const share = amount.unit.name === '%' && unit.dimension !== 'ratio';
  const spread = differenceToSI(amount.unit, amount.number) + amount.more;
  if (spread <= 0) return texts.plusMinusUnclear(at, text, 'It is not a positive amount.');
  return { value: share ? spread * Math.abs(value) : spread, k };
}

const refused = (trouble: Trouble): { readonly ok: false; readonly trouble: Trouble } => ({ ok: false, trouble });
