import type { Finding } from '../finding/finding.ts';
import type { Figure } from '../ledger/figure.ts';
import { figureId, type Naming } from '../ledger/ids.ts';
import type { Article } from '../trial/article.ts';
import type { Effect } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { NoteHead } from '../trial/note.ts';
import type { Oil } from '../trial/oil.ts';
import type { Plan } from '../trial/plan.ts';
import type { Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import type { Series } from '../trial/book.ts';
import { byStory } from './figure-order.ts';
import type { SeriesInput } from './input.ts';

/** One series as its readers may see it: everything below asks this, so that nothing held back slips onto a page. */
export interface View {
  readonly input: SeriesInput;
  readonly series: Series;
  readonly rig: Rig;
  readonly rigShown: boolean;
  readonly plan: Plan | null;
  readonly naming: Naming;
  readonly house: boolean;
  readonly withUs: boolean;
  /** `series/<id>/` */
  readonly base: string;
  readonly runs: readonly Run[];
  readonly articles: ReadonlyMap<string, Article>;
  readonly oils: ReadonlyMap<string, Oil>;
  readonly figures: readonly Figure[];
  readonly figureById: ReadonlyMap<string, Figure>;
  readonly figuresOf: ReadonlyMap<string, readonly Figure[]>;
  /** The comparison behind each difference, by the id of its figure. */
  readonly effectOf: ReadonlyMap<string, Effect>;
  readonly findings: readonly Finding[];
  /** Files that these readers are not to hear of. */
  readonly hidden: ReadonlySet<string>;
  readonly held: { readonly runs: number; readonly notes: number; readonly claims: number };
  /** Article id → index into the marks of the house. */
  readonly marks: ReadonlyMap<string, number>;
  /** "wheel rpm" on an axle, "output rpm" on a box. */
  readonly speed: string;
}

export function viewOf(input: SeriesInput): View {
  const { series, rig, plan, runs, articles, oils } = input.record;
  const house = input.audience === 'house';
  const shown = (note: NoteHead): boolean => house || note.shownTo === 'public';
  const visibleRuns = runs.filter(shown);
  const hiddenFiles = new Set(
    [...runs, ...articles.values(), ...oils.values(), rig, ...(plan ? [plan] : [])]
      .filter((note) => !shown(note))
      .flatMap((note) => [note.file, ...('log' in note && note.log ? [besides(note.file, note.log.file)] : [])]),
  );
  const hiddenSubjects = new Set(
    [...runs, ...articles.values(), ...oils.values()].filter((note) => !shown(note)).map(({ id }) => id),
  );
  const figures = input.ledger.figures
    .filter(({ subject: { run, article, oil, against } }) =>
      [run, article, oil, against?.article, against?.oil].every((id) => id === undefined || !hiddenSubjects.has(id)),
    )
    .map((figure) => ({ ...figure, inputs: figure.inputs.filter(({ file }) => !hiddenFiles.has(file)) }))
    .sort(byStory);
  const naming: Naming = {
    reference: series.baseline,
    speed: rig.kind === 'gearbox_bench' ? 'output-speed' : 'wheel-speed',
  };
  return {
    input,
    series,
    rig,
    rigShown: shown(rig),
    plan: plan !== null && shown(plan) ? plan : null,
    naming,
    house,
    withUs: input.book.unitsShown === 'si-and-us',
    base: `series/${series.id}/`,
    runs: visibleRuns,
    articles: new Map([...articles].filter(([, article]) => shown(article))),
    oils: new Map([...oils].filter(([, oil]) => shown(oil))),
    figures,
    figureById: new Map(figures.map((figure) => [figure.id, figure])),
    figuresOf: groupBy(figures, ({ id }) => subjectOfId(id)),
    effectOf: new Map(
      input.compared.effects.map((effect) => [
        figureId(
          { subject: { cell: effect.cell, against: effect.against }, quantity: effect.quantity, at: effect.at },
          naming,
        ),
        effect,
      ]),
    ),
    findings: input.findings.filter(
      ({ place, about }) =>
        !hiddenFiles.has(place.file) && (about?.run === undefined || !hiddenSubjects.has(about.run)),
    ),
    hidden: hiddenFiles,
    held: {
      claims: input.held.claims,
      runs: input.held.runs + runs.length - visibleRuns.length,
      notes: input.held.notes + [...articles.values(), ...oils.values()].filter((note) => !shown(note)).length,
    },
    marks: marksOf(series, [...articles.values()]),
    speed: rig.kind === 'gearbox_bench' ? 'output rpm' : 'wheel rpm',
  };
}

export const subjectOfId = (id: string): string => id.slice(0, id.indexOf('/'));

export const derivedOf = (view: View, run: string): DerivedRun | undefined => view.input.derived.get(run);

export function groupBy<T>(items: readonly T[], key: (item: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group) group.push(item);
    else groups.set(key(item), [item]);
  }
  return groups;
}

/** A logger file is named relative to its note. */
export const besides = (note: string, file: string): string => note.slice(0, note.lastIndexOf('/') + 1) + file;

/** The baseline is 0; the rest in order of id; a window copy wears the mark of what it stands in for. */
function marksOf(series: Series, articles: readonly Article[]): ReadonlyMap<string, number> {
  const own = articles
    .filter(({ id, role }) => id !== series.baseline.article && role !== 'window_copy')
    .map(({ id }) => id)
    .sort();
  const marks = new Map([[series.baseline.article, 0], ...own.map((id, i) => [id, i + 1] as const)]);
  for (const copy of articles.filter(({ role }) => role === 'window_copy'))
    marks.set(copy.id, marks.get(copy.standsInFor[0] ?? '') ?? marks.size);
  return marks;
}
