import type { Figure } from '../ledger/figure.ts';
import { rpm } from '../ledger/ids.ts';
import type { FlowStep } from '../trial/derived.ts';
import { gradeKinds } from '../trial/flow.ts';
import { scales } from '../trial/grade-anchors.ts';
import { cited } from './cite.ts';
import { isGraded, stepFigure, stepShort, stepsUp, type FlowSheet } from './flow-steps.ts';
import { gradeText } from './grade-words.ts';
import type { Span } from './page.ts';
import { listed } from './spans.ts';
import type { View } from './view.ts';

/** "On the way up Reach is 1 at 60 wheel rpm, 2 at 120, 3 from 200 to 390 and 4 at 520. The running level falls from … to …." */
export const flowLead = (view: View, sheet: FlowSheet): Span[] => [
  ...reachSentence(view, sheet),
  ...levelSentence(view, sheet),
  ...openSentence(sheet),
];

/** Neighbouring steps of one grade are said together. */
export function reachSentence(view: View, { run, flow }: FlowSheet): Span[] {
  if (!isGraded({ flow })) return ['Nobody graded what was seen. '];
  const groups: { text: string; first: FlowStep; last: FlowStep }[] = [];
  for (const step of stepsUp(flow)) {
    const text = gradeText(step.grades?.reach);
    const open = groups.at(-1);
    if (open?.text === text) open.last = step;
    else groups.push({ text, first: step, last: step });
  }
  const parts = groups
    .filter(({ text }) => text !== '—')
    .map(({ text, first, last }, i): Span[] => {
      const figure = stepFigure(view, run.id, 'reach', first.step);
      const [from, to] = [first, last].map(({ step }) => rpm(step.outputSpeed_rad_s));
      const unit = i === 0 ? ` ${view.speed}` : '';
      return [
        figure === undefined ? text : cited(view, figure),
        first === last ? ` at ${from!}${unit}` : ` from ${from!} to ${to!}${unit}`,
      ];
    });
  return parts.length === 0
    ? ['Reach was not graded on the way up. ']
    : ['Reach is ', ...listed(parts), ' on the way up. '];
}

function levelSentence(view: View, { run, flow }: FlowSheet): Span[] {
  const levels = stepsUp(flow).flatMap(({ step }): { figure: Figure; speed: string }[] => {
    const figure = stepFigure(view, run.id, 'running-level', step);
    return figure === undefined ? [] : [{ figure, speed: rpm(step.outputSpeed_rad_s) }];
  });
  const [first, last] = [levels[0], levels.at(-1)];
  if (first === undefined || last === undefined) return ['No running level could be formed from its steps.'];
  const at = ({ speed }: typeof first): string => ` at ${speed} ${view.speed}`;
  if (first === last)
    return ['The oil stands at ', cited(view, first.figure), at(first), ', from the axle centreline.'];
  const falls = (last.figure.value ?? 0) < (first.figure.value ?? 0);
  return [
    `The running level ${falls ? 'falls' : 'goes'} from `,
    cited(view, first.figure),
    `${at(first)} to `,
    cited(view, last.figure),
    `${at(last)}, from the axle centreline.`,
  ];
}

/** What nobody could grade, and what the observers still differ on. */
function openSentence({ flow }: FlowSheet): Span[] {
  const of = (which: (step: FlowStep) => readonly string[]): string[] =>
    flow.steps.flatMap((step) => {
      const kinds = which(step);
      if (kinds.length === 0) return [];
      return [`${kinds.length === gradeKinds.length ? 'everything' : kinds.join(', ')} at ${stepShort(step.step)}`];
    });
  const named = (step: FlowStep, wanted: (text: { stands: unknown; how: string }) => boolean): string[] =>
    gradeKinds.flatMap((kind) => {
      const grade = step.grades?.[kind];
      return grade !== undefined && wanted(grade) ? [scales[kind].name] : [];
    });
  const hidden = of((step) => named(step, ({ stands }) => stands === 'ng'));
  const differ = of((step) => named(step, ({ how }) => how === 'differ'));
  return [
    ...(hidden.length === 0 ? [] : [` Not gradable: ${hidden.join('; ')}.`]),
    ...(differ.length === 0 ? [] : [` Left open between observers: ${shortened(differ)}.`]),
  ];
}

/** A lead names a few; the table has them all. */
const shortened = (items: readonly string[]): string =>
  items.length <= 3
    ? items.join('; ')
    : `${items.slice(0, 2).join('; ')} and ${String(items.length - 2)} more steps below`;
