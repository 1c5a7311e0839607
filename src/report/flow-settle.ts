import type { Settled } from '../trial/derived.ts';
import { articleWords, cited, runFigures } from './cite.ts';
import { numberText } from './digits.ts';
import type { FlowSheet } from './flow-steps.ts';
import type { Block, MarginNote, Section, SettleData, Span } from './page.ts';
import { mm } from './section-shape.ts';
import { facts, prose, row, section, table } from './spans.ts';
import type { View } from './view.ts';

/** The level after the stop, the air that leaves, and what can be said of either. Null when nothing was read. */
export function settleSection(view: View, sheet: FlowSheet): Section | null {
  const { settled } = sheet.flow;
  if (settled === null) return null;
  return section(
    'settle',
    'After the stop',
    [settleChart(view, sheet, settled), told(view, sheet), airProse(view, sheet, settled)],
    [twoAtOnce, notBench],
  );
}

const twoAtOnce: MarginNote = {
  name: 'Two things at once.',
  text: ['Oil that drains back raises the level, air that leaves lowers it. One level cannot part them.'],
};

const notBench: MarginNote = {
  name: 'Not a bench test.',
  text: ['Bubble grades after the stop say when this sump was clear. They are no air release of the oil.'],
};

function told(view: View, { run }: FlowSheet): Block | null {
  const rows = (
    [
      ['Half-time of the level', 'level-half-time'],
      ['Missing after settling', 'held-up'],
      ['Bubble at 1 or less after', 'bubble-clear-time'],
    ] as const
  ).flatMap(([name, quantity]): [string, Span[]][] => {
    const [figure] = runFigures(view, run.id, quantity);
    if (figure === undefined) return [];
    return [[name, [cited(view, figure), ...(figure.notes.length === 0 ? [] : [`: ${figure.notes.join('; ')}`])]]];
  });
  return rows.length === 0 ? null : facts(rows);
}

function airProse(view: View, { run }: FlowSheet, { airUntold }: Settled): Block {
  const shares = runFigures(view, run.id, 'air-share');
  const [share] = shares;
  if (share !== undefined)
    return prose(
      'Air in the oil: ',
      cited(view, share),
      share.notes.length === 0 ? '.' : ` by volume, ${share.notes.join('; ')}.`,
    );
  return prose(`Air in the oil: not identifiable${airUntold === null ? '' : ` — ${airUntold}`}.`);
}

function settleChart(view: View, { run }: FlowSheet, settled: Settled): Block | null {
  const points = settled.points.map(({ after_s, level_z_m }) => [after_s, mm(level_z_m)] as const);
  if (points.length === 0 && settled.bubbles.length === 0) return null;
  const data: SettleData = {
    kind: 'settle',
    xTitle: 'seconds after the ring gear stands still',
    yTitle: 'level, mm from the axle centreline',
    mark: view.marks.get(run.article) ?? 0,
    points,
    fit: curve(settled),
    lines: [
      ...(settled.before_z_m === null ? [] : [{ y: mm(settled.before_z_m), label: 'at rest before' }]),
      ...(settled.fit === null ? [] : [{ y: mm(settled.fit.end_z_m), label: 'where it ends' }]),
    ],
    bubbles: settled.bubbles.map(({ after_s, bubble }) => ({ x: after_s, text: String(bubble) })),
  };
  return {
    kind: 'chart',
    chart: {
      id: 'settling',
      title: `Level of ${run.id} after the stop`,
      alternative: `Height of the oil surface in ${articleWords(view, run.article)}, in millimetres from the axle centreline, against seconds after the ring gear stands still${settled.fit === null ? '' : ', with the fitted curve'}${settled.before_z_m === null ? '' : ' and the level at rest before'}. The table below holds the same numbers.`,
      caption: [
        settled.fit === null
          ? 'Dots are readings. They follow no single curve of draining back, so none is drawn.'
          : 'Dots are readings; the curve halves what is missing in each half-time.',
        settled.bubbles.length === 0 ? '' : ' Over them: Bubble.',
      ].filter((part) => part !== ''),
      data,
      table: settleTable(settled),
    },
  };
}

/** The fitted curve in even steps of the square root of time: most of it happens at first. */
function curve({ fit, points }: Settled): SettleData['fit'] {
  const last = points.at(-1)?.after_s ?? 0;
  if (fit === null || last <= 0) return [];
  return Array.from({ length: 61 }, (_, i) => {
    const after_s = last * (i / 60) ** 2;
    return [after_s, mm(fit.end_z_m - fit.depth_m * 2 ** (-after_s / fit.half_s))] as const;
  });
}

function settleTable({ points, bubbles }: Settled) {
  const rows = [
    ...points.map(({ after_s, level_z_m }) => ({ after_s, cells: [numberText(mm(level_z_m), 1), '', ''] as const })),
    ...bubbles.map(({ after_s, bubble, foam_m }) => ({
      after_s,
      cells: ['', String(bubble), foam_m === null ? '' : numberText(mm(foam_m), 0)] as const,
    })),
  ].sort((a, b) => a.after_s - b.after_s);
  return table(
    'settling-table',
    ['number s after the stop', 'number level, mm', 'number Bubble', 'number foam, mm'],
    rows.map(({ after_s, cells }) => row(numberText(after_s, 0), ...cells)),
    'Levels are means over short stretches of the log; Bubble and foam were read at the window.',
  );
}
