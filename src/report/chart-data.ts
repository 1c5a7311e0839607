/** What charts draw: numbers in the unit of their axis, ready to draw. Drawing is another room's business. */

export type ChartData =
  | TraceData
  | SpeedData
  | HeatData
  | StandingData
  | ClaimsData
  | LevelData
  | SectionData
  | PlanGridData
  | FilmData
  | SettleData
  | MarkedData;

/** Sump temperature against time. Temperatures in °C, time in minutes: ready to draw. */
export interface TraceData {
  readonly kind: 'trace';
  readonly yTitle: string;
  readonly xTitle: string;
  readonly lines: readonly {
    readonly label: string;
    readonly mark: number;
    readonly role: 'main' | 'second' | 'baseline' | 'fit';
    readonly points: readonly (readonly [number, number])[];
  }[];
  readonly limits: readonly { readonly y: number; readonly label: string }[];
  readonly crossings: readonly { readonly x: number; readonly y: number; readonly label: string }[];
  readonly excluded: readonly { readonly from: number; readonly to: number; readonly label: string }[];
}

/** Spin power against wheel speed, a line an article; behind it, as a pale band without a mark, what models let one expect. */
export interface SpeedData {
  readonly kind: 'speed';
  readonly yTitle: string;
  readonly xTitle: string;
  readonly lines: readonly {
    readonly label: string;
    readonly mark: number;
    readonly points: readonly { readonly x: number; readonly y: number; readonly low: number; readonly high: number }[];
  }[];
  readonly band?: {
    readonly label: string;
    readonly points: readonly { readonly x: number; readonly low: number; readonly high: number }[];
  };
}

/** Heat made and shed by article: two panels that share rows. */
export interface HeatData {
  readonly kind: 'heat';
  readonly panels: readonly { readonly title: string; readonly key: 'made' | 'shed' }[];
  readonly rows: readonly {
    readonly label: string;
    readonly mark: number;
    readonly made: Bar | null;
    readonly shed: Bar | null;
  }[];
}

export interface Bar {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Standing: dots with intervals of the difference; the band where nothing is separated is tinted behind them. */
export interface StandingData {
  readonly kind: 'standing';
  readonly xTitle: string;
  readonly band: readonly [number, number] | null;
  readonly rows: readonly {
    readonly label: string;
    readonly detail: string;
    readonly mark: number;
    readonly value: number | null;
    readonly low: number | null;
    readonly high: number | null;
    readonly letters: string;
    readonly baseline: boolean;
  }[];
}

/** Claims held against their runs: dots with intervals, and dashed where each claim sets its threshold. */
export interface ClaimsData {
  readonly kind: 'claims';
  readonly xTitle: string;
  readonly rows: readonly {
    readonly label: string;
    readonly detail: string;
    readonly mark: number;
    readonly value: number;
    readonly low: number;
    readonly high: number;
    /** One, or two where the claim says "within". */
    readonly thresholds: readonly number[];
    readonly word: string;
  }[];
}

/** Level curve: litres across, height up, with the fills marked. */
export interface LevelData {
  readonly kind: 'level';
  readonly xTitle: string;
  readonly yTitle: string;
  readonly curves: readonly {
    readonly label: string;
    readonly mark: number;
    readonly points: readonly (readonly [number, number])[];
  }[];
  readonly fills: readonly { readonly x: number; readonly y: number; readonly label: string; readonly mark: number }[];
  readonly lines: readonly { readonly y: number; readonly label: string }[];
}

/** What the logger wrote during a film, panels under each other on one axis of time in minutes; steps shaded and named. */
export interface FilmData {
  readonly kind: 'film';
  readonly xTitle: string;
  readonly panels: readonly {
    readonly yTitle: string;
    readonly mark: number;
    readonly points: readonly (readonly [number, number])[];
  }[];
  readonly steps: readonly { readonly from: number; readonly to: number; readonly label: string }[];
}

/** The level after the stop: seconds across (drawn so that the first minute has room), millimetres up. */
export interface SettleData {
  readonly kind: 'settle';
  readonly xTitle: string;
  readonly yTitle: string;
  readonly mark: number;
  readonly points: readonly (readonly [number, number])[];
  readonly fit: readonly (readonly [number, number])[];
  readonly lines: readonly { readonly y: number; readonly label: string }[];
  readonly bubbles: readonly { readonly x: number; readonly text: string }[];
}

/** Section of the housing to scale, mm. Only what is known is drawn. */
export interface SectionData {
  readonly kind: 'section';
  /** Drawings that stand side by side are drawn to one scale: the extent of all of them. Null: its own. */
  readonly frame: null | {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  /** Rise over run, + nose up: the drawing stays with the axle and the surfaces lean. */
  readonly tilt: number;
  /** Running levels by step, thin lines under the surface at rest; `swing` is drawn as a bar with end ticks. */
  readonly running: readonly { readonly z: number; readonly swing: number; readonly label: string }[];
  /** Heights and lengths worth a dimension line. */
  readonly dimensions: readonly {
    readonly from: readonly [number, number];
    readonly to: readonly [number, number];
    readonly label: string;
  }[];
  /** Front pinion bearing race: x is negative, ahead of the axle; null when it is not on the rig sheet. */
  readonly race: null | { readonly x: number; readonly z: number; readonly radius: number };
  readonly ringRadius: number;
  readonly wall: readonly (readonly [number, number])[];
  readonly tray: readonly (readonly [number, number])[] | null;
  readonly shroud: { readonly radius: number; readonly from: number; readonly to: number } | null;
  readonly levels: readonly { readonly z: number; readonly label: string }[];
  readonly lips: readonly { readonly z: number; readonly label: string }[];
  readonly pinion: { readonly offset: number } | null;
  readonly mark: number;
}

/** Cells of the plan: done, void, missing. */
export interface PlanGridData {
  readonly kind: 'plan-grid';
  readonly columns: readonly string[];
  readonly rows: readonly {
    readonly label: string;
    readonly cells: readonly {
      readonly column: string;
      readonly wanted: number;
      readonly done: number;
      readonly setAside: number;
    }[];
  }[];
}

/** One channel of a log over the whole run, with the stretches that figures were read from: small, and drawn by hand. */
export interface MarkedData {
  readonly kind: 'marked';
  readonly yTitle: string;
  /** Minutes and the unit of the axis. */
  readonly points: readonly (readonly [number, number])[];
  /** Minutes; those of a moment have no width. `label` where there is room for it. */
  readonly marks: readonly { readonly from: number; readonly to: number; readonly label: string }[];
}
