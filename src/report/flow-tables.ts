import type { FlowStep, StepGrade } from '../trial/derived.ts';
import { gradeKinds } from '../trial/flow.ts';
import { scales } from '../trial/grade-anchors.ts';
import { citedValue, cited, doubtOf } from './cite.ts';
import { quantityText } from './digits.ts';
import { stepFigure, stepShort, stepsDown, stepsUp, type FlowSheet } from './flow-steps.ts';
import { gradeSpans, gradeText, kindHead, observerName, observerTitle, viewWords } from './grade-words.ts';
import { readingsOf } from './clip-view.ts';
import { rpm } from '../ledger/ids.ts';
import type { Block, Span } from './page.ts';
import { capital, fold, listed, row, tableBlock } from './spans.ts';
import type { View } from './view.ts';

/** Sump, level and swing of every step; the way down has rows of its own. */
export function levelTable(view: View, { run, flow }: FlowSheet): Block {
  const remarks = flow.steps.some((step) => remarkOf(step) !== '');
  return tableBlock(
    'step-levels',
    [
      'step',
      'number sump',
      'number running level',
      'number 95 %',
      'number swing to either side',
      'number 95 %',
      ...(remarks ? ['wide remark'] : []),
    ],
    flow.steps.map((step) => {
      const level = stepFigure(view, run.id, 'running-level', step.step);
      const swing = stepFigure(view, run.id, 'level-swing', step.step);
      return {
        ...row(
          stepShort(step.step),
          step.sump_K === null ? '—' : quantityText(step.sump_K, '°C', 1, view.withUs),
          level === undefined ? 'not read' : citedValue(view, level),
          level === undefined ? '—' : doubtOf(level),
          swing === undefined ? '—' : citedValue(view, swing),
          swing === undefined ? '—' : doubtOf(swing),
          ...(remarks ? [remarkOf(step)] : []),
        ),
        anchor: `level-${rpm(step.step.outputSpeed_rad_s)}rpm-${step.step.direction}`,
      };
    }),
  );
}

const remarkOf = ({ steady, probeAbove }: FlowStep): string =>
  capital(
    [
      steady ? '' : 'not steady: the level still moved faster than 1 mm in 10 s',
      probeAbove ? 'sump probe above the level: it reads mist, not oil' : '',
    ]
      .filter((part) => part !== '')
      .join('; '),
  );

/** The grades that stand, a row a step. */
export const gradeTable = (view: View, { run, flow }: FlowSheet): Block =>
  tableBlock(
    'step-grades',
    ['step', ...gradeKinds.map((kind) => kindHead(view, kind)), 'View'],
    flow.steps.map((step) => ({
      ...row(
        stepShort(step.step),
        ...gradeKinds.map((kind) => gradeSpans(view, run.id, step, kind)),
        viewWords(step.observations),
      ),
      anchor: `grades-${rpm(step.step.outputSpeed_rad_s)}rpm-${step.step.direction}`,
    })),
  );

/** Speeds that were held both ways. */
const bothWays = ({ flow }: FlowSheet): readonly { readonly up: FlowStep; readonly down: FlowStep }[] =>
  stepsUp(flow).flatMap((up) => {
    const down = stepsDown(flow).find(({ step }) => rpm(step.outputSpeed_rad_s) === rpm(up.step.outputSpeed_rad_s));
    return down === undefined ? [] : [{ up, down }];
  });

/** At which speeds the level differs between the two ways by more than its ±. */
export function gapSentence(view: View, sheet: FlowSheet): Span[] {
  const gaps = bothWays(sheet).flatMap(({ up }) => {
    const figure = stepFigure(view, sheet.run.id, 'level-gap', up.step);
    const [low, high] = figure?.interval ?? [null, null];
    return low === null || high === null ? [] : [{ speed: rpm(up.step.outputSpeed_rad_s), apart: low > 0 || high < 0 }];
  });
  const apart = gaps.filter((gap) => gap.apart).map(({ speed }): Span[] => [speed]);
  if (gaps.length === 0) return ['The level was not read both ways.'];
  if (apart.length === 0) return ['At no speed does the level differ between the two ways by more than its ±.'];
  return ['At ', ...listed(apart), ` ${view.speed} the level differs between the two ways by more than its ±.`];
}

/** What the way down does differently at one speed; null when no speed was held both ways. */
export function gapTable(view: View, sheet: FlowSheet): Block | null {
  const { run } = sheet;
  const pairs = bothWays(sheet);
  if (pairs.length === 0) return null;
  const graded = pairs.some(({ up, down }) => up.grades !== null && down.grades !== null);
  return tableBlock(
    'up-and-down',
    [
      `number ${view.speed}`,
      'number level, up less down',
      ...(graded ? gradeKinds.map((kind) => scales[kind].name) : []),
    ],
    pairs.map(({ up, down }) => {
      const gap = stepFigure(view, run.id, 'level-gap', up.step);
      return row(
        rpm(up.step.outputSpeed_rad_s),
        gap === undefined ? '—' : cited(view, gap),
        ...(graded
          ? gradeKinds.map((kind) => `${inOnePiece(up.grades?.[kind])} then ${inOnePiece(down.grades?.[kind])}`)
          : []),
      );
    }),
    graded ? 'Grades: way up, then way down.' : null,
  );
}

/** Between two ways a line may break, inside "2 or 3" it may not. */
const inOnePiece = (grade: StepGrade | undefined): string => gradeText(grade).replaceAll(' ', '\u00a0');

/** What each observer wrote before anybody looked again; never overwritten. */
export function firstGradesFold(view: View, { flow }: FlowSheet): Block | null {
  const rows = flow.steps.flatMap((step) =>
    step.observations
      .filter(({ pass }) => pass === 'first')
      .map((seen) => ({ step, seen }))
      .sort((a, b) => (a.seen.observer < b.seen.observer ? -1 : 1)),
  );
  if (rows.length === 0) return null;
  const joint = flow.steps.flatMap((step) =>
    step.observations.filter(({ pass }) => pass === 'joint').map((seen) => ({ step, seen })),
  );
  const cells = ({ step, seen }: (typeof rows)[number], who: string) =>
    row(
      stepShort(step.step),
      who,
      ...gradeKinds.map((kind) => String(seen.grades[kind])),
      String(seen.view),
      [readingsOf(seen), seen.words ?? ''].filter((part) => part !== '').join('; '),
    );
  const heads = [
    'step',
    'by',
    ...gradeKinds.map((kind) => `number ${scales[kind].name}`),
    'number View',
    'wide read and seen',
  ];
  return fold(
    joint.length === 0 ? 'First grades, each observer alone' : 'First grades, each observer alone, and the joint look',
    tableBlock(
      'first-grades',
      heads,
      rows.map((of) => cells(of, observerName(view, of.seen.observer))),
    ),
    ...(joint.length === 0
      ? []
      : [
          tableBlock(
            'joint-look',
            heads,
            joint.map((of) => cells(of, 'together')),
            'The joint look: what two observers settled on where they had differed.',
          ),
        ]),
  );
}

/** Who graded, and what was hidden from them. */
export function gradersSpans(view: View, { flow }: FlowSheet): Span[] {
  const first = flow.steps.flatMap(({ observations }) => observations.filter(({ pass }) => pass === 'first'));
  const names = [...new Set(first.map(({ observer }) => observer))].sort();
  if (names.length === 0) return ['Nobody graded it.'];
  return names.map((name, i) => {
    const hidden = [...new Set(first.filter(({ observer }) => observer === name).flatMap(({ blind }) => blind))];
    const knew = hidden.length === 0 ? 'knew what was run' : `did not know the ${hidden.join(' and the ')}`;
    return `${i === 0 ? '' : ' '}${capital(observerTitle(view, name))} ${knew}.`;
  });
}
