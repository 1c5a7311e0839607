import { input, output, type Relation } from './relation.ts';

type Wall = {
  readonly area_m2: number;
  readonly inside_W_m2K: number;
  readonly thickness_m: number;
  readonly conductivity_W_mK: number;
  readonly outside_W_m2K: number;
};
const cover = { area_m2: 0.036, inside_W_m2K: 300, thickness_m: 0.004, outside_W_m2K: 14 };
const script = 'computed by an independent script; the inside coefficient is common practice, no source';

/** Nearly all of the resistance is outside: what a wall conducts hardly counts. */
export const wallRelation: Relation<Wall> = {
  id: 'wall-in-series',
  title: 'Shed through a wall, from oil to air',
  formula: {
    latex: String.raw`K=\frac{A}{\frac{1}{h_i}+\frac{t}{k}+\frac{1}{h_o}}`,
    plain: 'K = A/(1/hi + t/k + 1/ho)',
  },
  symbols: [
    input('area_m2', 'A', 'area', 'm²'),
    input('inside_W_m2K', 'hi', 'heat-transfer coefficient of the oil', 'W/(m²·K)'),
    input('thickness_m', 't', 'thickness of the wall', 'mm'),
    input('conductivity_W_mK', 'k', 'thermal conductivity of the wall', 'W/(m·K)'),
    input('outside_W_m2K', 'ho', 'heat-transfer coefficient of the air, radiation in it', 'W/(m²·K)'),
    output('K', 'shed', 'W/K'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    { source: `iron, ${script}`, seen: 'computed', inputs: { ...cover, conductivity_W_mK: 50 }, printed: '0.481014' },
    {
      source: `aluminium gains 0.000735 of it, ${script}`,
      seen: 'computed',
      inputs: { ...cover, conductivity_W_mK: 160 },
      printed: '0.481368',
    },
  ],
  of: ({ area_m2, inside_W_m2K, thickness_m, conductivity_W_mK, outside_W_m2K }) => {
    const parts = [area_m2, inside_W_m2K, conductivity_W_mK, outside_W_m2K];
    if (!parts.every((x) => x > 0 && Number.isFinite(x)) || !(thickness_m >= 0)) return null;
    return area_m2 / (1 / inside_W_m2K + thickness_m / conductivity_W_mK + 1 / outside_W_m2K);
  },
};
