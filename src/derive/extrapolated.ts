/** How much of the rise from its start to its end a heat-up did not live to see. */
export interface Extrapolated {
  /** 0–1. */
  readonly share: number;
  /** Standard uncertainty that reaching so far adds, K; 0 where less than a tenth is open. */
  readonly u_K: number;
}

/**
 * A run that stops early says less of its end: where more than a tenth of the rise lies beyond the last reading, a twentieth
 * of that part is added (common practice, no source).
 */
export function extrapolated(of: { start_K: number; last_K: number; final_K: number }): Extrapolated {
  const share = (of.final_K - of.last_K) / (of.final_K - of.start_K);
  if (!(share > 0.1)) return { share: Number.isFinite(share) ? Math.max(0, share) : 0, u_K: 0 };
  return { share, u_K: 0.05 * (of.final_K - of.last_K) };
}
