import { finiteOrNull, input, output, type Relation } from './relation.ts';
import { gravity_m_s2 } from './speeds.ts';

interface Bubble {
  readonly diameter_m: number;
  readonly density_kg_m3: number;
  readonly viscosity_Pa_s: number;
}

/**
 * Speed at which a bubble with a rigid skin rises: in used oil, whose dirt holds the surface still.
 *
 *   v = ρ g d²/(18 η)
 *
 * diameter     [m], density of the oil [kg/m³], viscosity [Pa·s]
 * returns      v [m/s]; null for a viscosity that is not above 0
 * range        Reynolds number up to about 1, and one bubble alone: at 5 % of air they hinder each other
 * source       stokesDrag      check: 100 µm in 12.3 mPa·s: 0.36409514 mm/s (computed by another program)
 */
export const riseRigid_m_s = (at: Bubble): number | null => rise_m_s(at, 18);

/** The same for a clean bubble whose surface moves, v = ρ g d²/(12 η) [m/s]: half as fast again. */
export const riseClean_m_s = (at: Bubble): number | null => rise_m_s(at, 12);

const rise_m_s = ({ diameter_m, density_kg_m3, viscosity_Pa_s }: Bubble, drag: 12 | 18): number | null =>
  viscosity_Pa_s > 0 && diameter_m >= 0 && density_kg_m3 >= 0
    ? finiteOrNull((density_kg_m3 * gravity_m_s2 * diameter_m ** 2) / (drag * viscosity_Pa_s))
    : null;

/**
 * How long the last rigid bubble of a size takes to the surface.
 *
 *   t = z/v
 *
 * depth z      [m], otherwise as riseRigid_m_s
 * returns      t [s]; null where nothing rises
 * range        as riseRigid_m_s
 * source       stokesDrag      check: 20 µm through 50 mm hot: 3433.1686 s (computed by another program)
 */
export function riseTime_s(at: Bubble & { readonly depth_m: number }): number | null {
  const speed_m_s = riseRigid_m_s(at);
  return speed_m_s !== null && speed_m_s > 0 && at.depth_m >= 0 ? finiteOrNull(at.depth_m / speed_m_s) : null;
}

/** Reynolds number of a rising bubble, Re = ρ v d/η [1]; null for a viscosity that is not above 0. */
export const bubbleReynolds = (at: Bubble & { readonly speed_m_s: number }): number | null =>
  at.viscosity_Pa_s > 0 ? finiteOrNull((at.density_kg_m3 * at.speed_m_s * at.diameter_m) / at.viscosity_Pa_s) : null;

/** Share of its speed that a bubble keeps among others, (1 − φ)⁵ to (1 − φ)⁴; null for no share. */
export const hindered = ({ airShare }: { airShare: number }): { readonly low: number; readonly high: number } | null =>
  airShare >= 0 && airShare <= 1 ? { low: (1 - airShare) ** 5, high: (1 - airShare) ** 4 } : null;

const script = 'computed by an independent script';
const bubble = [
  input('diameter_m', 'd', 'diameter of the bubble', 'µm'),
  input('density_kg_m3', 'ρ', 'density of the oil', 'kg/m³'),
  input('viscosity_Pa_s', 'η', 'dynamic viscosity', 'Pa·s'),
];
const range = [
  { symbol: 'd', from: 10e-6, to: 1e-3, why: 'ASTM D892 speaks of entrained bubbles from about 10 µm to 1 mm' },
];
const hot = (diameter_um: number): Record<keyof Bubble, number> => ({
  diameter_m: diameter_um * 1e-6,
  density_kg_m3: 822,
  viscosity_Pa_s: 0.0123,
});
const cold: Record<keyof Bubble, number> = { diameter_m: 100e-6, density_kg_m3: 865, viscosity_Pa_s: 0.241838 };

export const riseRigidRelation: Relation<Readonly<Record<keyof Bubble, number>>> = {
  id: 'bubble-rise-rigid',
  title: 'Rise of a bubble with a rigid skin',
  formula: { latex: String.raw`v=\frac{\rho gd^2}{18\,\eta}`, plain: 'v = ρ g d²/(18 η)' },
  symbols: [...bubble, output('v', 'speed of rise', 'm/s')],
  range,
  source: 'stokesDrag',
  grade: 'VC',
  checks: [
    ...(
      [
        [20, '1.4563805e-5'],
        [50, '9.1023784e-5'],
        [100, '3.6409514e-4'],
        [300, '3.2768562e-3'],
      ] as const
    ).map(([diameter_um, printed]) => ({
      source: `${diameter_um} µm hot, ${script}`,
      seen: 'computed' as const,
      inputs: hot(diameter_um),
      printed,
    })),
    { source: `100 µm cold, ${script}`, seen: 'computed', inputs: cold, printed: '1.9486764e-5' },
  ],
  of: (at) => riseRigid_m_s(at),
};

export const riseCleanRelation: Relation<Readonly<Record<keyof Bubble, number>>> = {
  id: 'bubble-rise-clean',
  title: 'Rise of a clean bubble',
  formula: { latex: String.raw`v=\frac{\rho gd^2}{12\,\eta}`, plain: 'v = ρ g d²/(12 η)' },
  symbols: [...bubble, output('v', 'speed of rise', 'm/s')],
  range,
  source: 'hadamard1911',
  grade: 'VC',
  checks: (
    [
      [20, '2.1845708e-5'],
      [50, '1.3653568e-4'],
      [100, '5.461427e-4'],
      [300, '4.9152843e-3'],
    ] as const
  ).map(([diameter_um, printed]) => ({
    source: `${diameter_um} µm hot, ${script}`,
    seen: 'computed',
    inputs: hot(diameter_um),
    printed,
  })),
  of: (at) => riseClean_m_s(at),
};

export const riseTimeRelation: Relation<Readonly<Record<keyof Bubble | 'depth_m', number>>> = {
  id: 'bubble-rise-time',
  title: 'Time for bubbles of one size to leave a depth of oil',
  formula: { latex: String.raw`t=\frac{18\,\eta z}{\rho gd^2}`, plain: 't = 18 η z/(ρ g d²)' },
  symbols: [...bubble, input('depth_m', 'z', 'depth of the oil', 'm'), output('t', 'time to the surface', 's')],
  range,
  source: 'stokesDrag',
  grade: 'VC',
  checks: [
    ...(
      [
        [20, '3433.1686'],
        [50, '549.30698'],
        [100, '137.32675'],
        [300, '15.258527'],
      ] as const
    ).map(([diameter_um, printed]) => ({
      source: `${diameter_um} µm through 50 mm hot, ${script}`,
      seen: 'computed' as const,
      inputs: { ...hot(diameter_um), depth_m: 0.05 },
      printed,
    })),
    { source: `100 µm cold, ${script}`, seen: 'computed', inputs: { ...cold, depth_m: 0.05 }, printed: '2565.8441' },
  ],
  of: (at) => riseTime_s(at),
};

export const bubbleReynoldsRelation: Relation<Readonly<Record<keyof Bubble | 'speed_m_s', number>>> = {
  id: 'bubble-reynolds',
  title: 'Reynolds number of a rising bubble',
  formula: { latex: String.raw`\mathrm{Re}=\frac{\rho vd}{\eta}`, plain: 'Re = ρ v d/η' },
  symbols: [...bubble, input('speed_m_s', 'v', 'speed of rise', 'm/s'), output('Re', 'Reynolds number', '1')],
  range: [{ symbol: 'Re', from: null, to: 1, why: 'above it a bubble rises slower than these laws say' }],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: `300 µm hot, ${script}`,
      seen: 'computed',
      inputs: { ...hot(300), speed_m_s: 0.0032768562 },
      printed: '0.065696971',
    },
  ],
  of: (at) => bubbleReynolds(at),
};
