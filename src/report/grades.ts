import type { Grade, View as Seen } from '../trial/flow.ts';
import { gradeKinds } from '../trial/flow.ts';
import { scales, viewAnchors } from '../trial/grade-anchors.ts';
import { numberText } from './digits.ts';
import { flowSheets, isGraded, type FlowSheet } from './flow-steps.ts';
import { whyNotUsable } from './grade-words.ts';
import { agreementSection, differSection } from './grades-agreement.ts';
import { gridSection } from './grades-grid.ts';
import type { Page, Section, Span } from './page.ts';
import { capital, counts, facts, link, listed, plain, prose, row, section, tableBlock } from './spans.ts';
import type { View } from './view.ts';

/** Every grade of a series: the printed scale, what stands article by step, and how far two observers agree. */
export function gradesPage(view: View): Page {
  const sheets = flowSheets(view).filter(isGraded);
  return {
    kind: 'grades',
    path: `${view.base}grades/`,
    title: titleOf(view),
    description: `Grades of the flow trials of ${view.series.title}: scale, grid of article and step, agreement of observers.`,
    whereabouts: [link(view.base, view.series.title), ' · grades'],
    lead: leadOf(view, sheets),
    banners: [],
    series: view.series.id,
    sections: [
      ...gradeKinds.map((kind) => gridSection(view, sheets, kind)),
      agreementSection(view),
      differSection(view),
      scaleSection(view),
    ].filter((s) => s !== null),
  };
}

/** "Two observers agree on Reach, Side fall and Bubble, and not on Wall hit" */
function titleOf(view: View): string {
  const { agreements } = view.input.compared;
  if (agreements.length === 0) return 'Grades that no second observer checked';
  const names = (usable: boolean): string =>
    plain(
      listed(
        gradeKinds
          .filter((kind) => (whyNotUsable(view, kind) === null) === usable)
          .map((kind): Span[] => [scales[kind].name]),
      ),
    );
  const [agreed, not] = [names(true), names(false)];
  if (not === '') return 'Observers agree well enough on every kind of grade';
  return agreed === ''
    ? 'Observers agree well enough on no kind of grade'
    : `Observers agree well enough on ${agreed}, and not on ${not}`;
}

function leadOf(view: View, sheets: readonly FlowSheet[]): Span[] {
  const steps = sheets.reduce((sum, { flow }) => sum + flow.steps.length, 0);
  const { withinOne_ratio, kappa } = view.series.agreement;
  return [
    `${capital(counts(sheets.length, 'flow trial'))} with ${numberText(steps, 0)} steps ${sheets.length === 1 ? 'was' : 'were'} graded. A kind of grade is used beside a loss where, of the pairs of first grades, at least ${numberText(withinOne_ratio * 100, 0)} % lie within one and kappa is at least ${numberText(kappa, 1)}: the rule of this series.`,
  ];
}

/** The printed anchors, once for the whole series. */
function scaleSection(view: View): Section {
  return section(
    'scale',
    'What a grade means',
    [
      prose('Looked at for ten seconds after the hold begins.'),
      tableBlock(
        'scale-table',
        ['number grade', ...gradeKinds.map((kind) => `wide ${scales[kind].name}: ${scales[kind].of}`)],
        ([0, 1, 2, 3, 4] as const satisfies readonly Grade[]).map((grade) =>
          row(String(grade), ...gradeKinds.map((kind) => scales[kind].anchors[grade])),
        ),
      ),
      facts([
        ['ng', ['not gradable; it is never counted as 0']],
        ...([0, 1, 2, 3] as const satisfies readonly Seen[]).map((seen): [string, Span[]] => [
          `View ${String(seen)}`,
          [viewAnchors[seen]],
        ]),
      ]),
    ],
    [
      {
        name: 'The gate.',
        text: ['With View 0 or 1 every grade of that step is ng, whatever was written.'],
      },
      view.house
        ? { name: 'To grade.', text: [link('guide/#flow-trial', 'How two people grade'), ' stands in the guide.'] }
        : null,
    ],
  );
}
