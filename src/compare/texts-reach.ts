import { writeNumber } from '../quantity/write.ts';
import type { PlanCell } from '../trial/plan.ts';
import type { ReachKind } from '../trial/plan-reach.ts';

/** What a plan can part and what it cannot: clauses without a full stop. */

const litres = ({ fill_m3 }: Pick<PlanCell, 'fill_m3'>): string => `${writeNumber(fill_m3 * 1e3, 2)} L`;

/** "P1 2.40 L", with the oil or the tilt where it matters there. */
export const cellWords = (cell: PlanCell): string => `${cell.article} ${litres(cell)}`;
export const tiltName = (tilt_ratio: number): string =>
  tilt_ratio === 0 ? 'level' : `${writeNumber(Math.abs(tilt_ratio) * 100, 0)} % nose ${tilt_ratio > 0 ? 'up' : 'down'}`;

export const pairOf = (a: PlanCell, b: PlanCell): string => `${cellWords(a)} beside ${cellWords(b)}`;
export const pairOfOils = (a: PlanCell, b: PlanCell): string => `${cellWords(a)} with ${a.oil} and with ${b.oil}`;
export const pairOfTilts = (a: PlanCell, b: PlanCell): string =>
  `${cellWords(a)} ${tiltName(a.tilt_ratio)} and ${tiltName(b.tilt_ratio)}`;
export const square = (fills: readonly PlanCell[]): string => `both are run with ${fills.map(litres).join(' and ')}`;

export const notNamed = (factor: string): string =>
  `${factor} is no factor of the plan, so that a difference in it is a mismatch`;
export const noBaselineThere = 'the baseline is not run there';
export const noBaselineAtReference = 'the baseline is not run there at its own fill';
export const noTable = 'it has no level table, so that its level is not known';
export const noBaselineTable = 'the baseline has no level table, so that its level is not known';
export const levelApart = (apart_m: number): string =>
  `the nearest levels are ${writeNumber(apart_m * 1e3, 1)} mm apart`;
export const fillApart = (apart_m3: number): string => `the nearest fills are ${litres({ fill_m3: apart_m3 })} apart`;

/** What stands in the way of a contrast in a design where each effect simply adds. */
export const bound = (to: readonly string[]): string =>
  to.length === 0 ? 'it goes with several things at once' : `it cannot be parted from ${to.join(' or ')}`;
export const together = (what: readonly string[]): string => `it changes only together with ${what.join(' and ')}`;
export const onlyIfAdding =
  'only if every article answered alike to what differs could it be worked out, and that is not assumed here';

export const oneFill = 'run at one fill only';
export const oneOil = 'run with one oil only';
export const oneTilt = 'run at one tilt only';
export const fewerSharedFills = (shared: number): string =>
  shared === 0 ? 'no fill is shared with the baseline' : 'one fill only is shared with the baseline';
export const oilsNotShared = 'it takes the article and the baseline in both oils, at the same litres or the same level';

export const repeatsOf = (extra: number, cells: number): string =>
  `${extra} repeats beyond the first run of ${cells} cells`;
export const onceEach = 'one run a cell';
export const fewRepeats = (extra: number): string =>
  extra === 0 ? 'no repeat' : `${extra} ${extra === 1 ? 'repeat' : 'repeats'} in all`;
export const fromSpin = 'the scatter of a refit is taken from the spin trials and the causes that are known';
export const notUsedFor = 'nothing is ranked by it';
export const otherUnit = (unit: string): string =>
  `a repeat is a ${unit}, so that taking the article off and putting it back is not in it`;

export const driftFrom = (extra: number): string => `cells come back over the trial, ${extra} repeats in all`;
export const driftNeedsFive = 'one drift is fitted from five runs of repeated cells on';
export const baselineOnce = 'the baseline is run once';
export const baselineNotRun = 'the baseline is not planned';
export const baselineNotLast =
  'the baseline is not run again at the end, so that what moved since its last run is not known';
export const baselineNotFirst = 'the baseline is not run at the start';
export const bends = (n: number): string => `${n} runs of the baseline, at start, between and at the end`;
export const noBend = 'two points make a straight line only; run the baseline in the middle too';

export const limits = (n: number): string => (n === 1 ? 'one limit is timed' : `${n} limits are timed`);
export const fewLimits = (n: number): string =>
  `${limits(n)}; it takes three to see the order of articles change with the limit`;
export const temperatures = (n: number): string => `steps are run at ${n} temperatures`;
export const oneTemperature =
  'steps are run at one temperature, so that the loss cannot be carried to another by its own slope';
export const twoTemperatures = 'steps are run at two temperatures: a slope, and nothing that says whether it bends';
export const oneAirflow = 'airflow is held, and no cell names another; what it does is taken from known relations';

/** The effect in the words of a table and of the terminal. */
export const effectNames: Readonly<Record<ReachKind, string>> = {
  'same litres': 'Article against the baseline at the same litres',
  'same level': 'Article against the baseline at the same level',
  fill: 'What the fill does, article by article',
  oil: 'What the oil does',
  tilt: 'What the tilt does',
  'article by fill': 'Whether the article’s effect changes with the litres',
  'article by oil': 'Whether the article’s effect changes with the oil',
  scatter: 'Scatter of a refit',
  'steady drift': 'A steady drift over the trial',
  'bent drift': 'A drift that bends',
  limit: 'Whether the order hangs on the limit',
  temperature: 'How the loss answers to temperature',
  airflow: 'What airflow does',
};
