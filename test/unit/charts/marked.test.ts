import { describe, expect, it } from 'vitest';
import { markedDrawing } from '../../../src/charts/marked.ts';
import type { MarkedData } from '../../../src/report/page.ts';

const data = (of: Partial<MarkedData> = {}): MarkedData => ({
  kind: 'marked',
  yTitle: 'torque in, N·m',
  points: Array.from({ length: 61 }, (_, i) => [i, 1 + Math.sin(i / 8)] as const),
  marks: [{ from: 30, to: 40, label: '290 rpm' }],
  ...of,
});
const rects = (inside: string) =>
  [...inside.matchAll(/<rect x="([\d.]+)" width="([\d.]+)"/g)].map((m) => [Number(m[1]), Number(m[2])] as const);

describe('the drawing of a log with its stretches marked', () => {
  it('puts a stretch where its times lie: half of the way along and a sixth of it wide', () => {
    for (const [width, whole] of [
      ['wide', 690],
      ['narrow', 350],
    ] as const) {
      // prettier-ignore
      const [[x, wide]] = rects(markedDrawing(data(), width).inside) as [readonly [number, number]];
      const room = whole - 52 - 14;
      expect(x).toBeCloseTo(52 + room / 2, 1);
      expect(wide).toBeCloseTo(room / 6, 1);
    }
  });

  it('names what it has room for and lets no two names run into each other', () => {
    expect(markedDrawing(data(), 'wide').inside).toContain('290 rpm');
    const crowd = Array.from({ length: 30 }, (_, i) => ({ from: 2 * i, to: 2 * i + 1, label: `${i} rpm at 60 °C` }));
    const { inside } = markedDrawing(data({ marks: crowd }), 'narrow');
    expect(rects(inside)).toHaveLength(30);
    expect(inside.match(/rpm at 60/g)?.length ?? 0).toBeLessThan(5);
  });

  it('keeps a moment visible, and a channel that stands still', () => {
    expect(rects(markedDrawing(data({ marks: [{ from: 20, to: 20, label: '' }] }), 'wide').inside)[0]![1]).toBe(2);
    const still = markedDrawing(data({ points: [[0, 5], [10, 5]] }), 'wide'); // prettier-ignore
    expect(still.inside).not.toMatch(/NaN|Infinity/);
  });

  it('takes words of a note for words', () => {
    const { inside } = markedDrawing(data({ marks: [{ from: 30, to: 40, label: '<b>&' }] }), 'wide');
    expect(inside).toContain('&lt;b&gt;&amp;');
  });
});
