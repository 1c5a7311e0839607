import { describe, expect, it } from 'vitest';
import { besideRange, literatureExponents } from '../../../src/physics/churning-exponents.ts';
import { chordChurning_Nm } from '../../../src/physics/churning-others.ts';
import { churning, type Churned } from '../../../src/physics/churning.ts';
import { bearingBand, churningBand, sealBand, sumOfBands } from '../../../src/physics/loss-envelope.ts';

const rad = Math.PI / 180;
/** The road axle of the reference checks at 100 km/h in its oil at 100 °C. */
const axle: Churned = {
  ...{ radius_m: 0.111, dip_m: 0.045, width_m: 0.035, module_m: 0.0054, teeth: 41, toothHeight_m: 0.0108 },
  ...{ pressureAngle_rad: 20 * rad, helixAngle_rad: 30 * rad, volume_m3: 0.002, density_kg_m3: 820 },
  ...{ speed_rad_s: 74.6714456392, nu_m2_s: 15e-6 },
};

describe('the band of churning', () => {
  it('reaches at 100 km/h and 100 °C from half of 38 W by four regimes to 275 W by the chord (watts by an independent script)', () => {
    const band = churningBand(axle)!;
    // 38.62 W by four regimes, 77 W by the hydraulic torque, 3.704 N·m at 74.67 rad/s by the chord.
    expect(band.low_W).toBeCloseTo(38.62084 / 2, 2);
    expect(band.high_W).toBeCloseTo(3.7042496 * 74.6714456392, 1);
  });

  it('is never narrower than a factor of four: where all laws agree it is so wide (a factor of 3 to 5 by the card)', () => {
    for (const speed_rad_s of [5, 20, 60, 120])
      for (const nu_m2_s of [5e-6, 15e-6, 60e-6, 300e-6]) {
        const of = { ...axle, speed_rad_s, nu_m2_s };
        const band = churningBand(of)!;
        const primary = churning(of)!.power_W;
        expect(band.low_W).toBeLessThanOrEqual(primary / 2);
        expect(band.high_W).toBeGreaterThanOrEqual(2 * primary);
        const chord_W = chordChurning_Nm(of)! * speed_rad_s;
        expect(chord_W).toBeGreaterThanOrEqual(band.low_W);
        expect(chord_W).toBeLessThanOrEqual(band.high_W);
      }
  });

  it('is not there for a gear that does not dip, is under oil whole or stands still', () => {
    expect(churningBand({ ...axle, dip_m: 0 })).toBeNull();
    expect(churningBand({ ...axle, dip_m: 0.3 })).toBeNull();
    expect(churningBand({ ...axle, speed_rad_s: 0 })).toBeNull();
  });
});

describe('the band of one bearing', () => {
  const bearing = {
    bore_m: 0.035,
    outside_m: 0.072,
    turning_Nm: 0,
    speed_rad_s: (2000 * Math.PI) / 30,
    nu_m2_s: 15e-6,
  };
  it('is half less at f0 3 to half more at f0 4 of the classical moment, 59.14 mN·m at f0 4 by an independent script', () => {
    const band = bearingBand(bearing)!;
    const at4_W = 59.138301e-3 * bearing.speed_rad_s;
    expect(band.high_W).toBeCloseTo(1.5 * at4_W, 6);
    expect(band.low_W).toBeCloseTo(0.5 * 0.75 * at4_W, 6);
  });

  it('has the turning torque of its preload on top, half less to half more of it', () => {
    const [without, preloaded] = [bearingBand(bearing)!, bearingBand({ ...bearing, turning_Nm: 1 })!];
    expect(preloaded.low_W - without.low_W).toBeCloseTo(0.5 * bearing.speed_rad_s, 9);
    expect(preloaded.high_W - without.high_W).toBeCloseTo(1.5 * bearing.speed_rad_s, 9);
  });

  it('is not there without a size', () => {
    expect(bearingBand({ ...bearing, bore_m: 0, outside_m: 0 })).toBeNull();
  });
});

it('the band of a seal reaches over both rubbers and the other report: 0.14574 and 0.22422 N·m and 77.2 W (independent script)', () => {
  const speed_rad_s = (2000 * Math.PI) / 30;
  const band = sealBand({ shaft_m: 0.06, speed_rad_s, oil_K: 363.15, nu40_m2_s: 102e-6 })!;
  expect(band.low_W).toBeCloseTo(0.14574 * speed_rad_s, 6);
  expect(band.high_W).toBeCloseTo(77.23388, 4);
  expect(sealBand({ shaft_m: 0, speed_rad_s, oil_K: 363.15, nu40_m2_s: 102e-6 })).toBeNull();
});

it('parts of a band add end by end', () => {
  expect(
    sumOfBands([
      { low_W: 1, high_W: 5 },
      { low_W: 2, high_W: 3 },
    ]),
  ).toEqual({ low_W: 3, high_W: 8 });
  expect(sumOfBands([])).toEqual({ low_W: 0, high_W: 0 });
});

describe('a fitted exponent beside the literature', () => {
  const range = [1.59, 1.8] as const;
  it.each([
    ['inside', [1.6, 1.75], 3],
    ['outside', [1.3, 1.5], 3],
    ['outside', [1.9, 2.1], 3],
    ['not told', [1.5, 1.7], 3],
    ['not told', [1.6, 1.75], 10.5],
    ['not told', [1.6, 1.75], Infinity],
    ['not told', [1.6, 1.75], NaN],
    ['not told', [null, null], 3],
  ] as const)('is %s for an interval of %j at a condition number of %d', (word, interval, condition) => {
    expect(besideRange({ interval, condition, range })).toBe(word);
  });

  it('has the ranges of the card: n^(1.6 to 1.8)·ν^(0 to 0.21) of the primary law, n^(1 to 3.3)·ν^(−0.3 to 2) of all', () => {
    const [primary, all] = literatureExponents;
    expect(primary!.speed.map((p) => Math.round(p * 10) / 10)).toEqual([1.6, 1.8]);
    expect(primary!.viscosity).toEqual([0, 0.21]);
    expect([all!.speed, all!.viscosity]).toEqual([
      [1, 3.3],
      [-0.3, 2],
    ]);
    expect(all!.name).toContain('unverified');
  });

  it('the law by the chord has the ends of that range: Re^(1/3) and Re^−2, by its powers as written', () => {
    const power = (of: Churned): number => chordChurning_Nm(of)! * of.speed_rad_s;
    const slope = (a: Churned, b: Churned, times: number): number => Math.log(power(b) / power(a)) / Math.log(times);
    const middle = { ...axle, speed_rad_s: 20, nu_m2_s: 60e-6 };
    expect(slope(middle, { ...middle, speed_rad_s: 22 }, 1.1)).toBeCloseTo(10 / 3, 9);
    expect(slope(middle, { ...middle, nu_m2_s: 66e-6 }, 1.1)).toBeCloseTo(-1 / 3, 9);
    const fast = { ...axle, speed_rad_s: 200, nu_m2_s: 5e-6 };
    expect(slope(fast, { ...fast, speed_rad_s: 220 }, 1.1)).toBeCloseTo(1, 9);
    expect(slope(fast, { ...fast, nu_m2_s: 5.5e-6 }, 1.1)).toBeCloseTo(2, 9);
  });
});
