import { findShare, type FindShare } from './find-page.ts';
import type { NavLink } from './frame.ts';
import { homeShare, type HomeShare } from './home.ts';
import type { SeriesInput } from './input.ts';
import { seriesLinks } from './site-frame.ts';
import { viewOf, type View } from './view.ts';

/**
 * What a series hands to the pages outside it. Plain data, a few pages long: with it the book is laid out when the series
 * itself is no longer held.
 */
export interface SeriesShare {
  readonly id: string;
  readonly title: string;
  readonly links: readonly NavLink[];
  /** Null: the series is not for these readers. */
  readonly shown: { readonly home: HomeShare; readonly find: FindShare } | null;
}

export const shareOf = (input: SeriesInput, view: View = viewOf(input)): SeriesShare => ({
  id: view.series.id,
  title: view.series.title,
  links: seriesLinks(input),
  shown: isShown(input) ? { home: homeShare(view), find: findShare(view) } : null,
});

/** Whether these readers see anything of the series. */
export const isShown = ({ audience, record }: SeriesInput): boolean =>
  audience === 'house' || record.series.shownTo === 'public';
