import type { Figure } from '../ledger/figure.ts';
import { numberText } from './digits.ts';
import type { View } from './view.ts';

/** "scatter of refits is 67 % and torque zero 18 %": the largest causes of a figure, those of one name together. */
export function largestCauses(view: View, figure: Figure | undefined): string | null {
  const budget = figure && view.input.ledger.workings.get(figure.id)?.budget;
  if (budget === undefined || budget.length === 0) return null;
  const shares = new Map<string, number>();
  for (const { name, share } of budget) shares.set(name, (shares.get(name) ?? 0) + share);
  const largest = [...shares]
    .sort(([, a], [, b]) => b - a)
    .slice(0, 3)
    .filter(([, share], i) => i === 0 || share >= leastWorthSaying);
  const parts = largest.map(([name, share], i) => `${name}${i === 0 ? ' is' : ''} ${numberText(share * 100, 0)} %`);
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)!}`;
}

const leastWorthSaying = 0.01;
