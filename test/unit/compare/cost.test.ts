import { describe, expect, it } from 'vitest';
import { costsOf } from '../../../src/compare/cost.ts';
import { estimate, standardUncertainty } from '../../../src/quantity/estimate.ts';
import type { Series } from '../../../src/trial/book.ts';
import type { Effect } from '../../../src/trial/compared.ts';
import { cell, series } from './runs.ts';

type Duty = NonNullable<Series['duty']>;
/** A wheel of 0.5 m: 10 rad/s are 5 m/s. */
const rig = { rollingRadius_m: 0.5 };
const effectAt = (speed_rad_s: number, watts: number, u = 1, cause = `readings:${speed_rad_s}`): Effect =>
  ({
    cell: cell({ article: 'P1' }),
    against: cell(),
    quantity: 'spin-power',
    at: { outputSpeed_rad_s: speed_rad_s, sump_K: series.reference.mainSump_K },
    estimate: estimate(watts, [{ cause, u }]),
    runs: ['S-01'],
    againstRuns: ['S-02'],
  }) as unknown as Effect;
const measured = [effectAt(10, -20), effectAt(20, -60), effectAt(40, -200)];
const duty = (of: Partial<Duty> = {}): Duty => ({
  ...{ drive: 'electric', driveEfficiency: 1, consumption_J_m: null, fuel_m2: null, tripScatter: 0.05 },
  mix: [{ share: 1, speed_m_s: 10 }],
  ...of,
});
const cost = (of: Duty, effects: readonly Effect[] = measured) =>
  costsOf({
    effects,
    series: { ...series, duty: of },
    rig,
    half: (e) => 2 * standardUncertainty(e),
  })[0]!;

describe('what a difference in spin power costs on the road', () => {
  it('at a measured speed is its watts over that speed', () => {
    expect(cost(duty()).energy!.value).toBeCloseTo(-60 / 10, 12);
  });

  it('between two goes along the line, and to nothing at standstill', () => {
    // 7.5 m/s lie half way between −20 and −60 W; 2.5 m/s half way between nothing and −20 W
    expect(cost(duty({ mix: [{ share: 1, speed_m_s: 7.5 }] })).energy!.value).toBeCloseTo(-40 / 7.5, 12);
    expect(cost(duty({ mix: [{ share: 1, speed_m_s: 2.5 }] })).energy!.value).toBeCloseTo(-10 / 2.5, 12);
  });

  it('over a duty goes by time in both sums, by hand', () => {
    const mix = [
      { share: 0.5, speed_m_s: 5 },
      { share: 0.5, speed_m_s: 20 },
    ];
    const found = cost(duty({ mix })).energy!;
    expect(found.value).toBeCloseTo((-20 - 200) / 2 / 12.5, 12);
    // two independent watts of 1 each
    expect(standardUncertainty(found)).toBeCloseTo(Math.hypot(0.5, 0.5) / 12.5, 12);
  });

  it('does not lose what two speeds share', () => {
    const shared = [effectAt(10, -20, 1, 'calibration'), effectAt(20, -60, 1, 'calibration'), effectAt(40, -200)];
    const mix = [
      { share: 0.5, speed_m_s: 5 },
      { share: 0.5, speed_m_s: 10 },
    ];
    expect(standardUncertainty(cost(duty({ mix }), shared).energy!)).toBeCloseTo(1 / 7.5, 12);
  });

  it('takes the scatter of a refit as one cause at all speeds, as a bowl that was fitted tight is tight at each of them', () => {
    const ofCell = (speed: number) => `scatter:refit:spin:spin-power:${speed}:P1|O1|0.002400|0.0000`;
    const refitted = [10, 20, 40].map((speed, i) => effectAt(speed, -20 * (i + 1), 1, ofCell(speed)));
    const mix = [
      { share: 0.5, speed_m_s: 5 },
      { share: 0.5, speed_m_s: 10 },
    ];
    expect(standardUncertainty(cost(duty({ mix }), refitted).energy!)).toBeCloseTo(1 / 7.5, 12);
  });

  it('takes more than that from a battery, and marginal fuel from an engine', () => {
    expect(cost(duty({ driveEfficiency: 0.8 })).energy!.value).toBeCloseTo(-6 / 0.8, 12);
    // (EU) 2020/728: diesel 0.220 L/kWh; 6 J/m are 0.16667 kWh/100 km
    const engine = cost(duty({ drive: 'diesel' }));
    expect(engine.fuel!.value * 1e8).toBeCloseTo((-0.22 * 6) / 36, 9);
    expect(cost(duty()).fuel).toBeNull();
  });

  it('is held against how far ordinary trips differ', () => {
    const word = (consumption_J_m: number) => cost(duty({ consumption_J_m, tripScatter: 0.05 })).word;
    // 6 J/m ± 0.2: twenty times that is 120 J/m
    expect(word(1000)).toBe('too small to notice');
    expect(word(120)).toBe('not told apart from trips');
    expect(word(60)).toBe('more than trips differ');
    expect(cost(duty()).word).toBeNull();
  });

  it('says where idling and stops would decide, and gives the sum all the same', () => {
    const slow = cost(duty({ mix: [{ share: 1, speed_m_s: 5 }] }));
    expect(slow.energy!.value).toBeCloseTo(-20 / 5, 12);
    expect(slow.outside).toEqual([expect.stringContaining('road speed is below the range')]);
    expect(cost(duty()).outside).toEqual([]);
  });

  it('is not told beyond the fastest speed that was run, nor without a rolling radius', () => {
    const fast = cost(duty({ mix: [{ share: 1, speed_m_s: 25 }] }));
    expect([fast.energy, fast.untold]).toEqual([null, expect.stringContaining('90.0 km/h')]);
    expect(fast.untold).toContain('72.0 km/h');
    const [bare] = costsOf({
      ...{ effects: measured, series: { ...series, duty: duty() } },
      ...{ rig: { rollingRadius_m: null }, half: () => 0 },
    });
    expect(bare!.untold).toContain('rolling radius');
  });
});
