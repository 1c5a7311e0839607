import { digitsFor, withUnit } from '../quantity/write.ts';
import type { Clause } from '../trial/claim.ts';
import { shownDifference, type QuantityName } from '../trial/figures.ts';
import { displayUnit, exactText, halfWidth, inDisplay, numberText } from './digits.ts';

/** Numbers that a claim is held to, SI in, in the unit of its quantity. They are differences: a temperature is in kelvin. */

const unitOf = (quantity: QuantityName): string => {
  const unit = displayUnit(quantity);
  return unit === '°C' ? 'K' : unit;
};
const draw = (quantity: QuantityName, si: number): number => inDisplay(quantity, shownDifference(quantity, si));

/** "5 K" as it was typed; "300 s (5 min)" where the page speaks in another unit. */
export function thresholdText({ quantity, threshold, thresholdTyped }: Clause): string {
  const unit = unitOf(quantity);
  const own = withUnit(exactText(draw(quantity, threshold)), unit);
  const typed = thresholdTyped?.trim() ?? '';
  if (typed === '') return own;
  const spaced = typed.replace(/\s+/g, '\u202f');
  return spaced.endsWith(unit) ? spaced : `${spaced} (${own})`;
}

/** Where the words of a claim change, with the sign of the difference: SI. */
export function marksOf({ direction, threshold: t }: Pick<Clause, 'direction' | 'threshold'>): readonly number[] {
  if (direction === 'within') return [-t, t];
  return direction === 'lower' ? [-t, 0] : [t, 0];
}

export interface Ends {
  /** "−11.3 K to −7.7 K" */
  readonly fromTo: string;
  /** An end, or a size of one, to the same place. */
  readonly text: (si: number) => string;
}

/** An interval to the digits of its half-width, and to more where rounding would carry an end over a threshold. */
export function endsOf(
  clause: Pick<Clause, 'quantity' | 'direction' | 'threshold'>,
  interval: readonly [number, number],
): Ends {
  const { quantity } = clause;
  const ends = interval.map((end) => draw(quantity, end)) as [number, number];
  const marks = marksOf(clause).map((mark) => draw(quantity, mark));
  const place = digitsFor(halfWidth(ends));
  const kept = (decimals: number): boolean =>
    ends.every((end) => marks.every((mark) => Math.sign(rounded(end, decimals) - mark) === Math.sign(end - mark)));
  const decimals = [0, 1, 2, 3].map((more) => place + more).find(kept) ?? place + 4;
  const unit = unitOf(quantity);
  const text = (si: number): string => withUnit(numberText(draw(quantity, si), decimals), unit);
  return { fromTo: `${text(interval[0])} to ${text(interval[1])}`, text };
}

/** A spread or a size without a sign: "1.8 K". */
export const sizeText = (quantity: QuantityName, si: number): string => {
  const size = draw(quantity, si);
  return size > 0 ? withUnit(numberText(size, digitsFor(size)), unitOf(quantity)) : '—';
};

const rounded = (value: number, decimals: number): number => Math.round(value * 10 ** decimals) / 10 ** decimals;

/** A clause as a chart draws it. */
export const drawn = (quantity: QuantityName, si: number): number => draw(quantity, si);
export const drawnUnit = unitOf;
