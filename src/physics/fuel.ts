import { finiteOrNull, input, output, type Relation } from './relation.ts';

/**
 * What watts cost. Marginal factors: what one more watt takes, not what the whole car takes a watt. A factor has its source
 * printed with it, since three public figures for petrol lie 2.6 % apart.
 */
export const fuelFactors = {
  petrol: { name: 'petrol', perEnergy_m3_J: 0.264e-3 / 3.6e6, co2_kg_m3: 2330, source: 'eu2020of728' },
  petrolTurbo: { name: 'petrol, charged', perEnergy_m3_J: 0.28e-3 / 3.6e6, co2_kg_m3: 2330, source: 'eu2020of728' },
  diesel: { name: 'diesel', perEnergy_m3_J: 0.22e-3 / 3.6e6, co2_kg_m3: 2640, source: 'eu2020of728' },
} as const;

/** Grams of CO2 a US gallon, by the US EPA: petrol and diesel. */
export const co2OfGallon_g = { petrol: 8887, diesel: 10180 } as const;

const script = 'computed by an independent script';
const drive = { power_W: 500, speed_m_s: 25 };
const power = input('power_W', 'ΔP', 'power more or less at the pinion', 'W');
const speed = input('speed_m_s', 'v', 'road speed', 'km/h');
const moving: Relation['range'] = [
  { symbol: 'v', from: 20 / 3.6, to: null, why: 'below 20 km/h idling and stops decide' },
];

export const energyPerDistanceRelation: Relation<{ readonly power_W: number; readonly speed_m_s: number }> = {
  id: 'energy-per-distance',
  title: 'Energy that a loss takes along the road',
  formula: { latex: String.raw`E=\frac{\Delta P}{v}`, plain: 'E = ΔP/v' },
  symbols: [power, speed, output('E', 'energy along the road', 'kWh/100 km')],
  range: moving,
  source: 'definition',
  grade: 'V2',
  checks: [{ source: `500 W at 90 km/h, ${script}`, seen: 'computed', inputs: drive, printed: '0.55555556' }],
  of: ({ power_W, speed_m_s }) => (speed_m_s > 0 ? finiteOrNull(power_W / speed_m_s) : null),
};

type Fuel = { readonly power_W: number; readonly speed_m_s: number; readonly perEnergy_m3_J: number };
export const fuelPerDistanceRelation: Relation<Fuel> = {
  id: 'fuel-per-distance',
  title: 'Fuel that a loss takes along the road',
  formula: { latex: String.raw`F=V_{pe}\,\frac{\Delta P}{v}`, plain: 'F = Vpe·ΔP/v' },
  symbols: [
    power,
    speed,
    input('perEnergy_m3_J', 'Vpe', 'marginal fuel of the engine', 'L/kWh'),
    output('F', 'fuel along the road', 'L/100 km'),
  ],
  range: moving,
  source: 'eu2020of728',
  grade: 'V1',
  checks: [
    {
      source: `petrol, factors of (EU) 2020/728, ${script}`,
      seen: 'computed',
      inputs: { ...drive, perEnergy_m3_J: fuelFactors.petrol.perEnergy_m3_J },
      printed: '0.14666667',
    },
    {
      source: `diesel, factors of (EU) 2020/728, ${script}`,
      seen: 'computed',
      inputs: { ...drive, perEnergy_m3_J: fuelFactors.diesel.perEnergy_m3_J },
      printed: '0.12222222',
    },
  ],
  of: ({ power_W, speed_m_s, perEnergy_m3_J }) =>
    speed_m_s > 0 && perEnergy_m3_J > 0 ? finiteOrNull((perEnergy_m3_J * power_W) / speed_m_s) : null,
};

export const co2PerDistanceRelation: Relation<{ readonly fuel_m2: number; readonly co2_kg_m3: number }> = {
  id: 'co2-per-distance',
  title: 'CO₂ of fuel along the road',
  formula: { latex: String.raw`m=c\,F`, plain: 'm = c·F' },
  symbols: [
    input('fuel_m2', 'F', 'fuel along the road', 'L/100 km'),
    input('co2_kg_m3', 'c', 'CO₂ of the fuel', 'g/L'),
    output('m', 'CO₂ along the road', 'g/km'),
  ],
  range: [],
  source: 'eu2020of728',
  grade: 'V1',
  checks: [
    {
      source: `petrol, factors of (EU) 2020/728, ${script}`,
      seen: 'computed',
      inputs: { fuel_m2: 0.14666667e-8, co2_kg_m3: 2330 },
      printed: '3.417333',
    },
    {
      source: `diesel, factors of (EU) 2020/728, ${script}`,
      seen: 'computed',
      inputs: { fuel_m2: 0.12222222e-8, co2_kg_m3: 2640 },
      printed: '3.226667',
    },
    {
      source: '5 L/100 km of diesel: explanation of a public eco-score',
      seen: 'published',
      inputs: { fuel_m2: 5e-8, co2_kg_m3: 2640 },
      printed: '132',
    },
    {
      source: '5 L/100 km of petrol at 2392 g/L: the same',
      seen: 'published',
      inputs: { fuel_m2: 5e-8, co2_kg_m3: 2392 },
      printed: '120',
    },
  ],
  of: ({ fuel_m2, co2_kg_m3 }) => finiteOrNull(fuel_m2 * co2_kg_m3),
};

type Electric = { readonly power_W: number; readonly speed_m_s: number; readonly driveEfficiency: number };
export const electricPerDistanceRelation: Relation<Electric> = {
  id: 'electric-per-distance',
  title: 'Energy from the battery that a loss takes along the road',
  formula: { latex: String.raw`E=\frac{\Delta P}{\eta\,v}`, plain: 'E = ΔP/(η·v)' },
  symbols: [
    power,
    speed,
    input('driveEfficiency', 'η', 'efficiency from the battery to the axle', '1'),
    output('E', 'energy along the road', 'kWh/100 km'),
  ],
  range: [...moving, { symbol: 'η', from: 0, to: 1, why: 'an efficiency' }],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: `500 W at 90 km/h with 0.88, ${script}`,
      seen: 'computed',
      inputs: { ...drive, driveEfficiency: 0.88 },
      printed: '0.63131313',
    },
  ],
  of: ({ power_W, speed_m_s, driveEfficiency }) =>
    speed_m_s > 0 && driveEfficiency > 0 ? finiteOrNull(power_W / (driveEfficiency * speed_m_s)) : null,
};

/** One stretch of a duty: its share of the time, the power more or less, and the road speed. */
export interface Duty {
  readonly share: number;
  readonly power_W: number;
  readonly speed_m_s: number;
}

/**
 * Energy along the road of a whole duty, J/m: both sums go by time, so it is not the mean of the figures of its speeds.
 *
 *   E = Σ fᵢ·ΔPᵢ / Σ fᵢ·vᵢ
 *
 * returns null without way made good; source: definition; check: four steps of a duty, 0.681 kWh/100 km (independent script)
 */
export function dutyEnergy_J_m(duty: readonly Duty[]): number | null {
  const way = duty.reduce((sum, { share, speed_m_s }) => sum + share * speed_m_s, 0);
  const energy = duty.reduce((sum, { share, power_W }) => sum + share * power_W, 0);
  return way > 0 ? finiteOrNull(energy / way) : null;
}

/** Miles a US gallon after so much more fuel a distance: a reciprocal, never added or averaged. Null where nothing is left. */
export function mpgAfter(of: { readonly mpg: number; readonly more_m2: number }): number | null {
  const fuel_m2 = usGallon_m3 / mile_m / of.mpg + of.more_m2;
  return of.mpg > 0 && fuel_m2 > 0 ? usGallon_m3 / mile_m / fuel_m2 : null;
}

const usGallon_m3 = 3.785411784e-3;
const mile_m = 1609.344;
