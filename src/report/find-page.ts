import { claimPath, claimsOf } from './claims-view.ts';
import { articleSpan } from './cite.ts';
import type { Page, Span, TableRow } from './page.ts';
import { capital, counts, link, listed, row, section, tableBlock, verdict } from './spans.ts';
import type { View } from './view.ts';

export const findPath = 'find/';

/** Address of the script file that holds what is found of one series, or (null) of the pages outside any. */
export const findPartFile = (series: string | null): string =>
  `${findPath}${series === null ? 'book.js' : `series/${series}.js`}`;

/** What the page says of a series: rows of its tables, and how much of it is held back. */
export interface FindShare {
  readonly id: string;
  readonly runs: number;
  readonly held: number;
  readonly series: TableRow;
  readonly articles: readonly TableRow[];
  readonly oils: readonly TableRow[];
  /** A series without claims has none to list. */
  readonly claims: readonly TableRow[];
}

export const findShare = (view: View): FindShare => ({
  id: view.series.id,
  runs: view.runs.length,
  held: view.held.runs,
  series: seriesRow(view),
  articles: articleRows(view),
  oils: [...view.oils.values()].map(({ id, name, grade }) =>
    row(link(`${view.base}oils/${id}/`, `${id} ${name}`), grade, link(view.base, view.series.title)),
  ),
  claims: claimsOf(view).map((held) =>
    row(
      link(claimPath(view, held), `${held.claim.id}: ${held.claim.sentence}`),
      verdict(held.judged.word),
      link(view.base, view.series.title),
    ),
  ),
});

/** Fields over all series of the book, and under them a plain index that needs no script. */
export function findPage(shares: readonly FindShare[]): Page {
  const parts = [null, ...shares.map(({ id }) => id)].map(findPartFile);
  const runs = shares.reduce((sum, share) => sum + share.runs, 0);
  const claims = shares.flatMap((share) => share.claims);
  return {
    kind: 'find',
    path: findPath,
    title: 'Find',
    description: 'What was run, what came of it, and what was never tested, over all series of the book.',
    whereabouts: ['The book · find'],
    lead: [
      `Ask ${counts(shares.length, 'series', 'series')} with ${counts(runs, 'run')}: by words, by what was run, or by what came of it. What was never run is answered so, with what comes nearest to it.`,
    ],
    banners: [],
    series: null,
    sections: [
      section(
        'ask',
        'Ask',
        [{ kind: 'find', parts: parts.map((path) => path.slice(findPath.length)) }],
        [
          {
            name: 'What counts as the same.',
            text: [
              'Litres and speeds as near as the series lets two runs differ; a temperature within 2.5 K. What is not filled in may be anything.',
            ],
          },
          heldNote(shares.reduce((sum, { held }) => sum + held, 0)),
        ],
      ),
      section('series', 'Series', [
        tableBlock(
          'find-series',
          ['wide series', 'number runs', 'number claims', 'since'],
          shares.map(({ series }) => series),
        ),
      ]),
      section('articles', 'Articles', [
        tableBlock(
          'find-articles',
          ['article', 'kind', 'series', 'wide runs'],
          shares.flatMap(({ articles }) => articles),
        ),
      ]),
      section('oils', 'Oils', [
        tableBlock(
          'find-oils',
          ['wide oil', 'grade', 'series'],
          shares.flatMap(({ oils }) => oils),
        ),
      ]),
      ...(claims.length === 0
        ? []
        : [section('claims', 'Claims', [tableBlock('find-claims', ['wide claim', 'word', 'series'], claims)])]),
    ],
  };
}

const heldNote = (held: number) =>
  held === 0
    ? null
    : {
        name: 'Held back.',
        text: [
          `${capital(counts(held, 'run is', 'runs are'))} not shown to the public; what these tested is not told here.`,
        ],
      };

const seriesRow = (view: View) =>
  row(
    [link(view.base, view.series.title), `: ${view.series.question}`],
    link(`${view.base}runs/`, String(view.runs.length)),
    claimsOf(view).length === 0 ? '' : link(`${view.base}claims/`, String(claimsOf(view).length)),
    view.series.started,
  );

const articleRows = (view: View): readonly TableRow[] =>
  [...view.articles.values()].map((article) => {
    const runs = view.runs.filter((run) => run.article === article.id);
    const links = runs.map((run): Span[] => [link(`${view.base}runs/${run.id}/`, run.id)]);
    return row(
      articleSpan(view, article.id),
      article.kind.replace('_', ' '),
      link(view.base, view.series.title),
      links.length === 0 ? 'not tested' : listed(links, ', '),
    );
  });
