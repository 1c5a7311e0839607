import type { PlanCell } from './plan.ts';
import type { PlannedRun } from './plan-reach.ts';

/** One speed of the output shaft with what turns with it. */
export interface CardStep {
  readonly output_rad_s: number;
  readonly pinion_rad_s: number;
  /** Null without a rolling radius. */
  readonly road_m_s: number | null;
  readonly direction: 'up' | 'down';
}

/** What a person needs beside the rig for one planned run, worked out before it is run. SI. */
export interface RunCard extends PlannedRun {
  readonly cell: PlanCell;
  /** Planned runs in all. */
  readonly of: number;
  readonly done: boolean;
  /** Place in the order of the series and number of the fitting, to be written in the note; null for a run that is done. */
  readonly order: number | null;
  readonly refit: number | null;
  /** To be poured in, at any temperature: litres at 20 °C times the density there. */
  readonly mass_kg: number;
  readonly massTolerance_kg: number;
  /** As runs of this series waited before the level was read; null when none says. */
  readonly wait_s: number | null;
  /** By the article's own table; null without one, or outside it. */
  readonly level_z_m: number | null;
  /** Tip of the sump probe in this article; null when it is not known. */
  readonly tip_z_m: number | null;
  readonly steps: readonly CardStep[];
  readonly load: (CardStep & { readonly powerOut_W: number }) | null;
  readonly rigState: string | null;
  /** Column map of the logger; null where it is open. */
  readonly map: string | null;
  /** Torque instruments whose zero is read before and after. */
  readonly zeros: readonly string[];
  /** Instruments that the map names, in order of its columns. */
  readonly instruments: readonly string[];
  readonly ambientPlace: string | null;
  /** Null where the plan and the series name none. */
  readonly airflow_m_s: number | null;
  /** Temperatures of the sump that the notes set a cap at. */
  readonly caps: readonly { readonly what: string; readonly limit_K: number }[];
}
