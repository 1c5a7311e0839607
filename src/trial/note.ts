import type { Place } from '../finding/finding.ts';

export type ShownTo = 'public' | 'house';

/** What every note carries, whatever its kind. Field paths are dotted: `fill.mass-in`, `columns.n_in.unit`, `exclude.0.reason`. */
export interface NoteHead {
  readonly file: string;
  readonly shownTo: ShownTo;
  /** The words under the front matter: CommonMark, never a template. */
  readonly body: string;
  /** Where each field of the front matter stands (its value). */
  readonly places: ReadonlyMap<string, Place>;
  /** Each field as it was typed, for the sheet that shows the note. */
  readonly typed: ReadonlyMap<string, string>;
}
