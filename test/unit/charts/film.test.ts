import { describe, expect, it } from 'vitest';
import { atTime } from '../../../src/charts/clock.ts';
import { stepNames } from '../../../src/charts/film-steps.ts';
import { filmSpec } from '../../../src/charts/film.ts';
import type { Row, Spec } from '../../../src/charts/plot.ts';
import { nameGroups } from '../../../src/charts/step-names.ts';
import { textWidth } from '../../../src/charts/text-width.ts';
import { textSize } from '../../../src/charts/theme.ts';
import { drawChart } from '../../../src/host/pictures/draw.ts';
import type { FilmData } from '../../../src/report/page.ts';
import { chart, film, settle, shortFilm } from '../../site/sample-charts.ts';

const rowsOf = (spec: Spec, type: string): readonly Row[] =>
  spec.layer.filter(({ mark }) => mark.type === type).flatMap(({ data }) => data.values);
const textsOf = (spec: Spec): readonly string[] => rowsOf(spec, 'text').map(({ text }) => String(text));

describe('the clock of a film chart', () => {
  /** As the reader's page sees it: attributes of the drawing. */
  const clockOf = (svg: string) => {
    const head = svg.slice(0, svg.indexOf('>'));
    const number = (name: string) => Number(new RegExp(` ${name}="([^"]+)"`).exec(head)?.[1]);
    return {
      from: number('data-time-from'),
      to: number('data-time-to'),
      left: number('data-left'),
      right: number('data-right'),
      top: number('data-top'),
      bottom: number('data-bottom'),
    };
  };

  it('stands on the drawing, and a time read with it falls where the trace has it', async () => {
    const { wide, narrow } = await drawChart({ ...chart('film-test', 'Film', film), data: film });
    for (const svg of [wide, narrow]) {
      const clock = clockOf(svg);
      // The wheel speed jumps to 520 rpm between 9.7 and 9.73 min: a foot and a shoulder of the line as it was drawn.
      const lines = [...svg.matchAll(/<path [^>]*?d="(M[^"]+)"/g)].map(([, d = '']) =>
        [...d.matchAll(/([\d.]+),([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const),
      );
      const speed = lines.filter((line) => line.length > 100).at(-1)!;
      const highest = Math.min(...speed.map(([, y]) => y));
      const shoulder = speed.find(([, y]) => y < highest + 3)![0];
      const minutes = clock.from + ((shoulder - clock.left) / (clock.right - clock.left)) * (clock.to - clock.from);
      const step = film.steps.find(({ label }) => label === '520 rpm up')!;
      expect(Math.abs(minutes - step.from)).toBeLessThan(0.1);
    }
  });
  it('keeps its times unrounded: a hundredth of a minute is too coarse for a film', async () => {
    const ends: FilmData = { ...film, panels: [], steps: [{ from: 0.123456, to: 7.654321, label: '60 rpm up' }] };
    const { wide } = await drawChart({ ...chart('film-ends', 'Film', ends), data: ends });
    expect(clockOf(wide)).toMatchObject({ from: 0.123456, to: 7.654321 });
  });
  it('spans all panels and nothing else', () => {
    const { clock, spec } = filmSpec(film, 'wide');
    const line = rowsOf(spec, 'line').map(({ x, y }) => [Number(x), Number(y)] as const);
    expect(Math.min(...line.map(([x]) => x))).toBeCloseTo(clock.left, 6);
    expect(Math.max(...line.map(([x]) => x))).toBeCloseTo(clock.right, 6);
    for (const [, y] of line) {
      expect(y).toBeGreaterThan(clock.top);
      expect(y).toBeLessThan(clock.bottom);
    }
    expect(clock.bottom).toBeLessThan(spec.height);
  });
  it('is asked of film charts alone: other drawings carry none', async () => {
    const { wide } = await drawChart({ ...chart('none', 'Settling', settle), data: settle });
    expect(wide).not.toContain('data-time');
  });
  it('needs no style attribute, which the policy of the pages forbids', async () => {
    const { wide, narrow } = await drawChart({ ...chart('plain', 'Film', film), data: film });
    expect(wide + narrow).not.toMatch(/ style=| on\w+=|<style/);
  });
});

describe('the holds of a film chart', () => {
  const clock = { from: 0, to: 21, left: 46, right: 680 };
  it('are tinted from their begin to their end', () => {
    const { clock: drawn, spec } = filmSpec(film, 'narrow');
    const bands = rowsOf(spec, 'rect');
    expect(bands).toHaveLength(film.steps.length);
    bands.forEach((band, i) => {
      expect(band['x']).toBeCloseTo(atTime(drawn, film.steps[i]!.from), 9);
      expect(band['x2']).toBeCloseTo(atTime(drawn, film.steps[i]!.to), 9);
    });
  });
  it('are named whole while there is room', () => {
    const { heads, shared } = stepNames(shortFilm.steps, { ...clock, to: 6 });
    expect(heads.map(({ text }) => text)).toEqual(['60 rpm up', '120 rpm up', '200 rpm up']);
    expect(shared).toEqual([]);
  });
  it('share what they have in common where there is none', () => {
    const { heads, shared } = stepNames(film.steps, clock);
    expect(heads.map(({ text }) => text).join()).toBe('60,120,200,290,390,520,390,290,200,120,60');
    expect(shared.map(({ text }) => text)).toEqual(['rpm up', 'rpm down']);
    expect(shared[0]?.to).toBeCloseTo(atTime(clock, film.steps[5]!.to), 9);
  });
  it('lose a name rather than print one over another', () => {
    for (const right of [90, 150, 250, 680]) {
      const { heads } = stepNames(film.steps, { ...clock, right });
      heads.forEach(({ middle, text }, i) => {
        const before = heads[i - 1];
        if (before === undefined) return;
        const ends = before.middle + (textWidth(before.text, textSize) + textWidth(text, textSize)) / 2;
        expect(middle).toBeGreaterThan(ends);
      });
      expect(heads.length).toBeGreaterThan(0);
    }
    expect(stepNames(film.steps, { ...clock, right: 150 }).heads.length).toBeLessThan(film.steps.length);
  });
  it('are named in the order of time, whatever the order given', () => {
    expect(stepNames([...film.steps].reverse(), clock)).toEqual(stepNames(film.steps, clock));
  });
  it('need not be there', () => {
    expect(stepNames([], clock)).toEqual({ heads: [], shared: [] });
    expect(nameGroups([])).toEqual([]);
  });
});

describe('the panels of a film chart', () => {
  it('have each its own name and its own numbers', () => {
    const texts = textsOf(filmSpec(film, 'wide').spec);
    for (const { yTitle } of film.panels) expect(texts).toContain(yTitle);
    expect(texts).toEqual(expect.arrayContaining(['−60', '60', '400', film.xTitle]));
  });
  it('do not blow up noise: a sump within 0.2 K does not fill its panel', () => {
    const still: FilmData = {
      ...film,
      panels: [
        { yTitle: 'sump, °C', mark: 0, points: Array.from({ length: 50 }, (_, i) => [i / 5, 60 + 0.1 * (-1) ** i]) },
      ],
    };
    const heights = rowsOf(filmSpec(still, 'wide').spec, 'line').map(({ y }) => Number(y));
    expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(10);
  });
});
