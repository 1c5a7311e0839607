import { methods } from '../derive/methods.ts';
import { allRelations, chapters } from '../physics/all.ts';
import { amendsPage, hasAmends } from './amends.ts';
import { asksPage } from './asks.ts';
import { articlePage } from './article.ts';
import { cardPages } from './cards.ts';
import { cautionsPage } from './cautions-page.ts';
import { claimsPage } from './claims.ts';
import { claimsOf } from './claims-view.ts';
import { checksPage } from './finding-words.ts';
import { findPage } from './find-page.ts';
import { flowMenu } from './flow-menu.ts';
import { gradesPage } from './grades.ts';
import { gradingPage } from './grading.ts';
import { guideChapters } from './guide-pages.ts';
import { guidePage } from './guide.ts';
import { homePage } from './home.ts';
import type { BookInput, SeriesInput } from './input.ts';
import { ledgerPage } from './ledger-page.ts';
import { methodChapter } from './method-chapter.ts';
import { methodPage } from './method.ts';
import { sourcesPage } from './method-sources.ts';
import { notLookedAtPage } from './not-looked-at.ts';
import { notModelledPage } from './not-modelled.ts';
import { oilPage } from './oil.ts';
import { ownAxlePage } from './own-axle.ts';
import type { Page } from './page.ts';
import { pairsOf } from './pairs.ts';
import { partPage } from './part.ts';
import { partsOf } from './parts-view.ts';
import { planPage } from './plan.ts';
import { rigPage } from './rig.ts';
import { runPages } from './runs.ts';
import { seriesPage } from './series.ts';
import { isShown, shareOf, type SeriesShare } from './share.ts';
import { pairPage } from './side-by-side.ts';
import { sideBySidePage } from './side-by-side-list.ts';
import { standingPage } from './standing.ts';
import { hasStress, stressPage } from './stress.ts';
import { usualObjectionsPage } from './usual-objections.ts';
import { viewOf, type View } from './view.ts';
import { wordsPage } from './words.ts';
import { workingPages } from './working.ts';
import type { Book } from '../trial/book.ts';

/** Ledger → pages of one series. It makes no number: it looks figures up and says them. */
export function seriesPages(input: SeriesInput, view: View = viewOf(input)): readonly Page[] {
  if (!isShown(input)) return [];
  return [
    seriesPage(view),
    standingPage(view),
    ...(claimsOf(view).length === 0 ? [] : [claimsPage(view)]),
    ...(hasStress(view) ? [stressPage(view)] : []),
    ...(hasAmends(view) ? [amendsPage(view)] : []),
    ...partsOf(view).map((part) => partPage(view, part)),
    ...(view.input.record.questions.length === 0 ? [] : [asksPage(view)]),
    notLookedAtPage(view),
    usualObjectionsPage(view),
    ...[ownAxlePage(view)].filter((page) => page !== null),
    ...[...view.articles.values()].map((article) => articlePage(view, article)),
    ...[...view.oils.values()].map((oil) => oilPage(view, oil)),
    ...(view.rigShown ? [rigPage(view)] : []),
    ...(view.plan ? [planPage(view, view.plan), ...cardPages(view, { all: false })] : []),
    ...runPages(view),
    ...flowPages(view),
    ledgerPage(view),
    ...workingPages(view, relationTitles),
    checksPage(view),
  ];
}

/** What the flow trials of a series call for, beside their own sheets. */
function flowPages(view: View): readonly Page[] {
  const menu = flowMenu(view.input);
  return [
    ...(menu.grades ? [gradesPage(view)] : []),
    ...(menu.sideBySide ? [sideBySidePage(view), ...pairsOf(view).pairs.map((pair) => pairPage(view, pair))] : []),
    ...(menu.grading ? [gradingPage(view)] : []),
  ];
}

/** Pages that stand outside any series, home first. */
export const bookPages = ({ book, series }: BookInput): readonly Page[] =>
  pagesOutside(
    book,
    series.map((one) => shareOf(one)),
  );

/** The same from what each series hands on. */
export function pagesOutside(book: Book, shares: readonly SeriesShare[]): readonly Page[] {
  const shown = shares.flatMap((share) => share.shown ?? []);
  return [
    homePage(
      book,
      shown.map(({ home }) => home),
    ),
    findPage(shown.map(({ find }) => find)),
    methodPage(chapters),
    ...chapters.map(methodChapter),
    sourcesPage(),
    notModelledPage(),
    cautionsPage(),
    wordsPage(),
    guidePage(),
    ...guideChapters(),
  ];
}

const relationTitles: ReadonlyMap<string, string> = new Map(
  [...allRelations, ...methods].map(({ id, title }) => [id, title]),
);
