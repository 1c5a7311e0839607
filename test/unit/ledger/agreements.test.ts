import { describe, expect, it } from 'vitest';
import { agreementFigures, notUsable } from '../../../src/ledger/agreements.ts';
import { agreementsOf } from '../../../src/compare/agreement.ts';
import type { Agreement } from '../../../src/trial/compared.ts';
import type { Graded } from '../../../src/trial/flow.ts';
import { gradedRun, runsOf } from '../compare/graded.ts';
import { record } from '../compare/runs.ts';

const rule = { withinOne_ratio: 0.9, kappa: 0.6 };
type By = Readonly<Record<string, Graded>>;
const among = (...steps: readonly By[]): readonly Agreement[] =>
  agreementsOf({ runs: runsOf(gradedRun('F-01', 1, steps.map((by) => ({ by })))), rule }).agreements; // prettier-ignore

/** A and B agree on five steps, a grade apart once. */
const two: readonly By[] = [0, 1, 2, 3, 4].map((grade) => ({
  A: grade as Graded,
  B: (grade === 2 ? 3 : grade) as Graded,
}));
const withGuest = (...grades: readonly Graded[]): readonly Agreement[] =>
  among(...two.map((by, i) => (i < grades.length ? { ...by, C: grades[i]! } : by)));

describe('grades of more than two observers', () => {
  it('are used where two agree and a guest looked at one step, or could not grade it', () => {
    expect(notUsable(among(...two), 'reach')).toBeNull();
    expect(notUsable(withGuest(0), 'reach')).toBeNull();
    expect(notUsable(withGuest('ng'), 'reach')).toBeNull();
  });

  it('are not used where the third differs by more than the series allows, be it on one step', () => {
    expect(notUsable(withGuest(3), 'reach')).toMatch(/^not usable: one pair of grades/);
    expect(notUsable(withGuest(4, 3, 2, 1, 0), 'reach')).toMatch(/^not usable: kappa −/);
  });

  it('are not used where no pair has anything to agree on', () => {
    expect(notUsable(among({ A: 1, B: 1 }), 'reach')).toBe('not usable: one pair of grades is no spread to agree on');
    expect(notUsable([], 'reach')).toBe('one observer alone: no step was graded by two on their own');
    expect(notUsable([], 'running-level')).toBeNull();
  });
});

it('kappa says in the ledger that its interval takes steps of one run as independent', () => {
  const figures = agreementFigures(record, among(...two)).filter(({ quantity }) => quantity === 'kappa');
  expect(figures).toHaveLength(5);
  for (const { notes } of figures) expect(notes?.join()).toContain('steps of one run are not');
});
