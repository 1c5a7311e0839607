import { describe, expect, it } from 'vitest';
import { coverOf, type Areas } from '../../../src/compare/cover-share.ts';
import { estimate } from '../../../src/quantity/estimate.ts';
import type { Effect } from '../../../src/trial/compared.ts';
import { cell } from './runs.ts';

const effect = {
  cell: cell({ article: 'P1' }),
  against: cell({ article: 'P0' }),
} as unknown as Effect;
const areas = (of: Partial<Record<string, number>>): Areas => ({
  axle_m2: of['axle'] ?? null,
  article_m2: (id) => of[id] ?? null,
});
/** 12 W/K and 1000 W: the axle settles 83.3 K over ambient. */
const ends = { heat0: estimate(1000, []), rise0: estimate(1000 / 12, []) };
const of = (gain: readonly [number, number], stated: Partial<Record<string, number>>) =>
  coverOf(
    effect,
    { byShed: estimate((gain[0] + gain[1]) / 2, []), ends },
    { areas: areas(stated), interval: () => gain },
  );

describe('what the surface of a cover alone can account for', () => {
  const stated = { axle: 0.9, P0: 0.1, P1: 0.21 };

  it('is a band from 0.7 to 1.4 times its share of the surface, with fins from 0.8 to 1', () => {
    const { low_K, high_K } = of([-9, -8], stated).cover!;
    // by hand: K′ = 12·[1 + 0.7·(0.1/0.9)·0.88] = 12.821 and 12·[1 + 1.4·(0.1/0.9)·1.1] = 14.053
    expect(low_K).toBeCloseTo(1000 / 12 - 1000 / 12.8213, 2);
    expect(high_K).toBeCloseTo(1000 / 12 - 1000 / 14.0533, 2);
  });

  it('is exceeded only when the whole interval of the gain lies beyond it', () => {
    expect(of([-9, -8], stated).cover!.exceeded).toBe(false);
    expect(of([-20, -10], stated).cover!.exceeded).toBe(false);
    expect(of([-20, -13], stated).cover!.exceeded).toBe(true);
  });

  it('is nothing for a part with the same outside, so that any gain of it wants another reason', () => {
    const { cover } = of([-5, -2], { ...stated, P1: 0.1 });
    expect([cover!.low_K, cover!.high_K, cover!.exceeded]).toEqual([0, 0, true]);
  });

  it('is not asked where no gain stands, nor of an article against itself', () => {
    expect(of([-3, 1], stated)).toEqual({ cover: null, coverUntold: null });
    const own = { ...effect, against: effect.cell };
    expect(
      coverOf(own, { byShed: estimate(-5, []), ends }, { areas: areas(stated), interval: () => [-6, -4] }),
    ).toEqual({
      cover: null,
      coverUntold: null,
    });
  });

  it('says what to write where a surface is not stated', () => {
    expect(of([-9, -8], { P0: 0.1 }).coverUntold).toMatch(
      /outside-area in the notes of P1, and rejecting-area in rig\.md/,
    );
    expect(of([-9, -8], { P0: 0.1, P1: 0.2 }).coverUntold).toMatch(/write rejecting-area in rig\.md$/);
  });
});
