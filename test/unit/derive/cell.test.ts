import { describe, expect, it } from 'vitest';
import { cellOf } from '../../../src/derive/cell.ts';
import { recordOf } from './logged.ts';

// The demo's plan: P0 at 2.40 and 3.20 L, level and at +12 %.
const { plan, runs } = recordOf('H-01', null);
const of = (tilt_ratio: number, litres = 2.4) =>
  cellOf({
    run: { ...runs[0]!, tilt_ratio },
    plan,
    volume20_m3: litres * 1e-3,
    tolerance: { fill_m3: 0.05e-3, tilt_ratio: 0.005 },
  });

describe('the cell of a run', () => {
  it('is the planned one where litres and tilt come within the tolerance of it', () => {
    expect(of(0.003, 2.43)).toMatchObject({ fill_m3: plan!.cells[0]!.fill_m3, tilt_ratio: 0 });
    expect(of(0.117).tilt_ratio).toBe(0.12);
  });
  it('is its own where they do not', () => {
    expect(of(0.05).tilt_ratio).toBe(0.05);
    expect(of(-0.12).tilt_ratio).toBe(-0.12);
    expect(of(0, 2.78).fill_m3).toBeCloseTo(2.8e-3, 9);
  });
});
