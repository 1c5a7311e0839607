import type { DerivedRun, FlowStep } from '../../../src/trial/derived.ts';
import { gradeKinds, type Graded, type GradeKind, type Observation } from '../../../src/trial/flow.ts';
import { derived, type Some } from './runs.ts';

/** What observers wrote of one step, and the joint look; whoever is not named did not look. */
export interface Look {
  readonly by: Readonly<Record<string, Graded>>;
  readonly joint?: Graded;
  readonly clip?: string;
  readonly from_s?: number;
}

const alike = (grade: Graded): Record<GradeKind, Graded> =>
  Object.fromEntries(gradeKinds.map((kind) => [kind, grade])) as Record<GradeKind, Graded>;

/** A flow run whose steps are graded the same on every kind: speeds rise up to the middle and fall after it. */
export function gradedRun(run: string, order: number, looks: readonly Look[], more: Some = {}): DerivedRun {
  const steps = looks.map((look, i): FlowStep => {
    const step = {
      outputSpeed_rad_s: 10 * (1 + Math.min(i, looks.length - i)),
      direction: i <= looks.length / 2 ? ('up' as const) : ('down' as const),
    };
    const observation = (observer: string, pass: Observation['pass'], grade: Graded): Observation => ({
      step,
      observer,
      pass,
      blind: [],
      grades: alike(grade),
      view: 3,
      level_z_m: null,
      swing_m: null,
      foam_m: null,
      detach_rad: null,
      words: null,
      clip: look.clip ?? null,
      from_s: look.from_s ?? null,
      to_s: look.from_s === undefined ? null : look.from_s + 10,
      place: { file: `runs/${run}.md`, line: 1, column: 1 },
    });
    const first = Object.entries(look.by).map(([observer, grade]) => ({ observer, grade }));
    const grades = Object.fromEntries(
      gradeKinds.map((kind) => [kind, { stands: null, how: 'differ' as const, first }]),
    ) as unknown as NonNullable<FlowStep['grades']>;
    return {
      step,
      name: `step ${String(i + 1)}`,
      from_s: 100 * i,
      to_s: 100 * i + 60,
      sump_K: null,
      level_z_m: null,
      swing_m: null,
      steady: true,
      probeAbove: false,
      grades,
      observations: [
        ...first.map(({ observer, grade }) => observation(observer, 'first', grade)),
        ...(look.joint === undefined ? [] : [observation('A', 'joint', look.joint)]),
      ],
    };
  });
  return derived({ run, order, trial: 'flow', flow: { steps, clips: [], settled: null, standsFor: null }, ...more });
}

export const runsOf = (...runs: readonly DerivedRun[]): ReadonlyMap<string, DerivedRun> =>
  new Map(runs.map((run) => [run.run, run]));

/** A look of A and B for each pair of grades. */
export const looksOf = (pairs: readonly (readonly [Graded, Graded])[]): readonly Look[] =>
  pairs.map(([A, B]) => ({ by: { A, B } }));
