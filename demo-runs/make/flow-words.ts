import type { GradeKind } from './law.ts';
import type { Block, Graded, Row } from './observers.ts';

/** How the two of them put a grade into words: what is there to be seen, no more. */
export const seenAs: Readonly<Record<GradeKind, readonly [string, string, string, string, string]>> = {
  reach: [
    'nothing arrives at the pocket',
    'single drops at the pocket',
    'broken sheet to the pocket',
    'closed sheet to the pocket, narrower than half the face',
    'closed sheet to the pocket, half the face or wider',
  ],
  side: [
    'nothing leaves at the sides',
    'drops off the sides of the gear',
    'a sheet off the sides, under half the face',
    'a sheet off the sides, over half the face',
    'nearly all of it leaves at the sides',
  ],
  wall: [
    'wall dry',
    'wall wet, nothing thrown back',
    'a steady film turning on the wall',
    'separate drops back off the wall',
    'mist off the wall',
  ],
  bubble: [
    'oil clear, grid sharp',
    'single bubbles that can be counted',
    'many bubbles, grid readable',
    'milky, grid lost, lamp to be made out',
    'opaque, foam against the window',
  ],
  tube: [
    'tube lip dry',
    'tube lip wet',
    'a thin film over the tube lip',
    'a stream over the tube lip',
    'lip under oil',
  ],
};

/** What only one run shows, by run, observer and step. */
const odd: Readonly<Record<string, string>> = {
  'F-01 A 1': 'one lamp behind the oil turned down during this step',
  'F-02 A 5': 'oil falls straight down from the front edge of the shroud',
  'F-02 B 1': 'ring gear hidden by the shroud',
  'F-03 A 2': 'tray full to its rim',
  'F-03 B 11': 'tray still full',
  'F-06 A 6': 'far bolts of the floor plate seen through the oil',
  'T-01 A 1': 'nothing at the pocket for the whole window',
  'T-03 A 3': 'picture moves, lamp stand knocked',
  'T-03 B 3': 'picture moves',
};

/** Not on every cue: only what is new on the way up, and what is otherwise on the way down. */
export function wordsOf(run: string, block: Block, index: number): string | null {
  const row = block.rows[index]!;
  const own = odd[`${run} ${block.observer} ${row.step.n}`];
  if (own !== undefined) return own;
  if (row.view < 2) return seenAs.bubble[4];
  if (block.pass === 'joint') return null;
  if (row.step.direction === 'down') return onTheWayDown(block, row);
  const told: readonly GradeKind[] = block.observer === 'A' ? ['reach', 'tube'] : ['wall', 'bubble'];
  const fresh = told.filter((kind) => row.grades[kind] !== block.rows[index - 1]?.grades[kind]);
  const said = fresh.map((kind) => saying(kind, row.grades[kind], block.observer === 'A' ? 1 : 3));
  return said.filter((words) => words !== null).join('; ') || null;
}

const saying = (kind: GradeKind, grade: Graded, from: number): string | null =>
  grade === 'ng' || grade < from ? null : seenAs[kind][grade]!;

function onTheWayDown(block: Block, row: Row): string | null {
  const up = block.rows.find((other) => other.step.wheel_rpm === row.step.wheel_rpm)!;
  return Number(row.grades.bubble) > Number(up.grades.bubble) ? 'more bubbles than at this speed on the way up' : null;
}
