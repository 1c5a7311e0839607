/**
 * Householder QR of a tall matrix given by columns, each scaled to unit length first so that "small" means the same in
 * every column. Shared by the linear and the nonlinear fit; the normal equations are not used anywhere, since they lose
 * half the digits.
 *
 *   A · S⁻¹ = Q R,   S = diag(column norms)
 *
 * source  Golub and Van Loan, Matrix Computations, Householder QR (from memory)
 */
export interface Factored {
  readonly rows: number;
  readonly scale: Float64Array;
  /** Columns: above the diagonal R, on and below it the reflectors. */
  readonly columns: readonly Float64Array[];
  readonly diagonal: Float64Array;
}

export function factor(given: readonly ArrayLike<number>[], rows: number): Factored {
  const scale = Float64Array.from(given, (column) => norm(column) || 1);
  const columns = given.map((column, j) => scaledTo(column, scale[j]!));
  const diagonal = new Float64Array(columns.length);
  columns.forEach((pivot, k) => {
    const length = k < rows ? norm(pivot, k) : 0;
    if (length === 0) return;
    diagonal[k] = pivot[k]! > 0 ? -length : length;
    pivot[k]! -= diagonal[k];
    for (let j = k + 1; j < columns.length; j++) reflect(pivot, k, columns[j]!);
  });
  return { rows, scale, columns, diagonal };
}

function scaledTo(column: ArrayLike<number>, scale: number): Float64Array {
  const out = new Float64Array(column.length);
  for (let i = 0; i < out.length; i++) out[i] = column[i]! / scale;
  return out;
}

/** Index of the first column that the ones before it already span, to the accuracy that the columns have; or null. */
export function dependentColumn(q: Factored, accuracy = Number.EPSILON): number | null {
  const threshold = 16 * accuracy * Math.sqrt(q.rows);
  const index = q.diagonal.findIndex((d) => !(Math.abs(d) > threshold));
  return index < 0 ? null : index;
}

/** Qᵀ v: the first entries lie in the span of the columns, the rest is what they cannot reach. */
export function rotate(q: Factored, v: ArrayLike<number>): Float64Array {
  const out = Float64Array.from(v);
  q.columns.forEach((pivot, k) => {
    if (q.diagonal[k] !== 0) reflect(pivot, k, out);
  });
  return out;
}

/** x of least ‖A x − v‖, from Qᵀ v. */
export function solveRotated(q: Factored, rotated: ArrayLike<number>): Float64Array {
  const x = new Float64Array(q.columns.length);
  for (let i = x.length - 1; i >= 0; i--) {
    let sum = rotated[i]!;
    for (let j = i + 1; j < x.length; j++) sum -= q.columns[j]![i]! * x[j]!;
    x[i] = sum / q.diagonal[i]!;
  }
  return x.map((value, j) => value / q.scale[j]!);
}

/** (AᵀA)⁻¹ = S⁻¹ R⁻¹ R⁻ᵀ S⁻¹, without ever forming AᵀA. */
export function inverseOfCross(q: Factored): number[][] {
  const size = q.columns.length;
  const unit = (i: number) => Float64Array.from({ length: size }, (_, j) => (i === j ? 1 : 0));
  const inverse = Array.from({ length: size }, (_, i) => solveRotated(q, unit(i)));
  return Array.from({ length: size }, (_, a) =>
    Array.from({ length: size }, (__, b) => inverse.reduce((sum, column) => sum + column[a]! * column[b]!, 0)),
  );
}

/** R by columns, of the scaled matrix. */
export const triangle = (q: Factored): Float64Array[] =>
  q.columns.map((column, j) =>
    Float64Array.from({ length: q.columns.length }, (_, i) => (i < j ? column[i]! : i === j ? q.diagonal[j]! : 0)),
  );

/** Largest over smallest singular value of the scaled matrix, by one-sided Jacobi turns of R; Infinity when singular. */
export function conditionOf(q: Factored): number {
  const columns = triangle(q);
  for (let sweep = 0; sweep < 30; sweep++) if (!sweepOnce(columns)) break;
  const lengths = columns.map((column) => norm(column));
  const least = Math.min(...lengths);
  return least > 0 ? Math.max(...lengths) / least : Infinity;
}

/** Turns each pair of columns until they stand square; false when none needed it. */
function sweepOnce(columns: readonly Float64Array[]): boolean {
  let turned = false;
  for (let a = 0; a < columns.length; a++) {
    for (let b = a + 1; b < columns.length; b++) {
      const [p, r] = [columns[a]!, columns[b]!];
      const [pp, rr, pr] = [dot(p, p, 0), dot(r, r, 0), dot(p, r, 0)];
      if (Math.abs(pr) <= 1e-14 * Math.sqrt(pp * rr)) continue;
      turned = true;
      const zeta = (rr - pp) / (2 * pr);
      const t = (zeta < 0 ? -1 : 1) / (Math.abs(zeta) + Math.hypot(1, zeta));
      const c = 1 / Math.hypot(1, t);
      for (let i = 0; i < p.length; i++) {
        const [x, y] = [p[i]!, r[i]!];
        p[i] = c * (x - t * y);
        r[i] = c * (t * x + y);
      }
    }
  }
  return turned;
}

/** H = I − 2vvᵀ/vᵀv with v = pivot from row k on. */
function reflect(pivot: Float64Array, k: number, target: Float64Array): void {
  const factor = (2 * dot(pivot, target, k)) / dot(pivot, pivot, k);
  for (let i = k; i < target.length; i++) target[i]! -= factor * pivot[i]!;
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>, from: number): number {
  let sum = 0;
  for (let i = from; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function norm(v: ArrayLike<number>, from = 0): number {
  let largest = 0;
  for (let i = from; i < v.length; i++) largest = Math.max(largest, Math.abs(v[i]!));
  if (largest === 0) return 0;
  let sum = 0;
  for (let i = from; i < v.length; i++) sum += (v[i]! / largest) ** 2;
  return largest * Math.sqrt(sum);
}
