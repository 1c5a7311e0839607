import { logLogLine, viscosityAt_m2_s } from '../physics/viscosity.ts';
import type { AxleAsked, AxleData, KnownOil, Spread, SpunCell, SpunPoint } from '../trial/own-axle.ts';
import { alongLine, alongPower, between, type Between } from './own-between.ts';
import * as texts from './texts-own.ts';

/** Spin power brought to a speed and a viscosity between those that were run, and the same less the baseline. */
export interface Spun {
  readonly power: Spread;
  readonly less: Spread | null;
  readonly indicative: boolean;
}

/**
 * Spin power of one article as asked, from its own runs: along a power law between speeds and between viscosities, along a
 * straight line between fills. At a speed, temperature and fill that were run it is the published figure itself.
 *
 *   ln P straight in ln n and in ln ν
 *
 * range    speeds, viscosities and fills that were run; nothing beyond
 * source   churning and drag go with powers of speed and viscosity (common practice, no source); how far that may be off is
 *          added to the interval
 */
export function spinOf(data: AxleData, asked: AxleAsked, article: string, wheel_rad_s: number): Spun | string {
  // An oil that was not run stands by its viscosity in the place of the baseline's.
  const oil = typeof asked.oil === 'string' ? asked.oil : data.baseline.oil;
  const cells = data.spun.filter((c) => c.article === article && c.oil === oil);
  const known = data.oils.find(({ id }) => id === oil);
  if (cells.length === 0 || known === undefined) return texts.notRun('spun', oil);
  return acrossFills(cells, asked.fill_m3, data.tolerance.fill_m3, (cell) =>
    inCell(cell, { known, nu_m2_s: askedViscosity(data, asked), wheel_rad_s, slack: data.tolerance.speed_ratio }),
  );
}

/** m²/s at the sump asked for; null where the two viscosities give no line. */
export function askedViscosity({ oils }: AxleData, { oil, sump_K }: AxleAsked): number | null {
  const two = typeof oil === 'string' ? oils.find(({ id }) => id === oil) : oil;
  return two === undefined ? null : viscosity(two, sump_K);
}

function viscosity(two: { readonly nu40_m2_s: number; readonly nu100_m2_s: number }, oil_K: number): number | null {
  const line = logLogLine(two);
  return line === null ? null : viscosityAt_m2_s({ line, oil_K });
}

/** The cell with the fill asked for, or along the line between the two that it lies between. */
function acrossFills(
  cells: readonly SpunCell[],
  fill_m3: number,
  slack: number,
  of: (cell: SpunCell) => Spun | string,
): Spun | string {
  const sorted = [...cells].sort((a, b) => a.fill_m3 - b.fill_m3);
  const at = fillPlace(sorted, fill_m3, slack);
  if (at === null) return texts.otherFills(sorted.map((c) => c.fill_m3));
  const [low, high] = [of(sorted[at.low]!), of(sorted[at.high]!)];
  if (typeof low === 'string') return low;
  if (typeof high === 'string' || at.low === at.high) return typeof high === 'string' ? high : low;
  return {
    power: alongLine(low.power, high.power, at.share),
    less: low.less === null || high.less === null ? null : alongLine(low.less, high.less, at.share),
    indicative: low.indicative || high.indicative,
  };
}

/** A fill within the tolerance of one that was run is that one. */
export function fillPlace(sorted: readonly { readonly fill_m3: number }[], fill_m3: number, slack: number) {
  const near = sorted.findIndex((c) => Math.abs(c.fill_m3 - fill_m3) <= slack + 1e-12);
  return between(
    sorted.map((c) => c.fill_m3),
    near < 0 ? fill_m3 : sorted[near]!.fill_m3,
  );
}

interface At {
  readonly known: KnownOil;
  readonly nu_m2_s: number | null;
  readonly wheel_rad_s: number;
  /** How far beyond the first and last speed still is that speed, as a share. */
  readonly slack: number;
}

function inCell(cell: SpunCell, { known, nu_m2_s, wheel_rad_s, slack }: At): Spun | string {
  if (nu_m2_s === null || !(nu_m2_s > 0)) return texts.noViscosity;
  const levels = [...new Set(cell.points.map(({ sump_K }) => sump_K))]
    .flatMap((sump_K) => {
      const nu = viscosity(known, sump_K);
      return nu === null || !(nu > 0) ? [] : [{ sump_K, nu, points: cell.points.filter((p) => p.sump_K === sump_K) }];
    })
    .sort((a, b) => a.nu - b.nu);
  const at = between(
    levels.map(({ nu }) => Math.log(nu)),
    Math.log(nu_m2_s),
    1e-9,
  );
  if (at === null) return texts.viscosityOutside(levels[0]?.nu ?? 0, levels.at(-1)?.nu ?? 0);
  const found = levels.map(({ nu, sump_K, points }) => ({
    x: Math.log(nu),
    of: alongSpeeds(points, { wheel_rad_s, slack, sump_K, all: cell.points }),
  }));
  return mixed(found, at, Math.log(nu_m2_s));
}

function alongSpeeds(
  points: readonly SpunPoint[],
  at: { wheel_rad_s: number; slack: number; sump_K: number; all: readonly SpunPoint[] },
): Spun | string {
  const sorted = [...points]
    .sort((a, b) => a.speed_rad_s - b.speed_rad_s)
    .map((of) => ({ x: Math.log(of.speed_rad_s), of }));
  const place = between(
    sorted.map(({ x }) => x),
    Math.log(at.wheel_rad_s),
    Math.log1p(at.slack),
  );
  if (place !== null) return mixed(sorted, place, Math.log(at.wheel_rad_s));
  const speeds = at.all.map((p) => p.speed_rad_s);
  const [slowest, fastest] = [Math.min(...speeds), Math.max(...speeds)];
  const within = at.wheel_rad_s >= slowest && at.wheel_rad_s <= fastest;
  return within ? texts.speedNotThere(at.sump_K) : texts.speedOutside(slowest, fastest);
}

interface Node {
  readonly x: number;
  readonly of: Spun | string;
}

/**
 * Between two nodes along power laws, of the article and of its baseline apart. What the laws may be off by is added to the
 * half-intervals; in the difference only what is not common to both.
 */
function mixed(nodes: readonly Node[], at: Between, x: number): Spun | string {
  const [low, high] = [nodes[at.low]!, nodes[at.high]!];
  const [a, b] = [low.of, high.of];
  if (typeof a === 'string' || at.low === at.high) return a;
  if (typeof b === 'string') return b;
  const third = nodes[at.low - 1] ?? nodes[at.high + 1];
  const next = third === undefined || typeof third.of === 'string' ? null : { x: third.x, of: third.of };
  const own = alongPower([low.x, a.power.value], [high.x, b.power.value], next && [next.x, next.of.power.value], x);
  const base = baseOf({ low, high, a, b, next, x });
  const half = alongLine(a.power, b.power, at.share).half;
  return {
    power: { value: own.value, half: half + own.parts },
    less: base && {
      value: own.value - base.value,
      half: alongLine(a.less!, b.less!, at.share).half + Math.abs(own.parts - base.parts),
    },
    indicative: a.indicative || b.indicative,
  };
}

/** The baseline along the same way; null where there is no difference at either end. */
function baseOf(of: { low: Node; high: Node; a: Spun; b: Spun; next: { x: number; of: Spun } | null; x: number }) {
  const { low, high, a, b, next, x } = of;
  const base = (s: Spun): number => s.power.value - s.less!.value;
  if (a.less === null || b.less === null) return null;
  const third = next === null || next.of.less === null ? null : ([next.x, base(next.of)] as const);
  return alongPower([low.x, base(a)], [high.x, base(b)], third, x);
}
