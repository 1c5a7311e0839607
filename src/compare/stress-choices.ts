import type { DriftOver } from '../trial/book.ts';
import type { At, Cell, DerivedRun } from '../trial/derived.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { Choice } from '../trial/stress.ts';
import { meanKnown } from './conditions.ts';
import { atKey, cellKey } from './group.ts';
import type { Opened } from './stress-open.ts';

/** Two cells under one condition: what a clause of a claim, or a step of a standing, is about. */
export interface Pair {
  readonly quantity: QuantityName;
  readonly at: At;
  readonly subject: Cell;
  readonly against: Cell;
}

/** A series with some choices made otherwise. */
export interface Tried {
  readonly opened: Opened;
  readonly drift: DriftOver;
  readonly wider: number;
  readonly choices: readonly Choice[];
}

/** A run that is left out keeps its hours: the rig turned all the same. */
export function triedWith(as: Opened, choices: readonly Choice[]): Tried {
  const times = (kind: 'ambient' | 'airflow' | 'causes'): number =>
    choices.find((c): c is Extract<Choice, { times: number }> => c.kind === kind)?.times ?? 1;
  const { tolerance } = as.series;
  const runs = new Map(as.runs);
  for (const choice of choices) {
    const put = choice.kind === 'put-back' ? as.putBack.get(choice.run) : undefined;
    if (put !== undefined) runs.set(put.run, put);
  }
  for (const choice of choices) {
    const run = choice.kind === 'without' ? runs.get(choice.run) : undefined;
    if (run !== undefined) runs.set(run.run, { ...run, leftOut: 'left out as another choice' });
  }
  return {
    opened: {
      ...as,
      series: {
        ...as.series,
        tolerance: {
          ...tolerance,
          ambient_K: tolerance.ambient_K * times('ambient'),
          airflow_m_s: tolerance.airflow_m_s * times('airflow'),
        },
      },
      runs,
    },
    drift: choices.find((c) => c.kind === 'drift')?.over ?? as.series.driftOver,
    wider: times('causes'),
    choices,
  };
}

/** One choice more; of most kinds only one can be made. */
export const withChoice = (taken: readonly Choice[], choice: Choice): readonly Choice[] => [
  ...taken.filter(
    (c) => !('run' in c && 'run' in choice ? c.kind === choice.kind && c.run === choice.run : c.kind === choice.kind),
  ),
  choice,
];

/** Every other choice that this series leaves open, in the order of the table. */
export function choicesOf(as: Opened): readonly Choice[] {
  const results = [...as.runs.values()].filter(counts).flatMap((run) => run.results);
  const distinct = <T>(list: readonly (T | undefined)[]): T[] => [...new Set(list.filter((v) => v !== undefined))];
  const sumps = distinct(results.map(({ at }) => at.sump_K));
  const limits = distinct(results.map(({ at }) => at.limit_K));
  const runs = [...as.runs.values()].filter(counts).sort((a, b) => a.order - b.order);
  return [
    ...sumps.sort((a, b) => heat(a) - heat(b)).map((sump_K): Choice => ({ kind: 'sump', sump_K })),
    ...limits.sort((a, b) => a - b).map((limit_K): Choice => ({ kind: 'limit', limit_K })),
    ...(['same litres', 'same level'] as const).map((basis): Choice => ({ kind: 'fill', basis })),
    { kind: 'drift', over: as.series.driftOver === 'none' ? 'running-time' : 'none' },
    ...(['ambient', 'airflow'] as const).flatMap((kind) => [0.5, 2].map((times): Choice => ({ kind, times }))),
    ...[0.7, 1.4].map((times): Choice => ({ kind: 'causes', times })),
    ...[...as.putBack.keys()].map((run): Choice => ({ kind: 'put-back', run })),
    ...runs.map(({ run }): Choice => ({ kind: 'without', run })),
  ];
}

const counts = ({ leftOut, trial }: DerivedRun): boolean =>
  leftOut === null && (trial === 'spin' || trial === 'heat-up');
const heat = (sump: number | 'own'): number => (sump === 'own' ? Infinity : sump);

/** Which runs give which figure: what can be tried at all. */
export interface Seen {
  readonly runs: (quantity: QuantityName, at: At, cell: Cell) => readonly DerivedRun[];
  readonly cells: (quantity: QuantityName, at: At) => readonly Cell[];
}

export function seenIn(runs: ReadonlyMap<string, DerivedRun>): Seen {
  const found = new Map<string, Map<string, DerivedRun[]>>();
  for (const run of runs.values()) {
    if (!counts(run)) continue;
    for (const { quantity, at } of run.results) {
      const key = `${quantity}|${atKey(at)}`;
      const cells = found.get(key) ?? new Map<string, DerivedRun[]>();
      cells.set(cellKey(run.cell), [...(cells.get(cellKey(run.cell)) ?? []), run]);
      found.set(key, cells);
    }
  }
  const of = (quantity: QuantityName, at: At) => found.get(`${figureOf(quantity)}|${atKey(at)}`);
  return {
    runs: (quantity, at, cell) => of(quantity, at)?.get(cellKey(cell)) ?? [],
    cells: (quantity, at) => [...(of(quantity, at)?.values() ?? [])].map((list) => list[0]!.cell),
  };
}

/** A share is of a difference in final rise. */
export const figureOf = (quantity: QuantityName): QuantityName =>
  quantity === 'makes-less-share' ? 'final-rise' : quantity;

/** The pair as these choices have it: another temperature or limit, and the other basis of fill where it was run. */
export function turnedPair<P extends Pair>(pair: P, choices: readonly Choice[], seen: Seen, { series }: Opened): P {
  let turned = pair;
  for (const choice of choices) {
    const { at } = turned;
    if (choice.kind === 'sump' && at.sump_K !== undefined) turned = { ...turned, at: { ...at, sump_K: choice.sump_K } };
    if (choice.kind === 'limit' && at.limit_K !== undefined)
      turned = { ...turned, at: { ...at, limit_K: choice.limit_K } };
  }
  const fill = choices.find((c) => c.kind === 'fill');
  if (fill === undefined || pair.subject.article === pair.against.article) return turned;
  // The baseline stays as it is, and the other article's fill is matched to it.
  const side = pair.subject.article === series.baseline.article ? 'against' : 'subject';
  const fixed = side === 'subject' ? pair.against : pair.subject;
  const cell = matched(turned, pair[side], fixed, { basis: fill.basis, seen, tolerance: series.tolerance });
  return cell === null ? turned : { ...turned, [side]: cell };
}

function matched(
  { quantity, at }: Pair,
  own: Cell,
  fixed: Cell,
  how: {
    readonly basis: 'same litres' | 'same level';
    readonly seen: Seen;
    readonly tolerance: Opened['series']['tolerance'];
  },
): Cell | null {
  const { basis, seen, tolerance } = how;
  const level = (cell: Cell): number | null =>
    meanKnown(seen.runs(quantity, at, cell).map(({ conditions }) => conditions.level_z_m));
  const apart = (cell: Cell): number => {
    if (basis === 'same litres') return Math.abs(cell.fill_m3 - fixed.fill_m3) / tolerance.fill_m3;
    const [z, z0] = [level(cell), level(fixed)];
    return z === null || z0 === null ? Infinity : Math.abs(z - z0) / tolerance.level_m;
  };
  const near = seen
    .cells(quantity, at)
    .filter((c) => c.article === own.article && c.oil === own.oil && c.tilt_ratio === own.tilt_ratio)
    .map((cell) => ({ cell, by: apart(cell) }))
    .filter(({ by }) => by <= 1)
    .sort((a, b) => a.by - b.by);
  // Already on that basis: nothing to turn.
  return near.some(({ cell }) => cellKey(cell) === cellKey(own)) ? null : (near[0]?.cell ?? null);
}
