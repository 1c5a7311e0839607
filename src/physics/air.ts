import { allAbove0 } from './answer.ts';
import { input, output, type Relation } from './relation.ts';

/** Sutherland's law: value at a reference temperature, and a constant temperature. From memory. */
const viscosity = { at_Pa_s: 1.716e-5, reference_K: 273.15, constant_K: 110.4 };
const conductivity = { at_W_mK: 0.0241, reference_K: 273, constant_K: 194 };
const gasConstant_J_kgK = 287.05;
/** 1006 to 1014 J/(kg·K) between 250 and 400 K; from memory. */
const specificHeat_J_kgK = 1007;

/** Air as convection laws take it, at film temperature. */
export interface Air {
  readonly nu_m2_s: number;
  readonly conductivity_W_mK: number;
  /** Thermal diffusivity. */
  readonly diffusivity_m2_s: number;
  readonly prandtl: number;
}

export interface AirState {
  /** Mean of surface and air. */
  readonly film_K: number;
  readonly pressure_Pa: number;
}

/**
 * Dry air at film temperature and pressure.
 *
 *   μ = μ0 (T/T0)^1.5 (T0 + S)/(T + S),  the same form for k,  ρ = p/(R T),  ν = μ/ρ,  α = k/(ρ cp),  Pr = ν/α
 *
 * film         [K], pressure [Pa]
 * returns      ν, α [m²/s], k [W/(m·K)], Pr [1], within about 1 %; null when film or pressure is not above 0
 * range        250 to 400 K: rows of a handbook were compared there
 * source       sutherland      check: Incropera & DeWitt, Table A.4: 15.89e-6 m²/s and 0.0263 W/(m·K) at 300 K
 */
export function airAt(at: AirState): Air | null {
  if (!allAbove0(at.film_K, at.pressure_Pa)) return null;
  const density_kg_m3 = at.pressure_Pa / (gasConstant_J_kgK * at.film_K);
  const viscosity_Pa_s = viscosity.at_Pa_s * sutherland(viscosity, at.film_K);
  const conductivity_W_mK = conductivity.at_W_mK * sutherland(conductivity, at.film_K);
  const air = {
    nu_m2_s: viscosity_Pa_s / density_kg_m3,
    conductivity_W_mK,
    diffusivity_m2_s: conductivity_W_mK / (density_kg_m3 * specificHeat_J_kgK),
    prandtl: (viscosity_Pa_s * specificHeat_J_kgK) / conductivity_W_mK,
  };
  return allAbove0(...Object.values(air)) ? air : null;
}

const sutherland = (law: { reference_K: number; constant_K: number }, film_K: number): number =>
  ((film_K / law.reference_K) ** 1.5 * (law.reference_K + law.constant_K)) / (film_K + law.constant_K);

/** Mean of surface and air, where convection laws take the air [K]. */
export const film_K = (at: { surface_K: number; ambient_K: number }): number => (at.surface_K + at.ambient_K) / 2;

const film = input('film_K', 'T', 'film temperature, the mean of surface and air', 'K');
const pressure = input('pressure_Pa', 'p', 'air pressure', 'Pa');
const range = [{ symbol: 'T', from: 250, to: 400, why: 'compared with handbook rows from 250 K to 400 K' }];
const about = { relative: 0.01, why: 'constants are carried with 1 %' };
/** The handbook's densities are those of 100 kPa. */
const row = (film_K: number, printed: string, pressure_Pa = 1e5) => ({
  source: 'Incropera & DeWitt, Table A.4, air',
  seen: 'memory' as const,
  inputs: { film_K, pressure_Pa },
  printed,
  within: about,
});
const at55C = (printed: string) => ({
  ...row(328.15, printed),
  source: 'air at 55 °C and 100 kPa, as handbooks are interpolated',
});

export const airViscosityRelation: Relation<Readonly<Record<keyof AirState, number>>> = {
  id: 'air-viscosity',
  title: 'Kinematic viscosity of air',
  formula: {
    latex: String.raw`\nu=\frac{RT}{p}\,\mu_0\left(\frac{T}{T_0}\right)^{3/2}\frac{T_0+S}{T+S},\quad \mu_0=17.16\cdot10^{-6},\ T_0=273.15,\ S=110.4`,
    plain: 'ν = (R T/p) μ0 (T/T0)^1.5 (T0 + S)/(T + S), μ0 17.16e-6 Pa·s, T0 273.15 K, S 110.4 K, R 287.05 J/(kg·K)',
  },
  symbols: [film, pressure, output('ν', 'kinematic viscosity of air', 'm²/s')],
  range,
  source: 'sutherland',
  grade: 'VC',
  checks: [
    ...([row(250, '11.44'), row(300, '15.89'), row(350, '20.92'), row(400, '26.41')] as const).map((check) => ({
      ...check,
      unit: 'mm²/s',
    })),
    { ...at55C('18.6'), unit: 'mm²/s' },
  ],
  of: (at) => airAt(at)?.nu_m2_s ?? null,
};

export const airConductivityRelation: Relation<{ readonly film_K: number }> = {
  id: 'air-conductivity',
  title: 'Heat conductivity of air',
  formula: {
    latex: String.raw`k=k_0\left(\frac{T}{T_0}\right)^{3/2}\frac{T_0+S}{T+S},\quad k_0=0.0241,\ T_0=273,\ S=194`,
    plain: 'k = k0 (T/T0)^1.5 (T0 + S)/(T + S), k0 0.0241 W/(m·K), T0 273 K, S 194 K',
  },
  symbols: [film, output('k', 'conductivity of air', 'W/(m·K)')],
  range,
  source: 'sutherland',
  grade: 'VC',
  checks: [row(250, '0.0223'), row(300, '0.0263'), row(350, '0.0300'), row(400, '0.0338'), at55C('0.0284')].map(
    ({ inputs: { film_K }, ...check }) => ({ ...check, inputs: { film_K } }),
  ),
  of: (at) => airAt({ ...at, pressure_Pa: 1e5 })?.conductivity_W_mK ?? null,
};

export const airPrandtlRelation: Relation<{ readonly film_K: number }> = {
  id: 'air-prandtl',
  title: 'Prandtl number of air',
  formula: { latex: String.raw`\mathrm{Pr}=\frac{\mu c_p}{k},\quad c_p=1007`, plain: 'Pr = μ cp/k, cp 1007 J/(kg·K)' },
  symbols: [film, output('Pr', 'Prandtl number', '1')],
  range,
  source: 'sutherland',
  grade: 'VC',
  checks: [row(250, '0.720'), row(300, '0.707'), row(350, '0.700'), row(400, '0.690'), at55C('0.705')].map(
    ({ inputs: { film_K }, ...check }) => ({ ...check, inputs: { film_K } }),
  ),
  of: (at) => airAt({ ...at, pressure_Pa: 1e5 })?.prandtl ?? null,
};
