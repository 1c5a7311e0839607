import { describe, expect, it } from 'vitest';
import { belowLevel, dippedSegment } from '../../../src/charts/oil-area.ts';
import { sectionDrawing } from '../../../src/charts/section.ts';
import type { SectionData } from '../../../src/report/page.ts';
import { deepSection, section } from '../../site/sample-charts.ts';

type Point = readonly [number, number];
const areaOf = (outline: readonly Point[]): number =>
  Math.abs(outline.reduce((sum, [x, y], i) => sum + x * outline.at(i - 1)![1] - y * outline.at(i - 1)![0], 0)) / 2;

describe('oil under a level', () => {
  it('fills half of a square that stands half in it', () => {
    const square: readonly Point[] = [
      [0, -1],
      [2, -1],
      [2, 1],
      [0, 1],
    ];
    expect(areaOf(belowLevel(square, 0))).toBeCloseTo(2, 12);
    expect(belowLevel(square, -2)).toEqual([]);
    expect(areaOf(belowLevel(square, 5))).toBeCloseTo(4, 12);
  });
  it('covers of the ring what geometry says of a circular segment: R² acos(d/R) − d √(R² − d²)', () => {
    // source: elementary geometry, no source; tolerance: a polygon of 36 sides lies a little inside its arc
    const [radius, depth] = [124, 53.3];
    const exact = radius ** 2 * Math.acos(depth / radius) - depth * Math.sqrt(radius ** 2 - depth ** 2);
    expect(areaOf(dippedSegment(radius, -depth)) / exact).toBeGreaterThan(0.995);
    expect(areaOf(dippedSegment(radius, -depth)) / exact).toBeLessThanOrEqual(1);
    expect(dippedSegment(radius, -radius - 1)).toEqual([]);
  });
});

describe('the section drawing', () => {
  const textsOf = (svg: string) =>
    [...svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"[^>]*>([^<]*)/g)].map(([, x, y, text]) => ({
      x: Number(x),
      y: Number(y),
      text,
    }));

  it.each(['wide', 'narrow'] as const)('sets its words apart, %s', (width) => {
    for (const data of [section, deepSection]) {
      const { inside } = sectionDrawing(data, width);
      const column = textsOf(inside)
        .filter(({ text }) => /oil|lip|L$|tray|shroud/.test(text ?? ''))
        .map(({ y }) => y);
      const sorted = [...column].sort((a, b) => a - b);
      sorted.forEach((y, i) => {
        if (i > 0) expect(y - sorted[i - 1]!).toBeGreaterThanOrEqual(15);
      });
    }
  });
  it('draws only what is known', () => {
    const bare: SectionData = {
      kind: 'section',
      frame: null,
      tilt: 0,
      running: [],
      dimensions: [],
      race: null,
      ringRadius: 124,
      wall: [],
      tray: null,
      shroud: null,
      levels: [],
      lips: [],
      pinion: null,
      mark: 0,
    };
    const { inside } = sectionDrawing(bare, 'wide');
    expect(textsOf(inside).map(({ text }) => text)).toEqual(['ring gear', expect.stringContaining('to scale')]);
    expect(inside).not.toMatch(/oil|NaN|undefined|Infinity/);
  });
  it('is to scale: the bar is as long as it says beside the ring', () => {
    const { inside } = sectionDrawing(section, 'wide');
    const ring = Math.max(...[...inside.matchAll(/ r="([\d.]+)"/g)].map(([, r]) => Number(r)));
    const bar = Number(/h([\d.]+)M/.exec(inside.slice(inside.lastIndexOf('<path')))?.[1]);
    const mm = Number(/(\d+) mm, to scale/.exec(inside)?.[1]);
    expect(bar / mm).toBeCloseTo(ring / 124, 2);
  });
  it('writes a label as text, whatever it holds', () => {
    const { inside } = sectionDrawing({ ...section, levels: [{ z: -50, label: '<script>"&' }] }, 'wide');
    expect(inside).toContain('&lt;script&gt;&quot;&amp;');
    expect(inside).not.toContain('<script');
  });
});
