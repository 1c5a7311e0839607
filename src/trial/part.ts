import type { Place } from '../finding/finding.ts';
import type { NoteHead } from './note.ts';

export const partStatuses = ['draft', 'out', 'withdrawn'] as const;
export type PartStatus = (typeof partStatuses)[number];

/** What a part may refer to by a link or a picture in its words. */
export const refSchemes = ['figure', 'claim', 'see', 'chart', 'still'] as const;
export type RefScheme = (typeof refSchemes)[number];

/** `[final rise](figure:H-09/final-rise)`, `![Heat made and shed](chart:heat)`. */
export interface PartRef {
  readonly scheme: RefScheme;
  /** What stands behind the colon. */
  readonly target: string;
  readonly href: string;
  /** Words of the link, or of the picture for the ear. */
  readonly words: string;
  readonly place: Place;
}

/** `parts/<n>-<slug>.md`: one instalment of a series. It is never rewritten once it is out; what moved stands beside it. */
export interface Part extends NoteHead {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  /** In a sentence, for the front page and the feed. */
  readonly summary: string;
  /** Null while it is a draft. */
  readonly published: string | null;
  readonly status: PartStatus;
  /** Why it was taken back; of a withdrawn part. */
  readonly why: string | null;
  /** Questions that it puts, and those that it answers with what answers them. */
  readonly asks: readonly string[];
  readonly answers: readonly { readonly question: string; readonly by: readonly string[] }[];
  readonly refs: readonly PartRef[];
  /** What it showed on the day it came out; null where nothing was pinned. */
  readonly pins: Pins | null;
}

/** A figure as a part showed it on its day. */
export interface Pin {
  readonly figure: string;
  readonly shown: string;
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: string;
}

/** `parts/<n>-<slug>.pins`, beside the part. */
export interface Pins {
  readonly file: string;
  readonly published: string;
  readonly method: string;
  /** Short sum of the words of the part. */
  readonly words: string;
  readonly figures: ReadonlyMap<string, Pin>;
  /** Claim → word. */
  readonly claims: ReadonlyMap<string, string>;
  /** Files that its figures were worked out from → beginning of their SHA-256. */
  readonly inputs: ReadonlyMap<string, string>;
}

export const questionKinds = ['flow', 'loss', 'heat', 'cost', 'wear', 'other'] as const;
export type QuestionKind = (typeof questionKinds)[number];

/** A question that somebody put: it is open until a part answers it, or the house says what became of it. */
export interface Question {
  readonly id: string;
  readonly text: string;
  /** A role, never a name. */
  readonly raisedBy: string;
  readonly raisedOn: string;
  readonly kind: QuestionKind;
  readonly dropped: { readonly on: string; readonly why: string } | null;
  readonly handedOn: { readonly on: string; readonly to: string; readonly why: string } | null;
  readonly place: Place;
}
