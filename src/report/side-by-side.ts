import type { FlowStep } from '../trial/derived.ts';
import type { GradeKind } from '../trial/flow.ts';
import { gradeKinds } from '../trial/flow.ts';
import { articleSpan, cellDetail, cited, litresWords, tiltWords } from './cite.ts';
import { clipFiles, clipView } from './clip-view.ts';
import { quantityText } from './digits.ts';
import { drawing, drawingData, inside } from './flow-drawing.ts';
import { allSteps, sameStep, stepAnchor, stepFigure, stepShort, stepWords, type FlowSheet } from './flow-steps.ts';
import { stillAt, stillsBlock, stillView } from './flow-stills.ts';
import { reachSentence } from './flow-words.ts';
import { gradeSpans, kindHead, notUsableWords, whyNotUsable } from './grade-words.ts';
import type { FlowPair } from './pairs.ts';
import { levelNote, oneGradeNote, sumpNote, unlikeOils } from './pair-words.ts';
import type { Block, ClipView, MarginNote, Page, Section, Span, TableRow } from './page.ts';
import { runLink } from './run-parts.ts';
import { frameOf, insideWords } from './section-shape.ts';
import { capital, countWord, link, prose, row, section, tableBlock } from './spans.ts';
import type { View } from './view.ts';

/** Two flow trials step by step: stills, drawings to one scale, and grades in one table. */
export function pairPage(view: View, pair: FlowPair): Page {
  const { left, right, basis, path } = pair;
  const steps = allSteps([left.flow, right.flow]).filter((step) =>
    [left, right].every(({ flow }) => flow.steps.some((each) => sameStep(each.step, step))),
  );
  const both = (name: (typeof steps)[number]): readonly [FlowStep, FlowStep] =>
    [left, right].map(({ flow }) => flow.steps.find(({ step }) => sameStep(step, name))!) as [FlowStep, FlowStep];
  const down = steps.filter(({ direction }) => direction === 'down');
  const names = [left, right].map(({ run, derived }) => `${run.article} ${cellDetail(derived.cell)}`);
  return {
    kind: 'side-by-side',
    path,
    title: `${names.join(' and ')}, side by side at the ${basis}`,
    description: `Flow trials ${left.run.id} and ${right.run.id} of ${view.series.title} at equal steps, ${basis}.`,
    whereabouts: [
      link(view.base, view.series.title),
      ' · ',
      link(`${view.base}side-by-side/`, 'side by side'),
      ` · ${basis}`,
    ],
    lead: leadOf(view, pair),
    banners: [],
    series: view.series.id,
    sections: [
      section(
        'both',
        null,
        [unlikeOils(view, pair, steps.map(both)), twoClips(view, pair)],
        [
          ...notes(view, pair),
          sumpNote(view, pair, steps.map(both)),
          levelNote(view, pair, steps.map(both)),
          oneGradeNote(view),
        ],
      ),
      ...steps.filter(({ direction }) => direction === 'up').map((step) => stepSection(view, pair, both(step))),
      down.length === 0 ? null : downSection(view, pair, down.map(both)),
    ].filter((s) => s !== null),
  };
}

/** "Same litres: 2.40 L of O1 in both. P0w: Reach is 1 at 60 wheel rpm … . P4w: Reach is 0 at 60 …." */
function leadOf(view: View, { left, right, basis }: FlowPair): Span[] {
  const [a, b] = [left.derived.cell, right.derived.cell];
  const fill =
    basis === 'same level'
      ? `${litresWords(a)} and ${litresWords(b)} of ${a.oil} that stand at the same level`
      : `${litresWords(a)} of ${a.oil} in both`;
  const tilt = tiltWords(a);
  return [
    `${capital(basis)}: ${fill}${tilt}. `,
    ...[left, right].flatMap((sheet): Span[] => [`${nameOf(sheet)}: `, ...reachSentence(view, sheet)]),
  ];
}

const nameOf = ({ run, derived }: FlowSheet): string => `${run.article}, ${cellDetail(derived.cell)}`;

function notes(view: View, { left, right, basis }: FlowPair): MarginNote[] {
  const why = whyNotUsable(view, 'reach');
  return [
    {
      name: `${capital(basis)}.`,
      text: [
        basis === 'same litres'
          ? 'The same litres may stand at another level here, and the level moves what the gear carries.'
          : basis === 'same level'
            ? 'The same level may take more litres, and more oil takes longer to warm.'
            : 'Litres and level are both the same within what the series allows.',
      ],
    },
    {
      name: 'Read with care.',
      text: [
        'Both without load, behind windows. Shape cannot be hidden from who grades; fill and oil can.',
        ...(why === null ? [] : [` Reach: ${why}.`]),
      ],
    },
    {
      name: 'Drawings.',
      text: [
        'To one scale, seen along the axle; a bar is the swing of the surface. ',
        insideWords([left, right].map((sheet) => inside(view, sheet))),
      ],
    },
    {
      name: 'The two runs.',
      text: [runLink(view, left.run.id), ' and ', runLink(view, right.run.id), '.'],
    },
  ];
}

function twoClips(view: View, { left, right }: FlowPair): Block | null {
  const of = (sheet: FlowSheet, id: string): ClipView | undefined =>
    clipFiles(view, sheet.run, sheet.flow)
      .flatMap((file) => clipView(view, sheet, file, { id, title: nameOf(sheet), traces: null }) ?? [])
      .find(({ steps }) => steps.length > 0);
  const [a, b] = [of(left, 'clip-left'), of(right, 'clip-right')];
  return a === undefined || b === undefined ? null : { kind: 'two-clips', id: 'clips', clips: [a, b] };
}

function stepSection(view: View, pair: FlowPair, steps: readonly [FlowStep, FlowStep]): Section {
  const { step } = steps[0];
  const anchor = stepAnchor(step);
  const sheets = [pair.left, pair.right] as const;
  const race = pair.left.derived.cell.tilt_ratio !== 0;
  const drawn = sheets.flatMap((sheet, i) => drawingData(view, sheet, { steps: [steps[i]!], frame: null, race }) ?? []);
  const frame = drawn.length === 0 ? null : frameOf(drawn);
  const stills = sheets.map(({ run }) => stillAt(run, step));
  const side = (i: 0 | 1): { title: readonly Span[]; blocks: readonly Block[] } => {
    const sheet = sheets[i];
    const still = stills[i];
    return {
      title: [articleSpan(view, sheet.run.article), `, ${cellDetail(sheet.derived.cell)}`],
      blocks: [
        stillsBlock([still === undefined ? null : stillView(view, still, `${anchor}-`)]),
        drawing(view, sheet, { id: `${anchor}-${sheet.run.id}`, steps: [steps[i]], frame, race }),
      ].filter((block) => block !== null),
    };
  };
  const sides = [side(0), side(1)] as const;
  const made = section(
    anchor,
    capital(stepWords(view, step)),
    [
      sides.every(({ blocks }) => blocks.length === 0) ? null : { kind: 'pair', id: `${anchor}-pair`, sides },
      compareTable(view, pair, steps),
    ],
    [ruleNote(stills)],
  );
  return { ...made, inIndex: stepShort(step) };
}

/** Stills taken by different rules are no pair, and the page says so. */
function ruleNote([a, b]: readonly ReturnType<typeof stillAt>[]): MarginNote | null {
  if (a === undefined || b === undefined) return null;
  if (a.rule === b.rule && a.rule !== 'chosen' && a.offset_s === b.offset_s) return null;
  return { name: 'Not the same moment.', text: ['The two stills were not taken by one rule.'] };
}

function compareTable(view: View, pair: FlowPair, steps: readonly [FlowStep, FlowStep]): Block {
  const sheets = [pair.left, pair.right] as const;
  const { step } = steps[0];
  const figures = (quantity: 'running-level' | 'level-swing' | 'reynolds', name: string): TableRow[] => {
    const both = sheets.map(({ run }) => stepFigure(view, run.id, quantity, step));
    if (both.every((figure) => figure === undefined)) return [];
    return [row(name, ...both.map((figure) => (figure === undefined ? '—' : cited(view, figure))), '')];
  };
  return tableBlock(
    `compare-${stepAnchor(step)}`,
    ['wide seen', ...sheets.map(({ run }) => `${run.article}, ${run.id}`), 'difference'],
    [
      ...gradeKinds.map((kind) =>
        row(
          kindHead(view, kind),
          ...sheets.map(({ run }, i) => gradeSpans(view, run.id, steps[i]!, kind)),
          differenceWords(view, kind, steps),
        ),
      ),
      ...figures('running-level', 'running level'),
      ...figures('level-swing', 'swing to either side'),
      row(
        'sump',
        ...steps.map(({ sump_K, probeAbove }) =>
          sump_K === null
            ? '—'
            : `${quantityText(sump_K, '°C', 1, view.withUs)}${probeAbove ? ', probe above the level' : ''}`,
        ),
        '',
      ),
      ...figures('reynolds', 'Reynolds number'),
    ],
  );
}

/** Said only where both are gradable and the grades may be used: what the right one is against the left. */
function differenceWords(view: View, kind: GradeKind, steps: readonly [FlowStep, FlowStep]): string {
  const why = notUsableWords(view, kind);
  if (why !== null) return why;
  const [a, b] = steps.map((step) => step.grades?.[kind].stands ?? null);
  if (a == null || b == null) return 'left open';
  if (a === 'ng' || b === 'ng') return 'not gradable';
  if (a === b) return 'equal';
  return `${countWord(Math.abs(b - a))} ${b > a ? 'higher' : 'lower'}`;
}

/** The way down in one table: Reach and level of both, and what the level does between up and down. */
function downSection(
  view: View,
  { left, right }: FlowPair,
  steps: readonly (readonly [FlowStep, FlowStep])[],
): Section {
  const sheets = [left, right] as const;
  return section('way-down', 'The way down', [
    tableBlock(
      'way-down-table',
      [
        'step',
        ...sheets.map(({ run }) => `${kindHead(view, 'reach')}, ${run.article}`),
        ...sheets.map(({ run }) => `number level, ${run.article}`),
        'Reach differs by',
      ],
      steps.map((both) => ({
        ...row(
          stepShort(both[0].step),
          ...sheets.map(({ run }, i) => gradeSpans(view, run.id, both[i]!, 'reach')),
          ...sheets.map(({ run }) => {
            const figure = stepFigure(view, run.id, 'running-level', both[0].step);
            return figure === undefined ? '—' : cited(view, figure);
          }),
          differenceWords(view, 'reach', both),
        ),
        anchor: stepAnchor(both[0].step),
      })),
    ),
    prose('The other grades of the way down stand on the sheets of the two runs.'),
  ]);
}
