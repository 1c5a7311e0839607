import { describe, expect, it } from 'vitest';
import { extrapolated } from '../../../src/derive/extrapolated.ts';

describe('a heat-up that stops before its end', () => {
  it('by less than a tenth of its rise adds nothing', () => {
    expect(extrapolated({ start_K: 294, last_K: 376, final_K: 378 })).toMatchObject({ u_K: 0 });
  });

  it('early on says how much lies beyond and adds a twentieth of it', () => {
    const half = extrapolated({ start_K: 290, last_K: 330, final_K: 370 });
    expect(half.share).toBeCloseTo(0.5, 12);
    expect(half.u_K).toBeCloseTo(2, 12);
  });

  it('that overshot its end, or has none, adds nothing', () => {
    expect(extrapolated({ start_K: 290, last_K: 371, final_K: 370 })).toEqual({ share: 0, u_K: 0 });
    expect(extrapolated({ start_K: 290, last_K: 330, final_K: NaN })).toEqual({ share: 0, u_K: 0 });
  });
});
