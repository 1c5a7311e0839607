/** What stands around every page: the lab, the lines of words at the top, the foot. */
export interface SiteFrame {
  readonly lab: string;
  readonly bookName: string;
  readonly language: string;
  /** Where the book stands on its web server. Links are relative, so that nothing else needs it. */
  readonly pathPrefix: string;
  /** The whole book is an invented example; every page says so. */
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
