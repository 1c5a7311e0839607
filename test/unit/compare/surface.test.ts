import { describe, expect, it } from 'vitest';
import { surfaceSheds } from '../../../src/compare/surface.ts';
import { estimate } from '../../../src/quantity/estimate.ts';
import type { CellFigure } from '../../../src/trial/compared.ts';
import { cell, series } from './runs.ts';

const of = (quantity: string, value: number): CellFigure =>
  ({ cell: cell(), quantity, estimate: estimate(value, []), runs: ['H-01'] }) as unknown as CellFigure;
/** 90 °C in air of 20 °C, as the check of the relation has it; 12 W/K measured. */
const cells = [of('final-temperature', 363.15), of('final-rise', 70), of('shed', 12)];
const found = (
  areas: { axle?: number; own?: number },
  air: { m_s: number | null; off: number } = { m_s: 5, off: 0 },
  list = cells,
) =>
  surfaceSheds({
    cells: list,
    series: {
      reference: { ...series.reference, airflow_m_s: air.m_s },
      tolerance: { ...series.tolerance, airflow_m_s: air.off },
    },
    rig: { ringRadius_m: 0.125 },
    areas: { axle_m2: areas.axle ?? null, article_m2: () => areas.own ?? null },
  });

describe('what a bare surface can shed by the laws', () => {
  it('holds the reference axle, worked out by another program: 0.7 m², 0.25 m across, air of 5 m/s', () => {
    // 1275.4651 W dark and 590.51568 W shiny with the law 40 % low, at 70 K: the checks of the relation
    const { low, high } = found({ axle: 0.7, own: 0.1 })[0]!.whole!;
    expect(low).toBeLessThanOrEqual(590.51568 / 70 + 1e-6);
    expect(high).toBeGreaterThan(1275.4651 / 70);
    expect(high / low).toBeLessThan(5);
  });

  it('goes with the surface, and the share is that over the measured shed', () => {
    const { whole, own, share } = found({ axle: 0.9, own: 0.09 })[0]!;
    expect(own!.low).toBeCloseTo(whole!.low / 10, 9);
    expect(own!.high).toBeCloseTo(whole!.high / 10, 9);
    expect(share!.high).toBeCloseTo(own!.high / 12, 12);
  });

  it('is wider where the air is known less well, and rises with it', () => {
    const [firm, loose, windy] = [
      found({ axle: 1, own: 0.1 }),
      found({ axle: 1, own: 0.1 }, { m_s: 5, off: 2 }),
      found({ axle: 1, own: 0.1 }, { m_s: 10, off: 0 }),
    ].map(([one]) => one!.whole!);
    expect(loose!.low).toBeLessThan(firm!.low);
    expect(loose!.high).toBeGreaterThan(firm!.high);
    expect(windy!.low).toBeGreaterThan(firm!.low);
  });

  it('says what to write where surface or air is not stated, and says nothing of what was not loaded', () => {
    expect(found({})[0]).toMatchObject({ whole: null, own: null, share: null });
    expect(found({})[0]!.untold).toMatch(/outside-area.*rejecting-area/);
    expect(found({ axle: 1, own: 1 }, { m_s: null, off: 0 })[0]!.untold).toContain('airflow');
    expect(found({ axle: 1, own: 1 }, undefined, [of('spin-power', 200)])).toEqual([]);
  });

  it('notes surroundings beyond those the air was compared for', () => {
    const cold = [of('final-temperature', 320), of('final-rise', 120), of('shed', 12)];
    expect(found({ axle: 1, own: 0.1 }, undefined, cold)[0]!.outside.join(' ')).toContain('below the range');
  });
});
