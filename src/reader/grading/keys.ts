import type { Graded } from '../../trial/flow.ts';
import { rowBeside } from './marks.ts';
import { goBy, grade, marksAt, type Sitting, toRow } from './sitting.ts';

/** What the page does besides, since it is no matter of grades. */
export type Then = 'again' | 'pause' | 'slow' | 'words' | 'write';

export interface Pressed {
  readonly sitting: Sitting;
  readonly then: Then | null;
}

/** Keys as they are printed on the page. */
export const printedKeys: readonly (readonly [key: string, does: string])[] = [
  ['0 – 4', 'grade in this row, and on to the next'],
  ['n', 'not gradable'],
  ['↑ ↓', 'row above, row below'],
  ['Enter', 'next step'],
  ['b', 'step before'],
  ['r', 'the ten seconds again'],
  ['Space', 'pause, go on'],
  ['s', 'a quarter of the speed, and back'],
  ['w', 'words; Enter or Esc ends them'],
  ['f', 'write the file of this clip'],
];

/** Where the focus is: words take every sign, a button and the player keep the keys that work them. */
export type Focus = 'row' | 'button' | 'player' | 'words';

/** Null for a key that means nothing here and is left to the browser. */
export function press(sitting: Sitting, key: string, focus: Focus): Pressed | null {
  if (focus === 'words') return key === 'Enter' || key === 'Escape' ? { sitting, then: null } : null;
  if (focus !== 'row' && (key === 'Enter' || key === ' ')) return null;
  if (focus === 'player' && key.startsWith('Arrow')) return null;
  const value = values[key.toLowerCase()];
  if (value !== undefined) return graded(sitting, value);
  const then = thens[key.toLowerCase()];
  if (then !== undefined) return { sitting, then };
  switch (key) {
    case 'ArrowUp':
      return { sitting: toRow(sitting, beside(sitting, -1)), then: null };
    case 'ArrowDown':
      return { sitting: toRow(sitting, beside(sitting, 1)), then: null };
    case 'Enter':
    case 'PageDown':
      return { sitting: goBy(sitting, 1), then: null };
    case 'b':
    case 'B':
    case 'PageUp':
      return { sitting: goBy(sitting, -1), then: null };
    default:
      return null;
  }
}

/** A grade that this row does not have changes nothing, and the row stays. */
function graded(sitting: Sitting, value: Graded): Pressed {
  const next = grade(sitting, value);
  return { sitting: next === sitting ? sitting : toRow(next, beside(next, 1)), then: null };
}

const beside = (sitting: Sitting, way: -1 | 1) => {
  const item = sitting.items[sitting.at];
  return item === undefined ? sitting.row : rowBeside(marksAt(sitting, item), sitting.row, way);
};

const values: Readonly<Record<string, Graded | undefined>> = { 0: 0, 1: 1, 2: 2, 3: 3, 4: 4, n: 'ng' };
const thens: Readonly<Record<string, Then | undefined>> = {
  r: 'again',
  ' ': 'pause',
  s: 'slow',
  w: 'words',
  f: 'write',
};
