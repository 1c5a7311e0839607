import { describe, expect, it } from 'vitest';
import { ownAxle, referenceCase } from '../../../src/compare/own-axle.ts';
import { logLogLine, viscosityAt_m2_s } from '../../../src/physics/viscosity.ts';
import type { AxleAsked, AxleData, AxleRow, LoadedCell, SpunCell, Told } from '../../../src/trial/own-axle.ts';

/** An axle whose spin loss is a power law by construction: P = a·n^1.5·ν^0.3, at four speeds and three temperatures. */
const oil = { id: 'O1', name: 'mineral', nu40_m2_s: 170e-6, nu100_m2_s: 15.6e-6, maxSump_K: 393.15 };
const nuAt = (oil_K: number): number => viscosityAt_m2_s({ line: logLogLine(oil)!, oil_K })!;
const lawful = (a: number, speed_rad_s: number, nu: number): number => a * speed_rad_s ** 1.5 * (nu * 1e6) ** 0.3;
const spun = (article: string, a: number, fill_m3 = 0.0024): SpunCell => ({
  ...{ article, oil: 'O1', fill_m3 },
  points: [10, 20, 30, 50].flatMap((speed_rad_s) =>
    [313.15, 333.15, 353.15].map((sump_K) => ({
      ...{ speed_rad_s, sump_K, indicative: false },
      power: { value: lawful(a, speed_rad_s, nuAt(sump_K)), half: 4 },
      less: article === 'P0' ? null : { value: lawful(a - 1, speed_rad_s, nuAt(sump_K)), half: 5 },
    })),
  ),
});
const [K, s] = [12, -1.5];
const moves: NonNullable<LoadedCell['moves']> = {
  ...{ made_W: 1000, spin_W: 150, exponent: 1.5, shed_W_K: K, slope_W_K: s },
  u: { made_W: 30, spin_W: 3, exponent: 0.02, shed_W_K: 0.4, slope_W_K: 0.2 },
};
const loaded = (article: string, final_K: number, of: Partial<LoadedCell> = {}): LoadedCell => ({
  ...{ article, oil: 'O1', fill_m3: 0.0024, final: { value: final_K, half: 1 }, moves },
  ...of,
});
const data: AxleData = {
  baseline: { article: 'P0', oil: 'O1', fill_m3: 0.0024 },
  articles: ['P0', 'P1'].map((id) => ({ id, name: id, maxSump_K: null })),
  oils: [oil],
  ...{ ratio: 4, radius_m: 0.5, sump_K: 333.15, wheel_rad_s: 30 },
  load: { speed_rad_s: 30, power_W: 20e3, ambient_K: 293.15, airflow_m_s: 4 },
  tolerance: { fill_m3: 5e-5, airflow_m_s: 0.3, ambient_K: 4, speed_ratio: 0.01 },
  ...{ drive: 'electric', driveEfficiency: 0.8 },
  spun: [spun('P0', 1), spun('P1', 0.8), spun('P1', 1.2, 0.0032)],
  loaded: [loaded('P0', 376.15), loaded('P1', 372.15)],
};
const reference = referenceCase(data);
const rows = (asked: Partial<AxleAsked>, from = data): readonly AxleRow[] =>
  ownAxle(from, { ...reference, ...asked }).rows;
const p1 = (asked: Partial<AxleAsked>, from = data): AxleRow => rows(asked, from)[1]!;
const valueOf = (told: Told): number => (told.kind === 'value' ? told.value : NaN);
const halfOf = (told: Told): number => (told.kind === 'value' ? told.half : NaN);
const why = (told: Told): string => (told.kind === 'none' ? told.why : `told: ${told.kind}`);

describe("spin loss of a reader's own axle", () => {
  it('is the published figure itself where it was run, difference and interval too', () => {
    for (const cell of data.spun.slice(0, 2))
      for (const { speed_rad_s, sump_K, power, less } of cell.points) {
        const row = rows({ wheel_rad_s: speed_rad_s, sump_K }).find(({ article }) => article === cell.article)!;
        expect(row.spin).toEqual({ kind: 'value', ...power });
        if (less !== null) expect(row.less).toEqual({ kind: 'value', ...less });
      }
  });

  it('follows a loss that is a power law of speed and viscosity exactly, and never states less doubt than its neighbours', () => {
    for (const [wheel_rad_s, sump_K] of [
      [14, 333.15],
      [30, 341],
      [42, 320],
    ] as const) {
      const { spin, less } = p1({ wheel_rad_s, sump_K });
      expect(valueOf(spin)).toBeCloseTo(lawful(0.8, wheel_rad_s, nuAt(sump_K)), 9);
      expect(valueOf(less)).toBeCloseTo(lawful(-0.2, wheel_rad_s, nuAt(sump_K)), 9);
      expect(halfOf(spin)).toBeGreaterThan(4 - 1e-9);
      expect(halfOf(less)).toBeGreaterThan(5 - 1e-9);
    }
  });

  it('adds what a power law is off by, where the loss is none: a constant part beside a square of the speed', () => {
    const bent = (speed: number): number => 40 + 0.2 * speed ** 2;
    const cell = { ...spun('P1', 1), points: spun('P1', 1).points.map((p) => ({ ...p, power: { value: bent(p.speed_rad_s), half: 0 } })) }; // prettier-ignore
    for (const wheel_rad_s of [14, 25, 42]) {
      const { spin } = p1({ wheel_rad_s }, { ...data, spun: [cell] });
      const off = Math.abs(valueOf(spin) - bent(wheel_rad_s));
      expect(halfOf(spin)).toBeGreaterThan(off / 2);
      expect(halfOf(spin)).toBeLessThan(off * 2);
    }
  });

  it('between two fills goes along the line', () => {
    const [low, high] = [0.8, 1.2].map((a) => lawful(a, 30, nuAt(333.15))) as [number, number];
    expect(valueOf(p1({ fill_m3: 0.0028 }).spin)).toBeCloseTo((low + high) / 2, 9);
    expect(valueOf(p1({ fill_m3: 0.00243 }).spin)).toBeCloseTo(low, 9);
  });

  it('of an oil that was not run is that of its viscosity, and its final temperature is not told', () => {
    const same = { nu40_m2_s: oil.nu40_m2_s, nu100_m2_s: oil.nu100_m2_s };
    const row = p1({ oil: same });
    expect(valueOf(row.spin)).toBeCloseTo(valueOf(p1({}).spin), 9);
    expect(why(row.final)).toContain('not run under load');
  });

  it('with another ratio is a band that holds both ways of scaling, and is refused a quarter off', () => {
    const { spin } = p1({ ratio: 4.4 });
    if (spin.kind !== 'band') throw new Error(spin.kind);
    for (const speed of [30, 33]) {
      expect(spin.low).toBeLessThan(lawful(0.8, speed, nuAt(333.15)));
      expect(spin.high).toBeGreaterThan(lawful(0.8, speed, nuAt(333.15)));
    }
    expect(why(p1({ ratio: 5.1 }).spin)).toContain('more than a quarter off');
    expect(p1({ ratio: 4.01 }).spin.kind).toBe('value');
  });

  it.each([
    ['a speed beyond the fastest that was run', { wheel_rad_s: 52 }, 'of the wheel only'],
    ['a sump so cold that the oil is thicker than in any run', { sump_K: 300 }, 'run from'],
    ['a fill beyond those that were run', { fill_m3: 0.004 }, 'run with 2.40'],
    ['viscosities that no oil has', { oil: { nu40_m2_s: 1e-5, nu100_m2_s: 1e-4 } }, 'give no line'],
    ['an oil that the series does not know', { oil: 'O9' }, 'not spun with O9'],
  ] as const)('is refused with the reason for %s', (_, asked, says) => {
    expect(why(p1(asked).spin)).toContain(says);
  });
});

describe("final temperature of a reader's own axle", () => {
  /** Where heat made and heat shed meet, found by halving: Q(T) = Q + s·(T − T0) + more, K·(T − Ta). */
  const settled = (of: { more_W: number; ambient_K: number }, final_K: number): number => {
    const made0 = K * (final_K - 293.15);
    let [low, high] = [of.ambient_K, 600];
    for (let i = 0; i < 200; i++) {
      const T = (low + high) / 2;
      if (made0 + of.more_W + s * (T - final_K) > K * (T - of.ambient_K)) low = T;
      else high = T;
    }
    return low;
  };

  it('is the published figure in the case of the series', () => {
    expect(p1({}).final).toEqual({ kind: 'value', value: 372.15, half: 1 });
  });

  it('moves with ambient, load and speed to where heat made and heat shed meet', () => {
    expect(valueOf(p1({ ambient_K: 300.15 }).final)).toBeCloseTo(settled({ more_W: 0, ambient_K: 300.15 }, 372.15), 6);
    const more_W = 850 * 0.05 + 150 * (1.04 ** 1.5 - 1);
    const moved = p1({ power_W: 21e3, wheel_rad_s: 31.2 }).final;
    expect(valueOf(moved)).toBeCloseTo(settled({ more_W, ambient_K: 293.15 }, 372.15), 6);
    expect(halfOf(moved)).toBeGreaterThan(1);
  });

  it('is refused with the reason for another airflow, a far load, and further than 10 K', () => {
    expect(why(p1({ airflow_m_s: 8 }).final)).toContain('4.0');
    expect(why(p1({ power_W: 26e3 }).final)).toContain('a tenth off');
    expect(why(p1({ ambient_K: 308.15 }).final)).toContain('no further than 10 K');
  });

  it('stands for its own conditions only where its answer was not measured', () => {
    const bare = { ...data, loaded: [loaded('P1', 372.15, { moves: null })] };
    expect(p1({}, bare).final.kind).toBe('value');
    expect(why(p1({ ambient_K: 295 }, bare).final)).toContain('own conditions only');
  });

  it('says when it runs above what is stated for the oil', () => {
    const hot = { ...data, loaded: [loaded('P1', 393.15)] };
    expect(p1({}, hot).notes.join(' ')).toContain('120');
    expect(p1({}).notes).toEqual([]);
  });
});

describe("what a difference costs on a reader's own road", () => {
  it('is watts over road speed and the share that the drive passes on', () => {
    const { less, cost } = p1({});
    expect(valueOf(cost)).toBeCloseTo(valueOf(less) / (30 * 0.5) / 0.8, 12);
  });

  it('needs a tyre', () => {
    expect(why(p1({ radius_m: null }).cost)).toContain('no tyre');
  });
});
