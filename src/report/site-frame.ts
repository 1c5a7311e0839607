import { claimsAmong } from './claims-view.ts';
import { addressOf, type NavLink, type SiteFrame } from './frame.ts';
import { flowMenu } from './flow-menu.ts';
import { partsAmong } from './parts-view.ts';
import type { SeriesInput } from './input.ts';
import type { Book } from '../trial/book.ts';

/** More series than this are led to from one word, so that the top of a page does not grow with the book. */
const mostNamed = 6;

/** What stands around every page: the lab, one line of words for the book and one for each series, the foot. */
export function siteFrame({ book, series }: { book: Book; series: readonly SeriesInput[] }): SiteFrame {
  const shares = series.map((one) => ({
    id: one.record.series.id,
    title: one.record.series.title,
    links: seriesLinks(one),
  }));
  return frameOf({ book, shares, folders: series.length });
}

/** Of a book with so many folders of series that each is not named, so that its frame is known before they are read. */
export const isMany = (folders: number): boolean => folders > mostNamed;

export const frameOf = (of: {
  readonly book: Book;
  readonly shares: readonly { readonly id: string; readonly title: string; readonly links: readonly NavLink[] }[];
  /** How many series the book has, readable or not. */
  readonly folders: number;
}): SiteFrame => ({
  lab: of.book.lab,
  bookName: of.book.name,
  language: of.book.language,
  pathPrefix: of.book.pathPrefix,
  invented: of.book.invented,
  address: addressOf(of.book),
  nav: [
    ...(isMany(of.folders)
      ? [{ text: 'Series', to: 'find/#series' }]
      : of.shares.map(({ id, title }) => ({ text: title, to: `series/${id}/` }))),
    { text: 'Find', to: 'find/' },
    { text: 'Method', to: 'method/' },
    { text: 'Cautions', to: 'cautions/' },
    { text: 'Words', to: 'words/' },
    { text: 'Guide', to: 'guide/' },
  ],
  seriesNav: Object.fromEntries(of.shares.map(({ id, links }) => [id, links])),
  footer: [`Licence: ${of.book.licence}`, `Corrections: ${of.book.contact}`],
});

/** The first link is the series itself. A rig or a plan that is held back has no page to lead to. */
export function seriesLinks(input: SeriesInput): readonly NavLink[] {
  const { record, audience } = input;
  const { series, rig, plan } = record;
  const flow = flowMenu(input);
  const base = `series/${series.id}/`;
  const shown = (note: { readonly shownTo: string } | null): boolean =>
    note !== null && (audience === 'house' || note.shownTo === 'public');
  return [
    { text: series.title, to: base },
    ...(partsAmong(input).length === 0 ? [] : [{ text: 'Parts', to: `${base}#parts` }]),
    { text: 'Standing', to: `${base}standing/` },
    ...(claimsAmong(input).length === 0 ? [] : [{ text: 'Claims', to: `${base}claims/` }]),
    ...(input.stress.claims.length + input.stress.steps.length === 0 ? [] : [{ text: 'Stress', to: `${base}stress/` }]),
    ...(record.questions.length === 0 ? [] : [{ text: 'Asks', to: `${base}asks/` }]),
    ...(amendsShown(input) ? [{ text: 'Amends', to: `${base}amends/` }] : []),
    ...(input.ownAxle === null || !shown(rig) ? [] : [{ text: 'Own axle', to: `${base}own-axle/` }]),
    { text: 'Runs', to: `${base}runs/` },
    ...(flow.grades ? [{ text: 'Grades', to: `${base}grades/` }] : []),
    ...(flow.sideBySide ? [{ text: 'Side by side', to: `${base}side-by-side/` }] : []),
    ...(flow.grading ? [{ text: 'Grading', to: `${base}grading/` }] : []),
    ...(shown(rig) ? [{ text: 'Rig', to: `${base}rig/` }] : []),
    ...(shown(plan) ? [{ text: 'Plan', to: `${base}plan/` }] : []),
    { text: 'Ledger', to: `${base}ledger/` },
    { text: 'Checks', to: `${base}checks/` },
  ];
}

const amendsShown = ({ record, audience }: SeriesInput): boolean =>
  [...record.corrections, ...record.objections].some(({ shownTo }) => audience === 'house' || shownTo === 'public');
