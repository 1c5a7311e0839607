import { type Cause, type Estimate, estimate } from '../quantity/estimate.ts';
import type { Oil } from '../trial/oil.ts';
import type { OilSample, SampleResult } from '../trial/sample.ts';
import * as texts from './texts-samples.ts';

/** One result of a used sample held against the unused sample of its batch. */
export interface SampleChange {
  readonly sample: OilSample;
  readonly after: SampleResult;
  /** The unused sample of the same batch; null where there is none. */
  readonly twin: OilSample | null;
  /** The same property of it by the same method; null where it was not asked, or by another method. */
  readonly before: SampleResult | null;
  /** After less before, and how far two results on one oil may lie apart, both as the values; null without a before. */
  readonly change: Estimate | null;
  readonly repeatability: number | null;
  readonly word: (typeof texts.words)[keyof typeof texts.words];
  readonly causes: readonly Cause[];
}

/**
 * Every result of every used sample, in the order of the note. A value of the data sheet is never the before.
 *
 *   d = y_after − y_before,  changed when |d| > r
 *
 * r is the repeatability of the method: of two results by one operator on one apparatus the difference lies within it in 95 %
 * of cases, r = 1.96·√2·s_r, printed as 2.8 s_r (ISO 5725-2:1994, 7.4). So d has the standard uncertainty √2·s_r = r/1.96.
 */
export const sampleChanges = (oil: Oil): SampleChange[] =>
  oil.samples
    .filter(({ point }) => point !== 'unused')
    .flatMap((sample) => sample.results.map((after) => changeOf(oil, sample, after)));

function changeOf(oil: Oil, sample: OilSample, after: SampleResult): SampleChange {
  const twins = oil.samples.filter(({ point, batch }) => point === 'unused' && batch === sample.batch);
  const asked = twins.flatMap((twin) =>
    twin.results.filter(({ property }) => property === after.property).map((before) => ({ twin, before })),
  );
  const found = asked.find(({ before }) => sameMethod(before.method, after.method));
  const none = { sample, after, before: null, change: null, repeatability: null, causes: [] };
  if (twins.length === 0) return { ...none, twin: null, word: texts.words.noTwin };
  if (found === undefined)
    return {
      ...none,
      twin: (asked[0]?.twin ?? twins[0])!,
      word: asked.length === 0 ? texts.words.notAsked : texts.words.otherMethod,
    };
  const { twin, before } = found;
  const repeatability = Math.max(widthOf(before, after), widthOf(after, before));
  const d = after.value - before.value;
  const cause = causeOf(oil, sample, after);
  return {
    ...{ sample, after, twin, before, repeatability, causes: [cause] },
    change: estimate(d, [{ cause: cause.id, u: repeatability / normal95 }]),
    // a change typed as the limit itself is within it, whatever the last bit says
    word: Math.abs(d) > repeatability * (1 + 1e-9) ? texts.words.changed : texts.words.within,
  };
}

/** Half of the middle 95 % of a normal distribution over its standard deviation. */
const normal95 = 1.959963984540054;

/** A share is one of the mean of both results. */
const widthOf = ({ repeatability: { value, relative }, value: own }: SampleResult, other: SampleResult): number =>
  relative ? (value * Math.abs(own + other.value)) / 2 : value;

/** "ASTM D 445" and "astm D445" are one method. */
const sameMethod = (a: string, b: string): boolean => plainMethod(a) === plainMethod(b);
const plainMethod = (method: string): string => method.toLowerCase().replace(/[\s-]/g, '');

const causeOf = (oil: Oil, { id }: OilSample, { property }: SampleResult): Cause => ({
  id: `repeatability:${oil.id}:${id}:${property}`,
  name: texts.repeatabilityOf(property, id),
  kind: 'scatter',
  distribution: 'normal',
  dof: Infinity,
  scope: 'reading',
});
