import { fTail } from '../statistics/f-tail.ts';
import type { ModelTried } from '../trial/derived.ts';
import { oneStore, tail, twoStore, type StoreFit, type StoreInput } from './stores.ts';

/** The final temperature with the model taken, every model tried, and what the choice leaves open. */
export interface Final {
  readonly taken: StoreFit;
  /** Standard uncertainty of the choice of model, K; 0 where the others agree within their own scatter. */
  readonly spread_K: number;
  readonly tried: readonly ModelTried[];
}

/**
 * Two stores are taken when they leave significantly less of the sump than one (F test, 5 %). Where they cannot
 * be told apart the tail is taken if it settled and one store misfits; one store otherwise (common practice, no source). Where the tail
 * answers differently by more than twice its own scatter, the difference widens the interval as a rectangle.
 */
export function finalTemperature(input: StoreInput): Final {
  const one = oneStore(input);
  const two = twoStore(input);
  const end = tail(input);
  const needsTwo = two !== null && isPhysical(two) && better(one, two);
  const misfits = end !== null && Number.isFinite(end.u_K) && end.misfit_K < 0.7 * one.misfit_K;
  const taken = needsTwo ? two : misfits ? end : one;
  const other = taken === end ? one : end;
  const apart = other === null ? 0 : Math.abs(other.final_K - taken.final_K);
  const open = other === null || apart <= 2 * Math.hypot(other.u_K, taken.u_K) || other.model === 'one-store';
  const why = (fit: StoreFit): string =>
    fit === taken
      ? needsTwo
        ? 'taken: one store leaves more than the readings scatter, two stores do not'
        : fit.model === 'tail'
          ? 'taken: the last hour alone, because one store misfits and two could not be told apart'
          : 'taken: a second store does not reduce what is left'
      : fit.model === 'one-store'
        ? 'misfits: heat has to cross from oil to housing first'
        : fit.model === 'tail'
          ? 'kept as a check of the model taken'
          : 'not needed';
  const all = [one, two, end].filter((f): f is StoreFit => f !== null);
  return {
    taken,
    spread_K: open ? 0 : apart / Math.sqrt(12),
    tried: all.map((fit) => ({
      model: fit.model,
      final_K: fit.final_K,
      u_K: fit.u_K,
      misfit_K: fit.misfit_K,
      parameters: fit.parameters,
      taken: fit === taken,
      why: why(fit),
    })),
  };
}

/** A store or a conductance below zero, or one that the readings do not fix, is no answer. */
const isPhysical = (fit: StoreFit): boolean => Number.isFinite(fit.u_K) && fit.parameters.every((p) => p.value > 0);

/** F test of the sump's squares: does the larger model leave significantly less? */
function better(small: StoreFit, large: StoreFit): boolean {
  const more = Math.max(1, large.unknowns - small.unknowns);
  const dof = Math.max(1, large.count - large.unknowns);
  const f = (small.squares - large.squares) / more / (large.squares / dof);
  return f > 0 && fTail(f, { above: more, below: dof }) < 0.05;
}
