import { describe, expect, it } from 'vitest';
import { sectionDrawing } from '../../../src/charts/section.ts';
import { textWidth } from '../../../src/charts/text-width.ts';
import { pictureWidth, textSize } from '../../../src/charts/theme.ts';
import type { SectionData } from '../../../src/report/page.ts';
import {
  bothWays,
  deepSection,
  framedSection,
  noseUp,
  rigSection,
  runningSection,
  section,
} from '../../site/sample-charts.ts';

type Point = readonly [number, number];

/** Words with the room they take, px; a start of letters is the left end unless they are centred. */
const wordsOf = (svg: string) =>
  [...svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"[^>]*text-anchor="(\w+)"[^>]*>([^<]*)/g)].map(
    ([, x, y, anchor, text = '']) => {
      const width = textWidth(text, textSize);
      const left = Number(x) - (anchor === 'middle' ? width / 2 : 0);
      return { text, left, right: left + width, top: Number(y) - 10, bottom: Number(y) + 3 };
    },
  );

/** Straight lines of one look, as their two ends in mm from the axle centre; the ring gives centre and scale. */
function linesIn(svg: string, ringRadius: number, look: RegExp): readonly (readonly [Point, Point])[] {
  const [cx = 0, cy = 0, r = 1] = ringOf(svg);
  const mm = (x: string, y: string): Point => [
    ((Number(x) - cx) / r) * ringRadius,
    ((cy - Number(y)) / r) * ringRadius,
  ];
  return [...svg.matchAll(/<path d="M([\d.-]+),([\d.-]+)L([\d.-]+),([\d.-]+)"([^>]*)>/g)].flatMap(
    ([, x1 = '', y1 = '', x2 = '', y2 = '', rest = '']) => (look.test(rest) ? [[mm(x1, y1), mm(x2, y2)] as const] : []),
  );
}

const ringOf = (svg: string): readonly number[] =>
  [...svg.matchAll(/<circle cx="([\d.-]+)" cy="([\d.-]+)" r="([\d.-]+)" fill="none" stroke="var\(--ink\)"/g)]
    .map(([, ...numbers]) => numbers.slice(0, 3).map(Number))
    .sort((a, b) => (b[2] ?? 0) - (a[2] ?? 0))[0] ?? [];

describe('the section drawing', () => {
  const samples = { section, deepSection, runningSection, bothWays, noseUp, rigSection, framedSection };
  const cases = Object.entries(samples).flatMap(([name, data]) =>
    (['wide', 'narrow'] as const).map((width) => ({ name, data, width })),
  );
  it.each(cases)('sets its words apart and keeps them on the sheet: $name, $width', ({ data, width }) => {
    const { inside, height } = sectionDrawing(data, width);
    const words = wordsOf(inside);
    expect(words.length).toBeGreaterThan(3);
    words.forEach((word, i) => {
      expect(word.left, word.text).toBeGreaterThanOrEqual(0);
      expect(word.right, word.text).toBeLessThanOrEqual(pictureWidth[width]);
      expect(word.top, word.text).toBeGreaterThanOrEqual(-1);
      expect(word.bottom, word.text).toBeLessThanOrEqual(height);
      for (const other of words.slice(i + 1)) {
        const touches =
          word.left < other.right && other.left < word.right && word.top < other.bottom && other.top < word.bottom;
        expect(touches, `${word.text} on ${other.text}`).toBe(false);
      }
    });
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
    expect(wordsOf(inside).map(({ text }) => text)).toEqual(['ring gear', expect.stringContaining('to scale')]);
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
  it('of two articles in one frame is to one scale', () => {
    const frame = { left: -124, right: 166, top: 132, bottom: -158 };
    for (const width of ['wide', 'narrow'] as const) {
      const [small, large] = [section, deepSection].map((data) =>
        ringOf(sectionDrawing({ ...data, frame }, width).inside),
      );
      expect(small?.[2]).toBe(large?.[2]);
      expect(ringOf(sectionDrawing(section, width).inside)[2]).toBeGreaterThan(small?.[2] ?? Infinity);
    }
  });
  it('in a frame that is too small is still drawn whole', () => {
    const small = { ...deepSection, frame: { left: -10, right: 10, top: 10, bottom: -10 } };
    expect(sectionDrawing(small, 'wide')).toEqual(sectionDrawing(deepSection, 'wide'));
  });
});

describe('a section at a tilt', () => {
  // source: a straight surface of the stated slope, z = z0 + x · tilt; 190 mm · 12 % = 22.8 mm
  const dashed = /stroke-dasharray="3 3"/;
  it.each(['wide', 'narrow'] as const)('has its surface at z −76.1 where the front race stands, %s', (width) => {
    const { inside } = sectionDrawing(noseUp, width);
    const [ahead] = linesIn(inside, 124, dashed);
    expect(ahead?.[0][0]).toBeCloseTo(-190, 1);
    expect(Math.abs((ahead?.[0][1] ?? 0) - -76.1)).toBeLessThan(0.05);
  });
  it('stands higher behind the axle and lower ahead of it, nose up, and the other way round nose down', () => {
    const slopeAt = (tilt: number) => {
      const [[ahead, behind] = []] = linesIn(
        sectionDrawing({ ...noseUp, tilt }, 'wide').inside,
        124,
        /stroke-width="1.6"/,
      );
      return ((behind?.[1] ?? 0) - (ahead?.[1] ?? 0)) / ((behind?.[0] ?? 0) - (ahead?.[0] ?? 0));
    };
    expect(slopeAt(0.12)).toBeCloseTo(0.12, 3);
    expect(slopeAt(-0.12)).toBeCloseTo(-0.12, 3);
    expect(slopeAt(0)).toBe(0);
  });
  it('leans its running levels as well', () => {
    const running = linesIn(sectionDrawing(noseUp, 'wide').inside, 124, /stroke-width="0.9"\/?$/);
    expect(running).toHaveLength(3);
    running.forEach(([[x1, z1], [x2, z2]], i) => {
      expect((z2 - z1) / (x2 - x1)).toBeCloseTo(0.12, 2);
      expect(z1 - 0.12 * x1).toBeCloseTo(noseUp.running[i]!.z, 0);
    });
  });
  it('says so in words, and says nothing on the level', () => {
    const said = (tilt: number) =>
      wordsOf(sectionDrawing({ ...noseUp, tilt }, 'narrow').inside).map(({ text }) => text);
    expect(said(0.12)).toContain('12 % nose up');
    expect(said(-0.06)).toContain('6 % nose down');
    expect(said(0).join()).not.toContain('nose');
  });
  it('draws nothing ahead of the known outline when the race is not on the rig sheet', () => {
    expect(linesIn(sectionDrawing({ ...noseUp, race: null }, 'wide').inside, 124, dashed)).toEqual([]);
  });
  it('draws the race where it is, to its radius, edge on and turned into the sheet', () => {
    const { inside } = sectionDrawing(noseUp, 'wide');
    const [cx = 0, cy = 0, r = 1] = ringOf(inside);
    const circle = [...inside.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/g)]
      .map((found) => found.slice(1, 4).map(Number))
      .find(([x]) => x !== undefined && x < cx - r);
    expect(((circle?.[0] ?? 0) - cx) / (r / 124)).toBeCloseTo(-190, 1);
    expect((cy - (circle?.[1] ?? 0)) / (r / 124)).toBeCloseTo(-32, 1);
    expect((circle?.[2] ?? 0) / (r / 124)).toBeCloseTo(45, 1);
  });
});

describe('running levels in a section', () => {
  const said = (data: SectionData) => wordsOf(sectionDrawing(data, 'wide').inside).map(({ text }) => text);
  it('are named each while they are few', () => {
    expect(said(noseUp)).toEqual(
      expect.arrayContaining(['running at 60 rpm up', 'running at 120 rpm up', 'running at 200 rpm up']),
    );
  });
  it('are named together when they are many, up and down apart, their speeds over their bars', () => {
    const words = said(bothWays);
    expect(words).toEqual(expect.arrayContaining(['running at 60–520 rpm up', 'running at 390–60 rpm down']));
    expect(words.filter((word) => /^\d+$/.test(word))).toEqual([
      '60',
      '120',
      '200',
      '290',
      '390',
      '520',
      '390',
      '290',
      '200',
      '120',
      '60',
    ]);
  });
  it('that stand at the pinion’s axis have their speeds below the surfaces, clear of its name', () => {
    const up = (by: number): SectionData => ({
      ...runningSection,
      levels: runningSection.levels.map((level) => ({ ...level, z: level.z + by })),
      running: runningSection.running.map((level) => ({ ...level, z: level.z + by })),
    });
    const heights = (data: SectionData): readonly [number, number] => {
      const svg = sectionDrawing(data, 'wide').inside;
      const [, cy = 0, r = 1] = ringOf(svg);
      const name = wordsOf(svg).find(({ text }) => text === '60')!;
      return [((cy - name.bottom) / r) * 124, ((cy - name.top) / r) * 124];
    };
    const low = Math.min(...up(17).running.map(({ z, swing }) => z - swing));
    expect(heights(up(17))[1]).toBeLessThan(low);
    expect(heights(runningSection)[0]).toBeGreaterThan(runningSection.levels[0]!.z);
  });
  it('swing as far as they are said to: the bar is twice the swing long, in mm', () => {
    const { inside } = sectionDrawing(runningSection, 'wide');
    const [, , r = 1] = ringOf(inside);
    const bars = [...inside.matchAll(/d="M[\d.]+,([\d.]+)h7M[\d.]+,[\d.]+V([\d.]+)M/g)].map(
      ([, top, bottom]) => ((Number(bottom) - Number(top)) / r) * 124,
    );
    expect(bars).toHaveLength(6);
    bars.forEach((bar, i) => {
      expect(bar).toBeCloseTo(2 * runningSection.running[i]!.swing, 1);
    });
  });
  it('without a swing have no bar', () => {
    const still = { ...noseUp, running: noseUp.running.map((level) => ({ ...level, swing: 0 })) };
    expect(sectionDrawing(still, 'wide').inside).not.toMatch(/h7M/);
  });
});

describe('a dimension line', () => {
  it('stands beside its label, which no outline crosses', () => {
    const { inside } = sectionDrawing(runningSection, 'wide');
    const [cx = 0, cy = 0, r = 1] = ringOf(inside);
    const label = wordsOf(inside).find(({ text }) => text === '70.7 mm');
    const corners = [label?.left ?? 0, label?.right ?? 0].flatMap((x) =>
      [label?.top ?? 0, label?.bottom ?? 0].map((y) => Math.hypot(x - cx, y - cy)),
    );
    // Inside the toothed rim, which is a twentieth of the radius deep.
    for (const far of corners) expect(far).toBeLessThan(0.95 * r);
    expect(label?.left).toBeGreaterThan(cx);
  });
  it('in a drawing without room for its label is named in the column', () => {
    const crowded = {
      ...section,
      dimensions: [{ from: [-3, -53] as const, to: [3, -53] as const, label: 'width of the pocket at rest, 6 mm' }],
    };
    const words = wordsOf(sectionDrawing(crowded, 'narrow').inside);
    const column = words.find(({ text }) => text === 'tube lip')?.left;
    expect(words.find(({ text }) => text.startsWith('width'))?.left).toBe(column);
  });
});
