import { input, output, type Relation } from './relation.ts';

/** A film drawn out of a bath by a slow surface, and a drop that flies through still air. Estimates, never a result. */

const g_m_s2 = 9.80665;
const script = 'computed by an independent script';
const finite = (x: number): number | null => (Number.isFinite(x) ? x : null);

type Drawn = {
  readonly viscosity_Pa_s: number;
  readonly speed_m_s: number;
  readonly tension_N_m: number;
  readonly density_kg_m3: number;
};
const slow = { viscosity_Pa_s: 0.0887, speed_m_s: 0.05, tension_N_m: 0.03, density_kg_m3: 870 };
const symbols = [
  input('viscosity_Pa_s', 'η', 'dynamic viscosity', 'mPa·s'),
  input('speed_m_s', 'U', 'speed of the surface', 'm/s'),
  input('tension_N_m', 'σ', 'surface tension', 'N/m'),
];
const density = input('density_kg_m3', 'ρ', 'density of the oil', 'kg/m³');

export const capillaryNumberRelation: Relation<Omit<Drawn, 'density_kg_m3'>> = {
  id: 'capillary-number',
  title: 'Viscous against capillary forces',
  formula: { latex: String.raw`Ca=\frac{\eta U}{\sigma}`, plain: 'Ca = η·U/σ' },
  symbols: [...symbols, output('Ca', 'capillary number', '1')],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { viscosity_Pa_s: slow.viscosity_Pa_s, speed_m_s: slow.speed_m_s, tension_N_m: slow.tension_N_m },
      printed: '0.14783333',
    },
  ],
  of: ({ viscosity_Pa_s, speed_m_s, tension_N_m }) =>
    tension_N_m > 0 ? finite((viscosity_Pa_s * speed_m_s) / tension_N_m) : null,
};

export const drawnFilmRelation: Relation<Drawn> = {
  id: 'drawn-film-capillary',
  title: 'Film drawn out by a very slow surface',
  formula: {
    latex: String.raw`h=0.944\sqrt{\frac{\sigma}{\rho g}}\;Ca^{2/3}`,
    plain: 'h = 0.944·√(σ/(ρ g))·Ca^(2/3)',
  },
  symbols: [...symbols, density, output('h', 'film', 'mm')],
  range: [
    {
      symbol: 'U',
      from: 0,
      to: 0.01,
      why: 'the law holds for a capillary number below some 0.01; a road axle has 1 to 10',
    },
  ],
  source: 'landauLevich1942',
  grade: 'VC',
  checks: [{ source: script, seen: 'computed', inputs: slow, printed: '0.49491153' }],
  of: ({ viscosity_Pa_s, speed_m_s, tension_N_m, density_kg_m3 }) => {
    if (!(tension_N_m > 0 && density_kg_m3 > 0 && viscosity_Pa_s >= 0 && speed_m_s >= 0)) return null;
    const Ca = (viscosity_Pa_s * speed_m_s) / tension_N_m;
    return finite(0.944 * Math.sqrt(tension_N_m / (density_kg_m3 * g_m_s2)) * Ca ** (2 / 3));
  },
};

/**
 * Largest load of oil that a turning roller carries, over R·√(νU/g): at the largest flow, 2/3, the film h(θ) solves
 * h − h³·cos(θ)/3 = 2/3 in units of √(νU/g); the load is its mean times 2π.
 *
 * source  H. K. Moffatt (1977), and Leslie, Wilson and Duffy (2012), abstract       check: 4.44272
 */
export function criticalLoad(steps = 20000): number {
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += filmAt(((i + 0.5) / steps) * 2 * Math.PI);
  return (sum / steps) * 2 * Math.PI;
}

/** The thinner film that carries the largest flow at an angle from the rising horizontal, in units of √(νU/g). */
function filmAt(angle_rad: number): number {
  const c = Math.cos(angle_rad);
  let [low, high] = [0, c > 0 ? Math.min(2, 1 / Math.sqrt(c)) : 2];
  for (let i = 0; i < 60; i++) {
    const h = (low + high) / 2;
    if (h - (h ** 3 * c) / 3 < 2 / 3) low = h;
    else high = h;
  }
  return (low + high) / 2;
}

type Drop = {
  readonly diameter_m: number;
  readonly speed_m_s: number;
  readonly way_m: number;
  readonly oil_kg_m3: number;
  readonly air_kg_m3: number;
  readonly air_Pa_s: number;
};
export const dropDragRelation: Relation<Drop> = {
  id: 'drop-drag',
  title: 'Speed that a drop loses in still air',
  formula: {
    latex: String.raw`1-e^{-0.75\,C_D\frac{\rho_a}{\rho_o}\frac{x}{d}},\quad C_D=\frac{24}{Re}(1+0.15\,Re^{0.687})`,
    plain: '1 − exp(−0.75·CD·(ρa/ρo)·x/d), CD = 24/Re·(1 + 0.15 Re^0.687) at the start',
  },
  symbols: [
    input('diameter_m', 'd', 'diameter of the drop', 'mm'),
    input('speed_m_s', 'U', 'speed at the start', 'm/s'),
    input('way_m', 'x', 'way flown', 'mm'),
    input('oil_kg_m3', 'ρo', 'density of the oil', 'kg/m³'),
    input('air_kg_m3', 'ρa', 'density of the air', 'kg/m³'),
    input('air_Pa_s', 'ηa', 'dynamic viscosity of the air', 'mPa·s'),
    output('share', 'share of the speed that is lost', '1'),
  ],
  range: [
    {
      symbol: 'd',
      from: 20e-6,
      to: 3e-3,
      why: 'a round drop; the air of a housing turns with the gear, so less is lost',
    },
  ],
  source: 'schillerNaumann1933',
  grade: 'VC',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { diameter_m: 0.3e-3, speed_m_s: 8.29, way_m: 0.06, oil_kg_m3: 820, air_kg_m3: 1.2, air_Pa_s: 1.8e-5 },
      printed: '0.1741766',
    },
  ],
  of: (d) => {
    const Re = (d.air_kg_m3 * d.speed_m_s * d.diameter_m) / d.air_Pa_s;
    if (!(Re > 0) || !(d.oil_kg_m3 > 0) || !(d.way_m >= 0)) return null;
    const drag = (24 / Re) * (1 + 0.15 * Re ** 0.687);
    return finite(1 - Math.exp((-0.75 * drag * d.air_kg_m3 * d.way_m) / (d.oil_kg_m3 * d.diameter_m)));
  },
};
