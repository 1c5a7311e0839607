import { rpm } from '../ledger/ids.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { StepName } from '../trial/flow.ts';
import { cited, citedValue, figureNamed } from './cite.ts';
import { numberText } from './digits.ts';
import { allSteps, stepFigure, stepShort, type FlowSheet } from './flow-steps.ts';
import type { Block, MarginNote, Section, Span } from './page.ts';
import { runLink } from './run-parts.ts';
import { link, prose, row, section, tableBlock } from './spans.ts';
import { besideTheLoss } from './supply.ts';
import type { View } from './view.ts';

/** Numbers that say how far this picture carries: speeds, Reynolds here and in the loaded run, the ceiling from momentum. */
export function besideSection(view: View, sheet: FlowSheet): Section | null {
  const blocks = [speedsTable(view, sheet), similarity(view, sheet), numbersTable(view, sheet)];
  if (blocks.every((block) => block === null)) return null;
  const jets = hasAny(view, sheet, 'jet-power');
  const reynolds = hasAny(view, sheet, 'reynolds');
  return section('beside-the-picture', 'Numbers beside the picture', blocks, [
    {
      name: 'Centrifugal ratio.',
      text: ['How many times its weight the oil at the rim of the gear is thrown outward.'],
    },
    reynolds ? doubtNote : null,
    jets ? ceilingNote : null,
    jets ? besideTheLoss(view, sheet.derived.cell) : null,
    {
      name: 'No picture is predicted.',
      text: ['How much oil is carried, and where it goes, is seen or not known. ', link('method/', 'Method')],
    },
  ]);
}

const hasAny = (view: View, { run, flow }: FlowSheet, quantity: QuantityName): boolean =>
  flow.steps.some(({ step }) => stepFigure(view, run.id, quantity, step) !== undefined);

const doubtNote: MarginNote = {
  name: 'Reynolds number.',
  text: ['Its ± is of the temperature alone. A step whose sump was not read in the oil has none.'],
};

const ceilingNote: MarginNote = {
  name: 'An estimate, no result.',
  text: [
    'The band is a model estimate from momentum: what it costs to throw the oil that the ring gear carries, and so the most of it that a cover can save by turning it back. Its ends are tooth gaps a tenth and six tenths full; what a ring carries is hardly known within a factor of five. Carrier, bolt heads, pinion and bearings move oil too and are not in it: a cover may be measured to save more.',
  ],
};

/** One planned step as everything that turns with it; only what the rig sheet gives. */
function speedsTable(view: View, { flow }: FlowSheet): Block | null {
  const speeds = allSteps([flow]).filter(({ direction }) => direction === 'up');
  const of = (quantity: QuantityName, { outputSpeed_rad_s }: StepName) =>
    figureNamed(view, { subject: { rig: view.rig.id }, quantity, at: { outputSpeed_rad_s } });
  const columns = (['ring-speed', 'pinion-speed', 'pitch-line-speed', 'centrifugal-ratio'] as const).filter(
    (quantity) => speeds.some((step) => of(quantity, step) !== undefined),
  );
  if (columns.length === 0) return null;
  return tableBlock(
    'step-speeds',
    [`number ${view.speed}`, ...columns.map((quantity) => `number ${shortNames[quantity]}`)],
    speeds.map((step) =>
      row(
        rpm(step.outputSpeed_rad_s),
        ...columns.map((quantity) => {
          const figure = of(quantity, step);
          return figure === undefined ? '—' : cited(view, figure);
        }),
      ),
    ),
  );
}

const shortNames = {
  'ring-speed': 'ring gear',
  'pinion-speed': 'pinion',
  'pitch-line-speed': 'pitch-line speed',
  'centrifugal-ratio': 'centrifugal ratio',
} as const;

function numbersTable(view: View, sheet: FlowSheet): Block | null {
  const { run, flow } = sheet;
  const columns = (['reynolds', 'reynolds-loaded', 'jet-power'] as const).filter((quantity) =>
    hasAny(view, sheet, quantity),
  );
  if (columns.length === 0) return null;
  const heads = {
    reynolds: 'Reynolds number here',
    'reynolds-loaded': `at the final temperature of ${flow.standsFor?.run ?? 'the loaded run'}`,
    'jet-power': 'power in the oil thrown by the ring gear (model estimate)',
  };
  return tableBlock(
    'step-numbers',
    ['step', ...columns.map((quantity) => `number ${heads[quantity]}`)],
    flow.steps.map(({ step }) =>
      row(
        stepShort(step),
        ...columns.map((quantity) => {
          const figure = stepFigure(view, run.id, quantity, step);
          if (figure === undefined) return '—';
          return quantity === 'jet-power' ? citedValue(view, figure) : cited(view, figure);
        }),
      ),
    ),
  );
}

/** The factor from which a picture is told not to stand for the loaded run (our rule). */
const apart = 2;

/** Whether this picture can stand for the hot axle, in a plain sentence. */
export function similarity(view: View, sheet: FlowSheet): Block {
  const { standsFor } = sheet.flow;
  if (!hasAny(view, sheet, 'reynolds'))
    return prose(
      'No Reynolds number can be formed: it takes the sump of a step, two viscosities of the oil, and diameter and face of the ring gear. How this picture stands to a loaded axle is not known.',
    );
  if (standsFor === null)
    return prose(
      'No loaded run of this article, oil, fill and tilt with a final temperature is there for this picture to stand for; it is told for itself alone.',
    );
  const { run, reynoldsTimesLower: times } = standsFor;
  const loaded: Span = runLink(view, run);
  if (times > apart)
    return notice([
      `Oil here is ${factor(times)} times thicker for its speed than in `,
      loaded,
      ': this picture does not stand for the hot axle.',
    ]);
  if (times < 1 / apart)
    return notice([
      `Oil here is ${factor(1 / times)} times thinner for its speed than in `,
      loaded,
      ': this picture does not stand for that axle.',
    ]);
  return prose(
    'Reynolds numbers here are within a factor of two of those of ',
    loaded,
    `, ${times >= 1 ? `${factor(times)} times lower` : `${factor(1 / times)} times higher`}. Load, and how the oil lets go of air, are still not those of the hot axle.`,
  );
}

export const notice = (text: readonly Span[]): Block => ({ kind: 'notice', code: 'does-not-stand-for', text });

const factor = (times: number): string => numberText(times, times < 10 ? 1 : 0);
