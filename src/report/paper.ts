import type { Section, Span } from './page.ts';

/** A client copy as the paper says it: finished words and numbers, in the shapes that pages are laid from. Neither way out computes. */
export interface Paper {
  /** Stands on each page, with the issue. */
  readonly number: string;
  readonly issue: number;
  readonly title: string;
  readonly language: string;
  readonly lab: string;
  /** The day it was issued, ISO; null of a draft. The only date that the file itself carries. */
  readonly issued: string | null;
  readonly supersedes: string | null;
  readonly invented: boolean;
  /** Title page: who tested, for whom, what, when. */
  readonly front: readonly { readonly name: string; readonly value: readonly Span[] }[];
  /** Under them: what this paper is and what it is not. */
  readonly standing: readonly (readonly Span[])[];
  readonly chapters: readonly Chapter[];
  /** Roles that sign by hand; their lines stay blank. */
  readonly signedBy: readonly string[];
}

export interface Chapter {
  readonly id: string;
  readonly heading: string;
  readonly sections: readonly Section[];
}
