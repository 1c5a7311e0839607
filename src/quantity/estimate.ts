/**
 * An estimate keeps its uncertainty by cause, so that a cause two figures share cancels in their difference
 * (JCGM 100:2008, 5.2.2 and F.1.2.3). Nobody types a correlation.
 */

export type Scope = 'reading' | 'run' | 'refit' | 'day' | 'rig-state' | 'series';

/** One independent elementary source of error. Stands once in the series' cause table. */
export interface Cause {
  readonly id: string;
  /** In the trade's words: "calibration of torque-low". */
  readonly name: string;
  readonly kind: 'offset' | 'scale' | 'scatter' | 'model';
  readonly distribution: 'normal' | 'rectangular' | 't';
  /** Degrees of freedom of its standard uncertainty; Infinity when its limits are firm. */
  readonly dof: number;
  readonly scope: Scope;
  /** Causes whose size comes from one and the same estimate of scatter share its degrees of freedom; default: its own id. */
  readonly family?: string;
}

export type CauseTable = ReadonlyMap<string, Cause>;

/** `u` is the signed contribution of the cause, in the unit of the value: sensitivity × standard uncertainty. */
export interface Part {
  readonly cause: string;
  readonly u: number;
}

/** One part a cause at most, sorted by cause id. */
export interface Estimate {
  readonly value: number;
  readonly parts: readonly Part[];
}

export const exact = (value: number): Estimate => ({ value, parts: [] });

export function estimate(value: number, parts: readonly Part[]): Estimate {
  return { value, parts: merge(parts) };
}

/** value = f(inputs) with ∂f/∂input known: first order propagation, cause by cause. */
export function combine(
  value: number,
  inputs: readonly { readonly of: Estimate; readonly sensitivity: number }[],
): Estimate {
  return estimate(
    value,
    inputs.flatMap(({ of, sensitivity }) => of.parts.map((p) => ({ cause: p.cause, u: p.u * sensitivity }))),
  );
}

export const difference = (a: Estimate, b: Estimate): Estimate =>
  combine(a.value - b.value, [
    { of: a, sensitivity: 1 },
    { of: b, sensitivity: -1 },
  ]);

export const scaled = (a: Estimate, factor: number): Estimate =>
  combine(a.value * factor, [{ of: a, sensitivity: factor }]);

export const quotient = (a: Estimate, b: Estimate): Estimate =>
  combine(a.value / b.value, [
    { of: a, sensitivity: 1 / b.value },
    { of: b, sensitivity: -a.value / b.value ** 2 },
  ]);

/** Arithmetic mean; the empty list is our bug. */
export function mean(list: readonly Estimate[]): Estimate {
  if (list.length === 0) throw new Error('mean of no estimates');
  const share = 1 / list.length;
  return combine(
    list.reduce((sum, e) => sum + e.value * share, 0),
    list.map((of) => ({ of, sensitivity: share })),
  );
}

/** More uncertainty from further causes; the value stays. */
export const widened = (a: Estimate, parts: readonly Part[]): Estimate => estimate(a.value, [...a.parts, ...parts]);

export const standardUncertainty = (a: Estimate): number => Math.sqrt(a.parts.reduce((sum, p) => sum + p.u ** 2, 0));

/**
 * Welch–Satterthwaite on merged causes (JCGM 100 G.4). Causes of one family are one term, since one estimate of scatter
 * sized them all. Infinity when no cause is uncertain of itself.
 */
export function effectiveDof(a: Estimate, causes: CauseTable): number {
  const families = new Map<string, { variance: number; dof: number }>();
  for (const p of a.parts) {
    const cause = causes.get(p.cause);
    const family = cause?.family ?? p.cause;
    const before = families.get(family)?.variance ?? 0;
    families.set(family, { variance: before + p.u ** 2, dof: cause?.dof ?? Infinity });
  }
  let all = 0;
  let loose = 0;
  for (const { variance, dof } of families.values()) {
    all += variance;
    loose += variance ** 2 / dof;
  }
  return loose > 0 ? all ** 2 / loose : Infinity;
}

function merge(parts: readonly Part[]): Part[] {
  const byCause = new Map<string, number>();
  for (const p of parts) byCause.set(p.cause, (byCause.get(p.cause) ?? 0) + p.u);
  const merged: Part[] = [];
  for (const [cause, u] of byCause) if (u !== 0) merged.push({ cause, u });
  return merged.sort((a, b) => (a.cause < b.cause ? -1 : 1));
}
