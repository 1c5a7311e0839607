import type { Dimension, Quantity } from '../quantity/quantity.ts';
import type { Instant } from '../quantity/time.ts';
import type { Timecode } from '../quantity/timecode.ts';
import type { Graded, StepName, View } from '../trial/flow.ts';
import type { Node } from './note.ts';

/**
 * A field of a note as data. The tables beside each kind of note are the only home of the fields: the reader, the published
 * JSON Schemas and the guide are all made from them.
 */
export interface Field {
  /** required: an error when missing · recommended: a notice when missing · optional · assumed: `otherwise` when missing. */
  readonly need: 'required' | 'recommended' | 'optional' | 'assumed';
  readonly kind: Kind;
  /** One sentence: why it is asked. */
  readonly why: string;
  readonly otherwise?: string;
}

export type Fields = Readonly<Record<string, Field>>;

export type Kind =
  | TextKind
  | WordsKind
  | QuantityKind
  | NumberKind
  | YesNoKind
  | DayKind
  | InstantKind
  | TimecodeKind
  | StepKind
  | GradeKind
  | ListKind
  | GroupKind
  | NamedKind
  | PointKind
  | LaterKind;

/** `like` is an example as somebody would type it. */
export interface TextKind {
  readonly type: 'text';
  readonly like: string;
  readonly pattern?: string;
  readonly says?: string;
}
export interface WordsKind {
  readonly type: 'words';
  readonly words: readonly string[];
}
/** Bounds are inclusive and written as people write them. Outside `hard` is an error, outside `soft` a warning. */
export interface QuantityKind {
  readonly type: 'quantity';
  readonly dimension: Dimension;
  readonly like: string;
  readonly hard?: Bounds;
  readonly soft?: Bounds;
  /** The one word that stands for "does not apply". */
  readonly none?: string;
}
export type Bounds = readonly [string, string];
export interface NumberKind {
  readonly type: 'number';
  readonly whole: boolean;
  readonly like: string;
  readonly hard?: readonly [number, number];
  readonly soft?: readonly [number, number];
}
export interface YesNoKind {
  readonly type: 'yes-no';
}
/** A date: 2026-03-01. */
export interface DayKind {
  readonly type: 'day';
  readonly like: string;
}
/** A date with time and offset: 2026-03-17T10:05:00+01:00. */
export interface InstantKind {
  readonly type: 'instant';
}
/** A time on a clip or a film: 00:00:36.000. */
export interface TimecodeKind {
  readonly type: 'timecode';
}
/** A planned speed of the output shaft and the way it was come to: `290 rpm up`. */
export interface StepKind {
  readonly type: 'step';
}
/** 0 to `most`; `ng` where a grade may be that. */
export interface GradeKind {
  readonly type: 'grade';
  readonly most: 3 | 4;
  readonly ng: boolean;
}
/** What becomes of a part that cannot be read, where the rest of the note can stand without it. */
interface Parted {
  readonly without?: string;
}
export interface ListKind extends Parted {
  readonly type: 'list';
  readonly of: Kind;
  readonly least: number;
}
/** `either`: exactly one of each of these sets of names is written. */
export interface GroupKind extends Parted {
  readonly type: 'group';
  readonly fields: Fields;
  readonly either?: readonly (readonly string[])[];
}
/** Names chosen by the writer, each with a value of one kind; `steps`: each name is a step. */
export interface NamedKind extends Parted {
  readonly type: 'named';
  readonly of: Kind;
  readonly called: string;
  readonly steps?: true;
}
/** `[x, z]` in millimetres, for drawings only. */
export interface PointKind {
  readonly type: 'point';
}
/** Read by the file of its kind of note, since its dimension depends on a neighbour. */
export interface LaterKind {
  readonly type: 'later';
  readonly like: string;
  readonly says: string;
  /** It is text or this group. */
  readonly group?: GroupKind;
}

/** What a kind becomes when read; null for a part that was left out. */
export type ValueOf<K> = K extends { readonly without: string } ? WholeOf<K> | null : WholeOf<K>;

type WholeOf<K> = K extends WordsKind
  ? K['words'][number]
  : K extends { readonly type: 'quantity'; readonly none: string }
    ? Quantity | null
    : K extends QuantityKind
      ? Quantity
      : K extends NumberKind
        ? number
        : K extends YesNoKind
          ? boolean
          : K extends InstantKind
            ? Instant
            : K extends TimecodeKind
              ? Timecode
              : K extends StepKind
                ? StepName
                : K extends GradeKind
                  ? GradedOf<K>
                  : K extends ListKind
                    ? readonly ValueOf<K['of']>[]
                    : K extends GroupKind
                      ? ValuesOf<K['fields']>
                      : K extends NamedKind
                        ? ReadonlyMap<string, ValueOf<K['of']>>
                        : K extends PointKind
                          ? readonly [number, number]
                          : K extends LaterKind
                            ? Node
                            : string;

type GradedOf<K extends GradeKind> = K['ng'] extends true ? Graded : View;

export type ValuesOf<F extends Fields> = {
  readonly [N in keyof F]: F[N]['need'] extends 'required' | 'assumed'
    ? ValueOf<F[N]['kind']>
    : ValueOf<F[N]['kind']> | null;
};

const field = <const K extends Kind, const N extends Field['need']>(need: N, kind: K, why: string) => ({
  need,
  kind,
  why,
});
export const required = <const K extends Kind>(kind: K, why: string) => field('required', kind, why);
export const recommended = <const K extends Kind>(kind: K, why: string) => field('recommended', kind, why);
export const optional = <const K extends Kind>(kind: K, why: string) => field('optional', kind, why);
export const assumed = <const K extends Kind>(kind: K, otherwise: string, why: string) => ({
  ...field('assumed', kind, why),
  otherwise,
});

export const text = (like: string) => ({ type: 'text', like }) as const;
/** Identifiers are the lab's own short codes: letters, digits, hyphens, dots. */
export const code = (like: string) =>
  ({
    type: 'text',
    like,
    pattern: '^[A-Za-z0-9][A-Za-z0-9.-]{0,39}$',
    says: 'a short code of letters, digits, hyphens and dots',
  }) as const;
export const shaped = (like: string, pattern: string, says: string) => ({ type: 'text', like, pattern, says }) as const;
export const words = <const W extends readonly string[]>(...list: W) => ({ type: 'words', words: list }) as const;
export const quantity = <const B extends { hard?: Bounds; soft?: Bounds; none?: string }>(
  dimension: Dimension,
  like: string,
  bounds?: B,
) => ({ type: 'quantity', dimension, like, ...(bounds as B) }) as const;
export const whole = (like: string, hard: readonly [number, number], soft?: readonly [number, number]) =>
  ({ type: 'number', whole: true, like, hard, ...(soft ? { soft } : {}) }) as const;
export const number = (like: string, hard: readonly [number, number]) =>
  ({ type: 'number', whole: false, like, hard }) as const;
export const yesNo = { type: 'yes-no' } as const;
export const dayLike = (like: string) => ({ type: 'day', like }) as const;
export const day = dayLike('2026-03-17');
export const instant = { type: 'instant' } as const;
export const timecode = { type: 'timecode' } as const;
export const step = { type: 'step' } as const;
export const grade = { type: 'grade', most: 4, ng: true } as const;
export const viewGrade = { type: 'grade', most: 3, ng: false } as const;
export const point = { type: 'point' } as const;
export const list = <const K extends Kind>(of: K, least = 0) => ({ type: 'list', of, least }) as const;
export const named = <const K extends Kind>(called: string, of: K) => ({ type: 'named', of, called }) as const;
export const bySteps = <const K extends Kind>(of: K) => ({ type: 'named', of, called: 'step', steps: true }) as const;
/** A part without which the rest of the note still stands; the sentence says what becomes of it. */
export const part = <const K extends ListKind | GroupKind | NamedKind, const S extends string>(
  without: S,
  kind: K,
) => ({
  ...kind,
  without,
});
export const later = (like: string, says: string, group?: GroupKind) =>
  ({ type: 'later', like, says, ...(group ? { group } : {}) }) as const;
export const group = <const F extends Fields>(fields: F, either: readonly (readonly string[])[] = []) =>
  ({ type: 'group', fields, either }) as const;

/** The fields that every note may carry. */
export const headFields = {
  'shown-to': assumed(words('public', 'house'), 'house', 'Says who sees the note: everybody, or the house only.'),
  guessed: optional(
    list(text('teeth')),
    'Fields of this note that nobody has looked up yet; what rests on them gives no figures.',
  ),
} as const;
