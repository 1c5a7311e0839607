import { writeNumber, writeQuantity } from '../quantity/write.ts';

/** Why grades of two observers may be used, or not. No observer is named: these words are for everybody. */

interface Judged {
  readonly of: number;
  readonly limit: number;
}

/** With as many decimals as it takes to see on which side of the limit the value lies. */
function apart(
  { of, limit }: Judged,
  least: number,
  write: (value: number, decimals: number) => string,
): readonly [string, string] {
  for (let decimals = least; ; decimals += 1) {
    const both = [write(of, decimals), write(limit, decimals)] as const;
    if (both[0] !== both[1] || of === limit || decimals >= least + 6) return both;
  }
}

const share = (value: number, decimals: number): string => writeQuantity(value, '%', decimals);

export const nothingGraded = 'no step that both could grade';
export const onePair = 'one pair of grades is no spread to agree on';
export const oneGrade = 'both observers gave one and the same grade: there is no spread to agree on';
export const oneGradeEach = 'each observer gave one grade throughout, and not the same: there is no spread to agree on';
export const oneSided = 'one observer gave one grade throughout: there is no spread to agree on';

export function kappaUnder(kappa: Judged): string {
  const [value, limit] = apart(kappa, 2, writeNumber);
  return `kappa ${value} is under the ${limit} of the series`;
}

export const mostlyOne = (most: { readonly pairs: number; readonly n: number }): string =>
  `${String(most.pairs)} of ${String(most.n)} pairs hold one and the same grade, so that kappa has little spread to go by`;

export const restsOnOneRun = (run: string): string =>
  `without ${run} no spread is left, so that this kappa rests on that run alone`;

export function fewWithinOne(within: Judged): string {
  const [value, limit] = apart(within, 0, share);
  return `${value} of the pairs lie within one grade, under the ${limit} of the series`;
}

export function agreed(by: { readonly kappa: Judged; readonly within: Judged; readonly allEqual: boolean }): string {
  const [kappa, least] = apart(by.kappa, 2, writeNumber);
  const [within, fewest] = apart(by.within, 0, share);
  const unsaid = by.allEqual ? '; every pair is equal, so that the scatter of kappa cannot be told from them' : '';
  return `kappa ${kappa} and ${within} within one grade; the series asks for ${least} and ${fewest}${unsaid}`;
}
