import type { Figure } from '../ledger/figure.ts';
import type { Correction } from '../trial/amendment.ts';
import type { Reach } from '../trial/reach.ts';
import type { Report } from '../trial/report.ts';
import { wholeOf } from './digits.ts';
import { dateWords } from './dates.ts';
import type { Banner, MarginNote, Span } from './page.ts';
import { link, verdict } from './spans.ts';
import { subjectOfId, type View } from './view.ts';

/** Stamps: what stands on a page that a correction reached. They are put there by the reach, never by hand. */

export const amendsPath = (view: View): string => `${view.base}amends/`;
export const correctionPath = (view: View, id: string): string => `${amendsPath(view)}#${id}`;

/** Corrections that these readers may see, in the order they were published. */
export const shownCorrections = (view: View): readonly Correction[] =>
  view.input.record.corrections.filter(({ shownTo }) => view.house || shownTo === 'public');

/** What each reached, with the figures of what is held back left out. */
export const shownReaches = (view: View): readonly Reach<Figure>[] => {
  const seen = new Set(shownCorrections(view).map(({ id }) => id));
  const hidden = new Set(
    [...view.input.record.runs, ...view.input.record.articles.values(), ...view.input.record.oils.values()]
      .filter(({ shownTo }) => !view.house && shownTo !== 'public')
      .map(({ id }) => id),
  );
  const isShown = (id: string): boolean =>
    !subjectOfId(id)
      .split('~')
      .some((subject) => hidden.has(subject));
  return view.input.reaches
    .filter(({ correction }) => seen.has(correction.id))
    .map((reach) => ({
      ...reach,
      figures: reach.figures.filter(({ id }) => isShown(id)),
      runs: reach.runs.filter((run) => !hidden.has(run)),
    }));
};

/** Client copies that were issued or drafted on what moved: a run of theirs, a claim, or a figure of their articles. For the house. */
export function reportsReached(view: View, { runs, claims, figures }: Reach<Figure>): readonly Report[] {
  const { record } = view.input;
  const article = new Map(record.runs.map((run) => [run.id, run.article]));
  const subjects = figures.map(({ id }) => subjectOfId(id).split('~')[0]!);
  return record.reports.filter((report) => {
    const isIn = (run: string): boolean =>
      report.articles.includes(article.get(run) ?? '') && !report.withheld.includes(run);
    return (
      runs.some(isIn) ||
      claims.some(({ id }) => report.claims.includes(id)) ||
      subjects.some((subject) => report.articles.includes(subject.split('@')[0]!))
    );
  });
}

export const correctionLink = (view: View, id: string): Span => link(correctionPath(view, id), id);

/** On the sheet of a run: the readings that are read otherwise, or the figures that moved with them. */
export function runStamps(view: View, run: string): Banner[] {
  return shownReaches(view).flatMap(({ correction: c, runs }): Banner[] =>
    c.changes.some((change) => change.run === run)
      ? [
          {
            code: 'amended',
            text: [`Corrected on ${dateWords(c.publishedOn)}: ${c.what} `, correctionLink(view, c.id), '.'],
          },
        ]
      : runs.includes(run)
        ? [
            {
              code: 'amended',
              text: ['Figures here moved with ', correctionLink(view, c.id), ` of ${dateWords(c.publishedOn)}.`],
            },
          ]
        : [],
  );
}

/** On a page that stands for many figures: how many of them moved. */
export function pageStamp(view: View, touches: (figure: Figure) => boolean): Banner[] {
  return shownReaches(view).flatMap(({ correction: c, figures }): Banner[] => {
    const own = figures.filter(({ before, after }) => touches((after ?? before)!));
    return own.length === 0
      ? []
      : [{ code: 'amended', text: ['Some figures here were corrected on ', dateWords(c.publishedOn), ': ', correctionLink(view, c.id), '.'] }]; // prettier-ignore
  });
}

/** Under a figure: what it was until the correction. */
export function wasSpans(view: View, id: string): Span[] {
  return shownReaches(view).flatMap(({ correction: c, figures }): Span[] => {
    const moved = figures.find((figure) => figure.id === id);
    if (moved === undefined) return [];
    return [
      moved.before === null
        ? `There was none until ${dateWords(c.publishedOn)}: `
        : `It was ${wholeOf(moved.before, view.withUs)} until ${dateWords(c.publishedOn)}: `,
      correctionLink(view, c.id),
      '. ',
    ];
  });
}

/** Beside a claim whose word changed. */
export function claimStamp(view: View, claim: string): MarginNote | null {
  const changed = shownReaches(view).flatMap(({ correction, claims }) =>
    claims.filter(({ id }) => id === claim).map((word) => ({ correction, ...word })),
  );
  if (changed.length === 0) return null;
  return {
    name: 'Corrected.',
    text: changed.flatMap(({ correction: c, before }): Span[] => [
      'It was ',
      verdict(before),
      ` until ${dateWords(c.publishedOn)}: `,
      correctionLink(view, c.id),
      '. ',
    ]),
  };
}
