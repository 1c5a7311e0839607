import type { Still } from '../trial/flow.ts';
import type { Run } from '../trial/run.ts';
import { quantityText } from './digits.ts';
import { sameStep, stepWords } from './flow-steps.ts';
import { stillAddress } from './media-address.ts';
import type { Block, Section, Span, StillView } from './page.ts';
import { capital, code, listOf, prose, section, strong } from './spans.ts';
import type { StepName } from '../trial/flow.ts';
import type { View } from './view.ts';

/** Stills of a run by step, each with the rule it was taken by. */
export function stillsSection(view: View, run: Run): Section | null {
  if (run.stills.length === 0) return null;
  const place = ({ step }: Still): number =>
    step.direction === 'up' ? step.outputSpeed_rad_s : 1e6 - step.outputSpeed_rad_s;
  const ordered = [...run.stills].sort((a, b) => place(a) - place(b) || rank(a) - rank(b));
  const shown = ordered.flatMap((still) => stillView(view, still) ?? []);
  const missing = ordered.filter((still) => !view.input.media.has(sourceOf(view, still)));
  const chosen = ordered.filter(({ rule }) => rule === 'chosen').length;
  return section(
    'stills',
    'Stills',
    [
      shown.length === 0 ? null : { kind: 'stills', items: shown },
      ...(missing.length === 0
        ? []
        : [
            prose('Named, and not in the folder:'),
            listOf(missing.map((still): Span[] => [code(still.file), ': ', ...captionSpans(view, still)])),
          ]),
    ],
    [
      {
        name: 'By rule.',
        text: [
          'A still at a fixed time into the hold, or at an event, can be laid beside one of another run.',
          ...(chosen === 0 ? [] : [' One that is ', strong('chosen'), ' was picked by hand, and stands for itself.']),
        ],
      },
    ],
  );
}

const rank = ({ rule }: Still): number => ({ offset: 0, event: 1, chosen: 2 })[rule];

/** In `pictures/` of the series. */
const sourceOf = (view: View, { file }: Still): string =>
  `${view.series.file.slice(0, view.series.file.lastIndexOf('/') + 1)}pictures/${file}`;

/** A still as a page shows it; null when it is not in the folder. `prefix` keeps anchors apart on a page of several runs. */
export function stillView(view: View, still: Still, prefix = ''): StillView | null {
  const source = sourceOf(view, still);
  if (!view.input.media.has(source)) return null;
  return {
    id: `${prefix}still-${still.file.replace(/\.[^.]*$/, '').replace(/[^A-Za-z0-9-]+/g, '-')}`,
    source,
    address: stillAddress(view.series.id, still.file),
    alternative: still.alt,
    caption: captionSpans(view, still),
    drawing: still.shows === 'drawing',
  };
}

/** The still of a step that compares with another run's: by the fixed time before an event, and a chosen one last. */
export const stillAt = (run: Run, step: StepName): Still | undefined =>
  run.stills.filter((still) => sameStep(still.step, step)).sort((a, b) => rank(a) - rank(b))[0];

function captionSpans(view: View, still: Still): Span[] {
  const rights = still.rights === null ? '' : ` ${still.rights}.`;
  const altered = still.alters.map((what) => ({ crop: 'cropped', scale: 'scaled', annotation: 'annotated' })[what]);
  return [
    strong(`${stepWords(view, still.step)}.`),
    ` ${closed(still.caption)} `,
    ...ruleSpans(view, still),
    ...(still.shows === 'drawing' ? [' A drawing, not a photograph.'] : []),
    `${altered.length === 0 ? '' : ` ${capital(altered.join(', '))}.`}${rights}`,
  ].filter((span) => span !== '');
}

function ruleSpans(view: View, { rule, offset_s, event }: Still): Span[] {
  if (rule === 'chosen') return [strong('Chosen'), ' by hand.'];
  if (rule === 'event') return [`Event: ${event ?? 'not said'}.`];
  return [`${offset_s === null ? 'A fixed time' : quantityText(offset_s, 's', 0, view.withUs)} into the hold.`];
}

const closed = (text: string): string => (/[.!?…]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`);

export const stillsBlock = (items: readonly (StillView | null)[]): Block | null => {
  const shown = items.filter((item) => item !== null);
  return shown.length === 0 ? null : { kind: 'stills', items: shown };
};
