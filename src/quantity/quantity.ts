/** The physical kinds a bench writes. Temperature and temperature difference are two kinds. */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'flow'
  | 'mass'
  | 'time'
  | 'angle'
  | 'speed'
  | 'rotation'
  | 'torque'
  | 'force'
  | 'power'
  | 'pressure'
  | 'temperature'
  | 'temperature-difference'
  | 'temperature-rate'
  | 'kinematic-viscosity'
  | 'density'
  | 'heat-capacity'
  | 'specific-heat'
  | 'conductance'
  | 'conductivity'
  | 'film-coefficient'
  | 'voltage'
  | 'energy'
  | 'energy-per-distance'
  | 'fuel-per-distance'
  | 'mass-per-distance'
  | 'distance-per-fuel'
  | 'fuel-per-energy'
  | 'acceleration'
  | 'dynamic-viscosity'
  | 'pressure-viscosity'
  | 'surface-tension'
  | 'mass-fraction'
  | 'acid-number'
  | 'expansion'
  | 'heat-flux'
  | 'line-load'
  | 'ratio';

/** A quantity as somebody wrote it. `value` is SI (K, m, m³, m³/s, kg, s, rad, m/s, rad/s, N·m, N, W, Pa, m²/s, kg/m³, J/K, J/(kg·K), W/K, W/(m·K), W/(m²·K), V, J, J/m, m³/m, kg/m, m/m³, m³/J, m/s², W/m², Pa·s, 1/Pa, N/m, 1/K, kg/kg, 1). */
export interface Quantity {
  readonly asWritten: string;
  readonly value: number;
  /** Name in the units table of the unit that was typed. */
  readonly unit: string;
  /** One in the last digit that was typed, SI. */
  readonly step: number;
  readonly plusMinus?: PlusMinus;
}

/** `value` SI, a difference; `k` null when the text states limits and no coverage factor. */
export interface PlusMinus {
  readonly value: number;
  readonly k: number | null;
}

/** Trouble with one text, placed by offset inside it; the reader of the note turns it into a finding with a place. */
export interface Trouble {
  readonly code: string;
  readonly offset: number;
  readonly length: number;
  readonly says: string;
  readonly why: string;
  readonly write: string;
}

export type ReadText<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly trouble: Trouble };
