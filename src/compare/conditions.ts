import type { Series } from '../trial/book.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { QuantityName } from '../trial/figures.ts';
import * as texts from './texts.ts';

/** How far loads may differ: 2 % of power out is about 2 % of the final rise (common practice, no source). */
const load_ratio = 0.02;

/** How far ambient may differ where no run tells what it does (common practice, no source). */
const uncorrected_K = 3;

interface Held {
  readonly quantity: QuantityName;
  readonly series: Series;
}
type Conditions = DerivedRun['conditions'];
/** How far a condition is apart; 0 where it is not known. */
type Apart = (pick: (c: Conditions) => number | null) => number;

/** Why two cells are not compared: rig state, rotation, ambient, airflow, speed, load. None is ever the subject here. */
export function conditionsDiffer(
  of: Held & { readonly runs: readonly DerivedRun[]; readonly againstRuns: readonly DerivedRun[] },
): string[] {
  const { runs, againstRuns } = of;
  return reasons(of, [...runs, ...againstRuns], (pick) => {
    const [a, b] = [runs, againstRuns].map((list) => meanKnown(list.map((r) => pick(r.conditions))));
    return a == null || b == null ? 0 : a - b;
  });
}

/** Why runs of one cell have no mean: the same conditions, between the farthest two. */
export function notRepeats(of: Held & { readonly runs: readonly DerivedRun[] }): string[] {
  if (of.runs.length < 2) return [];
  return reasons(of, of.runs, (pick) => {
    const known = of.runs.map((r) => pick(r.conditions)).filter((v) => v !== null);
    return known.length === 0 ? 0 : Math.max(...known) - Math.min(...known);
  });
}

function reasons({ quantity, series }: Held, runs: readonly DerivedRun[], apart: Apart): string[] {
  const { tolerance } = series;
  // Between campaigns the baseline decides, whatever was done to the rig.
  const statesIn = (campaign: string | undefined): string[] => [
    ...new Set(runs.filter((r) => r.cell.campaign === campaign).map((r) => r.rigState)),
  ];
  const states = [...new Set(runs.map((r) => r.cell.campaign))].map(statesIn).find((list) => list.length > 1);
  const always = [
    ...(states === undefined ? [] : [texts.rigStates([...states].sort())]),
    ...(new Set(runs.map((r) => r.conditions.rotation)).size > 1 ? [texts.rotations] : []),
  ];
  if (quantity === 'spin-power' || quantity === 'spin-torque') return always;
  const moved = runs.filter((r) => r.findings.some((f) => f.code === 'ambient-moved'));
  const ambient_K = apart((c) => c.ambient_K);
  // Without a measured slope nothing is corrected, and the window is no wider than this.
  const window_K = runs.every((r) => r.heatSlope_W_K !== null)
    ? tolerance.ambient_K
    : Math.min(tolerance.ambient_K, uncorrected_K);
  const airflow = apart((c) => c.airflow_m_s);
  const ratio = (pick: (c: Conditions) => number | null): number =>
    apart(pick) / (meanKnown(runs.map((r) => pick(r.conditions))) ?? 1);
  const speed = ratio((c) => c.outputSpeed_rad_s);
  const load = ratio((c) => c.powerOut_W);
  return [
    ...always,
    ...(moved.length > 0 ? [texts.ambientMoved(moved.map((r) => r.run))] : []),
    ...(Math.abs(ambient_K) > window_K ? [texts.ambientDiffers(ambient_K, window_K)] : []),
    ...(Math.abs(airflow) > tolerance.airflow_m_s ? [texts.airflowDiffers(airflow, tolerance.airflow_m_s)] : []),
    ...(Math.abs(speed) > tolerance.outputSpeed_ratio ? [texts.speedDiffers(speed, tolerance.outputSpeed_ratio)] : []),
    ...(Math.abs(load) > load_ratio ? [texts.loadDiffers(load, load_ratio)] : []),
  ];
}

export function meanKnown(list: readonly (number | null)[]): number | null {
  const known = list.filter((v): v is number => v !== null);
  return known.length === 0 ? null : known.reduce((a, b) => a + b, 0) / known.length;
}
