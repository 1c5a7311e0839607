import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { agreementsOf } from '../../../src/compare/agreement.ts';
import { compareSeries } from '../../../src/compare/series.ts';
import { standardUncertainty } from '../../../src/quantity/estimate.ts';
import type { Agreement } from '../../../src/trial/compared.ts';
import { gradeKinds, type Graded } from '../../../src/trial/flow.ts';
import { gradedRun, looksOf, runsOf } from './graded.ts';
import { record } from './runs.ts';

const rule = { withinOne_ratio: 0.9, kappa: 0.6 };
type Pairs = readonly (readonly [Graded, Graded])[];

/** Reach of A and B over runs of these pairs; all kinds are graded alike here. */
const reachOf = (...runs: readonly Pairs[]): Agreement => {
  const made = runs.map((pairs, i) => gradedRun(`F-0${String(i + 1)}`, i + 1, looksOf(pairs)));
  return agreementsOf({ runs: runsOf(...made), rule }).agreements.find(({ grade }) => grade === 'reach')!;
};

const good: Pairs = [
  [0, 0],
  [1, 1],
  [2, 3],
  [3, 3],
  [4, 4],
  [2, 2],
];

describe('agreement of two observers', () => {
  it('counts every step of every run, the way up and the way down as steps of their own', () => {
    const { n, equal, withinOne, notGraded, table, observers } = reachOf(good, good);
    expect({ n, equal, withinOne, notGraded, observers }).toEqual({
      n: 12,
      equal: 10,
      withinOne: 12,
      notGraded: 0,
      observers: ['A', 'B'],
    });
    expect(table).toEqual([
      [2, 0, 0, 0, 0],
      [0, 2, 0, 0, 0],
      [0, 0, 2, 2, 0],
      [0, 0, 0, 2, 0],
      [0, 0, 0, 0, 2],
    ]);
  });

  it('is given for each kind of grade, in the order of the sheet, with a cause of its own that names nobody', () => {
    const { agreements, causes } = agreementsOf({ runs: runsOf(gradedRun('F-01', 1, looksOf(good))), rule });
    expect(agreements.map(({ grade }) => grade)).toEqual([...gradeKinds]);
    expect(causes.map(({ id }) => id)).toEqual(gradeKinds.map((kind) => `agreement:${kind}:1-2`));
    for (const { kappa } of agreements) expect(standardUncertainty(kappa!)).toBeGreaterThan(0);
    expect(causes[0]).toMatchObject({ name: 'spread of the graded steps', kind: 'scatter', scope: 'series' });
  });

  it('is given for every pair of three observers who looked at the same step, and not for two who never did', () => {
    const three = gradedRun('F-01', 1, [{ by: { A: 1, B: 1, C: 2 } }, { by: { A: 3, B: 2, C: 3 } }]);
    const alone = gradedRun('F-02', 2, [{ by: { D: 1 } }]);
    const pairs = agreementsOf({ runs: runsOf(three, alone), rule })
      .agreements.filter(({ grade }) => grade === 'wall')
      .map(({ observers }) => observers.join(' '));
    expect(pairs).toEqual(['A B', 'A C', 'B C']);
  });

  it('leaves out runs that do not count, runs without grades and runs of other trials', () => {
    const left = gradedRun('F-02', 2, looksOf([[0, 4]]), { leftOut: 'set aside' });
    const other = gradedRun('S-01', 3, [], { flow: null, trial: 'spin' });
    const runs = runsOf(gradedRun('F-01', 1, looksOf(good)), left, other);
    expect(agreementsOf({ runs, rule }).agreements[0]).toEqual(reachOf(good));
    expect(agreementsOf({ runs: runsOf(left, other), rule })).toEqual({ agreements: [], causes: [] });
  });

  it('does not depend on the order in which runs were read', () => {
    const [a, b] = [gradedRun('F-01', 1, looksOf([[0, 2]])), gradedRun('F-02', 2, looksOf([[3, 1]]))];
    expect(agreementsOf({ runs: runsOf(a, b), rule })).toEqual(agreementsOf({ runs: runsOf(b, a), rule }));
  });

  it('stands in the comparison of the series, its causes in the table', () => {
    const compared = compareSeries(record, runsOf(gradedRun('F-01', 1, looksOf(good))));
    expect(compared.agreements).toHaveLength(gradeKinds.length);
    expect(compared.causes.map(({ id }) => id)).toContain('agreement:tube:1-2');
  });
});

describe('a step that one observer could not grade', () => {
  it('takes its pair out and adds no 0', () => {
    const grade = fc.constantFrom<Graded>(0, 1, 2, 3, 4);
    const items = fc.array(fc.tuple(grade, grade), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(items, fc.nat(), fc.constantFrom('first', 'second', 'both'), (pairs, at, whose) => {
        const place = at % pairs.length;
        const [a, b] = pairs[place]! as [number, number];
        const spoilt = pairs.map((pair, i): readonly [Graded, Graded] =>
          i === place ? [whose === 'second' ? pair[0] : 'ng', whose === 'first' ? pair[1] : 'ng'] : pair,
        );
        const [before, after] = [reachOf(pairs), reachOf(spoilt)];
        expect([after.n, after.notGraded]).toEqual([before.n - 1, before.notGraded + 1]);
        const expected = before.table.map((row) => [...row]);
        expected[a]![b]! -= 1;
        expect(after.table).toEqual(expected);
      }),
      { numRuns: 300, seed: 20260317 },
    );
  });

  it('says so when nothing is left', () => {
    expect(reachOf([['ng', 2], [1, 'ng']])).toMatchObject({
      n: 0,
      notGraded: 2,
      kappa: null,
      usable: false,
      why: 'no step that both could grade',
    }); // prettier-ignore
  });
});

const repeat = (times: number, pair: readonly [Graded, Graded]): Pairs => Array.from({ length: times }, () => pair);

describe('whether grades may be used', () => {
  // Six pairs, one of them a grade apart: κ = 1 − 6 · 1/126 = 0.952 by hand.
  it('holds when kappa and the share within one grade both reach what the series asks for', () => {
    const { usable, why } = reachOf(good);
    expect(usable).toBe(true);
    expect(why).toBe('kappa 0.95 and 100\u202f% within one grade; the series asks for 0.60 and 90\u202f%');
  });

  it('holds exactly at the limit: nine pairs in ten', () => {
    const pairs: Pairs = [...good, [0, 0], [4, 4], [4, 4], [0, 2]];
    expect(reachOf(pairs)).toMatchObject({ n: 10, withinOne: 9, usable: true });
  });

  it('says that scatter cannot be told where every pair is equal', () => {
    const all = reachOf(good.filter(([a, b]) => a === b));
    expect(all.kappa).toEqual({ value: 1, parts: [] });
    expect(all.why).toContain('every pair is equal, so that the scatter of kappa cannot be told from them');
  });

  // Four of six pairs a grade apart: κ = 1 − 6 · 4/48 = 0.5 by hand.
  it('fails by kappa, with the numbers', () => {
    const { usable, why } = reachOf([[0, 1], [1, 0], [1, 2], [2, 1], [2, 2], [0, 0]]); // prettier-ignore
    expect(usable).toBe(false);
    expect(why).toBe('kappa 0.50 is under the 0.60 of the series');
  });

  it('shows as many decimals as it takes to tell a kappa from its limit', () => {
    const near = { withinOne_ratio: 0.9, kappa: 0.501 };
    const runs = runsOf(gradedRun('F-01', 1, looksOf([[0, 1], [1, 0], [1, 2], [2, 1], [2, 2], [0, 0]]))); // prettier-ignore
    expect(agreementsOf({ runs, rule: near }).agreements[0]!.why).toBe('kappa 0.500 is under the 0.501 of the series');
  });

  it('fails by pairs that lie more than one grade apart, however high kappa is', () => {
    const { usable, why } = reachOf([...repeat(6, [0, 0]), ...repeat(6, [4, 4]), ...repeat(2, [2, 4])]);
    expect(usable).toBe(false);
    expect(why).toBe('86\u202f% of the pairs lie within one grade, under the 90\u202f% of the series');
  });

  it('fails by both, and names both', () => {
    expect(reachOf([[0, 4], [4, 0], [2, 2]]).why).toBe(
      'kappa −1.00 is under the 0.60 of the series; 33\u202f% of the pairs lie within one grade, under the 90\u202f% of the series',
    ); // prettier-ignore
  });

  it('says that kappa has little to go by when nearly all grades are one and the same', () => {
    const { usable, why } = reachOf([...repeat(18, [0, 0]), [0, 1], [1, 0]]);
    expect(usable).toBe(false);
    expect(why).toBe(
      'kappa −0.05 is under the 0.60 of the series; 18 of 20 pairs hold one and the same grade, so that kappa has little spread to go by',
    );
  });

  it('says so as well when that kappa is high enough', () => {
    const { usable, why } = reachOf([...repeat(18, [0, 0]), [4, 4], [2, 3]]);
    expect(usable).toBe(true);
    expect(why).toContain('18 of 20 pairs hold one and the same grade, so that kappa has little spread to go by');
  });

  it.each<{ pairs: Pairs; why: string }>([
    { pairs: [[2, 2]], why: 'one pair of grades is no spread to agree on' },
    {
      pairs: repeat(5, [0, 0]),
      why: 'both observers gave one and the same grade: there is no spread to agree on',
    },
    {
      pairs: repeat(5, [1, 2]),
      why: 'each observer gave one grade throughout, and not the same: there is no spread to agree on',
    },
    {
      pairs: [...repeat(3, [1, 1]), [1, 2]],
      why: 'one observer gave one grade throughout: there is no spread to agree on',
    },
  ])('fails without a kappa: $why', ({ pairs, why }) => {
    expect(reachOf(pairs)).toMatchObject({ kappa: null, usable: false, why });
  });
});

describe('kappa with one run left out', () => {
  const poor: Pairs = [[0, 2], [1, 0], [3, 3], [4, 3], [2, 1], [2, 4]]; // prettier-ignore

  it('is not asked of fewer than three runs', () => {
    expect(reachOf(good, poor).leavingOneRunOut).toBeNull();
  });

  it('lies lowest without the run that agrees and highest without the one that does not', () => {
    const [low, high] = reachOf(good, poor, good).leavingOneRunOut!;
    expect(low).toBe(reachOf(good, poor).kappa!.value);
    expect(high).toBe(reachOf(good, good).kappa!.value);
  });

  it('is not given when all spread comes from one run, and that run is named', () => {
    const one = reachOf(good, repeat(3, [0, 0]), repeat(3, [0, 0]));
    expect(one.leavingOneRunOut).toBeNull();
    expect(one.why).toContain('without F-01 no spread is left, so that this kappa rests on that run alone');
    expect(reachOf(good, poor, good).why).not.toContain('no spread is left');
  });

  it('does not count a run in which nobody could grade', () => {
    expect(reachOf(good, poor, repeat(2, ['ng', 1])).leavingOneRunOut).toBeNull();
  });
});

describe('steps to look at together', () => {
  it('are all that differ, largest difference first, then in the order they were run; not gradable comes last', () => {
    const pairs: Pairs = [[1, 'ng'], [1, 2], [3, 3], [4, 1], [2, 3]]; // prettier-ignore
    const { differ } = reachOf(pairs, [[0, 2]]);
    expect(differ.map(({ run, grades }) => [run, ...grades])).toEqual([
      ['F-01', 4, 1],
      ['F-02', 0, 2],
      ['F-01', 1, 2],
      ['F-01', 2, 3],
      ['F-01', 1, 'ng'],
    ]);
  });

  it('carry the clip, the time in it and what the joint look said', () => {
    const seen = { clip: 'F-01.webm', from_s: 36 };
    const run = gradedRun('F-01', 1, [
      { by: { A: 1, B: 3 }, joint: 2, ...seen },
      { by: { A: 1, B: 2 }, clip: 'F-01.webm' },
      { by: { A: 2, B: 2 }, ...seen },
      { by: { A: 0, B: 1 } },
    ]);
    const [{ differ }] = agreementsOf({ runs: runsOf(run), rule }).agreements as [Agreement];
    expect(differ).toEqual([
      { run: 'F-01', step: { outputSpeed_rad_s: 10, direction: 'up' }, grades: [1, 3], joint: 2, ...seen },
      {
        run: 'F-01',
        step: { outputSpeed_rad_s: 20, direction: 'up' },
        grades: [1, 2],
        joint: null,
        clip: 'F-01.webm',
        from_s: null,
      },
      {
        run: 'F-01',
        step: { outputSpeed_rad_s: 20, direction: 'down' },
        grades: [0, 1],
        joint: null,
        clip: null,
        from_s: null,
      },
    ]);
  });
});
