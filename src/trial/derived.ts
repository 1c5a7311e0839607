import type { Finding, Place } from '../finding/finding.ts';
import type { Cause, Estimate } from '../quantity/estimate.ts';
import type { FittedExponents } from './exponents.ts';
import type { QuantityName } from './figures.ts';
import type { Clip, Graded, GradeKind, Observation, StepName } from './flow.ts';
import type { TrialKind } from './plan.ts';

/** What was tested together: article, oil, nominal fill, tilt. Runs of one cell repeat each other. */
export interface Cell {
  readonly article: string;
  readonly oil: string;
  readonly fill_m3: number;
  readonly tilt_ratio: number;
  /** The later campaign it was run in; absent in the first, and where both stand in one table as one cell. */
  readonly campaign?: string;
}

/** Conditions of a figure, SI. `own` means at the article's own running temperature. */
export interface At {
  readonly outputSpeed_rad_s?: number;
  readonly sump_K?: number | 'own';
  readonly limit_K?: number;
  readonly basis?: 'volume' | 'level';
  /** Steps on the way down; the way up goes without saying. */
  readonly direction?: 'down';
  /** Of agreement between observers. */
  readonly grade?: GradeKind;
  readonly observers?: string;
  /** Of a thermal dose: temperatures of the sump from the first to below the second. */
  readonly band_K?: readonly [number, number];
  /** Of a thermal dose summed over one charge of oil: `P0-3`, article and refit. */
  readonly charge?: string;
  /** Of a used sample of oil. */
  readonly sample?: string;
}

export type Source =
  | { readonly kind: 'note'; readonly place: Place; readonly typed: string }
  | {
      readonly kind: 'log';
      readonly file: string;
      readonly fromLine: number;
      readonly toLine: number;
      /** The same stretch by the clock of the log. */
      readonly from_s: number;
      readonly to_s: number;
      readonly channel: string;
    }
  | { readonly kind: 'figure'; readonly id: string }
  /** As this room knows it; the ledger gives it its id. */
  | { readonly kind: 'result'; readonly run: string; readonly quantity: QuantityName; readonly at: At }
  | { readonly kind: 'constant'; readonly text: string };

/** A number that goes into a figure, and where it stands. `unit` is a name in the units table; value in that unit. */
export interface Given {
  readonly symbol: string;
  readonly name: string;
  readonly value: number;
  /** Standard uncertainty, in `unit`; null when taken as exact. */
  readonly u: number | null;
  readonly unit: string;
  readonly from: Source;
}

/** A line of the working between what is given and the result. */
export interface Step {
  /** "Net torque is raw torque less the zero at that time" */
  readonly says: string;
  /** "T = T_raw − z(t)" */
  readonly formula: string;
  readonly value: number;
  readonly unit: string;
}

/** One number of one run, with how it was come by. Value SI. */
export interface Result {
  readonly quantity: QuantityName;
  readonly at: At;
  /** Null value with a bound when a limit was not reached: the bound is in `boundAt`. */
  readonly estimate: Estimate | null;
  readonly bound: null | { readonly side: 'above' | 'below'; readonly at: number };
  /** A model estimate that is only a band: `estimate` is null then. SI. */
  readonly band?: { readonly low: number; readonly high: number };
  readonly class: 'measured' | 'derived from measurement' | 'model estimate';
  /** Id of the relation in physics/ or of the method in derive/. */
  readonly relation: string;
  readonly method: string;
  readonly notes: readonly string[];
  /** Those of the notes that every figure made of this one inherits, such as an overdue instrument. */
  readonly flags?: readonly string[];
  readonly given: readonly Given[];
  readonly steps: readonly Step[];
}

/** A steady stretch of a run that readings were taken from. */
export interface Window {
  readonly name: string;
  readonly from_s: number;
  readonly to_s: number;
  readonly fromLine: number;
  readonly toLine: number;
  readonly outputSpeed_rad_s: number;
  readonly sump_K: number;
  readonly readings: number;
  readonly steady: boolean;
}

/** How the final temperature was come by: every model tried, its misfit, and the one taken. */
export interface ModelTried {
  readonly model: 'one-store' | 'two-store' | 'tail';
  readonly final_K: number;
  readonly u_K: number;
  readonly misfit_K: number;
  readonly parameters: readonly {
    readonly name: string;
    readonly value: number;
    readonly u: number;
    readonly unit: string;
  }[];
  readonly taken: boolean;
  readonly why: string;
}

export interface Crossing {
  readonly limit_K: number;
  /** Null when not reached. */
  readonly t_s: number | null;
  readonly nearFinal: boolean;
}

/** A line for a chart, thinned from the log: time in seconds, value SI. */
export interface Trace {
  readonly channel: string;
  readonly time_s: readonly number[];
  readonly value: readonly number[];
}

/** What stands for one grade of one step, and whose grades it comes from. */
export interface StepGrade {
  /** Null when the observers differ and nobody looked again, or when nobody graded. */
  readonly stands: Graded | null;
  readonly how: 'joint look' | 'equal' | 'one observer' | 'differ' | 'not graded';
  /** First grades by observer, in order of their names. */
  readonly first: readonly { readonly observer: string; readonly grade: Graded }[];
}

/** One step of a flow trial as it was run: holds are in logger seconds. */
export interface FlowStep {
  readonly step: StepName;
  /** "290 rpm up" */
  readonly name: string;
  readonly from_s: number;
  readonly to_s: number;
  readonly sump_K: number | null;
  readonly level_z_m: number | null;
  /** The level swings this far to either side of its mean: twice the standard deviation of its readings. */
  readonly swing_m: number | null;
  /** False when the level still moved faster than 1 mm in 10 s. */
  readonly steady: boolean;
  /** The mean running level lies below the tip of the sump probe. */
  readonly probeAbove: boolean;
  /** Null when nobody graded the run. */
  readonly grades: Readonly<Record<GradeKind, StepGrade>> | null;
  readonly observations: readonly Observation[];
}

/** A stretch in which clip and logger run together: log time = clip time + offset. */
export interface ClipPiece {
  readonly clip_s: number;
  readonly to_clip_s: number;
  readonly offset_s: number;
}

/** A clip with its clock tied to the logger's. */
export interface TiedClip {
  readonly clip: Clip;
  /** Camera ahead of the logger, s; null when the film shows no sync event. */
  readonly ahead_s: number | null;
  readonly pieces: readonly ClipPiece[];
}

/** The level after the stop: time from the gear's standstill. */
export interface Settled {
  readonly stop_s: number;
  readonly points: readonly { readonly after_s: number; readonly level_z_m: number }[];
  /** z(t) = end − depth·2^(−t/half); null when the readings follow no such curve. */
  readonly fit: { readonly end_z_m: number; readonly depth_m: number; readonly half_s: number } | null;
  readonly before_z_m: number | null;
  readonly bubbles: readonly { readonly after_s: number; readonly bubble: Graded; readonly foam_m: number | null }[];
  /** Why no share of air is given; null when one is. */
  readonly airUntold: string | null;
}

export interface FlowRun {
  readonly steps: readonly FlowStep[];
  readonly clips: readonly TiedClip[];
  readonly settled: Settled | null;
  /** Loaded run that this trial stands for: its id, and how many times lower Reynolds is here (under 1: higher). */
  readonly standsFor: { readonly run: string; readonly reynoldsTimesLower: number } | null;
}

/** What brings a loaded run to the load and the speed of the plan, in heat made at its own temperature. */
export interface ToLoad {
  readonly by_W: Estimate;
  readonly byLoad_W: number;
  readonly bySpeed_W: number;
  /** Of the plan over what was run: output torque and output speed. */
  readonly torque_ratio: number;
  readonly speed_ratio: number;
  /** Spin power of the cell at its own temperature, and its exponent of speed. */
  readonly spin_W: number;
  readonly exponent: number;
}

export interface DerivedRun {
  readonly run: string;
  readonly trial: TrialKind;
  readonly cell: Cell;
  readonly rigState: string;
  /** Position in the order of the series; the time base of drift. */
  readonly order: number;
  readonly startedDay: string;
  /** Start and end, seconds since 1970-01-01T00:00:00Z. */
  readonly clock_s: readonly [number, number];
  readonly conditions: {
    readonly ambient_K: number | null;
    readonly airflow_m_s: number | null;
    readonly level_z_m: number | null;
    readonly volume20_m3: number | null;
    readonly rotation: 'forward' | 'reverse';
    /** Of a loaded run, mean under load; null otherwise. */
    readonly outputSpeed_rad_s: number | null;
    readonly powerOut_W: number | null;
  };
  /** How heat made changes with the sump at the final temperature, this run's own; null where it was not measured. */
  readonly heatSlope_W_K: Estimate | null;
  /** Of a loaded run; null where spin of its cell was not measured, or where it stands too far off. */
  readonly toLoad: ToLoad | null;
  /** Of a spin run with four speeds or more: P ~ ω^p round the loaded speed, at the hottest reference temperature. */
  readonly spinExponent: Estimate | null;
  /** Of a spin run with speeds and temperatures enough: its fits of how spin power goes with both. */
  readonly exponents?: readonly FittedExponents[];
  /** Of a spin run: why no estimate by models of loss stands behind it; null where one does. */
  readonly noLossEstimate?: string | null;
  /** Null when the run counts; otherwise why no figure is made of it. */
  readonly leftOut: string | null;
  readonly results: readonly Result[];
  readonly causes: readonly Cause[];
  readonly windows: readonly Window[];
  readonly models: readonly ModelTried[];
  readonly crossings: readonly Crossing[];
  /** Of a flow trial; null for the others. */
  readonly flow: FlowRun | null;
  readonly traces: readonly Trace[];
  /** Fitted curve for the chart of a heat-up or cool-down, sump. */
  readonly fitted: Trace | null;
  /** Sentences for the margin: exponents, condition number, drift of zero, start spread. */
  readonly remarks: readonly string[];
  readonly findings: readonly Finding[];
}
