import { input, output, type Relation } from './relation.ts';

/** One store: oil, gears and housing at one temperature, losing heat in proportion to their rise above the air. */
export interface OneStore {
  readonly start_K: number;
  readonly ambient_K: number;
  readonly heat_W: number;
  readonly shed_W_K: number;
  readonly store_J_K: number;
}

/** "Not reached" is a result: the final temperature stays at or below the limit. */
export type TimeToLimit =
  { readonly kind: 'reached'; readonly time_s: number } | { readonly kind: 'not reached'; readonly final_K: number };

/** Where one store ends: T∞ = Ta + Q/K [K]; null for a shed that is not above 0. */
export const final_K = (of: { ambient_K: number; heat_W: number; shed_W_K: number }): number | null =>
  of.shed_W_K > 0 ? of.ambient_K + of.heat_W / of.shed_W_K : null;

/** τ = C/K [s]; null for a shed that is not above 0. */
export const timeConstant_s = (of: { store_J_K: number; shed_W_K: number }): number | null =>
  of.shed_W_K > 0 ? of.store_J_K / of.shed_W_K : null;

/**
 * Temperature of one store after a time under constant heat; a cool-down is the same with no heat.
 *
 *   T = T∞ + (T0 − T∞) exp(−t/τ),  T∞ = Ta + Q/K,  τ = C/K
 *
 * start, ambient [K], heat [W], shed [W/K], store [J/K], time [s]
 * returns      T [K]; null for a shed or a store that is not above 0
 * range        heat and shed constant over the run: a fit to a warming oil ends too cool, for its loss falls
 * source       incropera      check: Q 900, K 11, C 22000 from 22 °C: 70.553391 °C after 1800 s (computed by another program)
 */
export function oneStoreAt_K(of: OneStore & { time_s: number }): number | null {
  const end_K = final_K(of);
  const tau_s = timeConstant_s(of);
  if (end_K === null || tau_s === null || tau_s <= 0) return null;
  return end_K + (of.start_K - end_K) * Math.exp(-of.time_s / tau_s);
}

/**
 * Time until one store has warmed to a limit.
 *
 *   t = −τ ln[(T∞ − T_lim)/(T∞ − T0)]
 *
 * as oneStoreAt_K, limit [K]
 * returns      the time [s], 0 when it starts there; "not reached" when T∞ ≤ T_lim; null as oneStoreAt_K
 * range        as oneStoreAt_K
 * source       incropera      check: the same run to 95 °C: 4455.3676 s; with 700 W not reached, final 85.636364 °C
 */
export function timeToLimit(of: OneStore & { limit_K: number }): TimeToLimit | null {
  const end_K = final_K(of);
  const tau_s = timeConstant_s(of);
  if (end_K === null || tau_s === null || tau_s <= 0) return null;
  if (of.start_K >= of.limit_K) return { kind: 'reached', time_s: 0 };
  if (end_K <= of.limit_K) return { kind: 'not reached', final_K: end_K };
  return { kind: 'reached', time_s: -tau_s * Math.log((end_K - of.limit_K) / (end_K - of.start_K)) };
}

/** Shed from a steady run, K = Q/ΔT [W/K]; null when the rise is not above 0. */
export const shed_W_K = (of: { heat_W: number; rise_K: number }): number | null =>
  of.rise_K > 0 ? of.heat_W / of.rise_K : null;

/**
 * What the energy balance leaves over: heat made less heat stored less heat shed; 0 when it closes.
 *
 *   ΔQ = Q − C dT/dt − K (T − Ta)
 *
 * heat [W], store [J/K], rate [K/s], shed [W/K], rise [K]
 * returns      ΔQ [W]
 * range        none
 * source       derived        check: the run above at 1800 s closes
 */
export const leftOver_W = (of: {
  heat_W: number;
  store_J_K: number;
  rate_K_s: number;
  shed_W_K: number;
  rise_K: number;
}): number => of.heat_W - of.store_J_K * of.rate_K_s - of.shed_W_K * of.rise_K;

/** What a first-order process has still to rise: τ dT/dt [K]. Check: 18 min at 0.05 K/min hide 0.9 K. */
export const remainingRise_K = (of: { timeConstant_s: number; rate_K_s: number }): number =>
  of.timeConstant_s * of.rate_K_s;

/** Store from weighed parts, C = Σ m c [J/K]. Check: 38 kg of 460 and 1.74 kg of 2050 J/(kg·K) store 21047 J/K. */
export const storeOfParts_J_K = (
  parts: readonly { readonly mass_kg: number; readonly specificHeat_J_kgK: number }[],
): number => parts.reduce((sum, part) => sum + part.mass_kg * part.specificHeat_J_kgK, 0);

/** An interface as a record, which a relation's inputs have to be. */
type Numbers<I> = Readonly<Record<keyof I, number>>;

const script = 'computed by an independent script';
const heat = input('heat_W', 'Q', 'heat made', 'W');
const shed = input('shed_W_K', 'K', 'shed', 'W/K');
const store = input('store_J_K', 'C', 'store', 'J/K');
const start = input('start_K', 'T0', 'temperature at the start', 'K');
const ambient = input('ambient_K', 'Ta', 'air at the axle', 'K');
const axle = { start_K: 295.15, ambient_K: 295.15, heat_W: 900, shed_W_K: 11, store_J_K: 22000 };

export const oneStoreRelation: Relation<Numbers<OneStore & { readonly time_s: number }>> = {
  id: 'one-store',
  title: 'Warming and cooling of one store',
  formula: {
    latex: String.raw`T=T_\infty+(T_0-T_\infty)\,e^{-t/\tau},\quad T_\infty=T_a+\frac{Q}{K},\ \tau=\frac{C}{K}`,
    plain: 'T = T∞ + (T0 − T∞) exp(−t/τ), T∞ = Ta + Q/K, τ = C/K',
  },
  symbols: [
    start,
    ambient,
    heat,
    shed,
    store,
    input('time_s', 't', 'time', 's'),
    output('T', 'temperature of the oil', 'K'),
  ],
  range: [],
  source: 'incropera',
  grade: 'V2',
  checks: [
    { source: script, seen: 'computed', inputs: { ...axle, time_s: 1800 }, printed: '70.553391', unit: '°C' },
    ...(
      [
        [0, '95.0'],
        [600, '76.07973'],
        [1200, '62.063249'],
        [1800, '51.679585'],
        [2400, '43.987177'],
        [3600, '34.066819'],
      ] as const
    ).map(([time_s, printed]) => ({
      source: `cool-down, ${script}`,
      seen: 'computed' as const,
      inputs: { ...axle, heat_W: 0, start_K: 368.15, time_s },
      printed,
      unit: '°C',
    })),
  ],
  of: (run) => oneStoreAt_K(run),
};

export const timeToLimitRelation: Relation<Numbers<OneStore & { readonly limit_K: number }>> = {
  id: 'time-to-limit',
  title: 'Time to a limit, one store',
  formula: {
    latex: String.raw`t=-\tau\,\ln\frac{T_\infty-T_\mathrm{lim}}{T_\infty-T_0}`,
    plain: 't = −τ ln[(T∞ − T lim)/(T∞ − T0)]; not reached where T∞ ≤ T lim',
  },
  symbols: [
    start,
    ambient,
    heat,
    shed,
    store,
    input('limit_K', 'Tlim', 'limit', 'K'),
    output('t', 'time to the limit', 's'),
  ],
  range: [],
  source: 'incropera',
  grade: 'V2',
  checks: [
    { source: script, seen: 'computed', inputs: { ...axle, limit_K: 368.15 }, printed: '4455.3676' },
    {
      source: 'Incropera & DeWitt, 6th edition, example 5.1: 0.706 mm bead, 25 °C to 199 °C in 200 °C',
      seen: 'memory',
      inputs: {
        start_K: 298.15,
        ambient_K: 473.15,
        heat_W: 0,
        // per square metre of bead: h 400 W/(m²·K), store ρ c D/6
        shed_W_K: 400,
        store_J_K: (8500 * 400 * 0.000706) / 6,
        limit_K: 472.15,
      },
      printed: '5.2',
    },
  ],
  of(run) {
    const time = timeToLimit(run);
    return time?.kind === 'reached' ? time.time_s : null;
  },
};

export const finalRelation: Relation<{
  readonly ambient_K: number;
  readonly heat_W: number;
  readonly shed_W_K: number;
}> = {
  id: 'final-temperature',
  title: 'Final temperature, one store',
  formula: { latex: String.raw`T_\infty=T_a+\frac{Q}{K}`, plain: 'T∞ = Ta + Q/K' },
  symbols: [ambient, heat, shed, output('T∞', 'final temperature', 'K')],
  range: [],
  source: 'derived',
  grade: 'V2',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { ambient_K: 295.15, heat_W: 900, shed_W_K: 11 },
      printed: '103.81818',
      unit: '°C',
    },
    {
      source: `below its limit of 95 °C, ${script}`,
      seen: 'computed',
      inputs: { ambient_K: 295.15, heat_W: 700, shed_W_K: 11 },
      printed: '85.636364',
      unit: '°C',
    },
  ],
  of: (run) => final_K(run),
};

export const remainingRiseRelation: Relation<{ readonly timeConstant_s: number; readonly rate_K_s: number }> = {
  id: 'remaining-rise',
  title: 'What is still to come',
  formula: { latex: String.raw`T_\infty-T=\tau\,\frac{dT}{dt}`, plain: 'T∞ − T = τ dT/dt' },
  symbols: [
    input('timeConstant_s', 'τ', 'time constant', 's'),
    input('rate_K_s', 'dT/dt', 'rate of rise', 'K/s'),
    output('T∞ − T', 'rise still to come', 'K'),
  ],
  range: [],
  source: 'derived',
  grade: 'V2',
  checks: [{ source: script, seen: 'computed', inputs: { timeConstant_s: 1080, rate_K_s: 0.05 / 60 }, printed: '0.9' }],
  of: (run) => remainingRise_K(run),
};
