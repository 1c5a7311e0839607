import type { AxleAsked, AxleData, LoadedCell, Spread } from '../trial/own-axle.ts';
import { fillPlace } from './own-spin.ts';
import { alongLine } from './own-between.ts';
import * as texts from './texts-own.ts';

/** How far speed and load may be off those of the loaded runs, as they may for the runs themselves (common practice, no source). */
const farthest = 0.1;
/** The answer to ambient and load is taken at one temperature: no further than this from it (common practice, no source). */
const farthest_K = 10;
/** Closer than this, load and ambient are those of the runs. */
const same = 1e-9;
/** Half of a 95 % interval of a moved figure, in standard uncertainties. */
const k = 2;

/**
 * Final sump temperature of one article as asked, from its loaded runs as published for load, speed and ambient of the series.
 *
 *   T = T_ref + [ΔQ + K·ΔT_a]/(K − s),   ΔQ = Q_mesh·(P/P_ref − 1) + S·[(n/n_ref)^p − 1]
 *
 * Q_mesh = Q − S the heat made less the spin power, K the shed, s = dQ/dT, p the exponent of speed of the spin power; all
 * measured. `spinFaster` is how much faster than on the bench the spin power is taken to turn.
 *
 * range    speed and power within a tenth, no more than 10 K away; airflow and oil as they were run
 * source   as the correction of loaded runs to load, speed and ambient of their plan
 */
export function finalOf(data: AxleData, asked: AxleAsked, article: string, spinFaster = 1): Spread | string {
  const { load, tolerance } = data;
  if (typeof asked.oil !== 'string') return texts.otherOil;
  const cells = data.loaded
    .filter((c) => c.article === article && c.oil === asked.oil)
    .sort((a, b) => a.fill_m3 - b.fill_m3);
  if (cells.length === 0 || load === null) return texts.notRun('loaded', asked.oil);
  if (Math.abs(asked.airflow_m_s - load.airflow_m_s) > tolerance.airflow_m_s + same)
    return texts.otherAir(load.airflow_m_s);
  const at = fillPlace(cells, asked.fill_m3, tolerance.fill_m3);
  if (at === null) return texts.otherFills(cells.map((c) => c.fill_m3));
  const off = {
    speed: asked.wheel_rad_s / load.speed_rad_s,
    power: asked.power_W / load.power_W,
    ambient_K: asked.ambient_K - load.ambient_K,
    spinFaster,
  };
  const torque = off.power / off.speed;
  if ([off.speed, torque].some((ratio) => !(Math.abs(ratio - 1) <= farthest + same)))
    return texts.loadFar(load.speed_rad_s, load.power_W);
  const [low, high] = [moved(cells[at.low]!, off), moved(cells[at.high]!, off)];
  if (typeof low === 'string') return low;
  return typeof high === 'string' ? high : at.low === at.high ? low : alongLine(low, high, at.share);
}

interface Off {
  readonly speed: number;
  readonly power: number;
  readonly ambient_K: number;
  readonly spinFaster: number;
}

function moved({ final, moves }: LoadedCell, off: Off): Spread | string {
  const own = [off.speed - 1, off.power - 1, off.spinFaster - 1, off.ambient_K].every((d) => Math.abs(d) < same);
  if (own) return final;
  if (moves === null) return texts.noMoves;
  const { made_W, spin_W, exponent, shed_W_K: K, slope_W_K: s, u } = moves;
  const net = K - s;
  if (!(net > 0)) return texts.noBalance;
  const faster = off.speed * off.spinFaster;
  const spun = faster ** exponent;
  const watts = (made_W - spin_W) * (off.power - 1) + spin_W * (spun - 1);
  const by_K = (watts + K * off.ambient_K) / net;
  if (!(Math.abs(by_K) <= farthest_K)) return texts.tooFar(by_K);
  const parts = [
    ((off.power - 1) / net) * u.made_W,
    ((spun - off.power) / net) * u.spin_W,
    ((spin_W * spun * Math.log(faster)) / net) * u.exponent,
    ((off.ambient_K - by_K) / net) * u.shed_W_K,
    (by_K / net) * u.slope_W_K,
  ];
  // Added straight: the figure and what moves it rest on the same run.
  return { value: final.value + by_K, half: final.half + k * Math.hypot(...parts) };
}
