import type { Place } from '../finding/finding.ts';
import type { NoteHead } from './note.ts';
import type { ReadingKind } from './rig.ts';

/** What a correction corrects. */
export const correctionKinds = ['input', 'calibration', 'method', 'identity', 'text'] as const;
export type CorrectionKind = (typeof correctionKinds)[number];

/** A channel of the log of one run, or of every run that an instrument was read in between two days. Raw files stay as they are. */
export interface ChannelChange {
  readonly kind: 'channel';
  readonly run: string | null;
  readonly instrument: string | null;
  /** Null: every channel of the instrument. */
  readonly channel: ReadingKind | null;
  /** Days, both included; null without an end. */
  readonly from: string | null;
  readonly to: string | null;
  /** reading · times + add, SI. */
  readonly times: number;
  readonly add: number;
  /** "−3.4 K added", as it was typed. */
  readonly typed: string;
  readonly place: Place;
}

/** A field of the note of a run that is read otherwise than it was typed. */
export interface FieldChange {
  readonly kind: 'field';
  readonly run: string;
  readonly field: string;
  readonly write: string;
  readonly place: Place;
}

export type Change = ChannelChange | FieldChange;

/** `amendments/<id>.md`: what was wrong, since when, who found it, and what is read otherwise from now on. */
export interface Correction extends NoteHead {
  readonly id: string;
  readonly kind: CorrectionKind;
  readonly foundOn: string;
  /** A role, never a name. */
  readonly foundBy: string;
  readonly publishedOn: string;
  readonly what: string;
  readonly since: string;
  readonly cause: string;
  /** What the house does otherwise from now on; null where nothing. */
  readonly rule: string | null;
  /** Objections that led to it. */
  readonly from: readonly string[];
  readonly changes: readonly Change[];
}

export const objectionStates = ['open', 'answered', 'led-to-test', 'led-to-correction'] as const;
export type ObjectionState = (typeof objectionStates)[number];

/** `amendments/<id>.md`: what somebody held against the series, and what was answered. */
export interface Objection extends NoteHead {
  readonly id: string;
  readonly received: string;
  /** A role: "reader", "maker of P1". */
  readonly fromRole: string;
  /** What it is about: runs, articles, claims, parts by id. */
  readonly about: readonly string[];
  readonly text: string;
  readonly state: ObjectionState;
  readonly answer: string | null;
  /** Runs, claims, corrections or figures that answer. */
  readonly by: readonly string[];
  /** A maker's reply as it was received. */
  readonly reply: string | null;
}
