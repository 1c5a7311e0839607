import type { Article } from './article.ts';
import type { Book, Series } from './book.ts';
import type { Correction, Objection } from './amendment.ts';
import type { Claim } from './claim.ts';
import type { Finding } from '../finding/finding.ts';
import type { Log } from './log.ts';
import type { NoteHead } from './note.ts';
import type { Oil } from './oil.ts';
import type { Part, Question } from './part.ts';
import type { Plan } from './plan.ts';
import type { Report } from './report.ts';
import type { Rig } from './rig.ts';
import type { Run } from './run.ts';

/** One series as read: everything that could be read, in SI; what could not is in the findings. */
export interface SeriesRecord {
  readonly series: Series;
  readonly rig: Rig;
  readonly plan: Plan | null;
  readonly articles: ReadonlyMap<string, Article>;
  readonly oils: ReadonlyMap<string, Oil>;
  readonly runs: readonly Run[];
  /** In the order of `claims.md`; empty without one. */
  readonly claims: readonly Claim[];
  /** Head of `claims.md`, with the words under it; null without one that could be read. */
  readonly claimsNote: NoteHead | null;
  /** By the day they were published; all of them hold. */
  readonly corrections: readonly Correction[];
  readonly objections: readonly Objection[];
  /** By number. */
  readonly parts: readonly Part[];
  /** Client copies, by id; for the house. */
  readonly reports: readonly Report[];
  /** In the order of `claims.md`. */
  readonly questions: readonly Question[];
  /** By run id; a run whose log could not be read is absent. */
  readonly logs: ReadonlyMap<string, Log>;
  readonly findings: readonly Finding[];
}

export interface BookRecord {
  readonly book: Book;
  readonly series: readonly SeriesRecord[];
  readonly findings: readonly Finding[];
}

/** A picture or a clip: only its beginning is read here. `sha256` is null for what is too large to be hashed at each build. */
export interface MediaFile {
  readonly path: string;
  readonly size: number;
  /** The first 256 KiB, or the whole when it is shorter. */
  readonly head: Uint8Array;
  readonly sha256: string | null;
}

/** A file as the disk gives it. `path` is relative to the book, with `/`. */
export interface SourceFile {
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly sha256: string;
}
