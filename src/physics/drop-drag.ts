import { finiteOrNull, input, output, type Relation } from './relation.ts';

interface Flight {
  readonly diameter_m: number;
  readonly speed_m_s: number;
  readonly air_kg_m3: number;
  readonly air_Pa_s: number;
}

/** Reynolds number of a drop in still air, Re = ρa U d/ηa [1]; null for air without viscosity. */
export const dropReynolds = (at: Flight): number | null =>
  at.air_Pa_s > 0 ? finiteOrNull((at.air_kg_m3 * at.speed_m_s * at.diameter_m) / at.air_Pa_s) : null;

/**
 * Drag coefficient of a drop.
 *
 *   C = 24/Re (1 + 0.15 Re^0.687)
 *
 * Reynolds number [1]
 * returns      C [1]; null for a Reynolds number that is not above 0
 * range        Re up to about 1000 (from memory), a drop that stays round
 * source       schillerNaumann      check: 165.8 gives 0.87181655 (computed by another program)
 */
export const dropDrag = ({ reynolds }: { reynolds: number }): number | null =>
  reynolds > 0 ? finiteOrNull((24 / reynolds) * (1 + 0.15 * reynolds ** 0.687)) : null;

interface Slowed {
  readonly drag: number;
  readonly air_kg_m3: number;
  readonly oil_kg_m3: number;
  readonly distance_m: number;
  readonly diameter_m: number;
}

/**
 * Share of its speed that a drop loses over a distance in still air; air in a housing turns with the gear and takes less.
 *
 *   1 − exp(−0.75 C (ρa/ρo) x/d)
 *
 * drag C       [1], held as it was at the start; densities [kg/m³], lengths [m]
 * returns      [1]; null unless oil and drop are above 0
 * range        none
 * source       derived      check: 0.3 mm over 60 mm: 0.17417663 (computed by another program)
 */
export const speedLost = (at: Slowed): number | null =>
  at.oil_kg_m3 > 0 && at.diameter_m > 0
    ? finiteOrNull(1 - Math.exp((-0.75 * at.drag * at.air_kg_m3 * at.distance_m) / (at.oil_kg_m3 * at.diameter_m)))
    : null;

const script = 'computed by an independent script';
const air = input('air_kg_m3', 'ρa', 'density of the air', 'kg/m³');
const diameter = input('diameter_m', 'd', 'diameter of the drop', 'm');

export const dropReynoldsRelation: Relation<Readonly<Record<keyof Flight, number>>> = {
  id: 'drop-reynolds',
  title: 'Reynolds number of a drop in flight',
  formula: { latex: String.raw`\mathrm{Re}=\frac{\rho_aUd}{\eta_a}`, plain: 'Re = ρa U d/ηa' },
  symbols: [
    diameter,
    input('speed_m_s', 'U', 'speed of the drop', 'm/s'),
    air,
    input('air_Pa_s', 'ηa', 'dynamic viscosity of the air', 'Pa·s'),
    output('Re', 'Reynolds number', '1'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: `0.3 mm at 8.29 m/s, ${script}`,
      seen: 'computed',
      inputs: { diameter_m: 0.3e-3, speed_m_s: 8.29, air_kg_m3: 1.2, air_Pa_s: 1.8e-5 },
      printed: '165.8',
    },
  ],
  of: (at) => dropReynolds(at),
};

export const dropDragRelation: Relation<{ readonly reynolds: number }> = {
  id: 'drop-drag',
  title: 'Drag coefficient of a drop',
  formula: {
    latex: String.raw`C=\frac{24}{\mathrm{Re}}\left(1+0.15\,\mathrm{Re}^{0.687}\right)`,
    plain: 'C = 24/Re (1 + 0.15 Re^0.687)',
  },
  symbols: [input('reynolds', 'Re', 'Reynolds number', '1'), output('C', 'drag coefficient', '1')],
  range: [{ symbol: 'Re', from: null, to: 1000, why: 'above it the coefficient stays at about 0.44 (from memory)' }],
  source: 'schillerNaumann',
  grade: 'VC',
  checks: [
    { source: script, seen: 'computed', inputs: { reynolds: 165.8 }, printed: '0.87181655' },
    { source: 'drag of a sphere in fast flow, 0.44', seen: 'memory', inputs: { reynolds: 1000 }, printed: '0.44' },
    {
      source: 'slow sphere: 24/Re',
      seen: 'memory',
      inputs: { reynolds: 0.001 },
      printed: '24000',
      within: { relative: 0.0014, why: 'the second term is 0.15 Re^0.687' },
    },
  ],
  of: (at) => dropDrag(at),
};

export const speedLostRelation: Relation<Readonly<Record<keyof Slowed, number>>> = {
  id: 'drop-slowing',
  title: 'Share of its speed that a drop loses to still air',
  formula: {
    latex: String.raw`1-\exp\left(-\frac{3}{4}C\,\frac{\rho_a}{\rho_o}\,\frac{x}{d}\right)`,
    plain: '1 − exp(−0.75 C (ρa/ρo) x/d)',
  },
  symbols: [
    input('drag', 'C', 'drag coefficient', '1'),
    air,
    input('oil_kg_m3', 'ρo', 'density of the oil', 'kg/m³'),
    input('distance_m', 'x', 'distance across', 'm'),
    diameter,
    output('lost', 'share of the speed that is lost', '1'),
  ],
  range: [],
  source: 'derived',
  grade: 'VC',
  checks: [
    {
      source: `0.3 mm over 60 mm, ${script}`,
      seen: 'computed',
      inputs: { drag: 0.87181655, air_kg_m3: 1.2, oil_kg_m3: 820, distance_m: 0.06, diameter_m: 0.3e-3 },
      printed: '0.1741766',
    },
  ],
  of: (at) => speedLost(at),
};
