import { conditionId, conditionsOf, figureId, subjectId, type FigureSubject } from '../ledger/ids.ts';
import type { At, Cell } from '../trial/derived.ts';
import type { Effect } from '../trial/compared.ts';
import { gradeKinds } from '../trial/flow.ts';
import type { QuantityName } from '../trial/figures.ts';
import type {
  FindArticle,
  FindCell,
  FindCondition,
  FindRun,
  FindSeries,
  FindSubject,
  FindSump,
} from '../trial/find.ts';
import type { TrialKind } from '../trial/plan.ts';
import type { Run } from '../trial/run.ts';
import { articleWords, cellWords, conditionWords, figureWords, quantityWords } from './cite.ts';
import { claimsOf } from './claims-view.ts';
import { wholeOf } from './digits.ts';
import { notCounted } from './run-parts.ts';
import { derivedOf, type View } from './view.ts';

/** Of a run, only what runs are compared by; the rest stands on its sheet. */
const foundIn: Readonly<Partial<Record<QuantityName, TrialKind>>> = {
  'spin-power': 'spin',
  ...({
    'final-temperature': 'heat-up',
    'final-rise': 'heat-up',
    'heat-made': 'heat-up',
    'limit-crossing': 'heat-up',
    'bearing-rise': 'heat-up',
    shed: 'heat-up',
    store: 'heat-up',
    'makes-less-share': 'heat-up',
    'time-constant': 'cool-down',
    'shed-rest': 'cool-down',
    'running-level': 'flow',
    'held-up': 'flow',
  } as const),
  ...Object.fromEntries(gradeKinds.map((kind) => [kind, 'flow' as const])),
};

/** Runs, figures and claims of one series in columns: what its readers may see, as its pages say it. */
export function findSeries(view: View): FindSeries {
  const lists = listsOf(view);
  const columns = { subject: [], quantity: [], condition: [], text: [], verdict: [] } as Record<
    'subject' | 'quantity' | 'condition' | 'verdict',
    number[]
  > & { text: string[] };
  const put = (subject: FigureSubject, row: Row, verdict: string | null): void => {
    const figure = view.figureById.get(figureId({ subject, ...row }, view.naming));
    const trial = foundIn[row.quantity];
    if (figure === undefined || trial === undefined) return;
    columns.subject.push(lists.subject(subject));
    columns.quantity.push(lists.quantity(row.quantity, trial));
    columns.condition.push(lists.condition(row, trial));
    columns.text.push(wholeOf(figure, view.withUs));
    columns.verdict.push(verdict === null ? -1 : lists.verdict(verdict));
  };
  const runs = view.runs.map((run): FindRun => lists.run(run));
  for (const run of view.runs)
    if (runs[lists.place(run.id)]![5] === null)
      for (const { quantity, at } of derivedOf(view, run.id)?.results ?? [])
        put({ run: run.id }, { quantity, at }, null);
  for (const { cell, quantity, at } of view.input.compared.cells) put({ cell }, { quantity, at }, null);
  for (const effect of view.effectOf.values())
    put({ cell: effect.cell, against: effect.against }, effect, verdictOf(effect));
  const claims = claimsOf(view).map(
    ({ claim, judged }) =>
      [
        claim.id,
        claim.sentence,
        judged.word,
        claim.clauses.map(({ subject, against, quantity, at }) => {
          const trial = foundIn[quantity] ?? 'spin';
          return [
            lists.cell(subject),
            lists.cell(against),
            lists.quantity(quantity, trial),
            lists.condition({ quantity, at }, trial),
          ] as const;
        }),
      ] as const,
  );
  const { series } = view;
  return {
    id: series.id,
    title: series.title,
    shaft: view.naming.speed === 'output-speed' ? 'output' : 'wheel',
    heldRuns: view.held.runs,
    tolerance: { fill_L: short(series.tolerance.fill_m3 * 1e3), speed_ratio: series.tolerance.outputSpeed_ratio },
    ...lists.made(),
    runs,
    figures: columns,
    claims,
  };
}

interface Row {
  readonly quantity: QuantityName;
  readonly at: At;
}

/** As the standing says it, with what a margin adds. */
export function verdictOf({ indicative, separated, margin }: Effect): string {
  if (indicative.length > 0) return 'indicative';
  const word = separated ? 'separated' : 'not separated';
  if (margin?.equal === true) return `${word}, equal within the margin`;
  return margin?.noWorse === true && !separated ? `${word}, no worse than the margin` : word;
}

/** Every thing that rows name, once, with its place. */
function listsOf(view: View) {
  const articles = places(articlesOf(view));
  const oils = places([...view.oils.values()].map(({ id, name, grade }) => [id, name, grade] as const));
  const runPlace = new Map(view.runs.map(({ id }, i) => [id, i]));
  const cells = growing<FindCell>();
  const subjects = growing<FindSubject>();
  const quantities = growing<readonly [QuantityName, string, TrialKind]>();
  const conditions = growing<FindCondition>();
  const verdicts = growing<string>();
  const cell = (of: Cell): number =>
    cells.put(subjectCell(of), () => [
      articles.of(of.article),
      oils.of(of.oil),
      isTold(of) ? short(of.fill_m3 * 1e3) : null,
      isTold(of) ? cellWords(view, of) : articleWords(view, of.article),
    ]);
  return {
    cell,
    place: (run: string): number => runPlace.get(run)!,
    run: (run: Run): FindRun => {
      const own = derivedOf(view, run.id)?.cell;
      const asTold: Cell = own ?? {
        ...{ article: run.article, oil: run.oil, tilt_ratio: run.tilt_ratio },
        fill_m3: run.fill.volume_m3 ?? NaN,
      };
      return [run.id, run.trial, cell(asTold), run.fill.basis, run.started.slice(0, 10), notCounted(view, run)];
    },
    subject: (subject: FigureSubject): number => {
      const suffix = conditionId({ subject, at: {} }, view.naming);
      const against = 'cell' in subject && subject.against !== undefined ? cell(subject.against) : -1;
      return subjects.put(`${subjectId(subject)} ${suffix} ${String('cell' in subject && cell(subject.cell))}`, () => [
        subjectId(subject),
        suffix,
        'run' in subject ? (runPlace.get(subject.run) ?? -1) : -1,
        'cell' in subject ? cell(subject.cell) : -1,
        against,
      ]);
    },
    quantity: (quantity: QuantityName, trial: TrialKind): number =>
      quantities.put(quantity, () => [quantity, quantityWords(quantity), trial]),
    condition: ({ quantity, at }: Row, trial: TrialKind): number => {
      const id = conditionId({ subject: { series: '' }, at }, view.naming);
      const said = conditionsOf(at, null, view.naming);
      const words = quantity === 'limit-crossing' ? figureWords({ quantity, at: said }) : conditionWords(said);
      const [speed_rpm, sump] = [speedOf(view, at, trial), sumpOf(at, trial)];
      return conditions.put(`${id} ${words} ${String(speed_rpm)} ${String(sump)}`, () => [id, words, speed_rpm, sump]);
    },
    verdict: (word: string): number => verdicts.put(word, () => word),
    made: () => ({
      articles: articles.all,
      oils: oils.all,
      cells: cells.all,
      subjects: subjects.all,
      quantities: quantities.all,
      conditions: conditions.all,
      verdicts: verdicts.all,
    }),
  };
}

/** A heat-up runs at the speed of the plan and at whatever temperature it comes to. */
const speedOf = (view: View, { outputSpeed_rad_s }: At, trial: TrialKind): number | null => {
  const speed_rad_s =
    outputSpeed_rad_s ?? (trial === 'heat-up' ? view.input.record.plan?.load?.outputSpeed_rad_s : undefined);
  return speed_rad_s === undefined ? null : Math.round((speed_rad_s * 300) / Math.PI) / 10;
};

const sumpOf = ({ sump_K, limit_K }: At, trial: TrialKind): FindSump => {
  const at_K = sump_K ?? limit_K ?? (trial === 'heat-up' ? 'own' : undefined);
  return at_K === undefined ? null : at_K === 'own' ? 'own' : Math.round((at_K - 273.15) * 10) / 10;
};

const isTold = ({ fill_m3 }: Cell): boolean => Number.isFinite(fill_m3);
const short = (value: number): number => Number(value.toPrecision(6));
const subjectCell = ({ article, oil, fill_m3, tilt_ratio }: Cell): string =>
  `${article} ${oil} ${String(short(fill_m3))} ${String(short(tilt_ratio))}`;

function growing<T>(): { readonly all: readonly T[]; readonly put: (key: string, make: () => T) => number } {
  const [all, known] = [[] as T[], new Map<string, number>()];
  return {
    all,
    put: (key, make) => {
      const place = known.get(key) ?? all.push(make()) - 1;
      known.set(key, place);
      return place;
    },
  };
}

function articlesOf(view: View): readonly FindArticle[] {
  const ids = [...view.articles.keys()];
  return [...view.articles.values()].map(({ id, name, kind, standsInFor }) => [
    ...([id, name, kind] as const),
    standsInFor.map((other) => ids.indexOf(other)).filter((place) => place >= 0),
  ]);
}

/** What is held back has no place: −1. */
function places<T extends readonly [string, ...unknown[]]>(all: readonly T[]) {
  const known = new Map(all.map(([id], i) => [id, i]));
  return { all, of: (id: string): number => known.get(id) ?? -1 };
}
