import type { Series } from '../trial/book.ts';
import type { Cell, DerivedRun } from '../trial/derived.ts';
import type { Effect } from '../trial/compared.ts';
import type { Plan } from '../trial/plan.ts';
import type { QuantityName } from '../trial/figures.ts';
import * as texts from './texts.ts';

/** What two cells may be compared on, or every reason why not. */
export type Pairing =
  { readonly ok: true; readonly basis: Effect['basis'] } | { readonly ok: false; readonly reasons: readonly string[] };

/**
 * A difference that the plan names as its factor is the subject, not a mismatch; but only one thing may be the subject.
 * Two articles need the same litres or the same level within the tolerance of the series.
 */
export function pairing(input: {
  cell: Cell;
  against: Cell;
  runs: readonly DerivedRun[];
  againstRuns: readonly DerivedRun[];
  quantity: QuantityName;
  series: Series;
  plan: Plan | null;
}): Pairing {
  const { cell, against, runs, againstRuns, series, plan } = input;
  const { tolerance } = series;
  const factor = (name: string): boolean => plan?.factors.includes(name) ?? false;
  const reasons = conditionsDiffer(input);
  const level = (list: readonly DerivedRun[]): number | null => meanKnown(list.map((r) => r.conditions.level_z_m));
  const [z, z0] = [level(runs), level(againstRuns)];
  const sameLitres = Math.abs(cell.fill_m3 - against.fill_m3) <= tolerance.fill_m3;
  const sameLevel = z !== null && z0 !== null && Math.abs(z - z0) <= tolerance.level_m;
  const changed = [
    cell.article !== against.article ? 'article' : '',
    cell.oil !== against.oil ? 'oil' : '',
    cell.tilt_ratio !== against.tilt_ratio ? 'tilt' : '',
    cell.article === against.article && !sameLitres ? 'fill' : '',
  ].filter((c) => c !== '');
  if (changed.length > 1) reasons.push(texts.severalChanged(changed));
  for (const c of changed) if (!factor(c)) reasons.push(texts.notAFactor(c));
  if (changed.includes('article') && !sameLitres && !sameLevel)
    reasons.push(
      texts.neitherBasis({
        litres: cell.fill_m3 - against.fill_m3,
        level_m: z === null || z0 === null ? null : z - z0,
      }),
    );
  if (reasons.length > 0) return { ok: false, reasons };
  if (changed[0] === 'oil') return { ok: true, basis: 'oil is the subject' };
  if (changed[0] === 'tilt') return { ok: true, basis: 'tilt is the subject' };
  if (changed[0] === 'fill') return { ok: true, basis: 'fill is the subject' };
  return {
    ok: true,
    basis: sameLitres && sameLevel ? 'same litres and level' : sameLitres ? 'same litres' : 'same level',
  };
}

/** Rig state, ambient and airflow: never the subject here. */
function conditionsDiffer(input: Parameters<typeof pairing>[0]): string[] {
  const { runs, againstRuns, series, quantity } = input;
  const { tolerance } = series;
  const reasons: string[] = [];
  const states = new Set([...runs, ...againstRuns].map((r) => r.rigState));
  if (states.size > 1) reasons.push(texts.rigStates([...states].sort()));
  if (quantity === 'spin-power' || quantity === 'spin-torque') return reasons;
  const moved = [...runs, ...againstRuns].filter((r) => r.findings.some((f) => f.code === 'ambient-moved'));
  if (moved.length > 0) reasons.push(texts.ambientMoved(moved.map((r) => r.run)));
  const gap = (pick: (r: DerivedRun) => number | null): number => {
    const [a, b] = [meanKnown(runs.map(pick)), meanKnown(againstRuns.map(pick))];
    return a === null || b === null ? 0 : a - b;
  };
  const ambient_K = gap((r) => r.conditions.ambient_K);
  if (Math.abs(ambient_K) > tolerance.ambient_K) reasons.push(texts.ambientDiffers(ambient_K, tolerance.ambient_K));
  const airflow = gap((r) => r.conditions.airflow_m_s);
  if (Math.abs(airflow) > tolerance.airflow_m_s) reasons.push(texts.airflowDiffers(airflow, tolerance.airflow_m_s));
  return reasons;
}

function meanKnown(list: readonly (number | null)[]): number | null {
  const known = list.filter((v): v is number => v !== null);
  return known.length === 0 ? null : known.reduce((a, b) => a + b, 0) / known.length;
}
