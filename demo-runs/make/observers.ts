import { type TrueStep, trueSteps } from './flow-truth.ts';
import { type GradeKind, type Grades, held04 } from './law.ts';
import { still, stream } from './random.ts';
import type { MadeRun } from './run.ts';

export const gradeKinds = ['reach', 'side', 'wall', 'bubble', 'tube'] as const satisfies readonly GradeKind[];
export type Graded = number | 'ng';

/** What one observer wrote of one step. */
export interface Row {
  readonly step: TrueStep;
  readonly grades: Readonly<Record<GradeKind, Graded>>;
  readonly view: number;
  readonly level_mm: number | null;
  readonly swing_mm: number | null;
  readonly foam_mm: number | null;
  readonly detach_deg: number | null;
}

export interface Block {
  readonly observer: string;
  readonly pass: 'first' | 'joint';
  readonly blind: readonly string[];
  readonly rows: readonly Row[];
}

interface Eye {
  readonly observer: string;
  readonly bias: number;
  readonly sd: number;
  readonly salt: number;
}
const eyes: readonly [Eye, Eye] = [
  { observer: 'A', bias: 0, sd: 0.35, salt: 8 },
  { observer: 'B', bias: 0.2, sd: 0.45, salt: 9 },
];

/** Two people apart, from coded clips; then both together where they were far apart, or of two minds about what feeds a bearing. */
export function observed(made: MadeRun, { seed, quiet }: { seed: number; quiet: boolean }): readonly Block[] {
  const steps = trueSteps(made);
  const [a, b] = eyes.map((eye) => {
    const from = quiet ? still : stream(seed, made.plan.order, eye.salt);
    const bias = quiet ? 0 : eye.bias;
    return steps.map((step) => seen(step, (true_) => true_ + bias + from.normal(eye.sd)));
  }) as [Row[], Row[]];
  const ruled = stream(seed, made.plan.order, 10);
  const read = (row: Row): Row => (row.view > 1 ? { ...row, ...onTheRule(row.step, quiet ? still : ruled) } : row);
  const joint = a.flatMap((row, i) => (lookAgain(row, b[i]!) ? [together(row, b[i]!)] : []));
  return [
    { observer: 'A', pass: 'first', blind: ['fill', 'oil'], rows: a.map(read) },
    { observer: 'B', pass: 'first', blind: ['fill', 'oil'], rows: b },
    ...(joint.length > 0 ? [{ observer: 'A+B', pass: 'joint' as const, blind: [], rows: joint }] : []),
  ];
}

/** Thick air hides the rest: View is good at Bubble 3 and only in part at Bubble 4, and then nothing is graded. */
const viewAt = (bubble: number): number => (bubble >= 4 ? 1 : bubble >= 3 ? 2 : 3);

function seen(step: TrueStep, by: (grade: number) => number): Row {
  const grades = ofEach((kind) => held04(Math.round(by(step.grades[kind]))));
  const view = viewAt(grades.bubble);
  return {
    ...{ step, view, level_mm: null, swing_mm: null, detach_deg: null },
    grades: view > 1 ? grades : ofEach(() => 'ng'),
    foam_mm: grades.bubble >= 3 ? foam_mm(step, grades.bubble) : null,
  };
}

/** By the scale, what is called opaque carries 5 mm at least. */
const foam_mm = ({ grades }: TrueStep, called: number): number =>
  Math.max(called === 4 ? 5 : 1, Math.round(3 * (grades.bubble - 2)));

/** Pinion and hub bearings live on what reaches the pocket and passes the tube lip: there no difference is left standing. */
const feeds: readonly GradeKind[] = ['reach', 'tube'];
const lookAgain = (a: Row, b: Row): boolean =>
  gradeKinds.some((kind) => apart(a.grades[kind], b.grades[kind]) > (feeds.includes(kind) ? 0 : 1));

const apart = (a: Graded, b: Graded): number => (a === 'ng' || b === 'ng' ? 0 : Math.abs(a - b));

/** Two pairs of eyes and as many replays as they like: what they settle on is so. */
function together({ step, grades: a, level_mm, swing_mm }: Row, { grades: b }: Row): Row {
  const rounded = roundedTruth(step.grades);
  const grades = ofEach((kind) => (a[kind] === b[kind] ? a[kind] : rounded[kind]));
  const view = viewAt(Number(grades.bubble));
  return { step, grades, view, level_mm, swing_mm, foam_mm: null, detach_deg: null };
}

export const roundedTruth = (grades: Grades): Grades => ofEach((kind) => held04(Math.round(grades[kind])));

/** Read by A on the way up, to the next millimetre; where the sheet leaves the rim to the next five degrees. */
function onTheRule(step: TrueStep, from: typeof still): Partial<Row> {
  if (step.direction === 'down') return {};
  const level_mm = Math.round(step.level_mm + from.normal(0.5));
  const swing_mm = Math.round(step.swing_mm + from.normal(0.3));
  const leaves_deg = 335 - 12 * step.grades.reach + from.normal(4);
  return { level_mm, swing_mm, detach_deg: step.grades.reach > 2.5 ? 5 * Math.round(leaves_deg / 5) : null };
}

function ofEach<T>(of: (kind: GradeKind) => T): Record<GradeKind, T> {
  return Object.fromEntries(gradeKinds.map((kind) => [kind, of(kind)])) as Record<GradeKind, T>;
}
