import { describe, expect, it } from 'vitest';
import { sampleChanges, type SampleChange } from '../../../src/compare/samples.ts';
import { standardUncertainty } from '../../../src/quantity/estimate.ts';
import type { Oil } from '../../../src/trial/oil.ts';
import type { OilSample, SampleResult } from '../../../src/trial/sample.ts';
import { oil } from '../report/fixture-notes.ts';

const iron = (value: number, more: Partial<SampleResult> = {}): SampleResult => ({
  property: 'iron',
  method: 'ASTM D5185',
  value,
  step: 1,
  repeatability: { value: 3, relative: false },
  path: 'samples.0.results.0',
  ...more,
});
const sample = (id: string, point: OilSample['point'], results: SampleResult[], batch = 'B-1'): OilSample => ({
  ...{ id, point, batch, results, path: 'samples.0', takenOn: '2026-03-05' },
  ...{ volume_m3: null, temperature_K: null, afterRun: point === 'unused' ? null : 'H-01', beforeRun: null },
});
const withSamples = (...samples: OilSample[]): Oil => ({ ...oil, samples });
const only = (...samples: OilSample[]): SampleChange => sampleChanges(withSamples(...samples))[0]!;
const pair = (before: SampleResult, after: SampleResult) =>
  only(sample('new', 'unused', [before]), sample('used', 'drain-mid', [after]));

describe('a used sample against the unused one of its batch', () => {
  it('has changed only beyond the repeatability of the method, and not at it', () => {
    expect(pair(iron(2), iron(5.01)).word).toBe('changed');
    expect(pair(iron(2), iron(5)).word).toBe('within the method’s repeatability');
    expect(pair(iron(5), iron(1)).word).toBe('changed');
    expect(pair(iron(5), iron(1)).change!.value).toBe(-4);
  });

  // ISO 5725-2:1994, 7.4: r = 2.8 s_r for two results; the difference of two results scatters by √2·s_r
  it('carries the scatter of two results: √2·s_r, with r = 2.8 s_r to the digits printed', () => {
    const { change } = pair(iron(2), iron(20));
    const s_r = standardUncertainty(change!) / Math.SQRT2;
    expect((3 / s_r).toFixed(1)).toBe('2.8');
  });

  it('takes a share of the mean of both results, and of two stated repeatabilities the larger', () => {
    const share = (value: number) => ({ repeatability: { value, relative: true } });
    expect(pair(iron(90, share(0.1)), iron(110, share(0.1))).repeatability).toBeCloseTo(10, 12);
    expect(pair(iron(90, share(0.01)), iron(110)).repeatability).toBe(3);
    expect(pair(iron(90, share(0.2)), iron(110)).repeatability).toBeCloseTo(20, 12);
  });

  it('says nothing of a change without an unused sample of its own batch, whatever the data sheet says', () => {
    const viscosity = iron(15e-6, { property: 'viscosity-100', method: 'ASTM D445' });
    const alone = only(sample('used', 'syringe', [viscosity]));
    expect([alone.word, alone.change, alone.twin]).toEqual(['no unused sample of this batch', null, null]);
    const other = only(sample('new', 'unused', [iron(2)], 'B-2'), sample('used', 'syringe', [iron(9)]));
    expect(other.word).toBe('no unused sample of this batch');
  });

  it('holds one method against the same method only, however it is spelt', () => {
    expect(pair(iron(2), iron(9, { method: 'emission after ashing' })).word).toBe(
      'by another method than on the unused sample',
    );
    expect(pair(iron(2, { method: 'astm d 5185' }), iron(9)).word).toBe('changed');
    expect(pair(iron(2, { property: 'copper' }), iron(9)).word).toBe('not measured on the unused sample');
  });

  it('finds the method among several unused samples, and has no row for an unused sample itself', () => {
    const found = sampleChanges(
      withSamples(
        sample('new-1', 'unused', [iron(1, { method: 'other' })]),
        sample('new-2', 'unused', [iron(2)]),
        sample('used', 'drain-mid', [iron(9)]),
      ),
    );
    expect(found.map(({ sample: { id }, twin, word }) => [id, twin?.id, word])).toEqual([['used', 'new-2', 'changed']]);
  });
});
