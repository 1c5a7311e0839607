import { describe, expect, it } from 'vitest';
import { viewOf } from '../../../src/report/view.ts';
import { pinionSentence } from '../../../src/report/pinion-words.ts';
import { flowSheet } from '../../../src/report/flow-steps.ts';
import { besideTheLoss, isLoss, reachSpans } from '../../../src/report/supply.ts';
import type { Cell, DerivedRun } from '../../../src/trial/derived.ts';
import type { QuantityName } from '../../../src/trial/figures.ts';
import { pinionResults } from './fixture-flow.ts';
import { cellOf, input, type Variation } from './fixture.ts';
import { joined, marginOf, pagesOf, plainSpaces, rowsOf } from './page-at.ts';
import { textsOf } from './reading.ts';

const reach = (cell: Partial<Cell> & { article: string }, variation: Variation = {}): string =>
  joined(reachSpans(viewOf(input(variation)), { ...cellOf('A1'), ...cell }));

const graded = (run: string, change: (flow: NonNullable<DerivedRun['flow']>) => NonNullable<DerivedRun['flow']>) => ({
  derived: (all: readonly DerivedRun[]) => all.map((d) => (d.run === run ? { ...d, flow: change(d.flow!) } : d)),
});

describe('Reach beside a loss', () => {
  it('is the grade at the reference speed, way up, of the window copy at the same fill, oil and tilt', () => {
    expect(reach({ article: 'A1' })).toBe('2');
    expect(reach({ article: 'A0' })).toBe('3');
    expect(reach({ article: 'A1', tilt_ratio: 0.12 })).toBe('1');
    expect(reach({ article: 'A1', fill_m3: 3.59e-3 })).toBe('3');
    expect(reachSpans(viewOf(input()), cellOf('A1'))).toEqual([
      expect.objectContaining({ kind: 'figure', id: 'F-03/reach@300rpm' }),
    ]);
  });

  it('says why there is none: another oil, fill or tilt, or no flow trial at all', () => {
    expect(reach({ article: 'A1', oil: 'L2' })).toBe('not graded with L2');
    expect(reach({ article: 'A1', fill_m3: 3.2e-3 })).toBe('not graded at this fill');
    expect(reach({ article: 'A0', tilt_ratio: 0.12 })).toBe('not graded at this tilt');
    expect(reach({ article: 'A9' })).toBe('not graded');
  });

  it('says that it was filmed and nobody graded it, or not at this speed', () => {
    const nobody = graded('F-03', (flow) => ({
      ...flow,
      steps: flow.steps.map((s) => ({ ...s, grades: null, observations: [] })),
    }));
    expect(reach({ article: 'A1' }, nobody)).toBe('filmed, not graded');
    const slower = graded('F-03', (flow) => ({ ...flow, steps: flow.steps.slice(0, 1) }));
    expect(
      reach(
        { article: 'A1' },
        {
          derived: (all) =>
            slower
              .derived(all)
              .map((d) =>
                d.run === 'F-03' ? { ...d, results: d.results.filter(({ at }) => at.direction !== undefined) } : d,
              ),
        },
      ),
    ).toBe('not graded at this speed');
  });

  it('says that it was graded and may not be used, and why', () => {
    expect(reach({ article: 'A1' }, { unusable: ['reach'] })).toBe(
      '2 (graded, not usable: kappa 0.42 is under the 0.60 of the series)',
    );
  });
});

describe('a loss stands nowhere without Reach and bearing rise', () => {
  const { pages, page } = pagesOf();

  it('knows what is a loss', () => {
    const losses: QuantityName[] = ['spin-power', 'spin-torque', 'heat-made', 'jet-power'];
    expect(losses.every(isLoss)).toBe(true);
    expect(isLoss('shed')).toBe(false);
  });

  it('in the table of a standing, cell by cell', () => {
    const table = rowsOf(page('standing/'), 'spin-power-l1-chart-table');
    expect(table.map((cells) => cells.slice(-2)[0])).toEqual(['3', '2', 'not graded at this fill']);
    expect(table[1]!.at(-1)).toMatch(/^6\.80 ± 0\.\d+ K$/);
  });

  it('in a table under the chart of a standing and of the series, with the bearing of the baseline and the others less it', () => {
    for (const [path, id] of [
      ['standing/', 'spin-power-l1-beside'],
      ['', 'main-standing-beside'],
    ] as const) {
      const beside = rowsOf(page(path), id);
      expect(beside.map((cells) => cells.slice(-2)[0])).toEqual(['3', '2', 'not graded at this fill']);
      expect(beside[1]!.at(-1)).toMatch(/K( in all)?$/);
    }
  });

  it('on run sheets, article sheets, in the list of runs and on the page of a working', () => {
    const beside =
      /^Reach at 300 wheel rpm: 2\. Pinion bearing above sump: 6\.80 ± 0\.\d+ K\. Graded in F-03, without load\.$/;
    expect(marginOf(page('runs/S-02/'), 'picture', 'Beside the loss.')).toMatch(beside);
    expect(marginOf(page('runs/H-02/'), 'what-it-gives', 'Beside the loss.')).toMatch(beside);
    expect(marginOf(page('articles/A1/'), 'effects', 'Beside the loss.')).toMatch(
      /^Reach at 300 wheel rpm in A1, 2\.40 L: 2\./,
    );
    expect(rowsOf(page('runs/'), 'runs-spin')[1]!.slice(-2)[0]).toBe('2');
    const [first] = page('workings/S-02/spin-power/').sections;
    expect(first!.margin.map(({ name }) => name)).toContain('Beside the loss.');
    expect(page('workings/S-02/static-level/').sections[0]!.margin.map(({ name }) => name)).not.toContain(
      'Beside the loss.',
    );
  });

  it('and no page says any more that grading is still to come', () => {
    for (const p of pages) expect(plainSpaces(textsOf(p)), p.path).not.toMatch(/not graded here yet/);
  });

  it('gives the bearing of the article that a window copy stands in for', () => {
    const note = besideTheLoss(viewOf(input()), cellOf('A1w'));
    expect(joined(note.text)).toMatch(/Pinion bearing above sump: 6\.80/);
  });
});

describe('the bath at the pinion race', () => {
  const said = (over: number, u: number) => {
    const view = viewOf(
      input({
        derived: (all) =>
          all.map((d) =>
            d.run === 'F-02'
              ? {
                  ...d,
                  results: [
                    ...d.results.filter(({ quantity }) => !/pinion|race/.test(quantity)),
                    ...pinionResults(-0.077 + over, over, u),
                  ],
                }
              : d,
          ),
      }),
    );
    return joined(
      pinionSentence(
        view,
        flowSheet(
          view,
          view.runs.find(({ id }) => id === 'F-02')!,
        )!,
      ),
    );
  };

  it.each([
    { over: 0.0237, u: 5e-4, words: 'it stands 23.70 ± 0.98 mm over the lowest point' },
    { over: 0.0031, u: 5e-4, words: 'it stands 3.10 ± 0.98 mm over the lowest point' },
    { over: 0.0029, u: 5e-4, words: 'the bath only just touches it' },
    { over: 0.004, u: 3e-3, words: 'it cannot be told whether the bath reaches it' },
    { over: 0, u: 5e-4, words: 'the bath only just touches it' },
    { over: -0.0005, u: 5e-4, words: 'it cannot be told whether the bath reaches it' },
    { over: -0.002, u: 5e-4, words: 'the bath does not reach it' },
  ])('$over m over its lowest point, u $u m: $words', ({ over, u, words }) => {
    expect(said(over, u)).toContain(words);
  });

  it('says nothing where the rig sheet has no race', () => {
    const view = viewOf(input({ rig: { pinionFront: null } }));
    expect(
      pinionSentence(
        view,
        flowSheet(
          view,
          view.runs.find(({ id }) => id === 'F-02')!,
        )!,
      ),
    ).toEqual([]);
  });
});
