import type { MethodVersion } from './method.ts';
import type { Campaign } from './campaign.ts';
import type { QuantityName } from './figures.ts';
import type { NoteHead } from './note.ts';

/** Time base of the drift: hours run since the first run, hours by the clock, the order of runs; or no drift is fitted. */
export const driftBases = ['running-time', 'clock-time', 'order', 'none'] as const;
export type DriftOver = (typeof driftBases)[number];

/** `book.md`: the lab and its book. */
export interface Book extends NoteHead {
  readonly name: string;
  readonly lab: string;
  /** One sentence for the top of the home page: what the reader is about to learn. */
  readonly hook: string;
  readonly contact: string;
  readonly address: string | null;
  readonly pathPrefix: string;
  readonly language: string;
  readonly unitsShown: 'si' | 'si-and-us';
  readonly licence: string;
  /** True when the data are invented; the site says so on every page. */
  readonly invented: boolean;
}

export const drives = ['electric', 'petrol', 'petrolTurbo', 'diesel'] as const;
export type Drive = (typeof drives)[number];

/** `series.md` */
export interface Series extends NoteHead {
  /** Lower-case slug; the folder's name. */
  readonly id: string;
  readonly format: 1;
  readonly title: string;
  readonly summary: string;
  readonly question: string;
  readonly started: string;
  readonly licence: string;
  readonly conflicts: string;
  readonly baseline: { readonly article: string; readonly fill_m3: number; readonly oil: string };
  /** Conditions a comparison is made at, and how far two runs may differ from each other. */
  readonly reference: {
    readonly outputSpeed_rad_s: number;
    readonly sump_K: readonly number[];
    readonly mainSump_K: number;
    readonly mainLimit_K: number | null;
    readonly airflow_m_s: number | null;
    /** Loaded runs are brought to it where they measured how; null: the mean of the loaded runs. */
    readonly ambient_K: number | null;
  };
  readonly tolerance: {
    readonly ambient_K: number;
    readonly airflow_m_s: number;
    readonly level_m: number;
    readonly fill_m3: number;
    readonly outputSpeed_ratio: number;
    readonly tilt_ratio: number;
  };
  /** When grades of two observers may be used: share within one grade, and quadratic-weighted kappa. */
  readonly agreement: { readonly withinOne_ratio: number; readonly kappa: number };
  /**
   * Differences that do not matter, SI, by quantity, and the day they were declared; null when none was. A margin counts
   * only for data taken after that day.
   */
  readonly margins: { readonly declared: string; readonly by: ReadonlyMap<QuantityName, number> } | null;
  /** What the vehicle does all day, for what watts cost on the road; null when the series does not say. */
  readonly duty: {
    readonly drive: Drive;
    /** Of an electric drive, from the battery to the axle; 1 for the others. */
    readonly driveEfficiency: number;
    /** What the vehicle uses in all; null where not said. */
    readonly consumption_J_m: number | null;
    readonly fuel_m2: number | null;
    /** How far ordinary trips differ, as a share of it. */
    readonly tripScatter: number;
    /** Shares of the time, 1 in all. */
    readonly mix: readonly { readonly share: number; readonly speed_m_s: number }[];
  } | null;
  /** Over what a drift common to all cells is taken out. */
  readonly driftOver: DriftOver;
  readonly coverage: number;
  readonly familyLevel: number;
  /** The lab's own figure for the scatter of a refit on spin torque, if it keeps one; N·m. */
  readonly refit_Nm: number | null;
  readonly cautionsBy: string | null;
  /** Later campaigns, in order of their days; absent where all runs are of one. */
  readonly campaigns?: readonly Campaign[];
  /** Under which version of the reduction its figures are found. */
  readonly method: MethodVersion;
  /** What the series does not look at, as it says. */
  readonly notTested: readonly string[];
}
