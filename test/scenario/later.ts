import { bookText } from '../../demo-runs/make/book.ts';
import { cellTruth } from '../../demo-runs/make/cells.ts';
import { drawRun, type Making } from '../../demo-runs/make/draws.ts';
import { drawCalibration, instruments } from '../../demo-runs/make/instruments.ts';
import { hillGear, shaft_rad_s } from '../../demo-runs/make/law.ts';
import { noteText } from '../../demo-runs/make/note.ts';
import type { RunPlan } from '../../demo-runs/make/order.ts';
import { still } from '../../demo-runs/make/random.ts';
import { digitsOf } from '../../demo-runs/make/readings.ts';
import { logText } from '../../demo-runs/make/recording.ts';
import { makeRun } from '../../demo-runs/make/run.ts';
import { seriesTexts } from '../../demo-runs/make/series.ts';
import { withoutSamples } from './demo.ts';

/**
 * A series of two articles without noise, and fourteen months later a third with the baseline run again. Refits of each cell
 * turn harder and easier by exactly so much that one of them scatters by 6 W at 290 rpm and 60 °C.
 */
export const scatter_W = 6;
export const firstBaseline_W = cellTruth({ article: 'P0', oil: 'O1', fill_L: 2.4 }).spin60_W[3]!;

const firstDay = '2026-03-02';
const later = '2027-05-03';
const why = 'why: gears rebuilt';
const spin = { lead_s: 30, hold_s: 90, warm_s: 120, even_s: 60, idle_rpm: 290, steps_rpm: [200, 290], temps_C: [60] };
const length_s = spin.lead_s + spin.steps_rpm.length * (8 + spin.hold_s);
const pinion_rad_s = shaft_rad_s(290) * hillGear.ratio;

/** Articles in the order of their runs, each with what its refit adds, in parts of the scatter. */
const early = ['P0 -1', 'P4 1', 'P0 0', 'P4 -1', 'P4 0', 'P0 1'];
const late = ['P0 1', 'P5 0', 'P0 -1', 'P5 1', 'P5 -1', 'P0 0'];

export interface Later {
  /** Mean of the baseline run again, W at 290 rpm and 60 °C. */
  readonly again_W: number;
  /** Fields of the campaign in series.md, beside id, from and why, each with a comma before it. */
  readonly more?: string;
  /** Instead of P0 P5 P0 P5 P5 P0. */
  readonly order?: readonly string[];
  /** Without the later runs and without the campaign. */
  readonly before?: boolean;
}

/** The book as texts. */
export function laterBook({ again_W, more = '', order = late, before = false }: Later): ReadonlyMap<string, string> {
  const quiet = { seed: 1, quiet: true };
  const making: Making = { ...quiet, calibration: drawCalibration(instruments, still), gear: hillGear, spin };
  const rebuilt: Making = {
    ...making,
    gear: { ...hillGear, constant_Nm: hillGear.constant_Nm + (again_W - firstBaseline_W) / pinion_rad_s },
  };
  const files = new Map(frame(before ? [] : ['campaigns:', `  - { id: U-01, from: ${later}, ${why}${more} }`]));
  const put = (path: string, text: string): unknown => files.set(`hill-bowl/${path}`, text);
  for (const [i, line] of [...early, ...(before ? [] : order)].entries()) {
    const [article = '', turned = '0'] = line.split(' ');
    const again = i >= early.length;
    const run: RunPlan = {
      ...{ id: `S-${String(i + 1).padStart(2, '0')}`, trial: 'spin', article, oil: 'O1', fill_L: 2.4, tilt_pct: 0 },
      ...{ order: i + 1, refit: i + 1, length_s, fromRun: null },
      start_s: (i + (again ? 422 : 0)) * 86_400 + 36_000,
    };
    const of = again ? rebuilt : making;
    const drawn = { ...drawRun(run, of, 1), refit_Nm: (Number(turned) * scatter_W) / pinion_rad_s };
    const made = makeRun(run, drawn, of, null);
    const words = { [run.id]: { by: ['A'], text: 'Drained, weighed, refitted.' } };
    put(`runs/${run.id}.md`, noteText(made, { rigState: again ? 'Q1-b' : 'Q1-a', firstDay, words, quiet: true }));
    put(`runs/${run.id}.csv`, logText(made.recording, digitsOf('low', true)));
  }
  return files;
}

/** Notes of the demo other than its runs and claims, with two speeds at one temperature, and no drift to be fitted. */
function frame(campaigns: readonly string[]): [string, string][] {
  const mended: Readonly<Record<string, (text: string) => string>> = {
    'hill-bowl/series.md': (text) =>
      text
        .replace('sump: [40 °C, 60 °C, 80 °C]', 'sump: [60 °C]')
        .replace(/^campaigns:\n(?: .*\n)*/m, '')
        .replace(/^family: .*$/m, ['$&', 'drift: { over: none }', ...campaigns].join('\n')),
    'hill-bowl/plan.md': (text) =>
      text
        .replace(/^steps: .*$/m, 'steps: [200 rpm, 290 rpm]')
        .replace(/^hold: .*$/m, 'hold: 90 s')
        .replace(/^temperatures: .*$/m, 'temperatures: [60 °C]'),
    // Without noise every held reading stands still, which no logger does.
    'hill-bowl/rig.md': (text) =>
      text
        .replaceAll(/, stuck: \d+ s/g, '')
        .replace(/^ {2}- \{ id: Q1-b.*\n/m, '')
        .replace(
          /^states:$/m,
          `$&\n  - { id: Q1-b, from: ${later}, gearset-hours: 320 h, preload-touched: true, note: "rebuilt" }`,
        ),
  };
  const notes = seriesTexts({ seed: 1, draws: 1, select: false, quiet: true })
    .filter(([path]) => !path.endsWith('claims.md'))
    .map(([path, text]): [string, string] => [path, withoutSamples((mended[path] ?? same)(text))]);
  return [['book.md', bookText], ...notes];
}

const same = (text: string): string => text;
