import { claimPath, claimsOf } from './claims-view.ts';
import { articleSpan } from './cite.ts';
import type { Page, Section, Span } from './page.ts';
import { capital, counts, link, listed, row, section, tableBlock, verdict } from './spans.ts';
import type { View } from './view.ts';

export const findPath = 'find/';

/** Address of the script file that holds what is found of one series, or (null) of the pages outside any. */
export const findPartFile = (series: string | null): string =>
  `${findPath}${series === null ? 'book.js' : `series/${series}.js`}`;

/** Fields over all series of the book, and under them a plain index that needs no script. */
export function findPage(views: readonly View[]): Page {
  const parts = [null, ...views.map(({ series }) => series.id)].map(findPartFile);
  const runs = views.reduce((sum, view) => sum + view.runs.length, 0);
  return {
    kind: 'find',
    path: findPath,
    title: 'Find',
    description: 'What was run, what came of it, and what was never tested, over all series of the book.',
    whereabouts: ['The book · find'],
    lead: [
      `Ask ${counts(views.length, 'series', 'series')} with ${counts(runs, 'run')}: by words, by what was run, or by what came of it. What was never run is answered so, with what comes nearest to it.`,
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
          heldNote(views),
        ],
      ),
      section('series', 'Series', [
        tableBlock('find-series', ['wide series', 'number runs', 'number claims', 'since'], views.map(seriesRow)),
      ]),
      articlesSection(views),
      section('oils', 'Oils', [
        tableBlock(
          'find-oils',
          ['wide oil', 'grade', 'series'],
          views.flatMap((view) =>
            [...view.oils.values()].map(({ id, name, grade }) =>
              row(link(`${view.base}oils/${id}/`, `${id} ${name}`), grade, link(view.base, view.series.title)),
            ),
          ),
        ),
      ]),
      ...claimsSection(views),
    ],
  };
}

const heldNote = (views: readonly View[]) => {
  const held = views.reduce((sum, view) => sum + view.held.runs, 0);
  return held === 0
    ? null
    : {
        name: 'Held back.',
        text: [
          `${capital(counts(held, 'run is', 'runs are'))} not shown to the public; what these tested is not told here.`,
        ],
      };
};

const seriesRow = (view: View) =>
  row(
    [link(view.base, view.series.title), `: ${view.series.question}`],
    link(`${view.base}runs/`, String(view.runs.length)),
    claimsOf(view).length === 0 ? '' : link(`${view.base}claims/`, String(claimsOf(view).length)),
    view.series.started,
  );

function articlesSection(views: readonly View[]): Section {
  const rows = views.flatMap((view) =>
    [...view.articles.values()].map((article) => {
      const runs = view.runs.filter((run) => run.article === article.id);
      const links = runs.map((run): Span[] => [link(`${view.base}runs/${run.id}/`, run.id)]);
      return row(
        articleSpan(view, article.id),
        article.kind.replace('_', ' '),
        link(view.base, view.series.title),
        links.length === 0 ? 'not tested' : listed(links, ', '),
      );
    }),
  );
  return section('articles', 'Articles', [
    tableBlock('find-articles', ['article', 'kind', 'series', 'wide runs'], rows),
  ]);
}

/** A series without claims has none to list. */
function claimsSection(views: readonly View[]): readonly Section[] {
  const rows = views.flatMap((view) =>
    claimsOf(view).map((held) =>
      row(
        link(claimPath(view, held), `${held.claim.id}: ${held.claim.sentence}`),
        verdict(held.judged.word),
        link(view.base, view.series.title),
      ),
    ),
  );
  return rows.length === 0
    ? []
    : [section('claims', 'Claims', [tableBlock('find-claims', ['wide claim', 'word', 'series'], rows)])];
}
