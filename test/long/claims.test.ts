import { expect, it } from 'vitest';
import { makeDemo } from '../../demo-runs/make/demo.ts';
import type { JudgedClaim } from '../../src/trial/compared.ts';
import { comparedOf } from '../scenario/compared.ts';

/**
 * What the maker of the demo planted, as a claim asks it: signs turned so that the claim reads effect ≥ threshold. CL-5 is
 * not judged: one of its runs carries a wrong ambient on purpose.
 */
const planted: Readonly<Record<string, boolean>> = {
  'CL-1': true, // −9.5 K against 5 K
  'CL-2': false, // 11 % against 50 %
  'CL-3': true, // −28 W against 15 W
  'CL-4': false, // 3.5 K against within 2 K
  'CL-6': false, // 1.9 min sooner, not later
  'CL-6b': true, // 22 W more
  'CL-7': true, // 3.1 K hotter
  'CL-7b': true, // by more than 2 K
  'CL-8': true, // 22 W below
};
const draws = 200;

it('says a claim shown, or shown against, on the wrong side in at most 5 of 100 of two hundred other draws', () => {
  const told = new Map<string, Map<string, number>>();
  let [wrong, of] = [0, 0];
  for (let seed = 1001; seed <= 1000 + draws; seed++) {
    const texts = makeDemo({ seed, quiet: false, select: false });
    for (const claim of comparedOf(texts, 'hill-bowl').claims) {
      const { word } = claim;
      const list = told.get(claim.claim) ?? new Map<string, number>();
      list.set(word, (list.get(word) ?? 0) + 1);
      told.set(claim.claim, list);
      for (const clause of claim.clauses) expect(clause.word, claim.claim).toBe(byRule(clause));
      const holds = planted[claim.claim];
      if (holds === undefined) continue;
      of++;
      if ((word === 'shown' && !holds) || (word === 'shown against' && holds)) wrong++;
    }
    if ((seed - 1000) % 50 === 0) console.log(`after ${String(seed - 1000)} draws: ${table(told)}`);
  }
  console.log(`on the wrong side: ${String(wrong)} of ${String(of)} (${((100 * wrong) / of).toFixed(1)} %)`);
  expect(wrong / of).toBeLessThanOrEqual(0.05);
});

/** The ordered rule of the words, written out a second time from its text. */
function byRule({ clause, estimate, interval, why }: JudgedClaim['clauses'][number]): string {
  if (why.length > 0 || estimate === null || interval === null) return 'cannot tell';
  const t = clause.threshold;
  if (clause.direction === 'within') {
    if (interval[1] <= t && interval[0] >= -t) return 'shown';
    if (interval[0] > t || interval[1] < -t) return 'shown against';
    return Math.abs(estimate.value) <= t ? 'leaning' : 'not shown';
  }
  const sign = clause.direction === 'lower' ? -1 : 1;
  const [a, b] = [sign * interval[0], sign * interval[1]];
  const [l, h] = [Math.min(a, b), Math.max(a, b)];
  if (t === 0 ? l > 0 : l >= t) return 'shown';
  if (h < t) return 'shown against';
  return l <= 0 && h >= 0 ? 'not shown' : 'leaning';
}

const table = (told: ReadonlyMap<string, ReadonlyMap<string, number>>): string =>
  [...told]
    .map(([claim, words]) => `${claim} ${[...words].map(([w, n]) => `${w} ${String(n)}`).join(', ')}`)
    .join('; ');
