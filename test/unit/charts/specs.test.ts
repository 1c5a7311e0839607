import { describe, expect, it } from 'vitest';
import * as vegaLite from 'vega-lite';
import { pictureOf } from '../../../src/charts/picture.ts';
import type { Spec } from '../../../src/charts/plot.ts';
import { pictureWidth, textSize } from '../../../src/charts/theme.ts';
import type { FilmData, SettleData, StandingData, TraceData } from '../../../src/report/page.ts';
import { everyChart } from '../../site/sample-charts.ts';

const drawn = { ...everyChart };
const specs = (['wide', 'narrow'] as const).flatMap((width) =>
  Object.entries(drawn).flatMap(([name, data]) => {
    const picture = pictureOf(data, width);
    return picture.kind === 'spec' ? [{ name, width, spec: picture.spec }] : [];
  }),
);

/** What the compiler would only warn of. */
function warningsOf(spec: Spec): readonly string[] {
  const heard: string[] = [];
  const logger = {
    level: () => logger,
    warn: (...words: unknown[]) => (heard.push(words.join(' ')), logger),
    error: (...words: unknown[]) => (heard.push(words.join(' ')), logger),
    info: () => logger,
    debug: () => logger,
  };
  vegaLite.compile(spec as unknown as vegaLite.TopLevelSpec, { logger: logger });
  return heard;
}

describe('each picture', () => {
  it.each(specs)('$name, $width, compiles with an empty list of warnings', ({ spec }) => {
    expect(warningsOf(spec)).toEqual([]);
  });
  it.each(specs)('$name, $width, names only fields that its rows have', ({ spec }) => {
    for (const { data, encoding } of spec.layer) {
      const fields = Object.values(encoding).flatMap(({ field }) => (typeof field === 'string' ? [field] : []));
      for (const row of data.values) expect(Object.keys(row)).toEqual(expect.arrayContaining(fields));
    }
  });
  it.each(specs)(
    '$name, $width, is as wide as its column and letters are no smaller than agreed',
    ({ spec, width }) => {
      expect(spec.width + spec.padding.left + spec.padding.right).toBeCloseTo(pictureWidth[width], 6);
      expect(textSize).toBeGreaterThanOrEqual(12);
      expect(JSON.stringify(spec).match(/"(?:fontSize|labelFontSize)":\d+/g)).not.toContain('"fontSize":11');
    },
  );
  it('would be heard if it lost something: a sort in a layer is a warning', () => {
    const [first] = specs;
    const layer = first!.spec.layer.map((each) => ({
      ...each,
      encoding: { ...each.encoding, strokeWidth: { field: 'x', type: 'nominal' } },
    }));
    expect(warningsOf({ ...first!.spec, layer })).not.toEqual([]);
  });
});

const numbersIn = (thing: unknown): readonly number[] =>
  typeof thing === 'number'
    ? [thing]
    : typeof thing === 'object' && thing !== null
      ? Object.values(thing as Record<string, unknown>).flatMap(numbersIn)
      : [];

describe('an empty or odd picture', () => {
  const bare: TraceData = {
    kind: 'trace',
    yTitle: 'sump, °C',
    xTitle: 'minutes',
    lines: [],
    limits: [],
    crossings: [],
    excluded: [],
  };
  const one = { label: 'P0', detail: '', mark: 0, letters: '', baseline: true, low: null, high: null };
  const film: FilmData = { kind: 'film', xTitle: 'minutes', panels: [], steps: [] };
  const panel = { yTitle: 'sump, °C', mark: 0, points: [] };
  const settle: SettleData = {
    kind: 'settle',
    xTitle: 's',
    yTitle: 'mm',
    mark: 0,
    points: [],
    fit: [],
    lines: [],
    bubbles: [],
  };
  const cases: readonly { title: string; data: FilmData | SettleData | StandingData | TraceData }[] = [
    { title: 'a trace without any line', data: bare },
    {
      title: 'a trace of one reading',
      data: { ...bare, lines: [{ label: 'P0', mark: 0, role: 'main', points: [[0, 21]] }] },
    },
    {
      title: 'a standing of the baseline alone',
      data: { kind: 'standing', xTitle: 'W', band: null, rows: [{ ...one, value: 0 }] },
    },
    {
      title: 'a standing where nothing is ranked',
      data: { kind: 'standing', xTitle: 'W', band: null, rows: [{ ...one, value: null }] },
    },
    { title: 'a film without any panel', data: film },
    { title: 'a film with a panel without readings', data: { ...film, panels: [panel] } },
    {
      title: 'a film of one reading in one hold of no length',
      data: { ...film, panels: [{ ...panel, points: [[3, 60]] }], steps: [{ from: 3, to: 3, label: '60 rpm up' }] },
    },
    { title: 'a settling without readings, fit, heights or grades', data: settle },
    { title: 'a settling of one reading', data: { ...settle, points: [[0, -60]], bubbles: [{ x: 0, text: 'ng' }] } },
  ];
  it.each(cases)('$title still compiles, with finite numbers only', ({ data }) => {
    const picture = pictureOf(data, 'narrow');
    expect(picture.kind).toBe('spec');
    if (picture.kind === 'spec') {
      expect(warningsOf(picture.spec)).toEqual([]);
      expect(numbersIn(picture.spec).filter((number) => !Number.isFinite(number))).toEqual([]);
    }
  });
});

describe('a standing', () => {
  it('is drawn in the order of its rows, which suggests none', () => {
    const drawn = (rows: typeof everyChart.standing.rows): number[] => {
      const picture = pictureOf({ ...everyChart.standing, rows }, 'wide');
      if (picture.kind !== 'spec') throw new Error('not a spec');
      const points = picture.spec.layer.filter(({ mark }) => mark.type === 'point').flatMap(({ data }) => data.values);
      return [...points].sort((a, b) => Number(a['y']) - Number(b['y'])).map((row) => Number(row['x']));
    };
    const { rows } = everyChart.standing;
    expect(drawn([...rows].reverse())).toEqual([...drawn(rows)].reverse());
    expect(new Set(drawn(rows)).size).toBeGreaterThan(1);
  });
});

describe('the band behind spin power', () => {
  const drawnBand = () => {
    const picture = pictureOf(everyChart.speedWithBand, 'wide');
    if (picture.kind !== 'spec') throw new Error('not a spec');
    return picture.spec.layer;
  };

  it('lies under every line and mark, and has neither edge nor mark of its own', () => {
    const [first, ...rest] = drawnBand();
    expect(first!.mark.type).toBe('area');
    expect(rest.map(({ mark }) => mark.type)).not.toContain('area');
    expect(Object.keys(first!.encoding)).not.toContain('stroke');
  });

  it('is cut off at the top of the plot, which the measured curve decides', () => {
    const [first] = drawnBand();
    const tops = first!.data.values.map((row) => Number(row['y2']));
    const { domain } = (first!.encoding['y']!['scale'] ?? {}) as { domain: readonly [number, number] };
    expect(Math.max(...tops)).toBe(domain[1]);
    expect(domain[1]).toBeLessThan(20 * (520 / 60) ** 2);
    // A place more than the six speeds: where the upper end passes the top.
    expect(tops).toHaveLength(7);
  });
});
