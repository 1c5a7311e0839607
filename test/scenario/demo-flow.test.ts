import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { makeDemo } from '../../demo-runs/make/demo.ts';
import '../matchers.ts';

/**
 * The flow trial of the demo's maker. Expected values are those of the demo's own scenario: a table of rounded grades and
 * levels written before the maker, at the six steps up. They check the maker, not the world.
 */
const speeds = [60, 120, 200, 290, 390, 520];
const scenario: readonly (readonly [run: string, kind: string, grades: readonly number[]])[] = [
  ['F-01', 'reach', [1, 2, 3, 3, 3, 4]],
  ['F-04', 'reach', [1, 2, 3, 3, 4, 4]],
  ['F-06', 'reach', [0, 1, 2, 2, 3, 3]],
  ['F-05', 'reach', [1, 2, 2, 3, 3, 4]],
  ['F-03', 'reach', [1, 2, 3, 3, 4, 4]],
  ['F-02', 'reach', [0, 1, 1, 2, 2, 3]],
  ['T-01', 'reach', [0, 1, 1, 2, 2, 3]],
  ['T-02', 'reach', [0, 1, 2, 2, 3, 3]],
  ['T-03', 'reach', [0, 0, 0, 1, 1, 1]],
  ['F-01', 'bubble', [0, 1, 1, 2, 2, 2]],
  ['F-04', 'bubble', [1, 2, 2, 3, 3, 3]],
  ['F-06', 'bubble', [0, 0, 0, 1, 1, 1]],
  ['F-02', 'bubble', [0, 0, 1, 1, 2, 2]],
  ['F-05', 'wall', [1, 2, 2, 3, 3, 4]],
  ['F-02', 'wall', [0, 0, 1, 2, 2, 2]],
  ['F-04', 'tube', [0, 1, 1, 1, 1, 2]],
  ['F-01', 'tube', [0, 0, 0, 0, 0, 0]],
];
const cells: Readonly<Record<string, string>> = {
  ...{ 'F-01': 'P0w 2.4 0', 'F-02': 'P4w 2.4 0', 'F-03': 'P2w 2.4 0', 'F-04': 'P0w 3.2 0', 'F-05': 'P1w 3.59 0' },
  ...{ 'F-06': 'P1w 2.4 0', 'T-01': 'P0w 2.4 12', 'T-02': 'P2w 2.4 12', 'T-03': 'P4w 2.4 12' },
};
const flowRuns = Object.keys(cells);
const kinds = ['reach', 'side', 'wall', 'bubble', 'tube'] as const;

interface Told {
  run: string;
  cell: { article: string; fill_L: number; tilt_pct: number };
  truth: { quantity: string; at: Record<string, string>; value: number }[];
}
type Files = ReadonlyMap<string, string>;
const runsOf = (files: Files): Told[] => (JSON.parse(files.get('hill-bowl/truth.json')!) as { runs: Told[] }).runs;
const planted = (files: Files, run: string, quantity: string, rpm?: number, direction?: 'down'): number =>
  runsOf(files)
    .find((r) => r.run === run)!
    .truth.find(
      (t) =>
        t.quantity === quantity &&
        (rpm === undefined || t.at['wheel-speed'] === `${rpm} rpm`) &&
        t.at['direction'] === direction,
    )!.value;

let quiet: Files;
let noisy: Files;
beforeAll(() => {
  quiet = makeDemo({ seed: 1, quiet: true, select: false });
  noisy = makeDemo({ seed: 2562, quiet: false, select: true });
});

describe('what was planted of the flow, against the scenario', () => {
  it('stands in the runs that the scenario means', () => {
    const found = runsOf(noisy).filter(({ run }) => flowRuns.includes(run));
    const told = found.map(({ run, cell: c }) => [run, `${c.article} ${c.fill_L} ${c.tilt_pct}`]);
    expect(Object.fromEntries(told)).toEqual(cells);
  });

  it.each(scenario)('%s: %s rounds to %j, with noise and without', (run, kind, grades) => {
    for (const files of [quiet, noisy])
      expect(speeds.map((rpm) => Math.round(planted(files, run, kind, rpm)))).toEqual(grades);
  });

  it.each([
    ['F-01', [-57, -60, -63, -65, -67, -69]],
    ['F-03', [-59, -64, -68, -71, -74, -77]],
  ] as const)('%s runs at the levels %j mm', (run, levels) => {
    speeds.forEach((rpm, i) => {
      expect(planted(quiet, run, 'running-level', rpm)).toAgreeWithPrinted(String(levels[i]));
    });
  });

  it('settles 1 mm short, with the half-time of the oil or of the tray', () => {
    for (const run of flowRuns) {
      expect(planted(noisy, run, 'held-up')).toBe(1);
      expect(planted(noisy, run, 'level-half-time')).toBe(/^P2/.test(cells[run]!) ? 180 : 45);
    }
  });

  it('is the same up and down but for Bubble, which leaves with 70 s', () => {
    for (const run of flowRuns)
      for (const rpm of speeds.slice(0, -1)) {
        for (const same of ['reach', 'side', 'wall', 'tube', 'running-level'])
          expect(planted(noisy, run, same, rpm, 'down')).toBe(planted(noisy, run, same, rpm));
        const [up, down] = [planted(noisy, run, 'bubble', rpm), planted(noisy, run, 'bubble', rpm, 'down')];
        expect(down).toBeGreaterThan(up);
      }
    // In the middle of the window at 390 down, 5 s lie behind since the ramp of 8 s ended: what is left of the difference
    // lies between what 13 s and what 5 s leave.
    for (const run of ['F-01', 'F-04']) {
      const [top, next] = [planted(noisy, run, 'bubble', 520), planted(noisy, run, 'bubble', 390)];
      const left = (planted(noisy, run, 'bubble', 390, 'down') - next) / (top - next);
      expect(left).toBeGreaterThan(Math.exp(-13 / 70));
      expect(left).toBeLessThan(Math.exp(-5 / 70));
    }
  });
});

interface Step extends Record<(typeof kinds)[number], number | 'ng'> {
  view: number;
}
interface Note {
  clips: {
    file: string;
    code: string;
    sync: string;
    length: string;
    captions?: string;
    pieces?: { clip: string; film: string }[];
  }[];
  settle: { after: string; bubble: number }[];
  observations?: { observer: string; pass?: string; steps: Record<string, Step> }[];
  stills: { file: string; step: string; rule: string; caption: string; alt: string }[];
}
const noteOf = (files: Files, run: string): Note =>
  parse(files.get(`hill-bowl/runs/${run}.md`)!.split('---\n')[1]!) as Note;

/** Observer → step → what was written, whether it stands in the note or in captions. */
function written(files: Files, run: string): Map<string, Map<string, Step>> {
  const note = noteOf(files, run);
  const told = new Map<string, Map<string, Step>>();
  for (const { observer, steps } of note.observations ?? []) told.set(observer, new Map(Object.entries(steps)));
  const captions = note.clips[0]!.captions;
  for (const cue of captions ? files.get(`hill-bowl/runs/${captions}`)!.matchAll(/^run .*$/gm) : []) {
    const [, rpm, direction, observer] = /rpm (\d+) (up|down) \| observer (\S+)/.exec(cue[0])!;
    const of = told.get(observer!) ?? new Map<string, Step>();
    const graded = (kind: string): number | 'ng' => {
      const grade = new RegExp(`${kind} (\\d|ng)`).exec(cue[0])![1]!;
      return grade === 'ng' ? 'ng' : Number(grade);
    };
    const [reach, side, wall, bubble, tube] = kinds.map(graded);
    const view = Number(/view (\d)/.exec(cue[0])![1]);
    const step = { reach: reach!, side: side!, wall: wall!, bubble: bubble!, tube: tube!, view };
    told.set(observer!, of.set(`${rpm} rpm ${direction}`, step));
  }
  return told;
}

describe('what the observers wrote', () => {
  it('is every step up and down, by two people, in notes and in captions', () => {
    for (const run of flowRuns) {
      const told = written(noisy, run);
      for (const observer of ['A', 'B']) expect([...told.get(observer)!.keys()], run).toHaveLength(11);
    }
    const captioned = flowRuns.filter((run) => noteOf(noisy, run).clips[0]!.captions !== undefined);
    expect(captioned).toEqual(['F-01', 'F-02', 'F-06']);
  });

  it('is the rounded truth where nothing scatters', () => {
    for (const run of flowRuns)
      for (const [step, row] of written(quiet, run).get('B')!) {
        const [rpm, , direction] = step.split(' ');
        for (const kind of kinds) {
          const down = direction === 'down' ? direction : undefined;
          const true_ = planted(quiet, run, kind, Number(rpm), down);
          expect(Math.abs(Number(row[kind]) - true_), `${run} ${step} ${kind}`).toBeLessThanOrEqual(0.5 + 1e-6);
        }
      }
  });

  it('scatters otherwise for each, and never says more than the view lets it', () => {
    const rows = flowRuns.flatMap((run) => ['A', 'B'].flatMap((o) => [...written(noisy, run).get(o)!.values()]));
    for (const row of rows) {
      const { bubble, view } = row;
      expect(view).toBe(bubble === 'ng' ? 1 : bubble === 3 ? 2 : 3);
      if (view <= 1) expect(kinds.map((kind) => row[kind])).toEqual(kinds.map(() => 'ng'));
      else for (const kind of kinds) expect([0, 1, 2, 3, 4]).toContain(row[kind]);
    }
    expect(rows.some(({ view }) => view === 1)).toBe(true);
    expect(flowRuns.some((run) => differs(run, 'reach') > 0)).toBe(true);
  });

  it('is looked at again together where two grades lie more than one apart, and where they differ on Reach or Tube run', () => {
    for (const run of flowRuns) {
      const told = written(noisy, run);
      const [a, b, joint] = ['A', 'B', 'A+B'].map((observer) => told.get(observer) ?? new Map<string, Step>());
      for (const [step, mine] of a!) {
        const apart = kinds.map((kind) => {
          const gap = Math.abs(Number(mine[kind]) - Number(b!.get(step)![kind]));
          return Number.isNaN(gap) ? 0 : kind === 'reach' || kind === 'tube' ? 2 * gap : gap;
        });
        expect(joint!.has(step), `${run} ${step}`).toBe(Math.max(...apart) > 1);
      }
      for (const [step, together] of joint!)
        for (const kind of kinds) {
          const [rpm, , direction] = step.split(' ');
          const [mine, other] = [a!.get(step)![kind], b!.get(step)![kind]];
          const true_ = planted(noisy, run, kind, Number(rpm), direction === 'down' ? direction : undefined);
          expect(together[kind], `${run} ${step} ${kind}`).toBe(mine === other ? mine : Math.round(true_));
        }
    }
  });

  it('says of the bubbles after the stop only that they grow fewer', () => {
    for (const run of flowRuns) {
      const { settle } = noteOf(noisy, run);
      expect(settle.map(({ after }) => after)).toEqual(['0 s', '10 s', '30 s', '60 s', '120 s', '300 s', '600 s']);
      const bubbles = settle.map(({ bubble }) => bubble);
      expect(bubbles).toEqual([...bubbles].sort((x, y) => y - x));
      expect(bubbles.at(-1)).toBe(0);
    }
  });
});

const differs = (run: string, kind: 'reach'): number => {
  const told = written(noisy, run);
  return [...told.get('A')!].filter(([step, row]) => row[kind] !== told.get('B')!.get(step)![kind]).length;
};

const seconds = (timecode: string): number => {
  const [h, m, s] = timecode.split(':').map(Number) as [number, number, number];
  return 3600 * h + 60 * m + s;
};

describe('the clips and stills of the demo', () => {
  const folder = join(import.meta.dirname, '../../demo-runs/hill-bowl');
  /** Logger times at which holds begin, from the events of the log. */
  const holds = (run: string): number[] =>
    [...noisy.get(`hill-bowl/runs/${run}.csv`)!.matchAll(/^(\d+),.*,step \d+$/gm)].map(([, t]) => Number(t));
  const cueTimes = (run: string): number[] => {
    const text = noisy.get(`hill-bowl/runs/${run}.vtt`)!;
    return [...new Set([...text.matchAll(/^([\d:.]+) --> /gm)].map(([, from]) => seconds(from!)))];
  };

  it('begin a cue with each hold, in F-06 by a camera 7.4 s ahead', () => {
    cueTimes('F-06').forEach((t, i) => {
      expect(t - holds('F-06')[i]!).toBeCloseTo(7.4, 9);
    });
    expect(seconds(noteOf(noisy, 'F-06').clips[0]!.sync) - 12).toBeCloseTo(7.4, 9);
  });

  it('say of a cut clip where each piece begins, so that each hold is found again', () => {
    for (const run of ['F-01', 'F-02']) {
      const clip = noteOf(noisy, run).clips[0]!;
      const pieces = clip.pieces!.map((p) => ({ clip: seconds(p.clip), film: seconds(p.film) }));
      const filmTimes = cueTimes(run).map((t) => {
        const piece = pieces.findLast((p) => p.clip <= t)!;
        return t - piece.clip + piece.film;
      });
      expect(filmTimes).toEqual(holds(run));
    }
  });

  it('lie in the folder, under a megabyte each, and as long as their note says', () => {
    for (const run of ['F-01', 'F-02']) {
      const clip = noteOf(noisy, run).clips[0]!;
      const bytes = readFileSync(join(folder, 'runs', clip.file));
      expect(bytes.length).toBeLessThan(1e6);
      // WebM begins as every EBML file does (RFC 8794); its duration stands in an element 0x4489, in milliseconds.
      expect(bytes.subarray(0, 4).toString('hex')).toBe('1a45dfa3');
      const at = bytes.indexOf(Buffer.from('448988', 'hex'));
      expect(bytes.readDoubleBE(at + 3) / 1000).toBeCloseTo(seconds(clip.length), 1);
    }
  });

  it('have a code each that does not follow the order of the runs', () => {
    const codes = flowRuns.map((run) => noteOf(noisy, run).clips[0]!.code);
    expect(new Set(codes).size).toBe(9);
    expect([...codes].sort()).not.toEqual(codes);
    for (const code of codes) expect(code).toMatch(/^[A-Z]\d$/);
  });

  it('show each flow run at 120, 290 and 520 rpm, with two events and one that was chosen', () => {
    const stills = flowRuns.flatMap((run) => noteOf(noisy, run).stills.map((still) => ({ run, ...still })));
    expect(stills.map(({ file }) => file).sort()).toEqual(readdirSync(join(folder, 'pictures')).sort());
    for (const run of flowRuns)
      expect(stills.filter((s) => s.run === run && s.rule === 'offset').map((s) => s.step)).toEqual(
        [120, 290, 520].map((rpm) => `${rpm} rpm up`),
      );
    expect(stills.filter((s) => s.rule === 'event')).toHaveLength(2);
    expect(stills.filter((s) => s.rule === 'chosen')).toHaveLength(1);
  });

  it('are small pictures that say in words which article, which step and what is seen', () => {
    for (const run of flowRuns)
      for (const { file, step, alt, caption } of noteOf(noisy, run).stills) {
        const bytes = readFileSync(join(folder, 'pictures', file));
        // PNG, third edition, 5.2 and 11.2.1: signature, then the header with width, height, depth and colour type 3.
        expect(bytes.subarray(0, 8).toString('hex')).toBe('89504e470d0a1a0a');
        expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20), bytes[25]]).toEqual([640, 480, 3]);
        expect(bytes.length, file).toBeLessThanOrEqual(25_000);
        expect(alt).toContain(cells[run]!.split(' ')[0]!);
        expect(alt).toContain(step.replace(' up', ', way up'));
        expect(alt).toMatch(/drawing/i);
        expect(caption.length).toBeGreaterThan(20);
      }
  });
});
