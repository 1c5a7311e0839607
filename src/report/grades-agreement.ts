import { nameOf } from '../ledger/agreements.ts';
import type { Figure } from '../ledger/figure.ts';
import type { Agreement } from '../trial/compared.ts';
import { scales } from '../trial/grade-anchors.ts';
import { writeTimecode } from '../quantity/timecode.ts';
import { citedValue, doubtOf, figureNamed } from './cite.ts';
import { numberText } from './digits.ts';
import { stepShort } from './flow-steps.ts';
import { observerName } from './grade-words.ts';
import type { Block, Section, Span } from './page.ts';
import { runLink } from './run-parts.ts';
import { capital, code, counts, fold, listOf, prose, row, section, strong, tableBlock } from './spans.ts';
import { groupBy, type View } from './view.ts';

/** How far two observers agree on each kind of grade, and whether it may be used. */
export function agreementSection(view: View): Section {
  const { agreements } = view.input.compared;
  if (agreements.length === 0)
    return section('agreement', 'How far observers agree', [
      prose('No step was graded by two observers on their own, so that nothing is known of how far they agree.'),
    ]);
  const several = new Set(agreements.map((of) => of.observers.join(' '))).size > 1;
  return section(
    'agreement',
    'How far observers agree',
    [
      prose(
        several
          ? 'First grades alone, before any joint look, pair by pair of observers.'
          : `First grades of ${pairName(view, agreements[0]!)} alone, before any joint look.`,
      ),
      tableBlock(
        'agreement-table',
        [
          'kind',
          ...(several ? ['observers'] : []),
          'number pairs',
          'number equal',
          'number within one',
          'number kappa',
          'number 95 %',
          'usable',
        ],
        agreements.map((of) =>
          row(
            scales[of.grade].name,
            ...(several ? [pairName(view, of)] : []),
            numberText(of.n, 0),
            shareSpans(view, of, 'grades-equal'),
            shareSpans(view, of, 'grades-within-one'),
            figureOf(view, of, 'kappa') === undefined ? '—' : citedValue(view, figureOf(view, of, 'kappa')!),
            figureOf(view, of, 'kappa') === undefined ? '—' : doubtOf(figureOf(view, of, 'kappa')!),
            of.usable ? 'yes' : 'no',
          ),
        ),
        'Kappa is quadratic-weighted: 1 is full agreement, 0 what chance would give. A pair with ng is no pair.',
      ),
      listOf(agreements.map((of): Span[] => [strong(`${scales[of.grade].name}.`), ` ${whyWords(of)}`])),
      ...agreements.map((of) => pairsFold(view, of, several)),
    ],
    [
      {
        name: 'Steps of one run are not independent.',
        text: ['Kappa is therefore told again with one run after the other left out; the range stands below.'],
      },
      {
        name: 'No common yardstick.',
        text: ['Bands of kappa do not carry over between weightings, so the pairs themselves are printed too.'],
      },
    ],
  );
}

const figureOf = (
  view: View,
  of: Agreement,
  quantity: 'kappa' | 'grades-equal' | 'grades-within-one',
): Figure | undefined =>
  figureNamed(view, {
    subject: { series: view.series.id },
    quantity,
    at: { grade: of.grade, observers: nameOf(view.input.record, of) },
  });

const shareSpans = (view: View, of: Agreement, quantity: 'grades-equal' | 'grades-within-one'): Span[] => {
  const figure = figureOf(view, of, quantity);
  return figure === undefined ? ['—'] : [citedValue(view, figure)];
};

const pairName = (view: View, { observers }: Agreement): string =>
  observers.map((name) => observerName(view, name)).join(' and ');

/** "Usable: kappa 0.93 and 100 % within one grade; … With one run left out, kappa lies between 0.90 and 0.95." */
function whyWords({ usable, why, leavingOneRunOut, notGraded }: Agreement): string {
  const range =
    leavingOneRunOut === null
      ? ''
      : ` With one run left out, kappa lies between ${numberText(leavingOneRunOut[0], 2)} and ${numberText(leavingOneRunOut[1], 2)}.`;
  const ng =
    notGraded === 0
      ? ''
      : ` ${capital(counts(notGraded, 'step is', 'steps are'))} left out: not both could grade ${notGraded === 1 ? 'it' : 'them'}.`;
  return `${usable ? 'Usable' : 'Not usable'}: ${why}.${range}${ng}`;
}

/** The raw pairs: how often each grade of one met each of the other. */
function pairsFold(view: View, of: Agreement, several: boolean): Block {
  const [a, b] = of.observers.map((name) => observerName(view, name));
  const place = nameOf(view.input.record, of);
  return fold(
    `Pairs of ${scales[of.grade].name}${several ? `, ${pairName(view, of)}` : ''}`,
    tableBlock(
      `pairs-${of.grade}-${place}`,
      [`${a!} gave`, ...[0, 1, 2, 3, 4].map((grade) => `number ${b!}: ${String(grade)}`)],
      of.table.map((counted, grade) => row(String(grade), ...counted.map((n) => (n === 0 ? '·' : String(n))))),
    ),
  );
}

/** Where the observers differ: run, step, clip and time, so that both can look again. */
export function differSection(view: View): Section | null {
  const differing = view.input.compared.agreements.filter(({ differ }) => differ.length > 0);
  if (differing.length === 0) return null;
  const open = differing.flatMap(({ differ }) => differ).filter(({ joint }) => joint === null).length;
  const kinds = [...groupBy(differing, ({ grade }) => grade)];
  return section(
    'differ',
    'Where they differ',
    kinds.map(([, list]) => differFold(view, list)),
    [
      {
        name: 'For a joint look.',
        text: [
          open === 0
            ? 'All of them were looked at again, together.'
            : `${capital(counts(open, 'of them has', 'of them have'))} not been looked at again.`,
          ' First grades are kept.',
        ],
      },
    ],
  );
}

function differFold(view: View, list: readonly Agreement[]): Block {
  const [first] = list as [Agreement, ...Agreement[]];
  const total = list.reduce((sum, { differ }) => sum + differ.length, 0);
  return fold(
    `${scales[first.grade].name}: ${counts(total, 'step')}`,
    ...list.map((of) =>
      tableBlock(
        `differ-${of.grade}-${nameOf(view.input.record, of)}`,
        [
          'run',
          'step',
          ...of.observers.map((name) => `number ${observerName(view, name)}`),
          'number joint',
          'clip',
          'at',
        ],
        of.differ.map(({ run, step, grades, joint, clip, from_s }) =>
          row(
            runLink(view, run),
            stepShort(step),
            ...grades.map(String),
            joint === null ? 'open' : String(joint),
            clip === null ? '—' : code(clip),
            from_s === null ? '—' : writeTimecode(from_s),
          ),
        ),
      ),
    ),
  );
}
