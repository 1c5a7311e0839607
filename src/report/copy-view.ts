import type { Figure } from '../ledger/figure.ts';
import type { Effect, JudgedClaim, Standing, StandingRow } from '../trial/compared.ts';
import type { Report } from '../trial/report.ts';
import type { Run } from '../trial/run.ts';
import type { SeriesInput } from './input.ts';
import { besides, viewOf, type View } from './view.ts';

/** What a client copy leaves out for the sake of the runs that are withheld. */
export interface LeftOut {
  /** Runs of its articles that are withheld. */
  readonly runs: readonly Run[];
  readonly figures: number;
  /** Claims of the paper whose word rests on them. */
  readonly claims: readonly string[];
}

export const withheldWords = 'rests on a run that is withheld';

/**
 * The series as one client copy shows it: its articles and the window copies of these, their runs but for those that
 * are withheld, its claims, and no figure whose own runs are withheld. A scatter that is pooled over many runs stays:
 * none of them can be read from it.
 */
export function copyView(input: SeriesInput, report: Report): { readonly view: View; readonly left: LeftOut } {
  const { record, compared, ledger } = input;
  const articles = new Map(
    [...record.articles].filter(
      ([id, { role, standsInFor }]) =>
        report.articles.includes(id) ||
        (role === 'window_copy' && standsInFor.some((one) => report.articles.includes(one))),
    ),
  );
  const withheld = new Set(report.withheld);
  const ofScope = record.runs.filter(({ article }) => articles.has(article));
  const runs = ofScope.filter(({ id }) => !withheld.has(id));
  const files = new Set(
    record.runs
      .filter(({ id }) => withheld.has(id))
      .flatMap((run) => [run.file, ...(run.log === null ? [] : [besides(run.file, run.log.file)])]),
  );
  const shown = new Set(runs.map(({ id }) => id));
  const inScope = ({ subject: { run, article, against } }: Figure): boolean =>
    (run === undefined || shown.has(run) || withheld.has(run)) &&
    [article, against?.article].every((id) => id === undefined || articles.has(id));
  const scoped = ledger.figures.filter(inScope);
  const figures = scoped.filter((figure) => !figure.inputs.some(({ file }) => files.has(file)));
  const rests = (...ids: readonly (readonly string[])[]): boolean =>
    ids.some((list) => list.some((id) => withheld.has(id)));
  const restsOn = ({ runs: own, againstRuns, moved = [] }: Effect): boolean =>
    rests(own, againstRuns, ...moved.map((each) => each.runs));
  const asked = compared.claims.filter(({ claim }) => report.claims.includes(claim));
  const held = (judged: JudgedClaim): boolean => rests(...judged.clauses.map((clause) => clause.runs));
  const known = ({
    cell,
    against,
  }: {
    readonly cell: { readonly article: string };
    readonly against: { readonly article: string };
  }): boolean => articles.has(cell.article) && articles.has(against.article);
  const narrowed: SeriesInput = {
    ...input,
    derived: new Map([...input.derived].filter(([id]) => shown.has(id))),
    record: {
      ...record,
      ...{ articles, runs, reports: [], parts: record.parts.filter(({ id }) => report.parts.includes(id)) },
      claims: record.claims.filter(({ id }) => report.claims.includes(id)),
      logs: new Map([...record.logs].filter(([id]) => shown.has(id))),
      corrections: record.corrections.map((correction) => ({ ...correction, shownTo: 'public' })),
    },
    compared: {
      ...compared,
      claims: asked.filter((judged) => !held(judged)),
      cells: compared.cells.filter((cell) => articles.has(cell.cell.article) && !rests(cell.runs)),
      effects: compared.effects.filter((effect) => known(effect) && !restsOn(effect)),
      refusals: compared.refusals.filter(known),
      splits: compared.splits.filter((split) => known(split) && !rests(split.runs)),
      standings: compared.standings
        .filter(({ against }) => articles.has(against.article))
        .map((standing) => ({ ...standing, rows: rowsOf(standing, restsOn) })),
    },
    stress: {
      ...input.stress,
      claims: withheld.size > 0 ? [] : input.stress.claims,
      steps: withheld.size > 0 ? [] : input.stress.steps.filter(({ step: { cell } }) => articles.has(cell.article)),
    },
    ledger: { ...ledger, figures, byId: new Map(figures.map((figure) => [figure.id, figure])) },
    findings: input.findings.filter(({ about }) => about?.run === undefined || shown.has(about.run)),
    reaches: input.reaches.map((reach) => ({
      ...reach,
      runs: reach.runs.filter((run) => shown.has(run)),
      figures: reach.figures.filter(({ before, after }) =>
        [before, after].every(
          (figure) => figure === null || (inScope(figure) && !figure.inputs.some(({ file }) => files.has(file))),
        ),
      ),
      claims: reach.claims.filter(({ id }) => asked.some(({ claim }) => claim === id)),
    })),
  };
  return {
    // names of people are the house's own business
    view: { ...viewOf(narrowed), house: false },
    left: {
      runs: ofScope.filter(({ id }) => withheld.has(id)),
      figures: scoped.length - figures.length,
      claims: asked.filter(held).map(({ claim }) => claim),
    },
  };
}

/** A row whose difference rests on a withheld run keeps its name and loses its number, its group and its place. */
const rowsOf = ({ rows }: Standing, restsOn: (effect: Effect) => boolean): readonly StandingRow[] =>
  rows.map((row) =>
    row.effect !== null && restsOn(row.effect)
      ? { ...row, effect: null, letters: '', places: null, lowest: null, refused: [`its difference ${withheldWords}`] }
      : row,
  );
