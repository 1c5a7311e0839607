import { describe, expect, it } from 'vitest';
import { twoStoreAt, twoStoreConstants, twoStoreFinal } from '../../../src/physics/two-store.ts';

describe('two stores', () => {
  const stores = { oilStore_J_K: 14000, housingStore_J_K: 19000, coupling_W_K: 110, shed_W_K: 13.4 };
  const run = { ...stores, ambient_K: 295, heat_W: 1000, start: { oil_K: 295, housing_K: 296 } };

  it('are at their start at no time, at their end after very long', () => {
    const start = twoStoreAt({ ...run, time_s: 0 })!;
    expect(start.oil_K).toBeCloseTo(295, 9);
    expect(start.housing_K).toBeCloseTo(296, 9);
    const end = twoStoreAt({ ...run, time_s: 1e9 })!;
    expect(end.oil_K).toBeCloseTo(twoStoreFinal(run)!.oil_K, 9);
    expect(end.housing_K).toBeCloseTo(twoStoreFinal(run)!.housing_K, 9);
  });

  it.each(['oilStore_J_K', 'housingStore_J_K', 'coupling_W_K', 'shed_W_K'] as const)(
    'without %s have no answer',
    (name) => {
      for (const value of [0, -1, NaN]) {
        expect(twoStoreConstants({ ...stores, [name]: value })).toBeNull();
        expect(twoStoreAt({ ...run, [name]: value, time_s: 60 })).toBeNull();
      }
    },
  );
});
