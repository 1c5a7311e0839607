import { writeNumber } from '../quantity/write.ts';

/** Reasons why two cells are not compared, and notes on what stands behind a comparison. */

const fixed = writeNumber;

const named: Readonly<Record<string, string>> = { article: 'article', oil: 'oil', tilt: 'tilt', fill: 'litres' };

export const severalChanged = (what: readonly string[]): string =>
  `${what.map((w) => named[w] ?? w).join(' and ')} differ at once: which of them did it cannot be told`;

export const notAFactor = (what: string): string => `${named[what] ?? what} differs and is no factor of the plan`;

export const neitherBasis = (by: { litres: number; level_m: number | null }): string =>
  by.level_m === null
    ? `litres differ by ${fixed(by.litres * 1e3, 2)} L and no level is known`
    : `neither the same litres (${fixed(by.litres * 1e3, 2)} L apart) nor the same level (${fixed(by.level_m * 1e3, 1)} mm apart)`;

export const rigStates = (states: readonly string[]): string => `rig states differ: ${states.join(', ')}`;

export const ambientDiffers = (by_K: number, tolerance_K: number): string =>
  `ambient differs by ${fixed(by_K, 1)} K, more than the ${fixed(tolerance_K, 1)} K of the series`;

export const ambientMoved = (runs: readonly string[]): string =>
  `ambient moved by more than 3 K during ${runs.join(', ')}: its temperatures stand for no one ambient`;

export const airflowDiffers = (by_m_s: number, tolerance_m_s: number): string =>
  `airflow differs by ${fixed(by_m_s, 2)} m/s, more than the ${fixed(tolerance_m_s, 2)} m/s of the series`;

export const rotations = 'the directions of rotation differ';

export const speedDiffers = (by: number, tolerance: number): string =>
  `speed differs by ${fixed(by * 100, 1)} %, more than the ${fixed(tolerance * 100, 1)} % of the series`;

export const loadDiffers = (by: number, tolerance: number): string =>
  `power out differs by ${fixed(by * 100, 1)} %, more than ${fixed(tolerance * 100, 0)} %`;

export const mixedBaseline = (reasons: readonly string[]): string =>
  `the runs of the baseline do not repeat each other: ${reasons.join('; ')}`;

export const noBaseline = (oil: string, tilt_ratio: number): string =>
  `the baseline was not run with ${oil}${tilt_ratio === 0 ? '' : ' at this tilt'}`;

export const baselineNotReached = (minutes: number): string => `of the baseline ${notReached(minutes)}`;

export const noFinal = 'without a final temperature it is not known what ambient or airflow do to this time';

export const notReached = (minutes: number): string => `the limit was not reached in ${fixed(minutes, 0)} min`;

export const oneEach = 'one run each; scatter from the causes of each run';

export const fewRepeats = 'too few repeats to measure scatter; it is taken from the causes of each run';

export const noRepeat =
  'too few repeats to measure scatter, and none known from elsewhere: not ranked; refit and run at least two articles twice each';

export const tooFewForDrift = (why: string): string => `drift over the series is not taken out: ${why}`;

export const repeats = (s: { runs: number; cells: number }): string =>
  `scatter pooled over ${s.runs} runs of ${s.cells} cells; the unit of repeat is the refit`;

export const baselineOnce = 'the baseline was run once only, so that drift is not known';

export const baselineNotAgain = (run: string): string =>
  `the baseline was not run again after ${run}, so that drift since then is not known`;

export const oneDay = 'all runs are of one day: what another day does is not in the intervals';

export const notSettled = (states: readonly string[]): string => `rig state ${states.join(', ')} had not settled`;

export const baselineWandered = (of: { runs: number; times: number }): string =>
  `baseline wandered: its ${of.runs} runs scatter ${fixed(of.times, 1)} times as much as they may, drift taken out`;
