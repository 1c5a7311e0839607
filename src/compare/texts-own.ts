import { writeNumber } from '../quantity/write.ts';

/** Why a figure is not scaled to a reader's axle: what was asked, and what was run. */

const rpm = (rad_s: number): string => `${writeNumber((rad_s * 30) / Math.PI, 0)}\u202frpm`;
const litres = (m3: number): string => `${writeNumber(m3 * 1e3, 2)}\u202fL`;
const celsius = (K: number): string => `${writeNumber(K - 273.15, 0)}\u202f°C`;
const mm2_s = (m2_s: number): string => `${writeNumber(m2_s * 1e6, m2_s < 1e-5 ? 2 : 1)}\u202fmm²/s`;

export const notRun = (what: 'spun' | 'loaded', oil: string): string => `not ${what} with ${oil}`;

export const otherFills = (fills: readonly number[]): string => `run with ${each(fills.map(litres))} only`;

export const speedOutside = (from: number, to: number): string =>
  `run from ${rpm(from)} to ${rpm(to)} of the wheel only`;

export const speedNotThere = (oil_K: number): string => `not run on both sides of this speed at ${celsius(oil_K)}`;

export const viscosityOutside = (thin: number, thick: number): string =>
  `run from ${mm2_s(thin)} to ${mm2_s(thick)} only`;

export const noViscosity = 'the two viscosities give no line: both above 0.3 mm²/s, less at 100 °C than at 40 °C';

export const ratioFar = (bench: number): string =>
  `the ratio is more than a quarter off the ${writeNumber(bench, 2)} of the bench`;

export const otherOil = 'the oil was not run under load';

export const otherAir = (m_s: number): string => `run with ${writeNumber(m_s, 1)}\u202fm/s of air only`;

export const noMoves = 'how its heat goes with temperature was not measured, so it stands for its own conditions only';

export const loadFar = (speed_rad_s: number, power_W: number): string =>
  `more than a tenth off the ${rpm(speed_rad_s)} and ${writeNumber(power_W / 1e3, 1)}\u202fkW of the loaded runs`;

export const tooFar = (K: number): string =>
  `it would move by ${writeNumber(Math.abs(K), 0)}\u202fK; no further than 10 K is scaled`;

export const noBalance = 'its heat grows faster with temperature than what it sheds';

export const noTyre = 'no tyre is given, so no road speed is known';

export const notCompared = 'not compared with the baseline at this fill';

export const stands = 'at standstill, or through a drive that passes nothing on, there is no cost';

export const aboveStated = (of: string, limit_K: number): string =>
  `Above the ${celsius(limit_K)} that is stated for ${of}.`;

const each = (list: readonly string[]): string =>
  list.length < 2 ? list.join('') : `${list.slice(0, -1).join(', ')} and ${list.at(-1)!}`;
