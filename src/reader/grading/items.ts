import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { readStep } from '../../notes/step.ts';
import type { GradingView } from '../../report/page.ts';

/** One step of one coded clip, and the seconds of the clip that are looked at. */
export interface Item {
  readonly code: string;
  readonly address: string;
  readonly step: string;
  readonly from_s: number;
  readonly to_s: number;
}

/** The stretch of a hold that the scale speaks of, from its beginning, s. */
const looked_s = 10;

/** Every step to be graded: clips in the order that a number makes, each with its steps as they were run. */
export const itemsOf = (clips: GradingView['clips'], order: number): readonly Item[] =>
  shuffled(clips, order).flatMap(({ code, address, steps }) =>
    steps
      .filter(({ name, from_s, to_s }) => readStep(name) !== null && to_s > from_s)
      .map(({ name, from_s, to_s }) => ({
        ...{ code, address, step: name, from_s },
        to_s: Math.min(to_s, from_s + looked_s),
      })),
  );

/** Fisher and Yates, as Durstenfeld wrote it down (Comm. ACM 7, 1964, 420: algorithm 235). */
function shuffled<T>(items: readonly T[], order: number): readonly T[] {
  const source = xoroshiro128plus(order);
  const left = [...items];
  for (let last = left.length - 1; last > 0; last--) {
    const pick = uniformInt(source, 0, last);
    [left[last], left[pick]] = [left[pick]!, left[last]!];
  }
  return left;
}

/** A number of its own for each observer and pass, so that two who grade do not see the clips in one order. */
export function orderFor(observer: string, pass: string): number {
  let sum = 7;
  for (const sign of `${observer} ${pass}`) sum = (sum * 31 + sign.codePointAt(0)!) % 8999;
  return 1000 + sum;
}

/** An order number as typed or as it stands in an address (`#order=1234`); null for anything else. */
export function readOrder(text: string | null): number | null {
  const typed = text?.trim() ?? '';
  return /^\d{1,9}$/.test(typed) ? Number(typed) : null;
}

export const orderInAddress = (hash: string): number | null =>
  readOrder(new URLSearchParams(hash.replace(/^#/, '')).get('order'));
