import { describe, expect, it } from 'vitest';
import { publishedInterval, seriesTrials } from '../../../src/compare/by-trials.ts';
import { difference, estimate, type Cause } from '../../../src/quantity/estimate.ts';

const cause = (id: string, of: Partial<Cause> = {}): Cause => ({
  id,
  name: id,
  kind: 'offset',
  distribution: 'normal',
  dof: Infinity,
  scope: 'run',
  ...of,
});
const causes = new Map(
  [
    cause('own'),
    cause('other'),
    cause('shared', { scope: 'series' }),
    cause('limits', { distribution: 'rectangular' }),
    cause('scatter', { distribution: 't', dof: 4 }),
  ].map((c) => [c.id, c]),
);
const trialsWith = (seed = 'a') => seriesTrials({ seed, causes, coverage: 0.95, remember: (_, make) => make() });

describe('trials of a series', () => {
  it('agree with the linear interval for a sum of normal causes, which is published', () => {
    const e = estimate(10, [
      { cause: 'own', u: 3 },
      { cause: 'other', u: 4 },
    ]);
    const by = trialsWith().ofSum(e);
    expect(by.agrees).toBe(true);
    expect(by.u!).toBeCloseTo(5, 0);
    expect(publishedInterval([0.2, 19.8], by)).toEqual([0.2, 19.8]);
  });

  // JCGM 101:2008, 9.2.3 has the sum of four; of one rectangle the 95 % interval is 0.95·√3·u to either side.
  it('give a lone cause with firm limits its own shape: 1.65 u, not 1.96 u, and that is published', () => {
    const by = trialsWith().ofSum(estimate(0, [{ cause: 'limits', u: 1 }]));
    expect(by.agrees).toBe(false);
    const [low, high] = publishedInterval([-1.96, 1.96], by);
    expect(Math.abs(high - 0.95 * Math.sqrt(3))).toBeLessThan(0.03);
    expect(Math.abs(low + 0.95 * Math.sqrt(3))).toBeLessThan(0.03);
  });

  it('let a cause that both share cancel in their difference, and leave nothing where nothing else is', () => {
    const [a, b] = [estimate(20, [{ cause: 'shared', u: 5 }]), estimate(18, [{ cause: 'shared', u: 5 }])];
    expect(trialsWith().ofSum(difference(a, b)).interval).toEqual([2, 2]);
    // Each alone is wide, but in no trial does the higher lie lower.
    expect(trialsWith().lowest([a, b])).toEqual([0, 1]);
  });

  it('keep the t of few repeats: four degrees give 2.78 u', () => {
    const [low, high] = trialsWith().ofSum(estimate(0, [{ cause: 'scatter', u: 1 }])).interval;
    expect(Math.abs((high - low) / 2 - 2.776)).toBeLessThan(0.1);
  });

  it('go through a relation trial by trial: a square at its bottom is above 0 with the shortest interval from 0 on', () => {
    const x = estimate(0, [{ cause: 'own', u: 1 }]);
    const [by] = trialsWith().through({
      inputs: [x],
      relation: ([v]) => [v! ** 2],
      linear: [estimate(0, [])],
    });
    expect(by!.shortest).toBe(true);
    expect(by!.interval[0]).toBeLessThan(0.001);
    // 95 % of a chi-square of one degree, tables of any handbook: 3.84
    expect(Math.abs(by!.interval[1] - 3.84)).toBeLessThan(0.15);
    expect(by!.agrees).toBe(false);
  });

  it('are the same for the same seed, whatever else was drawn before, and others for another', () => {
    const e = estimate(1, [
      { cause: 'own', u: 1 },
      { cause: 'limits', u: 2 },
    ]);
    const first = trialsWith().ofSum(e).interval;
    const after = trialsWith();
    after.ofSum(estimate(3, [{ cause: 'scatter', u: 1 }]));
    expect(after.ofSum(e).interval).toEqual(first);
    expect(trialsWith('b').ofSum(e).interval).not.toEqual(first);
  });
});
