import { describe, expect, it } from 'vitest';
import {
  final_K,
  oneStoreAt_K,
  shed_W_K,
  storeOfParts_J_K,
  timeConstant_s,
  timeToLimit,
} from '../../../src/physics/lumped.ts';

describe('one store', () => {
  const run = { start_K: 295, ambient_K: 295, heat_W: 900, shed_W_K: 11, store_J_K: 22000 };

  it('is at its start at no time, at its end after very long', () => {
    expect(oneStoreAt_K({ ...run, time_s: 0 })).toBeCloseTo(295, 9);
    expect(oneStoreAt_K({ ...run, time_s: 1e9 })).toBeCloseTo(final_K(run)!, 9);
  });

  it('without shed or store has no answer', () => {
    for (const wrong of [{ shed_W_K: 0 }, { shed_W_K: -1 }, { shed_W_K: NaN }, { store_J_K: 0 }]) {
      expect(oneStoreAt_K({ ...run, ...wrong, time_s: 60 })).toBeNull();
      expect(timeToLimit({ ...run, ...wrong, limit_K: 350 })).toBeNull();
    }
    expect(final_K({ ...run, shed_W_K: 0 })).toBeNull();
    expect(timeConstant_s({ ...run, shed_W_K: 0 })).toBeNull();
    expect(shed_W_K({ heat_W: 900, rise_K: 0 })).toBeNull();
  });

  it('that starts at or above the limit is there at once', () => {
    expect(timeToLimit({ ...run, start_K: 360, limit_K: 350 })).toEqual({ kind: 'reached', time_s: 0 });
  });

  it('that ends just at the limit does not reach it', () => {
    expect(timeToLimit({ ...run, heat_W: 1100, limit_K: 395 })).toEqual({ kind: 'not reached', final_K: 395 });
  });

  it('a time to a limit is when the curve is there', () => {
    const answer = timeToLimit({ ...run, limit_K: 360 });
    expect(answer?.kind).toBe('reached');
    if (answer?.kind === 'reached') expect(oneStoreAt_K({ ...run, time_s: answer.time_s })).toBeCloseTo(360, 9);
  });

  it('of no parts stores nothing', () => {
    expect(storeOfParts_J_K([])).toBe(0);
  });
});
