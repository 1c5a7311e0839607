import { rpm } from '../ledger/ids.ts';
import type { FlowStep } from '../trial/derived.ts';
import type { GradeKind, StepName } from '../trial/flow.ts';
import { scales } from '../trial/grade-anchors.ts';
import { articleSpan, cellDetail } from './cite.ts';
import { allSteps, sameStep, type FlowSheet } from './flow-steps.ts';
import { firstGrades, gradeSpans, notUsableWords, whyNotUsable } from './grade-words.ts';
import { observersOf } from '../ledger/agreements.ts';
import type { Block, MarginNote, Section, Span, TableRow } from './page.ts';
import { runLink } from './run-parts.ts';
import { capital, row, section, tableBlock } from './spans.ts';
import type { View } from './view.ts';

/** One kind of grade, article and fill by step: the way up, then the way down. */
export function gridSection(view: View, sheets: readonly FlowSheet[], kind: GradeKind): Section | null {
  const steps = allSteps(sheets.map(({ flow }) => flow));
  const seen = sheets.filter(({ flow }) => flow.steps.some(({ grades }) => grades !== null));
  if (seen.length === 0) return null;
  const unusable = notUsableWords(view, kind);
  const grids = (['up', 'down'] as const).map((direction) =>
    grid(
      view,
      [...seen].sort(inOrder(view)),
      kind,
      direction,
      steps.filter((step) => step.direction === direction),
    ),
  );
  return {
    ...section(
      `grid-${kind}`,
      `${scales[kind].name}: ${scales[kind].of}${unusable === null ? '' : ` (${unusable})`}`,
      grids,
      [usableNote(view, kind), kind === 'reach' ? cellNote(view) : null],
    ),
    inIndex: `${scales[kind].name}${unusable === null ? '' : ` (${unusable})`}`,
  };
}

/** The baseline and its copies first, then by article, fill and tilt. */
const inOrder =
  (view: View) =>
  (a: FlowSheet, b: FlowSheet): number => {
    const mark = ({ run }: FlowSheet): number => view.marks.get(run.article) ?? 0;
    return (
      mark(a) - mark(b) ||
      (a.run.article < b.run.article ? -1 : a.run.article > b.run.article ? 1 : 0) ||
      Math.abs(a.derived.cell.tilt_ratio) - Math.abs(b.derived.cell.tilt_ratio) ||
      a.derived.cell.fill_m3 - b.derived.cell.fill_m3 ||
      a.run.order - b.run.order
    );
  };

function grid(
  view: View,
  sheets: readonly FlowSheet[],
  kind: GradeKind,
  direction: StepName['direction'],
  steps: readonly StepName[],
): Block | null {
  if (steps.length === 0) return null;
  return tableBlock(
    `${kind}-${direction}`,
    ['wide article and fill', 'run', ...steps.map((step) => rpm(step.outputSpeed_rad_s))],
    sheets.map((sheet): TableRow => {
      const { run, derived } = sheet;
      return row(
        [
          articleSpan(view, run.article, run.article),
          `, ${cellDetail(derived.cell)}${oilWords(view, derived.cell.oil)}`,
        ],
        runLink(view, run.id),
        ...steps.map((step) => cell(view, sheet, kind, step)),
      );
    }),
    `Way ${direction}, ${view.speed}.`,
  );
}

const oilWords = (view: View, oil: string): string => (oil === view.series.baseline.oil ? '' : `, ${oil}`);

/** The grade that stands, and beside it the first grades that it comes from: "3 joint · A 3 B 2". */
function cell(view: View, { run, flow }: FlowSheet, kind: GradeKind, name: StepName): Span[] {
  const step: FlowStep | undefined = flow.steps.find((each) => sameStep(each.step, name));
  const grade = step?.grades?.[kind];
  if (step === undefined || grade === undefined) return ['—'];
  const first = firstGrades(view, grade);
  return [...gradeSpans(view, run.id, step, kind), ...(first === '' ? [] : [` · ${first}`])];
}

/** Why this kind may be used, or may not. */
function usableNote(view: View, kind: GradeKind): MarginNote | null {
  const why = whyNotUsable(view, kind);
  if (why !== null) return { name: 'Not to lean on.', text: [`${capital(why)}.`] };
  const reasons = view.input.compared.agreements.filter(({ grade }) => grade === kind).map((of) => of.why);
  return { name: 'How sure.', text: [`${capital(reasons.join('; '))}.`] };
}

function cellNote(view: View): MarginNote {
  const names = observersOf(view.input.record);
  return {
    name: 'In a cell.',
    text: [
      `First what stands, then the first grades${view.house ? ` of ${names.join(' and ')}` : `, in the order ${names.map((_, i) => `observer ${String(i + 1)}`).join(', ')}`}. Joint: both looked again, together; alone: one observer graded; open: they differ and nobody looked again; ng: not gradable.`,
    ],
  };
}
