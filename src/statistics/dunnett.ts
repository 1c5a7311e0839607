import { scatterPoints } from './scatter-points.ts';
import { coverageFactor, normalTail } from './student.ts';

interface AgainstBaseline {
  /** Of each candidate: the share of the variance of its difference that is the baseline's, nᵢ/(nᵢ + n₀) of equal scatter. */
  readonly shared: readonly number[];
  readonly dof: number;
}

/** Shares from numbers of runs. */
export const sharedByRuns = (of: { readonly baselineRuns: number; readonly runs: readonly number[] }): number[] =>
  of.runs.map((n) => n / (n + of.baselineRuns));

/**
 * Dunnett factor: with the half width d·s·√(1/nᵢ + 1/n₀) all candidates keep the stated coverage together against one
 * baseline. No candidate is our bug; one is Student's t.
 *
 * source  Dunnett, J. American Statistical Association 50 (1955) 1096; Biometrics 20 (1964) 482
 *         check: his table, 2.57 for two candidates and 10 degrees
 */
export function dunnett(of: AgainstBaseline & { readonly coverage: number }): number {
  if (of.shared.length === 0) throw new Error('comparison of no candidates');
  const key = keyOf(of);
  const known = asked.get(key) ?? factorOf(of);
  asked.set(key, known);
  return known;
}

/** Every standing of a series asks for the same few. */
const asked = new Map<string, number>();

/** Whether that factor lies below so many standard uncertainties: no search, and what was told before narrows what is asked. */
export function beyondDunnett(of: AgainstBaseline & { readonly coverage: number; readonly times: number }): boolean {
  const { dof, coverage, shared, times } = of;
  const key = keyOf(of);
  const [low, high] = told.get(key) ?? [
    coverageFactor(coverage, dof),
    shared.length === 1 ? -Infinity : coverageFactor(1 - (1 - coverage) / shared.length, dof),
  ];
  const open = times > low && times <= high;
  const beyond = open ? coverageTogether({ ...of, d: times }) > coverage : times > low;
  told.set(key, !open ? [low, high] : beyond ? [low, times] : [times, high]);
  return beyond;
}

/** Between what is known to lie inside and what is known to lie beyond. */
const told = new Map<string, readonly [number, number]>();

const keyOf = ({ dof, coverage, shared }: AgainstBaseline & { readonly coverage: number }): string =>
  `${dof} ${coverage} ${[...shared].sort((a, b) => a - b).join(' ')}`;

function factorOf(of: AgainstBaseline & { readonly coverage: number }): number {
  const { dof, coverage, shared } = of;
  const wanted = (d: number) => coverageTogether({ ...of, d }) - coverage;
  let [low, high] = [coverageFactor(coverage, dof), coverageFactor(1 - (1 - coverage) / shared.length, dof)];
  if (shared.length === 1) return low;
  // The true factor lies between one comparison's and Bonferroni's; chords close in on it, halves of a stuck end with them.
  let [under, over] = [wanted(low), wanted(high)];
  for (let i = 0; i < 60 && high - low > 1e-7 * high; i++) {
    const d = (low * over - high * under) / (over - under);
    const at = wanted(d);
    if (Math.abs(at) < 1e-8) return d;
    if (at < 0) [low, under, over] = [d, at, over / 2];
    else [high, over, under] = [d, at, under / 2];
  }
  return (low + high) / 2;
}

/**
 * Chance that all candidates that truly equal the baseline lie within d.
 *
 *   P = ∫ f(x) ∫ φ(z) Π [Φ((λᵢ z + d x)/√(1−λᵢ²)) − Φ((λᵢ z − d x)/√(1−λᵢ²))] dz dx,   λᵢ = √share,
 *   x = √(χ²_ν/ν); one less it is the adjusted tail of the largest |t|
 */
export function coverageTogether(of: AgainstBaseline & { readonly d: number }): number {
  const candidates = [...new Set(of.shared)].map((share) => ({
    lambda: Math.sqrt(share),
    rest: Math.sqrt(1 - Math.sqrt(share) * Math.sqrt(share)),
    equal: of.shared.filter((other) => other === share).length,
  }));
  let [covered, all] = [0, 0];
  for (const { x, weight } of scatterPoints(of.dof)) {
    for (const { z, density: normal } of normalPoints) {
      const density = weight * normal;
      let together = 1;
      for (const { lambda, rest, equal } of candidates) {
        const inside = below((lambda * z + of.d * x) / rest) - below((lambda * z - of.d * x) / rest);
        together *= equal === 1 ? inside : inside ** equal;
      }
      covered += density * together;
      all += density;
    }
  }
  return covered / all;
}

/** From 0 up: what lies inside is the same for z and for −z, so that all but the first count twice. */
const normalPoints = Array.from({ length: 21 }, (_, i) => i * 0.35).map((z) => ({
  z,
  density: Math.exp((-z * z) / 2) * (z === 0 ? 1 : 2),
}));

/** Normal probability below z, from a table with its exact slopes: good to 1e-10, and a hundred times quicker in the double sum. */
function below(z: number): number {
  if (Math.abs(z) >= 9) return z > 0 ? 1 : 0;
  const { tail, slope } = (table ??= tabled());
  const row = Math.min(1799, Math.floor((z + 9) * 100));
  const share = (z + 9) * 100 - row;
  const p0 = tail[row]!;
  const p1 = tail[row + 1]!;
  const m0 = slope[row]!;
  const m1 = slope[row + 1]!;
  const bend = share * (1 - share);
  return p0 + share * (p1 - p0) + bend * ((1 - share) * (m0 - (p1 - p0)) - share * (m1 - (p1 - p0)));
}

let table: ReturnType<typeof tabled> | undefined;

const tabled = () => ({
  tail: Float64Array.from({ length: 1801 }, (_, i) => normalTail(9 - i / 100)),
  slope: Float64Array.from({ length: 1801 }, (_, i) => normalDensity(i / 100 - 9) / 100),
});

const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
