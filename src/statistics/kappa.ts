export interface WeightedKappa {
  /** Pairs in the table. */
  readonly n: number;
  readonly kappa: number;
  /** Of large samples. 0 when all pairs are equal, which says that this form sees no scatter, not that there is none. */
  readonly standardError: number;
}

/**
 * Agreement of two observers on an ordered scale, chance taken out, a difference counted by its square.
 *
 *   κ = 1 − Σ v p / Σ v e,   v = (i − j)²,  p = n_ij/n,  e = p_i. p_.j
 *   u² = { Σ p [v − (1 − κ)(v̄_i. + v̄_.j)]² − [(1 − κ) Σ v e]² } / { n (Σ v e)² },   v̄_i. = Σ_j p_.j v,  v̄_.j = Σ_i p_i. v
 *
 * table        counts [1], rows: first observer's grade, columns: the second's; as many rows as columns
 * returns      κ [1], at most 1; null when all grades of one observer are the same: with no pair (n = 0) and with
 *              one (n = 1) always, since there is no spread to agree on
 * range        u is for many pairs that are independent of each other; the non-null form, at the κ that was found
 * source       Cohen, Psychol. Bull. 70 (1968) 213; u: Fleiss, Cohen & Everitt, Psychol. Bull. 72 (1969) 323, in
 *              weights of disagreement (both from memory)
 *              check: statsmodels, 25 tables; Lin's concordance coefficient with 1/n moments, which is the same number
 */
export function weightedKappa(table: readonly (readonly number[])[]): WeightedKappa | null {
  if (table.some((row) => row.length !== table.length)) throw new Error('kappa of a table that is not square');
  const rows = table.map(sum);
  const columns = table.map((_, j) => sum(table.map((row) => row[j]!)));
  if ([rows, columns].some((grades) => grades.filter((count) => count > 0).length < 2)) return null;
  const n = sum(rows);
  const apart = (i: number, j: number): number => (i - j) ** 2;
  const over = (of: (i: number, j: number) => number): number =>
    sum(rows.map((_, i) => sum(rows.map((__, j) => of(i, j)))));
  // Counts and not shares, so that both sums are whole numbers and only their quotient is rounded.
  const seen = over((i, j) => apart(i, j) * table[i]![j]!);
  const byChance = over((i, j) => apart(i, j) * rows[i]! * columns[j]!);
  const left = (n * seen) / byChance;
  const expected = byChance / n ** 2;
  const ofRow = rows.map((_, i) => sum(columns.map((count, j) => (count * apart(i, j)) / n)));
  const ofColumn = columns.map((_, j) => sum(rows.map((count, i) => (count * apart(i, j)) / n)));
  // The mean of the bracket is −(1 − κ) Σ v e: taken off before squaring, nothing is lost to cancelling.
  const squares = over(
    (i, j) => (table[i]![j]! / n) * (apart(i, j) - left * (ofRow[i]! + ofColumn[j]! - expected)) ** 2,
  );
  return { n, kappa: 1 - left, standardError: Math.sqrt(squares / n) / expected };
}

const sum = (list: readonly number[]): number => list.reduce((total, x) => total + x, 0);
