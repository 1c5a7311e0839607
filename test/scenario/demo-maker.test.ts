import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { makeDemo } from '../../demo-runs/make/demo.ts';

/**
 * Expected values are those of the demo's own scenario (a table written before the maker, from the same invented
 * parameters by another program), in the digits printed there. They check the maker, not the world.
 */
const printed = [
  [
    'P0',
    2.4,
    'O1',
    -53.3,
    70.7,
    [27, 67, 139, 241, 377, 588],
    1.74,
    [47.7, 70.5, 88.9],
    105.2,
    1004,
    84.2,
    11.91,
    33.3,
  ],
  ['P0', 3.2, 'O1', -36.4, 87.6, [28, 72, 150, 263, 415, 651], 1.9, [47.9, 69.9, 87.0], 106.7, 1021, 85.7, 11.91, 34.8],
  [
    'P1',
    2.4,
    'O1',
    -78.5,
    45.5,
    [25, 61, 122, 208, 321, 494],
    1.501,
    [62.8, 116.4, null],
    93.9,
    967,
    72.9,
    13.26,
    36.0,
  ],
  ['P1', 3.2, 'O1', -61.7, 62.3, [26, 65, 132, 227, 354, 549], 1.64, [62.4, 110.0, null], 95.1, 983, 74.1, 13.26, 37.5],
  [
    'P1',
    3.59,
    'O1',
    -53.3,
    70.7,
    [26, 67, 137, 237, 371, 578],
    1.713,
    [62.1, 107.3, null],
    95.7,
    991,
    74.7,
    13.26,
    38.2,
  ],
  [
    'P2',
    2.4,
    'O1',
    -52.0,
    72.0,
    [25, 63, 129, 221, 343, 532],
    1.597,
    [50.1, 75.0, 95.9],
    103.9,
    988,
    82.9,
    11.91,
    33.7,
  ],
  [
    'P3',
    2.4,
    'O1',
    -51.3,
    72.7,
    [27, 68, 140, 243, 381, 596],
    1.759,
    [46.8, 67.6, 83.2],
    108.3,
    1010,
    87.3,
    11.56,
    33.8,
  ],
  ['P4', 2.4, 'O1', -52.3, 71.7, [25, 62, 125, 213, 330, 509], 1.54, [50.9, 76.5, 98.5], 103.4, 981, 82.4, 11.91, 33.6],
  [
    'P0',
    2.4,
    'O2',
    -53.3,
    70.7,
    [23, 56, 113, 191, 294, 453],
    1.38,
    [55.9, 83.5, 107.3],
    103.0,
    977,
    82.0,
    11.91,
    33.2,
  ],
  [
    'P1',
    3.59,
    'O2',
    -53.3,
    70.7,
    [23, 56, 111, 188, 289, 445],
    1.357,
    [74.6, 141.4, null],
    93.3,
    958,
    72.3,
    13.26,
    37.9,
  ],
  [
    'P4',
    2.4,
    'O2',
    -52.3,
    71.7,
    [22, 52, 101, 168, 256, 388],
    1.215,
    [59.5, 90.8, 120.2],
    101.2,
    955,
    80.2,
    11.91,
    33.4,
  ],
] as const;

interface Told {
  run: string;
  cell: { trial: string; article: string; oil: string; fill_L: number; tilt_pct: number };
  truth: { quantity: string; at: Record<string, string>; value: number | null; bound?: [string, number] }[];
}
interface TruthFile {
  draws: number;
  runs: Told[];
  faults: { fault: string; run: string; file: string; line: number; lastLine: number; treatment: string }[];
  verdicts: { claim: string; word: string }[];
}

type Files = ReadonlyMap<string, string>;
const truthOf = (files: Files, series = 'hill-bowl'): TruthFile =>
  JSON.parse(files.get(`${series}/truth.json`)!) as TruthFile;
const rows = (files: Files, path: string): string[][] =>
  files
    .get(path)!
    .trimEnd()
    .split('\n')
    .map((line) => line.split(','));
const column = { tq_in: 2, tq_out_l: 4, tq_out_r: 5, T_sump: 6, T_skin: 7, T_amb: 9, u_air: 10 };
const at = (table: string[][], t_s: number, name: keyof typeof column): number =>
  Number(table[1 + t_s / 2]![column[name]]);

let quiet: Files;
let noisy: Files;
beforeAll(() => {
  quiet = makeDemo({ seed: 1, quiet: true, select: false });
  noisy = makeDemo({ seed: 2026, quiet: false, select: true });
});

describe('the demo without noise gives the table of its scenario', () => {
  it.each(printed)(
    '%s at %d L of %s',
    (article, fill, oil, level, immersion, spin60, torque, minutes, final, heat, rise, shed, store) => {
      const runs = truthOf(quiet).runs.filter(
        ({ cell: c }) => c.article === article && c.fill_L === fill && c.oil === oil && c.tilt_pct === 0,
      );
      const spin = runs.find((r) => r.cell.trial === 'spin')!;
      const hot = runs.find((r) => r.cell.trial === 'heat-up')!;
      const value = (run: Told, quantity: string, want: Record<string, string> = {}): number | null =>
        run.truth.find((t) => t.quantity === quantity && Object.keys(want).every((k) => t.at[k] === want[k]))!.value;
      near(value(spin, 'static-level'), level, 0.05);
      near(value(spin, 'immersion'), immersion, 0.05);
      [60, 120, 200, 290, 390, 520].forEach((rpm, i) => {
        near(value(spin, 'spin-power', { 'wheel-speed': `${rpm} rpm`, sump: '60 Cel' }), spin60[i]!, 0.5);
      });
      near(value(spin, 'spin-torque', { 'wheel-speed': '290 rpm', sump: '60 Cel' }), torque, 0.0005);
      near(value(hot, 'final-temperature'), final, 0.05);
      near(value(hot, 'heat-made'), heat, 0.5);
      near(value(hot, 'final-rise'), rise, 0.05);
      near(value(hot, 'shed'), shed, 0.005);
      near(value(hot, 'store'), store, 0.05);
      const log = rows(quiet, `hill-bowl/runs/${hot.run}.csv`);
      [80, 90, 95].forEach((limit, i) => {
        const told = value(hot, 'limit-crossing', { limit: `${limit} Cel` });
        const read = log.findIndex((row, n) => n > 0 && Number(row[column.T_sump]) >= limit);
        if (minutes[i] === null) expect([told, read]).toEqual([null, -1]);
        else {
          near(told! / 60, minutes[i]!, 0.05);
          expect(Math.abs((read - 1) * 2 - told!)).toBeLessThan(2);
        }
      });
    },
  );

  it('sump and skin of P0 with O1 pass through the scenario’s intermediate values, loaded and then still', () => {
    const [loaded, still] = [rows(quiet, 'hill-bowl/runs/H-01.csv'), rows(quiet, 'hill-bowl/runs/C-01.csv')];
    const both = (table: string[][], minute: number): number[] =>
      (['T_sump', 'T_skin'] as const).map((name) => at(table, minute * 60, name));
    for (const [minute, sump, skin] of [
      [15, 51.0, 44.4],
      [30, 67.4, 60.2],
      [60, 86.0, 78.0],
      [90, 95.2, 86.7],
      [150, 102.5, 93.5],
    ] as const)
      both(loaded, minute).forEach((t, i) => {
        near(t, [sump, skin][i]!, 0.05);
      });
    for (const [minute, sump, skin] of [
      [15, 89.4, 81.7],
      [30, 78.4, 71.9],
      [60, 61.3, 56.8],
    ] as const)
      both(still, minute).forEach((t, i) => {
        near(t, [sump, skin][i]!, 0.05);
      });
  });

  it('holds 166.3 N·m at the input and 362.2 N·m at each hub near the end, over the flanges’ own zeros', () => {
    const loaded = rows(quiet, 'hill-bowl/runs/H-01.csv');
    near(at(loaded, 9000, 'tq_in'), 166.3, 0.05);
    near(at(loaded, 9000, 'tq_out_l') - 1.8, 362.2, 0.05);
    near(at(loaded, 9000, 'tq_out_r') + 0.9, 362.2, 0.05);
  });

  it('reads the torque of each spin step at the held temperature', () => {
    const spin = rows(quiet, 'hill-bowl/runs/S-01.csv');
    const start = spin.findIndex((row, i) => i > 700 && row[12] === 'step 290');
    near(Number(spin[start + 10]![column.T_sump]), 60, 0.005);
    near(Number(spin[start + 10]![column.tq_in]), 1.74, 0.0005);
  });
});

describe('the demo as shipped', () => {
  it('is what lies on disk, byte for byte', () => {
    const root = join(import.meta.dirname, '../../demo-runs');
    const made = new Set(noisy.keys());
    for (const [path, text] of noisy) expect(readFileSync(join(root, path), 'utf8') === text, path).toBe(true);
    const runs = readdirSync(root, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /[\\/]runs$/.test(entry.parentPath))
      .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll('\\', '/'));
    expect(runs.filter((path) => !made.has(path))).toEqual([]);
  });

  it('keeps under 14 MB, with 63 runs in the series and 8 in the older one', () => {
    const bytes = [...noisy.values()].reduce((sum, text) => sum + Buffer.byteLength(text), 0);
    expect(bytes).toBeLessThan(14e6);
    const kinds = ['F', 'S', 'H', 'C', 'T'].map((k) => truthOf(noisy).runs.filter((r) => r.run.startsWith(k)).length);
    expect(kinds).toEqual([6, 36, 12, 4, 5]);
    expect(truthOf(noisy, 'where-the-oil-stands').runs).toHaveLength(8);
  });

  it('comes out the same from the same seed and otherwise from another', () => {
    const again = makeDemo({ seed: 2026, quiet: false, select: true });
    const other = makeDemo({ seed: 2027, quiet: false, select: false });
    expect([...again]).toEqual([...noisy]);
    expect(other.get('hill-bowl/runs/S-01.csv')).not.toBe(noisy.get('hill-bowl/runs/S-01.csv'));
    expect([...other.keys()]).toEqual([...noisy.keys()]);
  });

  it('runs one after the other', () => {
    const spans = [...noisy]
      .filter(([path]) => /hill-bowl\/runs\/.*\.md$/.test(path))
      .map(([, text]) => ['started', 'ended'].map((f) => Date.parse(new RegExp(`^${f}: (.*)$`, 'm').exec(text)![1]!)))
      .sort((a, b) => a[0]! - b[0]!);
    spans.slice(1).forEach(([start], i) => {
      expect(start).toBeGreaterThan(spans[i]![1]!);
    });
  });

  it('tells its eight claims in the words of the story', () => {
    const words = truthOf(noisy).verdicts.map((v) => `${v.claim} ${v.word}`);
    expect(words).toEqual([
      ...['CL-1 shown', 'CL-2 shown against', 'CL-3 shown', 'CL-4 shown against', 'CL-5 shown', 'CL-5 not shown'],
      ...['CL-6 not shown', 'CL-6 shown', 'CL-7 shown', 'CL-7 leaning', 'CL-8 shown'],
    ]);
  });
});

describe('each planted fault stands at the lines that the truth file names', () => {
  const lines = (fault: { file: string; line: number; lastLine: number }, name: keyof typeof column): string[] =>
    rows(noisy, fault.file)
      .slice(fault.line - 1, fault.lastLine)
      .map((row) => row[column[name]]!);
  const find = (fault: string) => truthOf(noisy).faults.find((f) => f.fault.startsWith(fault))!;
  const mean = (cells: string[]): number => cells.reduce((sum, c) => sum + Number(c), 0) / cells.length;

  it('a drop-out of 12 s has no sump reading', () => {
    expect(lines(find('drop-out'), 'T_sump')).toEqual(['', '', '', '', '', '']);
  });
  it('a sign flip of 6 s is below nought, its neighbours are not', () => {
    const flip = find('sign');
    expect(lines(flip, 'tq_in').every((c) => Number(c) < -0.5)).toBe(true);
    const wide = lines({ ...flip, line: flip.line - 1, lastLine: flip.lastLine + 1 }, 'tq_in').map(Number);
    expect([wide[0]! > 0.5, wide.at(-1)! > 0.5, wide.length]).toEqual([true, true, 5]);
  });
  it('a file in degrees Fahrenheit reads an ambient that no hall has', () => {
    expect(Number(lines(find('degrees'), 'T_amb')[0])).toBeGreaterThan(60);
  });
  it('a block of twelve rows comes twice', () => {
    const { file, line, lastLine } = find('duplicate');
    const all = noisy.get(file)!.split('\n');
    expect(all.slice(line - 1, lastLine)).toEqual(all.slice(line - 13, line - 1));
    expect(lastLine - line + 1).toBe(12);
  });
  it('a loose skin probe falls by some 9 K at minute 70', () => {
    const loose = find('loose');
    expect(rows(noisy, loose.file)[loose.line - 1]![0]).toBe('4200');
    const before = lines({ ...loose, line: loose.line - 20, lastLine: loose.line - 1 }, 'T_skin');
    near(mean(before) - mean(lines({ ...loose, lastLine: loose.line + 19 }, 'T_skin')), 9, 0.8);
  });
  it('swapped hub torques show in the zeros', () => {
    const swap = find('left');
    near(mean(lines(swap, 'tq_out_l')) - mean(lines(swap, 'tq_out_r')), -2.7, 0.1);
  });
  it('a stuck anemometer gives one value for more than 20 minutes', () => {
    const values = lines(find('stuck'), 'u_air');
    expect(new Set(values).size).toBe(1);
    expect(values.length).toBeGreaterThan(600);
  });
  it('the probe of the tray reads 2 K high at 520 rpm, in every run of the tray that goes there', () => {
    const dry = truthOf(noisy).faults.filter((f) => f.fault.startsWith('probe above'));
    expect([...new Set(dry.map((f) => f.run))].sort()).toEqual(['F-03', 'S-02', 'S-21', 'S-26', 'T-02']);
    for (const f of dry) {
      const before = lines({ ...f, line: f.line - 40, lastLine: f.line - 10 }, 'T_sump');
      near(mean(lines(f, 'T_sump')) - mean(before), 2, 0.45);
    }
  });
  it('the ambient probe of H-09 reads 3.4 K over a sump that has stood all night', () => {
    const warm = lines(find('ambient'), 'T_amb').slice(0, 10);
    const sump = lines(find('ambient'), 'T_sump').slice(0, 1);
    near(mean(warm) - mean(sump), 3.4, 0.8);
  });
  it('ten kinds, and the log of the camera fault holds its sync', () => {
    expect(new Set(truthOf(noisy).faults.map((f) => f.fault)).size).toBe(10);
    const camera = find('camera');
    expect(noisy.get(camera.file)!.split('\n')[camera.line - 1]).toMatch(/^12,.*,sync$/);
    expect(noisy.get('hill-bowl/runs/F-06.md')).toContain('00:00:19.4');
  });
});

/** Half the last digit printed is the tolerance unless the line says another. */
function near(value: number | null, wanted: number, half: number): void {
  expect(value).not.toBeNull();
  expect(Math.abs(value! - wanted), `${String(value)} against ${wanted}`).toBeLessThanOrEqual(half + 1e-9);
}
