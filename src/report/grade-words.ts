import { notUsable, observersOf } from '../ledger/agreements.ts';
import type { FlowStep, StepGrade } from '../trial/derived.ts';
import type { Graded, GradeKind, Observation } from '../trial/flow.ts';
import { scales } from '../trial/grade-anchors.ts';
import { cited } from './cite.ts';
import type { Span } from './page.ts';
import { stepFigure } from './flow-steps.ts';
import { capital, listed, plain } from './spans.ts';
import type { View } from './view.ts';

/** Initials are for the house; the public meets "observer 1". Whoever only looked again jointly has no number. */
export function observerName(view: View, name: string): string {
  if (view.house) return name;
  const place = observersOf(view.input.record).indexOf(name);
  return place < 0 ? 'joint look' : `observer ${String(place + 1)}`;
}

export const observerTitle = (view: View, name: string): string =>
  view.house ? `observer ${name}` : observerName(view, name);

/** Why grades of a kind do not carry weight: "not usable: …", "one observer alone: …"; null when they do. */
export const whyNotUsable = (view: View, kind: GradeKind): string | null =>
  notUsable(view.input.compared.agreements, kind);

/** Two words for a heading or beside a number. */
export const notUsableWords = (view: View, kind: GradeKind): string | null => {
  const why = whyNotUsable(view, kind);
  return why === null ? null : why.startsWith('not usable') ? 'not usable' : 'one observer alone';
};

/** "Reach", "Reach (not usable)": a kind that may not be used says so wherever it heads a column. */
export const kindHead = (view: View, kind: GradeKind): string => {
  const why = notUsableWords(view, kind);
  return why === null ? scales[kind].name : `${scales[kind].name} (${why})`;
};

/** "3", "ng", "2 or 3" where the observers differ and nobody looked again, "—" where nobody graded. */
export function gradeText(grade: StepGrade | undefined): string {
  if (grade === undefined || grade.how === 'not graded') return '—';
  if (grade.stands !== null) return String(grade.stands);
  const each = [...new Set(grade.first.map((f) => f.grade))].sort(inOrder).map((g): Span[] => [String(g)]);
  return plain(listed(each, ' or '));
}

const inOrder = (a: Graded, b: Graded): number => rank(a) - rank(b);
const rank = (grade: Graded): number => (grade === 'ng' ? 5 : grade);

/** The grade that stands, linked to its working, and how it came to stand: a bare number is everybody's. */
export function gradeSpans(view: View, run: string, step: FlowStep, kind: GradeKind): Span[] {
  const grade = step.grades?.[kind];
  const figure = stepFigure(view, run, kind, step.step);
  const how = grade === undefined ? '' : howShort[grade.how];
  return [figure === undefined ? gradeText(grade) : cited(view, figure), ...(how === '' ? [] : [` ${how}`])];
}

const howShort: Readonly<Record<StepGrade['how'], string>> = {
  'joint look': 'joint',
  equal: '',
  'one observer': 'alone',
  differ: 'open',
  'not graded': '',
};

/** Beside a table of grades: what its words mean. */
export const gradeLegend =
  'A bare number was given by every observer; joint: both looked again, together; alone: one observer graded; open: they differ and nobody looked again; ng: not gradable, which is no 0.';

/** First grades in the order of the observers: "A 3 B 2" for the house, "3, 2" for the public. */
export const firstGrades = (view: View, { first }: StepGrade): string =>
  view.house
    ? first.map(({ observer, grade }) => `${observer}\u00a0${String(grade)}`).join(' ')
    : first.map(({ grade }) => String(grade)).join(', ');

/** "3", or "2 or 3" where the first looks differ; the joint look counts before them. */
export function viewWords(observations: readonly Observation[]): string {
  const joint = observations.filter(({ pass }) => pass === 'joint');
  const views = (joint.length > 0 ? joint : observations).map(({ view }) => view);
  return views.length === 0 ? '—' : [...new Set(views)].sort().join(' or ');
}

/** Every kind that may not be used, with its reason; null when all may. */
export const kindsNotUsable = (view: View, kinds: readonly GradeKind[]): string | null => {
  const told = kinds.flatMap((kind) => {
    const why = whyNotUsable(view, kind);
    return why === null ? [] : [`${scales[kind].name}: ${why.replace(/^not usable: /, '')}`];
  });
  return told.length === 0 ? null : `${capital(told.join('. '))}.`;
};
