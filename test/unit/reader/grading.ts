import type { GradingView } from '../../../src/report/page.ts';
import { itemsOf } from '../../../src/reader/grading/items.ts';
import { press } from '../../../src/reader/grading/keys.ts';
import { begin, type Grader, type Sitting } from '../../../src/reader/grading/sitting.ts';

export const clips: GradingView['clips'] = [
  {
    code: 'K7',
    address: '../clips/K7.webm',
    steps: [
      { name: '60 rpm up', from_s: 11, to_s: 22 },
      { name: '290 rpm up', from_s: 23, to_s: 30 },
      { name: '60 rpm down', from_s: 35, to_s: 46 },
    ],
  },
  { code: 'R4', address: '../clips/R4.webm', steps: [{ name: '60 rpm up', from_s: 2.25, to_s: 40 }] },
];

export const grader: Grader = { observer: 'A', pass: 'first', blind: ['fill', 'oil'], order: 1 };

/** With the clips as they stand above. */
export const sat = (more: Partial<Grader> = {}): Sitting =>
  begin(
    { ...grader, ...more },
    [...itemsOf(clips, 1)].sort((a, b) => (a.code < b.code ? -1 : a.code > b.code ? 1 : 0)),
  );

/** Keys one after the other, in the rows. */
export const typed = (sitting: Sitting, ...keys: readonly string[]): Sitting =>
  keys.reduce((now, key) => press(now, key, 'row')?.sitting ?? now, sitting);
