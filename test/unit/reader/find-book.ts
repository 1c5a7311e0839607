import type { FindCondition, FindPart, FindRun, FindSeries } from '../../../src/trial/find.ts';
import { nothingAsked, readAsk, type Ask, type AskTyped } from '../../../src/reader/find/ask.ts';

/** Common form of a small series: three set-ups in two oils, six runs of which one is set aside. */
export function smallSeries(id = 'pan-depth', held = 0): FindSeries {
  const run = (name: string, trial: FindRun[1], cell: number, out: string | null = null): FindRun => [
    ...([name, trial, cell, cell === 1 ? 'level' : 'volume', '2024-05-06', out] as const),
  ];
  const at = (speed_rpm: number, sump: number): FindCondition => [
    ...([
      `${String(speed_rpm)}rpm,${String(sump)}Cel`,
      `${String(speed_rpm)} wheel rpm, sump ${String(sump)} °C`,
    ] as const),
    ...([speed_rpm, sump] as const),
  ];
  return {
    ...{ id, title: 'Pan depth', shaft: 'wheel', heldRuns: held, tolerance: { fill_L: 0.05, speed_ratio: 0.02 } },
    articles: [
      ['A0', 'flat pan', 'bowl', []],
      ['A1', 'baffle', 'insert', []],
      ['A1w', 'window copy of A1', 'window_copy', [1]],
    ],
    oils: [
      ['L1', 'thick', 'SAE 90'],
      ['L2', 'thin', 'SAE 75W-80'],
    ],
    cells: [
      [0, 0, 2, 'A0 flat pan, 2.00 L of L1'],
      [0, 0, 3, 'A0 flat pan, 3.00 L of L1'],
      [0, 1, 2, 'A0 flat pan, 2.00 L of L2'],
      [1, 0, 2, 'A1 baffle, 2.00 L of L1'],
      [2, 0, 2, 'A1w window copy of A1, 2.00 L of L1'],
    ],
    runs: [
      run('S-1', 'spin', 0),
      run('S-2', 'spin', 1),
      run('S-3', 'spin', 2),
      run('S-4', 'spin', 3),
      run('S-5', 'spin', 3, 'This run is set aside: leaked.'),
      run('F-1', 'flow', 4),
    ],
    subjects: [
      ['S-1', '', 0, -1, -1],
      ['S-2', '', 1, -1, -1],
      ['S-3', '', 2, -1, -1],
      ['S-4', '', 3, -1, -1],
      ['F-1', '', 5, -1, -1],
      ['A1', '', -1, 3, -1],
      ['A1~A0', '', -1, 3, 0],
    ],
    quantities: [
      ['spin-power', 'spin power', 'spin'],
      ['reach', 'Reach', 'flow'],
    ],
    conditions: [at(100, 40), at(300, 40), at(300, 80), ['300rpm', '300 wheel rpm', 300, null]],
    verdicts: ['separated', 'not separated, equal within the margin'],
    figures: {
      subject: [0, 0, 1, 2, 3, 3, 4, 5, 6, 6],
      quantity: [0, 0, 0, 0, 0, 0, 1, 0, 0, 0],
      condition: [0, 1, 1, 2, 0, 1, 3, 1, 1, 0],
      text: ['10 W', '30 W', '40 W', '20 W', '8 W', '25 W', '3', '25 W', '−5 W', '−2 W'],
      verdict: [-1, -1, -1, -1, -1, -1, -1, -1, 0, 1],
    },
    claims: [['CL-1', 'The baffle saves 5 W.', 'leaning', [[3, 0, 0, 1]]]],
  };
}

export const smallPart = (id?: string): FindPart => ({
  series: smallSeries(id),
  texts: [
    ['series/pan-depth/runs/S-1/', 'S-1: A0 flat pan, 2.00 L of L1', 'A hair in the gasket, none leaked.'],
    ['series/pan-depth/runs/S-4/', 'S-4: A1 baffle, 2.00 L of L1', 'Sealed with gasket paste.'],
    ['series/pan-depth/claims/#CL-1', 'Claims: The baffle saves 5 W.', 'Put by a reader.'],
    ['series/pan-depth/oils/L2/', 'L2 thin', 'SAE 75W-80, synthetic, crème coloured.'],
    ['guide/#start', 'Guide: How to start a book', 'Make a folder.'],
  ],
});

export function ask(of: Partial<AskTyped>): Ask {
  const read = readAsk({ ...nothingAsked, ...of });
  if (!read.ok) throw new Error([...read.wrong].join('; '));
  return read.ask;
}
