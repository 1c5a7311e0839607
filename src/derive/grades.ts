import type { Finding } from '../finding/finding.ts';
import { exact } from '../quantity/estimate.ts';
import type { Result, StepGrade, TiedClip } from '../trial/derived.ts';
import { scales } from '../trial/grade-anchors.ts';
import { gradeKinds, type Graded, type GradeKind, type Observation } from '../trial/flow.ts';
import type { Run } from '../trial/run.ts';
import { logTime_s } from './clip-clock.ts';
import { atStep, type Hold } from './flow-steps.ts';
import type { Reading } from './reading.ts';
import * as texts from './texts-flow.ts';

/** Observations by hold, and those that no hold of the log answers to. */
export interface SortedObservations {
  readonly of: ReadonlyMap<Hold, readonly Observation[]>;
  readonly findings: readonly Finding[];
}

/** Two planned speeds are one when they are within this share of each other. */
const sameSpeed_ratio = 0.01;

/**
 * Observations put to the holds they were made in. One that names a step the log does not hold, or that was made while the
 * logger stood at another step, is left out and told: its grade would stand beside the wrong speed.
 */
export function sorted(reading: Reading, holds: readonly Hold[], clips: readonly TiedClip[]): SortedObservations {
  const of = new Map<Hold, Observation[]>();
  const notHeld: Told[] = [];
  const offStep: Off[] = [];
  const { log, run } = reading;
  for (const observation of run.observations) {
    const hold = holds.find(
      ({ step }) =>
        step.direction === observation.step.direction &&
        Math.abs(step.outputSpeed_rad_s / observation.step.outputSpeed_rad_s - 1) <= sameSpeed_ratio,
    );
    const step = `${Math.round((observation.step.outputSpeed_rad_s * 30) / Math.PI)} rpm ${observation.step.direction}`;
    const told = { place: observation.place, run: run.id, step };
    if (hold === undefined) {
      notHeld.push(told);
      continue;
    }
    const tied =
      clips.find(({ clip }) => clip.file === observation.clip) ?? (clips.length === 1 ? clips[0] : undefined);
    const [from_s, to_s] = [observation.from_s, observation.to_s].map((t) => (t === null ? null : logTime_s(tied, t)));
    if (from_s != null && to_s != null) {
      const held = [log.time_s[hold.rows[0]]!, log.time_s[hold.rows[1] - 1]!] as const;
      const inside_s = Math.min(to_s, held[1]) - Math.max(from_s, held[0]);
      if (inside_s < (to_s - from_s) / 2) {
        offStep.push({ ...told, from: from_s, to: to_s, heldFrom: held[0], heldTo: held[1] });
        continue;
      }
    }
    of.set(hold, [...(of.get(hold) ?? []), observation]);
  }
  return { of, findings: [...together(notHeld), ...offTogether(offStep)] };
}

interface Told {
  readonly place: Observation['place'];
  readonly run: string;
  readonly step: string;
}
type Off = Told & Record<'from' | 'to' | 'heldFrom' | 'heldTo', number>;

/** One mistake, such as a wrong speed column, tells once of all the steps it spoils, at the first of them. */
function together(list: readonly Told[]): Finding[] {
  const [first] = list;
  return first === undefined
    ? []
    : [texts.stepNotHeld({ ...first, steps: [...new Set(list.map(({ step }) => step))] })];
}

/** So with one wrong time of the flash, which moves every cue. */
function offTogether(list: readonly Off[]): Finding[] {
  const [first] = list;
  return first === undefined ? [] : [texts.cueOffStep({ ...first, others: list.length - 1 })];
}

/** What stands for each grade of one step: the joint look before everything, then first grades that are equal. */
export function stepGrades(observations: readonly Observation[]): Readonly<Record<GradeKind, StepGrade>> {
  return Object.fromEntries(gradeKinds.map((kind) => [kind, stepGrade(observations, kind)])) as Record<
    GradeKind,
    StepGrade
  >;
}

function stepGrade(observations: readonly Observation[], kind: GradeKind): StepGrade {
  const first = observations
    .filter(({ pass }) => pass === 'first')
    .map(({ observer, grades }) => ({ observer, grade: grades[kind] }))
    .sort((a, b) => (a.observer < b.observer ? -1 : 1));
  const joint = observations.find(({ pass }) => pass === 'joint');
  if (joint !== undefined) return { stands: joint.grades[kind], how: 'joint look', first };
  const [one] = first;
  if (one === undefined) return { stands: null, how: 'not graded', first };
  if (first.length === 1) return { stands: one.grade, how: 'one observer', first };
  return first.every(({ grade }) => grade === one.grade)
    ? { stands: one.grade, how: 'equal', first }
    : { stands: null, how: 'differ', first };
}

/** A figure for each grade that stands and is a number: what could not be graded has none, and is never a 0. */
export function gradeResults(
  run: Run,
  hold: Hold,
  grades: Readonly<Record<GradeKind, StepGrade>>,
  observations: readonly Observation[],
): Result[] {
  return gradeKinds.flatMap((kind): Result[] => {
    const { stands, how } = grades[kind];
    if (stands === null || stands === 'ng') return [];
    return [
      {
        quantity: kind,
        at: atStep(hold.step),
        estimate: exact(stands),
        bound: null,
        class: 'measured',
        relation: 'grade-that-stands',
        method: 'flow/grades',
        notes: [`${scales[kind].anchors[stands]}; ${wayOf[how]}`],
        given: givenBy(run, observations, kind),
        steps: [],
      },
    ];
  });
}

const wayOf: Readonly<Record<StepGrade['how'], string>> = {
  'joint look': 'by a joint look',
  equal: 'first grades of all observers are equal',
  'one observer': 'one observer alone',
  differ: 'first grades differ',
  'not graded': 'not graded',
};

/** Observers are counted, not named: a working is for everybody. */
function givenBy(run: Run, observations: readonly Observation[], kind: GradeKind): Result['given'] {
  const first = run.observations.filter(({ pass }) => pass === 'first');
  const names = [...new Set(first.map(({ observer }) => observer))].sort();
  return observations.flatMap((o) => {
    const grade: Graded = o.grades[kind];
    if (grade === 'ng') return [];
    const who = o.pass === 'joint' ? 'joint look' : `first grade, observer ${names.indexOf(o.observer) + 1} of the run`;
    return [
      {
        symbol: o.pass === 'joint' ? 'g' : `g${names.indexOf(o.observer) + 1}`,
        name: who,
        value: grade,
        u: null,
        unit: '1',
        from: { kind: 'note', place: o.place, typed: String(grade) } as const,
      },
    ];
  });
}
