import { describe, expect, it } from 'vitest';
import { buildLedger } from '../../../src/ledger/build.ts';
import type { ComparedSeries } from '../../../src/trial/compared.ts';
import { derived, record } from '../compare/runs.ts';
import { estimate } from '../../../src/quantity/estimate.ts';

const nothing: ComparedSeries = {
  seed: null,
  claims: [],
  splits: [],
  films: [],
  surfaces: [],
  costs: [],
  depends: [],
  factorials: [],
  agreements: [],
  cells: [],
  effects: [],
  refusals: [],
  standings: [],
  causes: [],
  findings: [],
};
const run = derived({
  results: [
    estimate(240, []),
    estimate(240, [{ cause: 'zero', u: 2 }]),
    estimate(240, [{ cause: 'zero', u: Infinity }]),
  ].map((e, i) => ({
    quantity: 'spin-power',
    at: { outputSpeed_rad_s: (Math.PI / 30) * (100 + i) },
    estimate: e,
    bound: null,
    class: 'measured',
    relation: 'made',
    method: 'made',
    notes: [],
    given: [],
    steps: [],
  })),
});
const { byId, workings } = buildLedger({
  record,
  runs: new Map([['S-01', run]]),
  compared: nothing,
  sums: new Map(),
  rigShown: true,
});

describe('a figure of which no cause of error is known', () => {
  it('has no interval: a zero would say that it is exact', () => {
    expect(byId.get('S-01/spin-power@100rpm')).toMatchObject({ value: 240, interval: [null, null], k: null });
    expect(workings.get('S-01/spin-power@100rpm')!.u).toBeNull();
  });
  it('has none where a cause has no bounds either', () => {
    expect(byId.get('S-01/spin-power@102rpm')).toMatchObject({ interval: [null, null], k: null });
  });
  it('is exact where it is counted: a ratio of teeth', () => {
    const ratio = [...byId.values()].find((f) => f.quantity === 'gear-ratio')!;
    expect(ratio.interval).toEqual([ratio.value, ratio.value]);
  });
  it('has one as soon as one is', () => {
    expect(byId.get('S-01/spin-power@101rpm')!.interval[1]).toBeCloseTo(240 + 1.96 * 2, 2);
  });
});

it('what models let one expect of a loss stands in no ledger whose rig sheet is held back: its working shows the geometry', () => {
  const expected = derived({
    results: [
      {
        ...run.results[0]!,
        ...{ quantity: 'loss-estimate', estimate: null, band: { low: 80, high: 400 }, class: 'model estimate' },
      },
    ],
  });
  const ids = (rigShown: boolean): string[] =>
    buildLedger({ record, runs: new Map([['S-01', expected]]), compared: nothing, sums: new Map(), rigShown })
      .figures.map(({ id }) => id)
      .filter((id) => id.includes('loss-estimate'));
  expect(ids(true)).toEqual(['S-01/loss-estimate@100rpm']);
  expect(ids(false)).toEqual([]);
});
