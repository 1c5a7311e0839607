/** What stands around every page: the lab, the lines of words at the top, the foot. */
export interface SiteFrame {
  readonly lab: string;
  readonly bookName: string;
  readonly language: string;
  /** Where the book stands on its web server. Links are relative, so that nothing else needs it. */
  readonly pathPrefix: string;
  /** The whole book is an invented example; every page says so. */
  /** With `/` at the end; null where the book has no address. */
  readonly address: string | null;
  readonly invented: boolean;
  readonly nav: readonly NavLink[];
  /** By series id; the first link is the series itself. */
  readonly seriesNav: Readonly<Record<string, readonly NavLink[]>>;
  /** Licence, contact, and the like; the maker's line is added by the site. */
  readonly footer: readonly string[];
}

export interface NavLink {
  readonly text: string;
  readonly to: string;
}

/** Address of the book with its path, ending in `/`; null where it has none. */
export const addressOf = (book: { readonly address: string | null; readonly pathPrefix: string }): string | null =>
  book.address === null
    ? null
    : `${book.address.replace(/\/+$/, '')}/${book.pathPrefix.replace(/^\/+|\/+$/g, '')}/`.replace(
        /([^:])\/\/+$/,
        '$1/',
      );
