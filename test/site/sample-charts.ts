import type { Bar, Chart, ChartData, FilmData, SectionData, SettleData, Span, Table } from '../../src/report/page.ts';

/** Invented pictures of the house scenario, one of each kind. The numbers are placeholders and prove nothing. */
export function chart(id: string, title: string, data: ChartData, caption: readonly Span[] = []): Chart {
  return {
    id,
    title,
    alternative: `${title}. The table below it holds the same numbers.`,
    caption,
    data,
    table: numbers(id),
  };
}

const numbers = (id: string): Table => ({
  id: `${id}-table`,
  caption: null,
  columns: [
    { head: 'article', align: 'wide' },
    { head: 'value', align: 'number', unit: 'W' },
    { head: '95 %', align: 'number', unit: 'W' },
  ],
  rows: [
    { cells: [['P1 deep bowl'], ['−33'], ['± 9']] },
    { cells: [['P0 pressed bowl'], ['0'], ['—']], role: 'baseline' },
  ],
});

const rise = (start: number, final: number, tau: number) =>
  Array.from({ length: 301 }, (_, i): readonly [number, number] => [
    i / 2,
    start + (final - start) * (1 - Math.exp(-i / 2 / tau)),
  ]);

export const trace: ChartData = {
  kind: 'trace',
  yTitle: 'sump, °C',
  xTitle: 'minutes under 22 kW at 290 wheel rpm, air 4.0 m/s',
  lines: [
    { label: 'P1 skin', mark: 1, role: 'second', points: rise(21, 86, 52) },
    { label: 'P0 baseline', mark: 0, role: 'baseline', points: rise(21, 105, 42) },
    { label: 'two-store fit', mark: 1, role: 'fit', points: rise(21, 95.2, 45.4) },
    { label: 'P1 sump', mark: 1, role: 'main', points: rise(21, 95, 45) },
  ],
  limits: [
    { y: 80, label: 'limit 80 °C' },
    { y: 90, label: '90 °C' },
    { y: 95, label: '95 °C' },
  ],
  crossings: [
    { x: 72, y: 80, label: '72 min' },
    { x: 121, y: 90, label: '121 min' },
  ],
  excluded: [{ from: 70, to: 70.2, label: '12 s left out' }],
};

const articles = [
  { label: 'P0 pressed bowl', mark: 0, a: 1 },
  { label: 'P1 deep bowl', mark: 1, a: 0.86 },
  { label: 'P2 catch tray', mark: 2, a: 0.92 },
  { label: 'P3 moulded bowl', mark: 3, a: 1.01 },
  { label: 'P4 shroud', mark: 4, a: 0.88 },
] as const;

export const speed: ChartData = {
  kind: 'speed',
  yTitle: 'spin power, W',
  xTitle: 'wheel speed, rpm (sump 60 °C, oil O1, 2.40 L)',
  lines: articles.map(({ label, mark, a }) => ({
    label,
    mark,
    points: [60, 120, 200, 290, 390, 520].map((x) => {
      const y = a * 26 * (x / 60) ** 1.46;
      return { x, y, low: y - 4 - y * 0.02, high: y + 4 + y * 0.02 };
    }),
  })),
};

/** The same with what models let one expect behind it, which reaches over the top of the plot. */
export const speedWithBand: ChartData = {
  ...speed,
  lines: speed.lines.slice(0, 1),
  band: {
    label: 'what models let one expect at 60 °C',
    points: [60, 120, 200, 290, 390, 520].map((x) => ({ x, low: 0.3 * x, high: 20 * (x / 60) ** 2 })),
  },
};

const bar = (value: number, half: number): Bar => ({ value, low: value - half, high: value + half });

export const heat: ChartData = {
  kind: 'heat',
  panels: [
    { key: 'made', title: 'heat made, W' },
    { key: 'shed', title: 'heat shed, W/K of rise' },
  ],
  rows: articles.map(({ label, mark, a }) => ({
    label,
    mark,
    made: bar(870 + 130 * a, 24),
    shed: mark === 2 ? null : bar(mark === 1 ? 13.3 : 11.9 - mark * 0.06, 0.5),
  })),
};

export const standing: ChartData = {
  kind: 'standing',
  xTitle: 'spin power less the bracketing baseline, W (290 wheel rpm, sump 60 °C, oil O1)',
  band: [-9, 9],
  rows: [
    row('P1 deep bowl', '2.40 L', 1, -33, 'a'),
    row('P4 shroud', '2.40 L', 4, -28, 'ab'),
    row('P2 catch tray', '2.40 L', 2, -20, 'b'),
    row('P1 deep bowl', '3.59 L', 1, -4, 'c'),
    { ...row('P0 pressed bowl', '2.40 L', 0, 0, 'c'), low: null, high: null, baseline: true },
    row('P3 moulded bowl', '2.40 L', 3, 2, 'c'),
    row('P0 pressed bowl', '3.20 L', 0, 22, 'd'),
    { ...row('P5 cast bowl', 'other rig state', 5, 0, ''), value: null, low: null, high: null },
  ],
};

export const claims: ChartData = {
  kind: 'claims',
  xTitle: 'difference that the claim is about, K',
  rows: [
    asked('CL-1', 'P1 3.59 L less P0 2.40 L', 1, -9.5, [-5], 'shown'),
    asked('CL-4', 'P4 less P0, 2.40 L, 12 % nose up', 4, 3.5, [-2, 2], 'shown against'),
    asked('CL-7', 'P3 less P0, 2.40 L', 3, 3.1, [2], 'leaning'),
  ],
};

function asked(
  label: string,
  detail: string,
  mark: number,
  value: number,
  thresholds: readonly number[],
  word: string,
) {
  return {
    label,
    detail,
    mark,
    value,
    low: value - 1.8,
    high: value + 1.8,
    thresholds,
    word,
  };
}

function row(label: string, detail: string, mark: number, value: number, letters: string) {
  return { label, detail, mark, value, low: value - 9, high: value + 9, letters, baseline: false };
}

const heights = [-132, -124, -110, -95, -80, -65, -52, -45, -38, -32, -25];
const litres = [0, 0.1, 0.4, 0.85, 1.38, 1.95, 2.45, 2.75, 3.05, 3.6, 4.45];
const added = [0.2, 0.28, 0.45, 0.7, 0.95, 1.1, 1.2, 1.25, 1.3, 1.3, 1.3];

export const level: ChartData = {
  kind: 'level',
  xTitle: 'oil in the housing, L at 20 °C',
  yTitle: 'height from the axle centreline, mm',
  curves: [
    { label: 'P0', mark: 0, points: heights.map((z, i) => [litres[i] ?? 0, z]) },
    { label: 'P1 deep bowl', mark: 1, points: heights.map((z, i) => [(litres[i] ?? 0) + (added[i] ?? 0), z]) },
  ],
  fills: [
    { x: 2.4, y: -53.3, label: '2.40 L', mark: 0 },
    { x: 2.4, y: -79.6, label: '2.40 L', mark: 1 },
    { x: 3.59, y: -53.3, label: '3.59 L', mark: 1 },
  ],
  lines: [
    { y: -38, label: 'tube lip' },
    { y: -52, label: 'filler lip' },
  ],
};

export const section: SectionData = {
  kind: 'section',
  frame: null,
  tilt: 0,
  running: [],
  dimensions: [],
  race: null,
  ringRadius: 124,
  wall: [
    [40, -128],
    [95, -118],
    [128, -80],
    [140, -20],
    [138, 30],
    [118, 85],
    [80, 120],
    [40, 132],
  ],
  tray: null,
  shroud: { radius: 131, from: -60, to: 150 },
  levels: [{ z: -53.3, label: 'oil at rest, 2.40 L' }],
  lips: [
    { z: -38, label: 'tube lip' },
    { z: -52, label: 'filler lip' },
  ],
  pinion: { offset: -32 },
  mark: 4,
};

export const deepSection: SectionData = {
  ...section,
  kind: 'section',
  wall: [
    [40, -128],
    [60, -158],
    [120, -158],
    [158, -120],
    [166, -20],
    [150, 60],
    [118, 95],
    [80, 122],
    [40, 132],
  ],
  shroud: null,
  tray: [
    [72, 18],
    [122, 36],
  ],
  levels: [
    { z: -53.3, label: 'oil at rest, 3.59 L' },
    { z: -79.6, label: '2.40 L' },
  ],
  mark: 1,
};

const running = (upTo = 6, z = -53.3) =>
  [60, 120, 200, 290, 390, 520].slice(0, upTo).map((rpm) => ({
    z: z - 6 * Math.log2(1 + rpm / 100),
    swing: 1 + rpm / 150,
    label: `${rpm} rpm up`,
  }));

/** A flow trial on the level: six steps up, and what stands in the oil is dimensioned. */
export const runningSection: SectionData = {
  ...section,
  kind: 'section',
  shroud: null,
  running: running(),
  dimensions: [
    { from: [0, -124], to: [0, -53.3], label: '70.7 mm' },
    { from: [-124, -148], to: [124, -148], label: '248 mm' },
  ],
  mark: 0,
};

/** Up and down again, in the deep bowl. */
export const bothWays: SectionData = {
  ...deepSection,
  kind: 'section',
  levels: [{ z: -53.3, label: 'oil at rest, 3.59 L' }],
  running: [
    ...running(),
    ...running(5, -55)
      .reverse()
      .map((step) => ({ ...step, label: step.label.replace('up', 'down') })),
  ],
};

/** 12 % nose up: the surface at the front race stands at −53.3 − 0.12 · 190 = −76.1 mm. */
export const noseUp: SectionData = {
  ...section,
  kind: 'section',
  tilt: 0.12,
  running: running(3),
  race: { x: -190, z: -32, radius: 45 },
  dimensions: [{ from: [-190, -141], to: [0, -141], label: '190 mm' }],
};

/** The rig alone: no wall is known, heights and lengths are dimensioned. */
export const rigSection: SectionData = {
  ...section,
  kind: 'section',
  wall: [],
  shroud: null,
  levels: [],
  lips: [...section.lips, { z: -132, label: 'floor' }],
  race: { x: -190, z: -32, radius: 45 },
  dimensions: [
    { from: [-190, -150], to: [0, -150], label: '190 mm' },
    { from: [0, 0], to: [0, -32], label: '32 mm' },
    { from: [-190, -32], to: [-190, 13], label: 'radius 45 mm' },
    { from: [-124, 140], to: [124, 140], label: '248 mm' },
  ],
  mark: 0,
};

/** One of two drawings side by side, to the scale that both share. */
export const framedSection: SectionData = {
  ...section,
  kind: 'section',
  frame: { left: -235, right: 166, top: 132, bottom: -158 },
  running: running(1),
  mark: 4,
};

export const planGrid: ChartData = {
  kind: 'plan-grid',
  columns: ['flow', 'spin', 'heat-up', 'cool-down', 'nose up'],
  rows: [
    { label: 'P0, 2.40 L, O1', cells: cells([1, 1, 0], [6, 5, 1], [2, 2, 0], [1, 1, 0], [2, 1, 0]) },
    { label: 'P1, 3.59 L, O1', cells: cells([1, 1, 0], [3, 3, 0], [1, 1, 0], [1, 0, 0], [0, 0, 0]) },
    { label: 'P4, 2.40 L, O1', cells: cells([1, 0, 1], [3, 2, 1], [1, 1, 0], [0, 0, 0], [2, 2, 0]) },
  ],
};

function cells(...counts: readonly (readonly [number, number, number])[]) {
  const columns = ['flow', 'spin', 'heat-up', 'cool-down', 'nose up'];
  return counts.map(([wanted, done, setAside], i) => ({ column: columns[i] ?? '', wanted, done, setAside }));
}

const speeds = [60, 120, 200, 290, 390, 520];
const climb = [
  ...speeds.map((rpm) => ({ rpm, way: 'up' })),
  ...speeds
    .slice(0, -1)
    .reverse()
    .map((rpm) => ({ rpm, way: 'down' })),
];

/** Eleven holds of 90 s with 20 s between them, from 0.5 min on; a little noise that is the same each time. */
const filmed = Array.from({ length: 630 }, (_, i) => {
  const time = i / 30;
  const held = Math.min(climb.length - 1, Math.max(0, Math.floor(((time - 0.5) * 60) / 110)));
  const rpm = time < 0.5 ? 0 : (climb[held]?.rpm ?? 0);
  const noise = Math.sin(i * 12.9898) * 0.5 + Math.sin(i * 78.233) * 0.5;
  const swing = rpm === 0 ? 0.1 : 1 + rpm / 150;
  return {
    time,
    rpm: rpm + noise * 0.6,
    level: -53.3 - 6 * Math.log2(1 + rpm / 100) + noise * swing,
    sump: 60 + time / 30 + noise * 0.05,
  };
});

export const film: FilmData = {
  kind: 'film',
  xTitle: 'minutes of the log of F-01 (P0w, 2.40 L of O1)',
  panels: [
    {
      yTitle: 'running level, mm from the axle centreline',
      mark: 0,
      points: filmed.map(({ time, level }) => [time, level]),
    },
    { yTitle: 'sump, °C', mark: 0, points: filmed.map(({ time, sump }) => [time, sump]) },
    { yTitle: 'wheel speed, rpm', mark: 0, points: filmed.map(({ time, rpm }) => [time, rpm]) },
  ],
  steps: climb.map(({ rpm, way }, i) => ({
    from: 0.5 + (i * 110) / 60,
    to: 0.5 + (i * 110 + 90) / 60,
    label: `${rpm} rpm ${way}`,
  })),
};

/** Three steps up alone: their names fit whole. */
export const shortFilm: FilmData = {
  ...film,
  kind: 'film',
  panels: film.panels.map((panel) => ({ ...panel, mark: 4, points: panel.points.filter(([time]) => time < 6) })),
  steps: film.steps.slice(0, 3),
};

const recovered = (after: number) => -54.3 - 14.7 * 2 ** (-after / 45);

export const settle: SettleData = {
  kind: 'settle',
  xTitle: 's from the standstill of the ring gear',
  yTitle: 'level, mm from the axle centreline',
  mark: 0,
  points: [0, 10, 30, 60, 120, 300, 600].map((after, i) => [after, recovered(after) + [0, 1, -1, 0, 1, 0, 0][i]!]),
  fit: Array.from({ length: 61 }, (_, i) => [i * 10, recovered(i * 10)] as const),
  lines: [
    { y: -53.3, label: 'at rest before' },
    { y: -54.3, label: 'comes back to −54.3 mm' },
  ],
  bubbles: [
    { x: 0, text: '3' },
    { x: 10, text: '3' },
    { x: 30, text: '2' },
    { x: 60, text: '2' },
    { x: 120, text: '1' },
    { x: 300, text: 'ng' },
    { x: 600, text: '0' },
  ],
};

export const everyChart = {
  trace,
  speed,
  speedWithBand,
  heat,
  standing,
  claims,
  level,
  section,
  deepSection,
  film,
  shortFilm,
  settle,
} as const;
