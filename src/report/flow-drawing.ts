import type { Figure } from '../ledger/figure.ts';
import { rpm } from '../ledger/ids.ts';
import type { FlowStep } from '../trial/derived.ts';
import { shown } from '../trial/figures.ts';
import { articleWords, cited, runFigures, tiltWords } from './cite.ts';
import { numberText, valueOf } from './digits.ts';
import { stepFigure, stepsUp, type FlowSheet } from './flow-steps.ts';
import type { Block, SectionData, TableRow } from './page.ts';
import { insideOf, insideWords, flat, mm, raceOf, shapeOf } from './section-shape.ts';
import { row, table } from './spans.ts';
import type { View } from './view.ts';

/** What of a run a section drawing shows. */
export interface Drawn {
  readonly id: string;
  readonly steps: readonly FlowStep[];
  readonly frame: SectionData['frame'];
  /** The race and its dimensions, for which the drawing grows far to the left. */
  readonly race: boolean;
}

/** The whole run in one drawing: oil at rest, and under it the running level of every step on the way up. */
export const runDrawing = (view: View, sheet: FlowSheet): Block | null =>
  drawing(view, sheet, { id: 'section', steps: stepsUp(sheet.flow), frame: null, race: true });

/** Section of the housing with the levels of a run in it; null when no line of the inside is known. */
export function drawing(view: View, sheet: FlowSheet, of: Drawn): Block | null {
  const data = drawingData(view, sheet, of);
  const { run, derived } = sheet;
  // One of many beside another: what all of them share is said once on their page.
  const alone = of.steps.length === 1;
  if (data === null) return null;
  const article = articleWords(view, run.article);
  const levels = [...data.levels, ...data.running].map(({ label }) => label);
  const [rest] = runFigures(view, run.id, 'static-level');
  return {
    kind: 'chart',
    chart: {
      id: of.id,
      title: `Section of ${article} with ${alone ? 'its running level' : 'its running levels'}, to scale`,
      alternative: `Section along the axle, to scale in millimetres${tiltWords(derived.cell)}: the ring gear, the inside of ${article} behind it, and the surface of the oil: ${levels.join(', ')}. The table below holds the same numbers.`,
      caption: alone
        ? []
        : [`To scale, seen along the axle. Bars are the swing of the surface. ${insideWords([inside(view, sheet)])}`],
      data,
      table: table(
        `${of.id}-table`,
        ['wide height', 'number from the axle centreline', 'number swing to either side'],
        [
          ...(rest === undefined ? [] : [row('oil at rest', cited(view, rest), '—')]),
          ...of.steps.flatMap((step) => levelRow(view, sheet, step)),
          ...(alone ? [] : data.lips.map(({ label, z }) => row(label, `${numberText(z, 0)}\u202fmm`, '—'))),
          ...(alone ? [] : [row('bottom of the ring gear', `${numberText(-data.ringRadius, 0)}\u202fmm`, '—')]),
        ],
      ),
    },
  };
}

function levelRow(view: View, { run }: FlowSheet, { step }: FlowStep): TableRow[] {
  const level = stepFigure(view, run.id, 'running-level', step);
  const swing = stepFigure(view, run.id, 'level-swing', step);
  if (level === undefined) return [];
  const name = `running at ${rpm(step.outputSpeed_rad_s)} ${view.speed}, way ${step.direction}`;
  return [row(name, cited(view, level), swing === undefined ? '—' : cited(view, swing))];
}

export const inside = (view: View, { run }: FlowSheet) => {
  const article = view.articles.get(run.article);
  return article === undefined ? null : insideOf(view, article);
};

export function drawingData(view: View, sheet: FlowSheet, of: Omit<Drawn, 'id'>): SectionData | null {
  const { run, derived } = sheet;
  const lines = inside(view, sheet);
  if (lines === null) return null;
  const [rest] = runFigures(view, run.id, 'static-level');
  return {
    kind: 'section',
    ...flat,
    ...shapeOf(view, lines, run.article),
    frame: of.frame,
    tilt: derived.cell.tilt_ratio,
    levels: rest?.value == null ? [] : [{ z: rest.value, label: `at rest ${valueOf(rest)}` }],
    running: of.steps.flatMap((step) => runningLevel(view, sheet, step, of.steps.length)),
    race: of.race ? raceOf(view) : null,
    dimensions: of.race ? dimensions(view, sheet, rest) : [],
  };
}

/** More levels than this lie too close for a number each. */
const namedEach = 4;

/** Many levels are named together and by their bars; the table has the number of each. */
function runningLevel(view: View, { run }: FlowSheet, { step }: FlowStep, steps: number): SectionData['running'] {
  const level = stepFigure(view, run.id, 'running-level', step);
  const swing = stepFigure(view, run.id, 'level-swing', step);
  if (level?.value == null) return [];
  const speed = rpm(step.outputSpeed_rad_s);
  return [
    {
      z: level.value,
      swing: swing?.value ?? 0,
      label:
        steps > namedEach
          ? `${speed}\u00a0rpm up`
          : steps > 1
            ? `${speed}\u00a0rpm ${valueOf(level)}`
            : `${speed} ${view.speed} ${valueOf(level)}`,
    },
  ];
}

/** How deep the ring dips at rest, how far ahead the race lies, and what stands over its lowest point. */
function dimensions(view: View, { run }: FlowSheet, rest: Figure | undefined): SectionData['dimensions'] {
  const race = raceOf(view);
  const [immersed] = runFigures(view, run.id, 'immersion');
  const [surface] = runFigures(view, run.id, 'level-at-pinion');
  const [over] = runFigures(view, run.id, 'bath-over-race');
  const bottom = -mm(view.rig.ringRadius_m);
  return [
    ...(rest?.value == null || immersed?.value == null
      ? []
      : [{ from: [0, bottom] as const, to: [0, rest.value] as const, label: `${valueOf(immersed)} immersed` }]),
    ...(race === null
      ? []
      : [
          {
            from: [race.x, bottom] as const,
            to: [0, bottom] as const,
            label: `${numberText(-race.x, 0)}\u202fmm ahead`,
          },
        ]),
    ...(race === null || surface?.value == null || over?.value == null || Math.abs(over.value) < leastDrawn
      ? []
      : [
          {
            // beside the race, which stands on edge in this view
            from: [race.x - race.radius / 2, race.z - race.radius] as const,
            to: [race.x - race.radius / 2, surface.value] as const,
            label: `${valueOf(over)} over`,
          },
        ]),
  ];
}

/** A dimension line shorter than this, mm, has no room for its ends; the sentence under the drawing has its number. */
const leastDrawn = shown('static-level', 4e-3);
