import { finiteOrNull, input, output, type Relation } from './relation.ts';
import { gravity_m_s2 } from './speeds.ts';

/** Largest flow, in units of U √(ν U/g), that a turning roller takes over its top. */
export const largestRollerFlow = 2 / 3;

/**
 * Thickness of a film on a turning roller at one place of its rim, in units of √(ν U/g).
 *
 *   q = h − h³ cos θ/3, the lesser root,  θ from where the rim rises straight up
 *
 * Where the rim rises, weight is against the flow and the film is thick; on the far side it is thin.
 *
 * flow q       [1], in units of U √(ν U/g)
 * returns      h [1]; null for a flow that no film carries there
 */
export function rollerFilm(at: { flow: number; rise_rad: number }): number | null {
  const c = Math.cos(at.rise_rad);
  if (!(at.flow >= 0 && at.flow <= largestRollerFlow)) return null;
  // at the top and the bottom weight does nothing along the rim: h = q, and the roots below are 0/0
  if (Math.abs(c) < 1e-12) return at.flow;
  const root = Math.sqrt(Math.abs(c));
  const x = 1.5 * at.flow * root;
  return finiteOrNull(
    c > 0 ? (2 / root) * Math.sin(Math.asin(Math.min(1, x)) / 3) : (2 / root) * Math.sinh(Math.asinh(x) / 3),
  );
}

/**
 * Oil on a turning roller that a flow goes with, a width of roller.
 *
 *   M = ∮ h dθ
 *
 * flow q       [1], in units of U √(ν U/g)
 * returns      M [1], in units of R √(ν U/g); null for a flow above 2/3 or below 0
 * range        a film that is thin against the roller
 * source       leslie2012      check: 4.44272 at the largest flow, 2/3
 */
export function rollerLoad({ flow }: { flow: number }): number | null {
  const steps = 2000;
  const step = Math.PI / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const film = rollerFilm({ flow, rise_rad: i * step });
    if (film === null) return null;
    // Simpson's rule over half of the rim; the lower half mirrors the upper
    sum += film * (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2);
  }
  return (2 * sum * step) / 3;
}

interface Roller {
  readonly radius_m: number;
  readonly nu_m2_s: number;
  readonly speed_m_s: number;
}

const largestLoad = rollerLoad({ flow: largestRollerFlow });

/**
 * Most oil that a turning roller holds up, a width of roller; more than that drips.
 *
 *   A = 4.4427 R √(ν U/g)
 *
 * radius       [m], nu [m²/s], speed of the rim [m/s]
 * returns      A [m²]; null where a quantity is below 0
 * range        centrifugal ratio up to 1, a film that is thin against the roller
 * source       leslie2012      check: as rollerLoad
 */
export const mostOnRoller_m2 = ({ radius_m, nu_m2_s, speed_m_s }: Roller): number | null =>
  radius_m >= 0 && nu_m2_s >= 0 && speed_m_s >= 0 && largestLoad !== null
    ? finiteOrNull(largestLoad * radius_m * Math.sqrt((nu_m2_s * speed_m_s) / gravity_m_s2))
    : null;

const abstract = 'Leslie, Wilson & Duffy 2012, abstract: critical load 4.44272';
const script = 'computed by an independent script';

export const rollerLoadRelation: Relation<{ readonly flow: number }> = {
  id: 'roller-load',
  title: 'Oil on a turning roller that a flow goes with, up to centrifugal ratio 1',
  formula: {
    latex: String.raw`M=\oint h\,d\theta,\quad q=h-\tfrac13h^3\cos\theta`,
    plain: 'M = ∮ h dθ with q = h − h³ cos θ/3; h and q in units of √(ν U/g) and U √(ν U/g), M in units of R √(ν U/g)',
  },
  symbols: [input('flow', 'q', 'flow a width, over U √(ν U/g)', '1'), output('M', 'oil a width, over R √(ν U/g)', '1')],
  range: [{ symbol: 'q', from: 0, to: largestRollerFlow, why: 'a larger flow has no film that carries it' }],
  source: 'leslie2012',
  grade: 'V1',
  checks: [
    { source: abstract, seen: 'published', inputs: { flow: largestRollerFlow }, printed: '4.44272' },
    { source: `roots of the cubic, ${script}`, seen: 'computed', inputs: { flow: 0.3 }, printed: '1.8875324' },
    { source: `roots of the cubic, ${script}`, seen: 'computed', inputs: { flow: 0.5 }, printed: '3.1780214' },
  ],
  of: (film) => rollerLoad(film),
};

export const mostOnRollerRelation: Relation<Readonly<Record<keyof Roller, number>>> = {
  id: 'roller-most',
  title: 'Most oil that a turning roller holds up, up to centrifugal ratio 1',
  formula: { latex: String.raw`A=4.4427\,R\sqrt{\nu U/g}`, plain: 'A = 4.4427 R √(ν U/g)' },
  symbols: [
    input('radius_m', 'R', 'radius of the roller', 'm'),
    input('nu_m2_s', 'ν', 'kinematic viscosity', 'm²/s'),
    input('speed_m_s', 'U', 'speed of the rim', 'm/s'),
    output('A', 'oil a width', 'm²'),
  ],
  range: [],
  source: 'leslie2012',
  grade: 'V1',
  checks: [
    {
      source: `${abstract}; 0.1 m, and ν U/g of 1e-6 m²`,
      seen: 'published',
      inputs: { radius_m: 0.1, nu_m2_s: 9.80665e-5, speed_m_s: 0.1 },
      printed: '4.44272',
      unit: 'cm²',
    },
  ],
  of: (roller) => mostOnRoller_m2(roller),
};
