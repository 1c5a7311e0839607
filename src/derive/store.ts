import { estimate, type Cause, type Estimate, type Part } from '../quantity/estimate.ts';
import { fitScatter } from './causes.ts';

/** The store with its fit and the share of every error in heat made: store and heat scale together. `relative` in 1. */
export function storeOf(
  store: { value: number; u: number } | null,
  relative: readonly Part[],
  run: string,
  dof: number,
): { estimate: Estimate | null; causes: readonly Cause[] } {
  if (store === null) return { estimate: null, causes: [] };
  const fit = fitScatter({ run, what: 'store', u: store.u, dof });
  return {
    estimate: estimate(store.value, [
      { cause: fit.cause.id, u: fit.u },
      ...relative.map((p) => ({ cause: p.cause, u: p.u * store.value })),
    ]),
    causes: [fit.cause],
  };
}
