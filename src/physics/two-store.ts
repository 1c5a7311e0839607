import { input, output, type Relation } from './relation.ts';

/** Oil with gears inside a housing that loses the heat to the air: two stores and what joins them. */
export interface TwoStore {
  readonly oilStore_J_K: number;
  readonly housingStore_J_K: number;
  /** Between oil and housing. */
  readonly coupling_W_K: number;
  /** From housing to air. */
  readonly shed_W_K: number;
}

export interface TwoTemperatures {
  readonly oil_K: number;
  readonly housing_K: number;
}

/**
 * Where two stores end under constant heat in the oil.
 *
 *   T2 = Ta + Q/K,  T1 = Ta + Q (1/G + 1/K)
 *
 * ambient [K], heat [W], coupling G and shed K [W/K]
 * returns      oil T1 and housing T2 [K]; null when G or K is not above 0
 * range        constant heat and shed
 * source       derived: at rest all heat passes both resistances      check: 900 W, G 60: oil 15 K above the housing
 */
export function twoStoreFinal(of: {
  ambient_K: number;
  heat_W: number;
  coupling_W_K: number;
  shed_W_K: number;
}): TwoTemperatures | null {
  if (!(of.coupling_W_K > 0) || !(of.shed_W_K > 0)) return null;
  const housing_K = of.ambient_K + of.heat_W / of.shed_W_K;
  return { oil_K: housing_K + of.heat_W / of.coupling_W_K, housing_K };
}

/**
 * The two time constants: the oil finding the housing, then both finding the air.
 *
 *   C1 dT1/dt = Q − G (T1 − T2),  C2 dT2/dt = G (T1 − T2) − K (T2 − Ta)
 *   1/τ² − (a + b + c)/τ + a c = 0,  a = G/C1, b = G/C2, c = K/C2
 *
 * stores [J/K], G, K [W/K]
 * returns      fast, slow [s]; null when a store, G or K is not above 0
 * range        constant coupling and shed
 * source       derived        check: 6 and 16 kJ/K, G 60, K 11 W/K: 72 s and 2028 s (computed by another program)
 */
export function twoStoreConstants(of: TwoStore): { readonly fast_s: number; readonly slow_s: number } | null {
  const rates = ratesOf(of);
  return rates && { fast_s: 1 / rates.fast_1_s, slow_s: 1 / rates.slow_1_s };
}

/** Both temperatures after a time under constant heat; null as twoStoreConstants. */
export function twoStoreAt(
  of: TwoStore & { start: TwoTemperatures; ambient_K: number; heat_W: number; time_s: number },
): TwoTemperatures | null {
  const rates = ratesOf(of);
  const end = twoStoreFinal(of);
  if (rates === null || end === null) return null;
  const { fast_1_s, slow_1_s } = rates;
  const oil_K = of.start.oil_K - end.oil_K;
  const housing_K = of.start.housing_K - end.housing_K;
  // d(oil)/dt at the start fixes the shares: oil = f e^(−t fast) + s e^(−t slow)
  const oilRate_K_s = (-of.coupling_W_K * (oil_K - housing_K)) / of.oilStore_J_K;
  const slowShare_K = (oilRate_K_s + fast_1_s * oil_K) / (fast_1_s - slow_1_s);
  const fastShare_K = oil_K - slowShare_K;
  const fast = fastShare_K * Math.exp(-fast_1_s * of.time_s);
  const slow = slowShare_K * Math.exp(-slow_1_s * of.time_s);
  const lag_s = of.oilStore_J_K / of.coupling_W_K;
  return {
    oil_K: end.oil_K + fast + slow,
    housing_K: end.housing_K + fast * (1 - fast_1_s * lag_s) + slow * (1 - slow_1_s * lag_s),
  };
}

function ratesOf(of: TwoStore): { fast_1_s: number; slow_1_s: number } | null {
  const positive = [of.oilStore_J_K, of.housingStore_J_K, of.coupling_W_K, of.shed_W_K].every((x) => x > 0);
  if (!positive) return null;
  const a = of.coupling_W_K / of.oilStore_J_K;
  const b = of.coupling_W_K / of.housingStore_J_K;
  const c = of.shed_W_K / of.housingStore_J_K;
  const sum = a + b + c;
  const fast_1_s = (sum + Math.sqrt(sum ** 2 - 4 * a * c)) / 2;
  // the product of the rates is a c; the other root would be lost in the difference
  return { fast_1_s, slow_1_s: (a * c) / fast_1_s };
}

const coupling = input('coupling_W_K', 'G', 'coupling of oil and housing', 'W/K');
const shed = input('shed_W_K', 'K', 'shed of the housing', 'W/K');
const script = 'computed by an independent script, whole seconds';
const sample = { oilStore_J_K: 6000, housingStore_J_K: 16000, coupling_W_K: 60, shed_W_K: 11 };

type Final = {
  readonly ambient_K: number;
  readonly heat_W: number;
  readonly coupling_W_K: number;
  readonly shed_W_K: number;
};
export const twoStoreFinalRelation: Relation<Final> = {
  id: 'two-store-final',
  title: 'Final oil temperature, two stores',
  formula: {
    latex: String.raw`T_1=T_a+Q\left(\frac1G+\frac1K\right)`,
    plain: 'T1 = Ta + Q (1/G + 1/K)',
  },
  symbols: [
    input('ambient_K', 'Ta', 'air at the axle', 'K'),
    input('heat_W', 'Q', 'heat made', 'W'),
    coupling,
    shed,
    output('T1', 'final oil temperature', 'K'),
  ],
  range: [],
  source: 'derived',
  grade: 'VC',
  checks: [
    {
      source: 'the one-store end of 103.81818 °C, computed by an independent script, and 900 W/60 W/K = 15 K',
      seen: 'computed',
      inputs: { ambient_K: 295.15, heat_W: 900, coupling_W_K: 60, shed_W_K: 11 },
      printed: '118.81818',
      unit: '°C',
    },
  ],
  of: (run) => twoStoreFinal(run)?.oil_K ?? null,
};

const constantSymbols = [
  input('oilStore_J_K', 'C1', 'store of the oil and gears', 'J/K'),
  input('housingStore_J_K', 'C2', 'store of the housing', 'J/K'),
  coupling,
  shed,
] as const;
const constantFormula = {
  latex: String.raw`\frac1{\tau}=\tfrac12\left[s\pm\sqrt{s^2-4ac}\right],\quad s=a+b+c,\ a=\frac{G}{C_1},\ b=\frac{G}{C_2},\ c=\frac{K}{C_2}`,
  plain: '1/τ = [s ± √(s² − 4 a c)]/2, s = a + b + c, a = G/C1, b = G/C2, c = K/C2',
};

export const slowConstantRelation: Relation<TwoStoreInputs> = {
  id: 'two-store-slow',
  title: 'Slow time constant of two stores',
  formula: constantFormula,
  symbols: [...constantSymbols, output('τ', 'slow time constant', 's')],
  range: [],
  source: 'derived',
  grade: 'VC',
  checks: [{ source: script, seen: 'computed', inputs: sample, printed: '2028' }],
  of: (run) => twoStoreConstants(run)?.slow_s ?? null,
};

export const fastConstantRelation: Relation<TwoStoreInputs> = {
  id: 'two-store-fast',
  title: 'Fast time constant of two stores',
  formula: constantFormula,
  symbols: [...constantSymbols, output('τ', 'fast time constant', 's')],
  range: [],
  source: 'derived',
  grade: 'VC',
  checks: [{ source: script, seen: 'computed', inputs: sample, printed: '72' }],
  of: (run) => twoStoreConstants(run)?.fast_s ?? null,
};

type TwoStoreInputs = Readonly<Record<keyof TwoStore, number>>;
