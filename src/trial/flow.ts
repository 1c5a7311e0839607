import type { Place } from '../finding/finding.ts';

/** The five things that are graded behind a window, 0–4; their anchors stand in `grade-anchors.ts`. */
export const gradeKinds = ['reach', 'side', 'wall', 'bubble', 'tube'] as const;
export type GradeKind = (typeof gradeKinds)[number];
export type Grade = 0 | 1 | 2 | 3 | 4;
/** Not gradable is an answer of its own and never a 0. */
export type Graded = Grade | 'ng';
export type View = 0 | 1 | 2 | 3;

export type Direction = 'up' | 'down';

/** A planned speed on the way up or down; speed of the output (wheel) shaft. */
export interface StepName {
  readonly outputSpeed_rad_s: number;
  readonly direction: Direction;
}

/** What one observer wrote of one step. With View 0 or 1 every grade is `ng`, whatever was typed. */
export interface Observation {
  readonly step: StepName;
  readonly observer: string;
  readonly pass: 'first' | 'joint';
  /** What was hidden from the observer. */
  readonly blind: readonly ('article' | 'fill' | 'oil')[];
  readonly grades: Readonly<Record<GradeKind, Graded>>;
  readonly view: View;
  readonly level_z_m: number | null;
  readonly swing_m: number | null;
  readonly foam_m: number | null;
  /** Where the sheet leaves the rim, clockwise from the top as the window shows it. */
  readonly detach_rad: number | null;
  readonly words: string | null;
  /** File name of the clip, and the time in it; null when the observer sat at the rig. */
  readonly clip: string | null;
  readonly from_s: number | null;
  readonly to_s: number | null;
  readonly place: Place;
}

/** A film of a run. Three clocks: the clip file, the camera's film it was cut from, and the logger. */
export interface Clip {
  /** Beside the note. */
  readonly file: string;
  /** What graders see instead of the run; null when nobody gave it one. */
  readonly code: string | null;
  readonly shows: 'film' | 'drawing';
  readonly length_s: number | null;
  /** Film time at which the `sync` event of the log is seen; null: film and logger are not tied. */
  readonly sync_s: number | null;
  /** Where pieces of a cut clip begin, rising in the clip; one piece from 0 to 0 when it was not cut. */
  readonly pieces: readonly { readonly clip_s: number; readonly film_s: number }[];
  /** WebVTT file beside the note; null when its grades stand in the note. */
  readonly captions: string | null;
  /** Where the film is kept when it is not in the folder. */
  readonly kept: string | null;
  readonly place: Place;
}

export interface Still {
  /** In `pictures/` of the series. */
  readonly file: string;
  readonly step: StepName;
  readonly clip: string | null;
  /** Time in the clip. */
  readonly at_s: number | null;
  readonly rule: 'offset' | 'event' | 'chosen';
  /** With rule `offset`: seconds after the hold begins. */
  readonly offset_s: number | null;
  /** With rule `event`: what happened. */
  readonly event: string | null;
  readonly shows: 'photograph' | 'drawing';
  readonly alters: readonly ('crop' | 'scale' | 'annotation')[];
  readonly caption: string;
  readonly alt: string;
  readonly rights: string | null;
  readonly place: Place;
}

/** What was read after the stop, counted from the gear's standstill. */
export interface SettleRow {
  readonly after_s: number;
  readonly level_z_m: number | null;
  readonly bubble: Graded | null;
  readonly foam_m: number | null;
  readonly place: Place;
}

/** Oil and air drawn off and weighed within seconds. */
export interface AirSample {
  readonly step: StepName;
  readonly mass_kg: number;
  readonly volume_m3: number;
  readonly temperature_K: number;
  readonly place: Place;
}

/** What a run note says of a flow trial. */
export interface FlowNotes {
  readonly clips: readonly Clip[];
  readonly observations: readonly Observation[];
  readonly stills: readonly Still[];
  readonly settle: readonly SettleRow[];
  readonly airSample: AirSample | null;
}
