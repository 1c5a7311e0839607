import type { FlowNotes } from './flow.ts';
import type { NoteHead } from './note.ts';
import type { TrialKind } from './plan.ts';

export type RunStatus = 'draft' | 'checked' | 'accepted' | 'set aside' | 'superseded';

export interface Zero {
  readonly instrument: string;
  readonly before_Nm: number;
  readonly after_Nm: number | null;
  /** Resolution of what was typed, N·m. */
  readonly step_Nm: number;
}

export interface Fill {
  readonly basis: 'volume' | 'level' | 'plug';
  readonly mass_kg: number | null;
  /** As poured at `temperature_K`; null when the mass was weighed instead. */
  readonly volume_m3: number | null;
  readonly temperature_K: number;
  readonly wait_s: number | null;
  readonly levelLeft_z_m: number | null;
  readonly levelRight_z_m: number | null;
}

export interface Exclusion {
  readonly from_s: number;
  readonly to_s: number;
  /** Channel kinds; empty means all. */
  readonly channels: readonly string[];
  readonly reason: string;
  readonly by: string;
  readonly on: string | null;
}

/** `runs/<id>.md` */
export interface Run extends NoteHead, FlowNotes {
  readonly id: string;
  readonly trial: TrialKind;
  readonly status: RunStatus;
  readonly statusReason: string | null;
  readonly article: string;
  readonly oil: string;
  readonly rigState: string;
  readonly refit: number;
  readonly order: number;
  readonly started: string;
  readonly ended: string;
  readonly operators: readonly string[];
  readonly releasedBy: string | null;
  readonly releasedOn: string | null;
  readonly fill: Fill;
  readonly ambient: { readonly place: string; readonly start_K: number; readonly end_K: number };
  readonly airflow_m_s: number;
  /** Rise over run, + nose up. */
  readonly tilt_ratio: number;
  readonly rotation: 'forward' | 'reverse';
  readonly zeros: readonly Zero[];
  readonly log: { readonly file: string; readonly map: string } | null;
  readonly exclude: readonly Exclusion[];
  /** Cool-down only: the heat-up it follows. */
  readonly fromRun: string | null;
  readonly gearState: 'still' | 'slow-roll' | null;
  /** What corrections read otherwise than the note and the log have it. */
  readonly amended?: readonly string[];
}
