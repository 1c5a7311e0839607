/** The quantities a page may show: name in the trade's words, unit as shown, UCUM code, and how SI becomes that unit. */
export interface QuantityKind {
  readonly name: string;
  readonly symbol: string;
  /** Name in the units table. */
  readonly unit: string;
  readonly ucum: string;
  /** shown = (SI − zero) / factor */
  readonly factor: number;
  readonly zero: number;
  /** Which way a bench reads it; null where neither is a merit. */
  /** No figure of this kind can be larger, as shown: its interval ends there. */
  readonly most?: number;
  /** Nor smaller. */
  readonly least?: number;
  readonly lower: 'less loss' | 'cooler' | 'sooner' | null;
}

const kind = (
  name: string,
  symbol: string,
  unit: string,
  ucum: string,
  factor = 1,
  lower: QuantityKind['lower'] = null,
  zero = 0,
): QuantityKind => ({ name, symbol, unit, ucum, factor, zero, lower });

export const quantityKinds = {
  'fill-volume': kind('litres at 20 °C', 'V', 'L', 'L', 1e-3),
  'static-level': kind('static level', 'z', 'mm', 'mm', 1e-3),
  immersion: kind('immersion of the ring gear', 'h', 'mm', 'mm', 1e-3),
  'equal-level-volume': kind('litres for the baseline level', 'V=', 'L', 'L', 1e-3),
  'running-level': kind('running level', 'z run', 'mm', 'mm', 1e-3),
  'level-swing': kind('swing of the level to either side', 'a', 'mm', 'mm', 1e-3),
  'level-gap': kind('running level, up less down', 'Δz', 'mm', 'mm', 1e-3),
  'hot-level-rise': kind('rise of the level at rest by warming from 20 °C', 'Δz hot', 'mm', 'mm', 1e-3),
  'level-at-pinion': kind('oil surface at the pinion front bearing', 'z_p', 'mm', 'mm', 1e-3),
  'bath-over-race': kind('oil surface over the lowest point of the pinion race', 'b', 'mm', 'mm', 1e-3),
  'held-up': kind('level missing after settling', 'z0 − z end', 'mm', 'mm', 1e-3),
  'level-half-time': kind('half-time of the level after the stop', 't½', 's', 's'),
  'bubble-clear-time': kind('time to Bubble 1 after the stop', 't_B', 's', 's'),
  'air-share': kind('air in the oil by volume', 'φ', '%', '%', 1e-2),
  'camera-ahead': kind('camera clock ahead of the logger', 'Δt', 's', 's'),
  reach: kind('Reach', 'Reach', '1', '1'),
  side: kind('Side fall', 'Side fall', '1', '1'),
  wall: kind('Wall hit', 'Wall hit', '1', '1'),
  bubble: kind('Bubble', 'Bubble', '1', '1'),
  tube: kind('Tube run', 'Tube run', '1', '1'),
  'grades-equal': kind('grades of two observers that are equal', 'p0', '%', '%', 1e-2),
  'grades-within-one': kind('grades of two observers within one', 'p1', '%', '%', 1e-2),
  kappa: { ...kind('quadratic-weighted kappa', 'κ', '1', '1'), most: 1 },
  reynolds: kind('Reynolds number of the ring gear', 'Re', '1', '1'),
  'reynolds-loaded': kind('Reynolds number of the loaded run at this speed', 'Re hot', '1', '1'),
  'jet-power': kind('power in the oil thrown by the ring gear', 'P_jet', 'W', 'W'),
  'spin-torque': kind('spin torque at the input', 'T', 'N·m', 'N.m', 1, 'less loss'),
  'spin-power': kind('spin power', 'P', 'W', 'W', 1, 'less loss'),
  'loss-estimate': kind('spin power that models let one expect', 'P_est', 'W', 'W'),
  'speed-exponent': kind('exponent of speed in spin power', 'p', '1', '1'),
  'viscosity-exponent': kind('exponent of viscosity in spin power', 'q', '1', '1'),
  'speed-exponent-above': kind('exponent of speed in spin power above a constant torque', 'p′', '1', '1'),
  'viscosity-exponent-above': kind('exponent of viscosity in spin power above a constant torque', 'q′', '1', '1'),
  'heat-made': kind('heat made', 'Q', 'W', 'W', 1, 'less loss'),
  shed: kind('shed', 'K', 'W/K', 'W/K'),
  store: kind('store', 'C', 'kJ/K', 'kJ/K', 1e3),
  'final-temperature': kind('final sump temperature', 'T∞', '°C', 'Cel', 1, 'cooler', 273.15),
  'final-rise': kind('final rise above ambient', 'θ∞', 'K', 'K', 1, 'cooler'),
  'makes-less': kind('part of a difference in rise by the heat made', 'M·ln(Q/Q0)', 'K', 'K'),
  'sheds-more': kind('part of a difference in rise by the shed', 'M·ln(K0/K)', 'K', 'K'),
  'cover-share-bound': kind('what the cover’s surface alone can account for', 'ΔT', 'K', 'K'),
  'surface-shed': kind('shed of the bare surface of the axle by the laws', 'K e', 'W/K', 'W/K'),
  'article-shed': kind('shed of the bare surface of the article by the laws', 'K c', 'W/K', 'W/K'),
  'article-shed-share': kind('the same over the shed that was measured', 'K c/K', '%', '%', 1e-2),
  'energy-cost': kind('energy along the road', 'E', 'kWh/100 km', 'kW.h/(100.km)', 36),
  'fuel-cost': kind('fuel along the road', 'F', 'L/100 km', 'L/(100.km)', 1e-8),
  'film-ratio': kind('film at its own temperature over that of the baseline', 'h/h0', '1', '1'),
  'makes-less-share': kind('share of a difference in rise by the heat made', 's', '%', '%', 1e-2),
  'spin-power-interaction': kind('interaction of article and fill in spin power', 'ΔΔP', 'W', 'W'),
  'final-rise-interaction': kind('interaction of article and fill in final rise', 'ΔΔθ', 'K', 'K'),
  'heat-made-interaction': kind('interaction of article and fill in heat made', 'ΔΔQ', 'W', 'W'),
  'spin-power-by-level': kind('spin power by the level', 'dP/dz', 'W per 10 mm', 'W/cm', 100),
  'final-rise-by-level': kind('final rise by the level', 'dθ/dz', 'K per 10 mm', 'K/cm', 100),
  'heat-made-by-level': kind('heat made by the level', 'dQ/dz', 'W per 10 mm', 'W/cm', 100),
  'limit-crossing': kind('time to limit', 't', 's', 's', 1),
  'time-constant': kind('time constant', 'τ', 's', 's', 1),
  'shed-rest': kind('shed at rest', 'K rest', 'W/K', 'W/K'),
  'bearing-rise': kind('pinion bearing above sump', 'Δb', 'K', 'K', 1, 'cooler'),
  closure: kind('energy balance left over', 'ΔQ', 'W', 'W'),
  'gear-ratio': kind('ratio by tooth counts', 'i', '1', '1'),
  'ring-speed': kind('ring gear speed', 'n_r', 'rpm', '{rev}/min', Math.PI / 30),
  'pinion-speed': kind('pinion speed', 'n_p', 'rpm', '{rev}/min', Math.PI / 30),
  'road-speed': kind('road speed', 'v', 'km/h', 'km/h', 1 / 3.6),
  'pitch-line-speed': kind('pitch-line speed of the ring gear', 'U', 'm/s', 'm/s'),
  'centrifugal-ratio': kind('centrifugal ratio at the ring gear', 'Fr', '1', '1'),
  viscosity: kind('kinematic viscosity', 'ν', 'mm²/s', 'mm2/s', 1e-6),
  'viscosity-index': kind('viscosity index', 'VI', '1', '1'),
  'thermal-dose': { ...kind('thermal dose', 't', 'h', 'h', 3600), least: 0 },
  'viscosity-40-change': kind('change in kinematic viscosity at 40 °C', 'ν40', 'mm²/s', 'mm2/s', 1e-6),
  'viscosity-100-change': kind('change in kinematic viscosity at 100 °C', 'ν100', 'mm²/s', 'mm2/s', 1e-6),
  'viscosity-index-change': kind('change in viscosity index', 'VI', '1', '1'),
  'acid-number-change': kind('change in acid number', 'AN', 'mg KOH/g', 'mg/g', 1e-3),
  'water-change': kind('change in water', 'w', 'mg/kg', 'mg/kg', 1e-6),
  'iron-change': kind('change in iron', 'Fe', 'mg/kg', 'mg/kg', 1e-6),
  'copper-change': kind('change in copper', 'Cu', 'mg/kg', 'mg/kg', 1e-6),
  'foam-change': kind('change in foam', 'V', 'mL', 'mL', 1e-6),
  'air-release-change': kind('change in air release time', 't', 's', 's'),
  density: kind('density', 'ρ', 'kg/m³', 'kg/m3'),
} as const satisfies Readonly<Record<string, QuantityKind>>;

export type QuantityName = keyof typeof quantityKinds;

export const shown = (quantity: QuantityName, si: number): number =>
  (si - quantityKinds[quantity].zero) / quantityKinds[quantity].factor;

/** A difference or an uncertainty has no zero. */
export const shownDifference = (quantity: QuantityName, si: number): number => si / quantityKinds[quantity].factor;

/** An interval as shown, cut where the quantity ends by nature: a share at the whole, hours at none. */
export const withinNature = (
  quantity: QuantityName,
  [low, high]: readonly [number, number],
): readonly [number, number] => {
  const { least, most }: { readonly least?: number; readonly most?: number } = quantityKinds[quantity];
  return [Math.max(low, least ?? -Infinity), Math.min(high, most ?? Infinity)];
};
