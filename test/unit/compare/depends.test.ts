import { describe, expect, it } from 'vitest';
import { dependsOn } from '../../../src/compare/depends.ts';
import { estimate } from '../../../src/quantity/estimate.ts';
import type { Effect } from '../../../src/trial/compared.ts';
import type { At, Cell } from '../../../src/trial/derived.ts';
import { series } from '../report/fixture-notes.ts';
import { cell } from './runs.ts';

const { baseline, reference } = series;
const base = cell({ article: baseline.article, oil: baseline.oil, fill_m3: baseline.fill_m3 });
const effect = (
  quantity: Effect['quantity'],
  value: number,
  separated: boolean,
  at: At = {},
  of: Partial<Cell> = {},
): Effect => ({
  cell: { ...base, article: 'A1', ...of },
  against: base,
  quantity,
  at,
  estimate: estimate(value, []),
  interval: [value - 1, value + 1],
  simultaneous: [value - 1, value + 1],
  k: 2,
  dof: Infinity,
  separated,
  ...{ trials: null, margin: null, indicative: [] },
  basis: 'same litres',
  runs: [],
  againstRuns: [],
  notes: [],
});
const found = (effects: readonly Effect[]) =>
  dependsOn({ effects, series }).map(({ choice, kind }) => `${choice}: ${kind}`);
const spinAt = { outputSpeed_rad_s: reference.outputSpeed_rad_s, sump_K: reference.mainSump_K };

describe('what an article comes to depends on', () => {
  it('the limit, where it is sooner at one and later at another', () => {
    const times = [
      effect('limit-crossing', 120, true, { limit_K: 353.15 }),
      effect('limit-crossing', -300, true, { limit_K: 368.15 }),
    ];
    expect(found(times)).toEqual(['limit: turns']);
  });
  it('the temperature, where it saves at a common one and not at its own', () => {
    const watts = [
      effect('spin-power', -35, true, spinAt),
      effect('spin-power', -11, false, { ...spinAt, sump_K: 'own' }),
    ];
    expect(found(watts)).toEqual(['temperature: in one only']);
  });
  it('the fill, where it saves at the same litres and not at the same level', () => {
    const watts = [
      effect('spin-power', -33, true, spinAt),
      effect('spin-power', -4, false, spinAt, { fill_m3: 3.59e-3 }),
    ];
    expect(found(watts)).toEqual(['fill: in one only']);
  });
  it('nothing, where every option separates the same way or none does', () => {
    const cooler = [effect('final-rise', -9, true), effect('spin-power', -33, true, spinAt)];
    expect(found(cooler)).toEqual([]);
    expect(found(cooler.map((e) => ({ ...e, separated: false })))).toEqual([]);
  });
  it('nothing, where only one option was run', () => {
    expect(found([effect('final-rise', -9, true)])).toEqual([]);
  });
  it('no other oil or speed than that of the baseline', () => {
    const other = effect('spin-power', 5, true, { ...spinAt, outputSpeed_rad_s: reference.outputSpeed_rad_s * 2 });
    expect(found([effect('spin-power', -35, true, spinAt), other])).toEqual([]);
  });
});
