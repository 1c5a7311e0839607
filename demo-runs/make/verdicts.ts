import { bearingRise_K, type Load, settled, type SetUp, spinPower_W } from './law.ts';
import type { RunPlan } from './order.ts';

/** Words of the demo's eight claims, from the truth of a draw and the nominal half-widths of the plan. */
export interface Verdict {
  readonly claim: string;
  readonly says: string;
  readonly word: string;
  readonly effect: number;
  readonly halfWidth: number;
  readonly threshold: number;
  readonly unit: string;
}

export interface DrawnRun {
  readonly plan: RunPlan;
  readonly setUp: SetUp;
  readonly air_m_s: number;
  /** True time to 95 °C, s; null when not reached. */
  readonly to95_s: number | null;
}

export const hillLoad: Load = { wheel_rpm: 290, powerOut_W: 22_000 };
const half = { spin_W: 9, rise_K: 1.8, time_min: 7, bearing_K: 1, share: 0.15 };
/** What the fan's return added to the ambient probe of H-09. */
export const fanReturn_K = 3.4;

export function verdicts(runs: readonly DrawnRun[]): readonly Verdict[] {
  const spin = mean(runs, 'spin', (r) => spinPower_W(r.setUp, { wheel_rpm: 290, temp_C: 60 }));
  const final = (r: DrawnRun) => settled(r.setUp, hillLoad, { air_m_s: r.air_m_s, ambient_C: 21 });
  const rise = mean(runs, 'heat-up', (r) => final(r).rise_K);
  const heat = mean(runs, 'heat-up', (r) => final(r).heat_W);
  const time = mean(runs, 'heat-up', (r) => (r.to95_s ?? NaN) / 60);
  const bearing = (tilt: number) => mean(runs, 'heat-up', (r) => bearingRise_K(r.setUp, 290, tilt));
  const [deep, shroud, tray, moulded] = [key('P1', 3.59), key('P4'), key('P2'), key('P3')];
  const base = key('P0');
  const share = Math.log(heat(base) / heat(deep)) / Math.log(rise(base) / rise(deep));
  const cooler = rise(base) - rise(tray);
  const quick = (claim: string, says: string, effect: number, halfWidth: number, threshold: number, unit: string) => ({
    ...{ claim, says, effect, halfWidth, threshold, unit },
    word: word(effect, halfWidth, threshold),
  });
  const within = Math.min(...[0, 12].map((tilt) => bearing(tilt)(shroud) - bearing(tilt)(base)));
  return [
    quick('CL-1', 'P1 at equal level settles at least 5 K lower than P0', rise(base) - rise(deep), half.rise_K, 5, 'K'),
    quick('CL-2', 'at least half of it because it makes less heat', share, half.share, 0.5, '1'),
    quick(
      'CL-3',
      'P4 cuts spin loss by at least 15 W at 290 rpm and 60 °C',
      spin(base) - spin(shroud),
      half.spin_W,
      15,
      'W',
    ),
    {
      ...{ claim: 'CL-4', says: 'P4 keeps the bearing rise within 2 K of P0, level and at 12 %', effect: within },
      ...{ halfWidth: half.bearing_K, threshold: 2, unit: 'K', word: withinWord(within, half.bearing_K, 2) },
    },
    quick(
      'CL-5',
      'P2 settles at least 1.5 K lower than P0, as first read',
      cooler + fanReturn_K,
      half.rise_K,
      1.5,
      'K',
    ),
    quick('CL-5', 'P2 settles at least 1.5 K lower than P0, corrected', cooler, half.rise_K, 1.5, 'K'),
    quick('CL-6', 'the fuller bowl takes longer to 95 °C', time(key('P0', 3.2)) - time(base), half.time_min, 0, 'min'),
    quick('CL-6', 'the fuller bowl loses more', spin(key('P0', 3.2)) - spin(base), half.spin_W, 0, 'W'),
    quick('CL-7', 'P3 settles hotter than P0', rise(moulded) - rise(base), half.rise_K, 0, 'K'),
    quick('CL-7', 'P3 settles hotter than P0 by more than 2 K', rise(moulded) - rise(base), half.rise_K, 2, 'K'),
    quick(
      'CL-8',
      'P0 with O2 spins with less than P4 with O1',
      spin(shroud) - spin(key('P0', 2.4, 'O2')),
      half.spin_W,
      0,
      'W',
    ),
  ];
}

const wanted =
  'shown, shown against, shown, shown against, shown, not shown, not shown, shown, shown, leaning, shown'.split(', ');

export const asTold = (found: readonly Verdict[]): boolean => found.every((v, i) => v.word === wanted[i]);

function word(effect: number, halfWidth: number, threshold: number): string {
  const [low, high] = [effect - halfWidth, effect + halfWidth];
  if (threshold === 0 ? low > 0 : low >= threshold) return 'shown';
  if (high < threshold) return 'shown against';
  return low <= 0 && high >= 0 ? 'not shown' : 'leaning';
}

function withinWord(effect: number, halfWidth: number, threshold: number): string {
  if (Math.abs(effect) + halfWidth <= threshold) return 'shown';
  if (Math.abs(effect) - halfWidth > threshold) return 'shown against';
  return Math.abs(effect) <= threshold ? 'leaning' : 'not shown';
}

const key = (article: string, fill_L = 2.4, oil = 'O1'): string => `${article} ${fill_L} ${oil}`;

const mean =
  (runs: readonly DrawnRun[], trial: string, of: (run: DrawnRun) => number) =>
  (cell: string): number => {
    const found = runs
      .filter(({ plan }) => plan.trial === trial && plan.tilt_pct === 0)
      .filter(({ plan }) => key(plan.article, plan.fill_L, plan.oil) === cell)
      .map(of);
    return found.reduce((sum, x) => sum + x, 0) / found.length;
  };
