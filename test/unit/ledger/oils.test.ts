import { describe, expect, it } from 'vitest';
import { standardUncertainty } from '../../../src/quantity/estimate.ts';
import { oilFigures } from '../../../src/ledger/oils.ts';
import type { Oil } from '../../../src/trial/oil.ts';
import type { SeriesRecord } from '../../../src/trial/series.ts';

const oil = (more: Partial<Oil> = {}): Oil => ({
  file: 'oils/O1.md',
  shownTo: 'public',
  body: '',
  places: new Map(),
  typed: new Map(),
  id: 'O1',
  name: 'mineral',
  grade: 'SAE 90',
  base: 'mineral',
  nu40_m2_s: 170e-6,
  nu100_m2_s: 15.6e-6,
  nuSource: 'measured',
  density15_kg_m3: 900,
  expansion_1_K: 7e-4,
  specificHeat_J_kgK: 2000,
  maxSump_K: null,
  batch: 'B',
  openedOn: null,
  hoursUsed_s: null,
  samples: [],
  ...more,
});
const figures = (o: Oil) =>
  oilFigures({
    oils: new Map([[o.id, o]]),
    series: { reference: { sump_K: [313.15, 333.15] } },
  } as unknown as SeriesRecord);
const viscosity = (o: Oil, oil_K: number) =>
  figures(o).find((f) => f.quantity === 'viscosity' && f.at.sump_K === oil_K)!.estimate!;

describe('a figure whose relation is outside of its range', () => {
  const notesOf = (o: Oil, sump_K: number, quantity: string) =>
    oilFigures({
      oils: new Map([[o.id, o]]),
      series: { reference: { sump_K: [sump_K] } },
    } as unknown as SeriesRecord).find((f) => f.quantity === quantity && f.at.sump_K === sump_K)!;

  it('is given all the same, and says so', () => {
    const thin = notesOf(oil({ nu40_m2_s: 5e-6, nu100_m2_s: 1.8e-6 }), 373.15, 'viscosity');
    expect(thin.estimate!.value * 1e6).toBeCloseTo(1.8, 6);
    expect(thin.notes).toEqual([expect.stringContaining('kinematic viscosity is below the range')]);
    expect(notesOf(oil(), 263.15, 'viscosity').notes![0]).toContain('oil temperature is below the range');
    expect(notesOf(oil(), 420, 'density').notes![0]).toContain('above the range');
    expect(notesOf(oil(), 333.15, 'viscosity').notes).toEqual([]);
  });

  it('is no figure where the relation is not defined: no index below 2 mm²/s, no line through viscosities that do not fall', () => {
    const thin = figures(oil({ nu40_m2_s: 5e-6, nu100_m2_s: 1.8e-6 }));
    expect(thin.some(({ quantity }) => quantity === 'viscosity-index')).toBe(false);
    const odd = figures(oil({ nu40_m2_s: 10e-6, nu100_m2_s: 0.2e-6 }));
    expect(odd.some(({ quantity }) => quantity === 'viscosity')).toBe(false);
    expect(odd.every(({ estimate }) => estimate === null || Number.isFinite(estimate.value))).toBe(true);
  });
});

describe('figures of an oil sheet', () => {
  it('give back the two viscosities they were made from', () => {
    expect(viscosity(oil(), 313.15).value * 1e6).toBeCloseTo(170, 6);
    expect(viscosity(oil(), 373.15).value * 1e6).toBeCloseTo(15.6, 6);
  });

  it('claim no doubt where the note states none', () => {
    expect(viscosity(oil(), 333.15).parts).toEqual([]);
  });

  it('carry the ± of a viscosity: whole at its own temperature, none at the other', () => {
    const stated = oil({ nu40PlusMinus: { value: 3.4e-6, k: 2 } });
    // ± 3.4 mm²/s with k = 2 is a standard uncertainty of 1.7 mm²/s.
    expect(standardUncertainty(viscosity(stated, 313.15)) * 1e6).toBeCloseTo(1.7, 3);
    expect(standardUncertainty(viscosity(stated, 373.15)) * 1e6).toBeLessThan(1e-6);
    const between = standardUncertainty(viscosity(stated, 333.15)) * 1e6;
    expect(between).toBeGreaterThan(0);
    expect(between).toBeLessThan(1.7);
  });

  it('read a ± without a coverage factor as limits', () => {
    const stated = oil({ nu100PlusMinus: { value: 0.3e-6, k: null } });
    expect(standardUncertainty(viscosity(stated, 373.15)) * 1e6).toBeCloseTo(0.3 / Math.sqrt(3), 3);
  });
});
