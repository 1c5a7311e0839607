import type { Drive } from './book.ts';

/** A number with half of its interval, SI. */
export interface Spread {
  readonly value: number;
  readonly half: number;
}

/** Spin power of one set-up at one speed and sump temperature, as published. */
export interface SpunPoint {
  readonly speed_rad_s: number;
  readonly sump_K: number;
  readonly power: Spread;
  /** Less that of the baseline article with the same oil and litres; null where it was not compared. */
  readonly less: Spread | null;
  readonly indicative: boolean;
}

export interface SpunCell {
  readonly article: string;
  readonly oil: string;
  readonly fill_m3: number;
  readonly points: readonly SpunPoint[];
}

/** Final sump temperature of one set-up, as published for load, speed and ambient of the series, and what it goes with. */
export interface LoadedCell {
  readonly article: string;
  readonly oil: string;
  readonly fill_m3: number;
  readonly final: Spread;
  /** Null where how heat goes with temperature, speed and load was not measured: then it stands for its own conditions only. */
  readonly moves: {
    readonly made_W: number;
    readonly spin_W: number;
    readonly exponent: number;
    readonly shed_W_K: number;
    readonly slope_W_K: number;
    /** Standard uncertainties of the five. */
    readonly u: Readonly<Record<'made_W' | 'spin_W' | 'exponent' | 'shed_W_K' | 'slope_W_K', number>>;
  } | null;
}

export interface KnownOil {
  readonly id: string;
  readonly name: string;
  readonly nu40_m2_s: number;
  readonly nu100_m2_s: number;
  readonly maxSump_K: number | null;
}

/** What the page of a reader's own axle carries: the series as published, and within what it may be brought elsewhere. */
export interface AxleData {
  readonly baseline: { readonly article: string; readonly oil: string; readonly fill_m3: number };
  readonly articles: readonly { readonly id: string; readonly name: string; readonly maxSump_K: number | null }[];
  readonly oils: readonly KnownOil[];
  readonly ratio: number;
  readonly radius_m: number | null;
  /** Where the series is compared: sump of the spin loss, speed of the wheel. */
  readonly sump_K: number;
  readonly wheel_rad_s: number;
  /** Conditions of the loaded runs; null where none were run. */
  readonly load: {
    readonly speed_rad_s: number;
    readonly power_W: number;
    readonly ambient_K: number;
    readonly airflow_m_s: number;
  } | null;
  readonly tolerance: {
    readonly fill_m3: number;
    readonly airflow_m_s: number;
    readonly ambient_K: number;
    readonly speed_ratio: number;
  };
  readonly drive: Drive;
  readonly driveEfficiency: number;
  readonly spun: readonly SpunCell[];
  readonly loaded: readonly LoadedCell[];
}

/** What a reader asks, SI. */
export interface AxleAsked {
  readonly ratio: number;
  /** Null where no tyre is given: speeds then are those of the wheel. */
  readonly radius_m: number | null;
  readonly wheel_rad_s: number;
  readonly power_W: number;
  readonly ambient_K: number;
  readonly airflow_m_s: number;
  readonly fill_m3: number;
  /** One of the series, or one by its two viscosities. */
  readonly oil: string | { readonly nu40_m2_s: number; readonly nu100_m2_s: number };
  readonly sump_K: number;
  readonly drive: Drive;
  readonly driveEfficiency: number;
}

/** A value with its half-interval, a band without a middle, or why there is neither. SI. */
export type Told =
  | ({ readonly kind: 'value' } & Spread)
  | { readonly kind: 'band'; readonly low: number; readonly high: number }
  | { readonly kind: 'none'; readonly why: string };

export interface AxleRow {
  readonly article: string;
  readonly spin: Told;
  /** Less the baseline article. */
  readonly less: Told;
  readonly indicative: boolean;
  /** What the difference takes along the road: J/m of an electric drive, m³/m of the others. */
  readonly cost: Told;
  readonly final: Told;
  readonly notes: readonly string[];
}

export interface AxleAnswer {
  readonly road_m_s: number | null;
  readonly pinion_rad_s: number;
  readonly nu_m2_s: number | null;
  readonly rows: readonly AxleRow[];
  /** Of the page as a whole: where a relation is outside of its range. */
  readonly notes: readonly string[];
}
