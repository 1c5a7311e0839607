import { input, output, type Relation } from './relation.ts';

/** Bubbles in oil: how fast they rise, and what they do to its viscosity. */

const g_m_s2 = 9.80665;
const script = 'computed by an independent script';
const finite = (x: number): number | null => (Number.isFinite(x) ? x : null);

type Bubble = { readonly density_kg_m3: number; readonly diameter_m: number; readonly viscosity_Pa_s: number };
const symbols = [
  input('density_kg_m3', 'ρ', 'density of the oil', 'kg/m³'),
  input('diameter_m', 'd', 'diameter of the bubble', 'µm'),
  input('viscosity_Pa_s', 'η', 'dynamic viscosity of the oil', 'mPa·s'),
];
const rise = output('v', 'speed of rise', 'm/s');
const range: Relation['range'] = [
  { symbol: 'd', from: null, to: 1e-3, why: 'larger bubbles flatten, and rise slower than this' },
];
const of =
  (by: number) =>
  (bubble: Bubble): number | null =>
    bubble.viscosity_Pa_s > 0 && bubble.diameter_m >= 0 && bubble.density_kg_m3 > 0
      ? finite((bubble.density_kg_m3 * g_m_s2 * bubble.diameter_m ** 2) / (by * bubble.viscosity_Pa_s))
      : null;
const hot = { density_kg_m3: 822, viscosity_Pa_s: 0.0123 };

export const rigidBubbleRelation: Relation<Bubble> = {
  id: 'bubble-rise',
  title: 'Rise of a bubble in used oil',
  formula: { latex: String.raw`v=\frac{\rho g d^2}{18\,\eta}`, plain: 'v = ρ g d²/(18 η)' },
  symbols: [...symbols, rise],
  range,
  source: 'stokesBubble',
  grade: 'V2',
  checks: [
    ...(
      [
        [20e-6, '1.4563805e-5'],
        [50e-6, '9.1023784e-5'],
        [100e-6, '3.6409514e-4'],
        [300e-6, '3.2768562e-3'],
      ] as const
    ).map(([diameter_m, printed]) => ({
      source: `hot reference oil, ${script}`,
      seen: 'computed' as const,
      inputs: { ...hot, diameter_m },
      printed,
    })),
    {
      source: `reference oil at 20 °C, ${script}`,
      seen: 'computed',
      inputs: { density_kg_m3: 865, viscosity_Pa_s: 0.241838, diameter_m: 100e-6 },
      printed: '1.9486764e-5',
    },
  ],
  of: of(18),
};

export const mobileBubbleRelation: Relation<Bubble> = {
  id: 'bubble-rise-clean',
  title: 'Rise of a bubble whose skin moves, in clean oil',
  formula: { latex: String.raw`v=\frac{\rho g d^2}{12\,\eta}`, plain: 'v = ρ g d²/(12 η)' },
  symbols: [...symbols, rise],
  range,
  source: 'hadamard1911',
  grade: 'VC',
  checks: (
    [
      [20e-6, '2.1845708e-5'],
      [50e-6, '1.3653568e-4'],
      [100e-6, '5.461427e-4'],
      [300e-6, '4.9152843e-3'],
    ] as const
  ).map(([diameter_m, printed]) => ({
    source: `hot reference oil, ${script}`,
    seen: 'computed',
    inputs: { ...hot, diameter_m },
    printed,
  })),
  of: of(12),
};

export const bubbleReynoldsRelation: Relation<Bubble & { readonly speed_m_s: number }> = {
  id: 'bubble-reynolds',
  title: 'Reynolds number of a rising bubble',
  formula: { latex: String.raw`Re=\frac{\rho v d}{\eta}`, plain: 'Re = ρ v d/η' },
  symbols: [...symbols, input('speed_m_s', 'v', 'speed of rise', 'm/s'), output('Re', 'Reynolds number', '1')],
  range: [{ symbol: 'Re', from: null, to: 1, why: 'above 1 the rise no longer goes with d²' }],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: `300 µm in hot reference oil, ${script}`,
      seen: 'computed',
      inputs: { ...hot, diameter_m: 300e-6, speed_m_s: 0.0032768562 },
      printed: '0.06569697',
    },
  ],
  of: ({ density_kg_m3, speed_m_s, diameter_m, viscosity_Pa_s }) =>
    viscosity_Pa_s > 0 ? finite((density_kg_m3 * speed_m_s * diameter_m) / viscosity_Pa_s) : null,
};

/** Three answers to one question; all raise the viscosity, and none foretells what happens to a film. */
const thicker = (
  row: Pick<Relation, 'id' | 'title' | 'formula' | 'source' | 'grade'>,
  slope: number,
  printed: string,
): Relation<{ readonly airShare: number }> => ({
  ...row,
  symbols: [
    input('airShare', 'φ', 'air share by volume', '1'),
    output('η/η0', 'viscosity with the air over that without', '1'),
  ],
  range: [{ symbol: 'φ', from: 0, to: 0.1, why: 'first order: few bubbles, far from each other' }],
  checks: [{ source: `a tenth of air, ${script}`, seen: 'computed', inputs: { airShare: 0.1 }, printed }],
  of: ({ airShare }) => finite(1 + slope * airShare),
});

export const cleanBubblesRelation = thicker(
  {
    id: 'bubbly-viscosity-clean',
    title: 'Viscosity of oil with clean bubbles',
    formula: { latex: String.raw`\eta/\eta_0=1+\varphi`, plain: 'η/η0 = 1 + φ' },
    source: 'taylor1932',
    grade: 'VC',
  },
  1,
  '1.100',
);
export const rigidBubblesRelation = thicker(
  {
    id: 'bubbly-viscosity-rigid',
    title: 'Viscosity of oil with bubbles as hard as balls',
    formula: { latex: String.raw`\eta/\eta_0=1+2.5\,\varphi`, plain: 'η/η0 = 1 + 2.5 φ' },
    source: 'einstein1906',
    grade: 'VC',
  },
  2.5,
  '1.250',
);
export const measuredBubblesRelation = thicker(
  {
    id: 'bubbly-viscosity-measured',
    title: 'Viscosity of oil with bubbles, as once measured (unverified)',
    formula: { latex: String.raw`\eta/\eta_0=1+1.5\,\varphi`, plain: 'η/η0 = 1 + 0.015·(φ in %)' },
    source: 'hayward1961',
    grade: 'U',
  },
  1.5,
  '1.150',
);

/** Air release by ASTM D3427 is the time to this share of entrained air; a number to store, not to reckon with (from memory). */
export const airReleaseTarget_ratio = 0.002;
