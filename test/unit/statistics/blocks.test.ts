import { describe, expect, it } from 'vitest';
import { groupDifference, groupsWithDrift } from '../../../src/statistics/blocks.ts';

describe('groups with one drift', () => {
  it('takes a planted drift out of planted effects, whatever the order of runs', () => {
    const group = ['P0', 'P4', 'P1', 'P0', 'P4', 'P1', 'P0'];
    const time = [0, 1.5, 2, 4, 5, 7, 9];
    const planted: Record<string, number> = { P0: 400, P4: 380, P1: 410 };
    const values = group.map((g, i) => planted[g]! + 3 * time[i]!);
    const forwards = groupsWithDrift({ values, group, time });
    const backwards = groupsWithDrift({
      values: values.toReversed(),
      group: group.toReversed(),
      time: time.toReversed(),
    });
    for (const fit of [forwards, backwards]) {
      if (!fit.ok) throw new Error(fit.why);
      expect(fit.drift.slope).toBeCloseTo(3, 9);
      expect(groupDifference(fit, { of: 'P4', against: 'P0' }).value).toBeCloseTo(-20, 9);
      expect(groupDifference(fit, { of: 'P1', against: 'P4' }).value).toBeCloseTo(30, 9);
      expect(fit.dof).toBe(3);
    }
  });

  it('gives a group less itself as 0 ± 0', () => {
    const fit = groupsWithDrift({ values: [1, 2, 1.2, 2.4], group: ['A', 'B', 'A', 'B'], time: [0, 1, 2, 3] });
    if (!fit.ok) throw new Error(fit.why);
    expect(groupDifference(fit, { of: 'A', against: 'A' })).toEqual({ value: 0, u: 0 });
  });

  it('refuses one run a group, since drift and groups tell one story', () => {
    const runs = { values: [1, 2, 3], group: ['A', 'B', 'C'], time: [0, 1, 2] };
    expect(groupsWithDrift(runs)).toMatchObject({ ok: false });
    expect(groupsWithDrift({ ...runs, scatter: { s: 0.4, dof: 6 } })).toMatchObject({ ok: false });
  });

  it('refuses runs all at one time, and names the drift', () => {
    const fit = groupsWithDrift({ values: [1, 2, 3, 4], group: ['A', 'A', 'B', 'B'], time: [5, 5, 5, 5] });
    expect(fit).toMatchObject({ ok: false, why: expect.stringContaining('Drift') as string });
  });

  it('refuses groups each run at one time of their own: the drift could be either', () => {
    const fit = groupsWithDrift({ values: [1, 2, 3, 4], group: ['A', 'A', 'B', 'B'], time: [0, 0, 3, 3] });
    expect(fit).toMatchObject({ ok: false, why: expect.stringContaining('Drift') as string });
  });

  it('refuses no runs', () => {
    expect(groupsWithDrift({ values: [], group: [], time: [] }).ok).toBe(false);
  });
});
