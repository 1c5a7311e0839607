import { describe, expect, it } from 'vitest';
import { compareSeries } from '../../../src/compare/series.ts';
import { estimate, standardUncertainty } from '../../../src/quantity/estimate.ts';
import type { ComparedSeries } from '../../../src/trial/compared.ts';
import type { Cell, DerivedRun, Result } from '../../../src/trial/derived.ts';
import type { QuantityName } from '../../../src/trial/figures.ts';
import { cell, derived, record, spinRun, dayOf } from './runs.ts';

const result = (quantity: QuantityName, value: number | null, at: Result['at'] = {}): Result => ({
  quantity,
  at,
  estimate: value === null ? null : estimate(value, []),
  bound: value === null ? { side: 'above', at: 9000 } : null,
  class: 'derived from measurement',
  relation: 'made',
  method: 'made',
  notes: [],
  given: [],
  steps: [],
});

let count = 0;
/** A loaded run whose own causes are none; 1000 W and 84 K of rise unless said. */
function loaded(of: {
  article?: string;
  cell?: Partial<Cell>;
  rise_K?: number;
  t95_s?: number | null;
  store_kJ_K?: number | null;
  conditions?: Partial<DerivedRun['conditions']>;
  rigState?: string;
}): DerivedRun {
  const { article = 'P0', rise_K = 84, t95_s = 5300, store_kJ_K = 33.3 } = of;
  count++;
  return derived({
    run: `H-${count}`,
    trial: 'heat-up',
    order: count,
    startedDay: dayOf(count),
    cell: cell({ article, ...of.cell }),
    rigState: of.rigState ?? 'Q1-a',
    conditions: { airflow_m_s: 4, ...of.conditions },
    results: [
      result('final-rise', rise_K),
      result('final-temperature', 294 + rise_K),
      result('heat-made', 1000),
      result('shed', 1000 / rise_K),
      ...(store_kJ_K === null ? [] : [result('store', store_kJ_K * 1e3)]),
      result('limit-crossing', t95_s, { limit_K: 368.15 }),
    ],
  });
}
/** Two refits each of two articles whose scatter at 290 rpm is √2·1 W a cell. */
const spins = (['P0', 'P1'] as const).flatMap((article, i) =>
  [239, 241, 240].map((watts, j) => spinRun({ article, order: 100 + 3 * i + j, watts })),
);
const compared = (runs: readonly DerivedRun[], more: Partial<typeof record> = {}): ComparedSeries =>
  compareSeries({ ...record, ...more }, new Map(runs.map((r) => [r.run, r])));
const effectOf = (c: ComparedSeries, quantity: QuantityName) => c.effects.find((e) => e.quantity === quantity);
const u = (c: ComparedSeries, quantity: QuantityName) => standardUncertainty(effectOf(c, quantity)!.estimate);

describe('loaded runs, one of each', () => {
  const pair = (own: Partial<DerivedRun['conditions']>, other: Partial<DerivedRun['conditions']>) =>
    compared([...spins, loaded({ conditions: own }), loaded({ article: 'P1', rise_K: 75, conditions: other })]);

  it('in the same ambient owe nothing to it, however far it lies from that of other runs', () => {
    const far = [loaded({ cell: { fill_m3: 3.2e-3 }, conditions: { ambient_K: 284 } })];
    const alike = compared([...spins, loaded({}), loaded({ article: 'P1', rise_K: 75 })]);
    const beside = compared([...spins, ...far, loaded({}), loaded({ article: 'P1', rise_K: 75 })]);
    expect(u(beside, 'final-temperature')).toBeCloseTo(u(alike, 'final-temperature'), 9);
  });
  it('owe to ambients 2 K apart what a final temperature may follow them by: 0.8 of it, as limits', () => {
    const [same, apart] = [pair({}, {}), pair({ ambient_K: 293 }, { ambient_K: 295 })].map((c) =>
      u(c, 'final-temperature'),
    );
    // 0.8·2 K/√3 in quadrature (JCGM 100:2008, 4.3.7)
    expect(Math.sqrt(apart! ** 2 - same! ** 2)).toBeCloseTo((0.8 * 2) / Math.sqrt(3), 6);
  });
  const vane = { ...record.rig.instruments[0]!, id: 'vane', measures: 'airflow', repeat: 0.05 } as const;
  const rig = { ...record.rig, instruments: [...record.rig.instruments, vane] };
  const inAir = (own_m_s: number, other_m_s: number) =>
    u(
      compared(
        [
          ...spins,
          loaded({ conditions: { airflow_m_s: own_m_s } }),
          loaded({ article: 'P1', rise_K: 75, conditions: { airflow_m_s: other_m_s } }),
        ],
        { rig },
      ),
      'final-rise',
    );
  it('owe more to airflows that were read apart than to one that was read alike', () => {
    expect(inAir(3.9, 4.1)).toBeGreaterThan(1.2 * inAir(4, 4));
  });
  it('in still air owe it little: a vane that scatters round zero says nothing of shed', () => {
    // θ·m/u alone would make it 84·0.5/0.05·0.05 = 42 K
    expect(inAir(0.05, 0.1)).toBeLessThan(1.5);
  });
  it('whose store is not known take their time constant from the crossing: no time is surer for it', () => {
    const times = (store_kJ_K: number | null) =>
      u(
        compared([...spins, loaded({ store_kJ_K }), loaded({ article: 'P1', rise_K: 80, store_kJ_K })]),
        'limit-crossing',
      );
    expect(times(null) / times(33.3)).toBeGreaterThan(0.75);
    expect(times(null) / times(33.3)).toBeLessThan(1.35);
  });
});

describe('loaded runs that repeat each other', () => {
  const thrice = (article: string, rises: readonly number[]) => rises.map((rise_K) => loaded({ article, rise_K }));
  it('are ranked by their own scatter, with no spin run in the series', () => {
    const c = compared([...thrice('P0', [84, 84.5]), ...thrice('P1', [75, 75.5, 74.5]), ...thrice('P0', [83.5])]);
    expect(effectOf(c, 'final-rise')!.separated).toBe(true);
    // pooled over two cells of three: s = 0.5 K by hand, four degrees of freedom less one for drift
    expect(c.standings.find((s) => s.quantity === 'final-rise')!.repeatability!.dof).toBe(3);
  });
  it('give no mean where one of them did not reach the limit', () => {
    const c = compared([...spins, loaded({ t95_s: 8800 }), loaded({ t95_s: null }), loaded({ article: 'P1' })]);
    const own = c.cells.filter((x) => x.quantity === 'limit-crossing' && x.cell.article === 'P0');
    expect(own.map((x) => [x.estimate, x.bound?.at])).toEqual([[null, 9000]]);
    expect(effectOf(c, 'limit-crossing')).toBeUndefined();
    expect(c.refusals.find((r) => r.quantity === 'limit-crossing')!.reasons.join()).toMatch(/not reached in 150 min/);
  });
});

describe('runs of one cell that are no repeats', () => {
  it.each([
    ['an airflow sweep', [{ conditions: { airflow_m_s: 2 } }, { conditions: { airflow_m_s: 6 } }], /airflow/],
    ['two rig states', [{ rigState: 'Q1-a' }, { rigState: 'Q1-b' }], /rig states/],
    ['both rotations', [{}, { conditions: { rotation: 'reverse' as const } }], /rotation/],
    ['two loads', [{ conditions: { powerOut_W: 22_000 } }, { conditions: { powerOut_W: 18_000 } }], /power out/],
    [
      'two speeds',
      [{ conditions: { outputSpeed_rad_s: 30 } }, { conditions: { outputSpeed_rad_s: 36 } }],
      /speed differs/,
    ],
  ] as const)('%s have no mean, and the table says why', (_, both, why) => {
    const mixed = both.map((b) => loaded({ article: 'P1', ...b }));
    const c = compared([...spins, loaded({}), loaded({ cell: { fill_m3: 3.2e-3 } }), ...mixed]);
    expect(c.cells.filter((x) => x.quantity === 'final-rise' && x.cell.article === 'P1')).toEqual([]);
    const row = c.standings.find((s) => s.quantity === 'final-rise')!.rows.find((r) => r.cell.article === 'P1')!;
    expect(row.refused.join()).toMatch(why);
    expect(c.refusals.filter((r) => r.quantity === 'final-rise' && r.cell.article === 'P1')).toHaveLength(1);
  });
});

describe('a pair that is missing', () => {
  it('is said where the baseline was not run in that oil', () => {
    const c = compared([...spins, loaded({}), loaded({ article: 'P1', cell: { oil: 'O2' } })]);
    const said = c.refusals.filter((r) => r.quantity === 'final-rise' && r.cell.oil === 'O2');
    expect(said.map((r) => [r.against.article, r.against.oil, r.reasons])).toEqual([
      ['P0', 'O2', ['the baseline was not run with O2']],
    ]);
  });
  it('nose down against level is formed like nose up', () => {
    const plan = { ...record.plan!, factors: ['article', 'tilt'] };
    const c = compared([...spins, loaded({}), loaded({ cell: { tilt_ratio: -0.12 } })], { plan });
    expect(effectOf(c, 'final-rise')).toMatchObject({ basis: 'tilt is the subject', cell: { tilt_ratio: -0.12 } });
  });
});

describe('spin at the own temperature of one heat-up', () => {
  it('keeps what that heat-up leaves open, however many refits there are', () => {
    const hot = {
      id: 'fit:H-1:final temperature',
      name: 'fit',
      kind: 'scatter',
      distribution: 't',
      dof: 20,
      scope: 'run',
    } as const;
    const own = [1, 2, 3].map((order) => {
      const run = spinRun({ article: 'P0', order, watts: 160 + order });
      const r = run.results[0]!;
      return {
        ...run,
        causes: [hot],
        results: [
          { ...r, at: { ...r.at, sump_K: 'own' as const }, estimate: estimate(160 + order, [{ cause: hot.id, u: 5 }]) },
        ],
      };
    });
    const found = compared([...own, loaded({})]).cells.find((x) => x.quantity === 'spin-power')!.estimate!;
    expect(found.parts.find((p) => p.cause === hot.id)?.u).toBeCloseTo(5, 9);
  });
});
