import { describe, expect, it } from 'vitest';
import { shareOf, valueAt } from '../../../src/charts/axis.ts';
import type { Row, Spec } from '../../../src/charts/plot.ts';
import { settleSpec } from '../../../src/charts/settle.ts';
import type { SettleData } from '../../../src/report/page.ts';
import { settle } from '../../site/sample-charts.ts';

const rowsOf = (spec: Spec, type: string): readonly Row[] =>
  spec.layer.filter(({ mark }) => mark.type === type).flatMap(({ data }) => data.values);
interface AcrossChannel {
  readonly scale: { readonly type?: string; readonly constant?: number; readonly domain: readonly [number, number] };
  readonly axis: { readonly values: readonly number[] };
}
const acrossOf = (spec: Spec) => spec.layer[0]?.encoding['x'] as unknown as AcrossChannel;

describe('the settling curve', () => {
  it('says its seconds as they are: the numbers of the axis are those of the readings', () => {
    // the times of reading are common practice, no source
    expect(acrossOf(settleSpec(settle, 'wide')).axis.values).toEqual([0, 10, 30, 60, 120, 300, 600]);
    const points = rowsOf(settleSpec(settle, 'wide'), 'point').map(({ x, y }) => [x, y]);
    expect(points).toEqual(settle.points);
  });
  it('gives the first minute of ten a third of the width, and still goes forward everywhere', () => {
    const { scale } = acrossOf(settleSpec(settle, 'wide'));
    const axis = { low: 0, high: 600, ticks: [], bend: scale.constant ?? 0 };
    expect(scale).toMatchObject({ type: 'symlog', domain: [0, 600] });
    expect(shareOf(axis, 60)).toBeGreaterThan(1 / 3);
    const shares = [0, 10, 30, 60, 120, 300, 600].map((time) => shareOf(axis, time));
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect([shares[0], shares.at(-1)]).toEqual([0, 1]);
  });
  it('finds the time again that stands at a place, also beyond the axis', () => {
    const axis = { low: 0, high: 600, ticks: [], bend: 30 };
    for (const time of [-40, 0, 5, 60, 600, 900]) expect(valueAt(axis, shareOf(axis, time))).toBeCloseTo(time, 9);
  });
  it('names its heights at the right and prints each grade of bubble once, over its time', () => {
    const texts = rowsOf(settleSpec(settle, 'wide'), 'text').map(({ text }) => String(text));
    expect(texts).toEqual(expect.arrayContaining(['Bubble', 'ng', 'at rest before', 'comes back to −54.3 mm']));
    const grades = rowsOf(settleSpec(settle, 'wide'), 'text').filter(({ text }) => /^(?:\d|ng)$/.test(String(text)));
    expect(grades.map(({ text }) => text)).toEqual(settle.bubbles.map(({ text }) => text));
    grades.forEach(({ x }, i) => {
      expect(x).toBeCloseTo(settle.bubbles[i]!.x, 6);
    });
  });
  it('leaves out a grade that would stand on its neighbour', () => {
    const dense: SettleData = { ...settle, bubbles: [300, 302, 304, 600].map((x) => ({ x, text: 'ng' })) };
    const grades = rowsOf(settleSpec(dense, 'narrow'), 'text').filter(({ text }) => text === 'ng');
    expect(grades.map(({ x }) => Math.round(Number(x)))).toEqual([300, 600]);
  });
});
