import type { NoteHead } from './note.ts';

export const reportStatuses = ['draft', 'issued'] as const;
export type ReportStatus = (typeof reportStatuses)[number];

/** `reports/<id>.md`: what one client is given on paper, under which names, and what of it is withheld. Never public. */
export interface Report extends NoteHead {
  readonly id: string;
  readonly title: string;
  /** The name that stands for the client; the client's own is nowhere in the book. */
  readonly client: string;
  readonly version: number;
  readonly status: ReportStatus;
  /** Null while it is a draft. */
  readonly issued: string | null;
  /** The issue that it takes the place of, as it was numbered. */
  readonly supersedes: string | null;
  readonly articles: readonly string[];
  readonly claims: readonly string[];
  readonly parts: readonly string[];
  /** Article → the name it goes by on this paper. */
  readonly aliases: ReadonlyMap<string, string>;
  readonly withheld: readonly string[];
  readonly withheldWhy: string | null;
  readonly notTested: readonly string[];
  /** Roles that sign by hand. */
  readonly signedBy: readonly string[];
}
