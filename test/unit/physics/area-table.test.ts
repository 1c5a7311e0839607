import { describe, expect, it } from 'vitest';
import { levelByArea_m, volumeByArea_m3 } from '../../../src/physics/area-table.ts';

describe('a table of surfaces', () => {
  const tank = [
    { h_m: 0, area_m2: 0.02 },
    { h_m: 0.1, area_m2: 0.02 },
  ];

  it('of upright walls is a plain box', () => {
    expect(volumeByArea_m3({ table: tank, h_m: 0.05 })).toBeCloseTo(0.001, 15);
    expect(levelByArea_m({ table: tank, volume_m3: 0.001 })).toBeCloseTo(0.05, 15);
  });

  it('has no answer outside its rows, without rows and for no number', () => {
    expect(volumeByArea_m3({ table: tank, h_m: 0.11 })).toBeNull();
    expect(levelByArea_m({ table: tank, volume_m3: -1e-9 })).toBeNull();
    expect(levelByArea_m({ table: tank, volume_m3: 0.0021 })).toBeNull();
    expect(volumeByArea_m3({ table: [], h_m: 0 })).toBeNull();
    expect(levelByArea_m({ table: tank, volume_m3: NaN })).toBeNull();
  });
});
