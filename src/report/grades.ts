import type { Grade, GradeKind, View as Seen } from '../trial/flow.ts';
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

/** "Observers agree well enough on Reach, Side fall and Bubble, and not on Wall hit; on Tube run it cannot be told" */
function titleOf(view: View): string {
  if (view.input.compared.agreements.length === 0) return 'Grades that no second observer checked';
  const named = (which: (kind: GradeKind) => boolean): string =>
    plain(listed(gradeKinds.filter(which).map((kind): Span[] => [scales[kind].name])));
  const agreed = named((kind) => whyNotUsable(view, kind) === null);
  const not = named((kind) => whyNotUsable(view, kind) !== null && !isUntold(view, kind));
  const untold = named((kind) => whyNotUsable(view, kind) !== null && isUntold(view, kind));
  if (agreed === '' && not === '') return 'How far observers agree cannot be told on any kind of grade';
  const none = agreed === '' ? 'no kind of grade' : 'every kind of grade';
  const first = `Observers agree well enough on ${agreed === '' || (not === '' && untold === '') ? none : agreed}`;
  return `${first}${agreed !== '' && not !== '' ? `, and not on ${not}` : ''}${untold === '' ? '' : `; on ${untold} it cannot be told`}`;
}

/** All gave one and the same grade: they did not disagree, and nothing is known of how well they agree. */
function isUntold({ input: { compared } }: View, kind: GradeKind): boolean {
  const own = compared.agreements.filter(({ grade }) => grade === kind);
  return own.length > 0 && own.every(({ kappa, n, withinOne }) => kappa === null && withinOne === n);
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
        ? {
            name: 'To grade.',
            text: [link('guide/flow-trial/#flow-trial', 'How two people grade'), ' stands in the guide.'],
          }
        : null,
    ],
  );
}
