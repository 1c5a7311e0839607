import { input, output, type Relation } from './relation.ts';
import { gravity_m_s2 } from './speeds.ts';

interface Film {
  readonly nu_m2_s: number;
  /** Flow down the wall, a width of wall. */
  readonly flow_m2_s: number;
}

/**
 * Thickness of the film that runs down an upright wall: what it holds is missing from the sump, and more so cold.
 *
 *   δ = (3 ν Γ/g)^(1/3)
 *
 * nu           [m²/s], flow a width Γ [m²/s]
 * returns      δ [m]
 * range        laminar: film Reynolds number under about 1500
 * source       nusselt1916      check: 0.5 L/s over 0.2 m in 15 mm²/s: 2.2553327 mm (computed by another program)
 */
export const wallFilm_m = (at: Film): number => Math.cbrt((3 * at.nu_m2_s * at.flow_m2_s) / gravity_m_s2);

/** Reynolds number of a film, Re = 4 Γ/ν [1]; null for a viscosity that is not above 0. */
export const filmReynolds = (at: Film): number | null => (at.nu_m2_s > 0 ? (4 * at.flow_m2_s) / at.nu_m2_s : null);

const script = 'computed by an independent script';
const nu = input('nu_m2_s', 'ν', 'kinematic viscosity', 'm²/s');
const flow = input('flow_m2_s', 'Γ', 'flow a width of wall', 'm²/s');
const hot: Film = { nu_m2_s: 15e-6, flow_m2_s: 0.5e-3 / 0.2 };
const cold: Film = { ...hot, nu_m2_s: 278.93613e-6 };

export const fallingFilmRelation: Relation<Readonly<Record<keyof Film, number>>> = {
  id: 'falling-film',
  title: 'Film running down a wall',
  formula: { latex: String.raw`\delta=\left(\frac{3\nu\Gamma}{g}\right)^{1/3}`, plain: 'δ = (3 ν Γ/g)^(1/3)' },
  symbols: [nu, flow, output('δ', 'thickness of the film', 'm')],
  range: [],
  source: 'nusselt1916',
  grade: 'VC',
  checks: [
    { source: `0.5 L/s over 0.2 m, ${script}`, seen: 'computed', inputs: { ...hot }, printed: '2.2553327', unit: 'mm' },
    { source: `the same cold, ${script}`, seen: 'computed', inputs: { ...cold }, printed: '5.9751451', unit: 'mm' },
  ],
  of: (at) => wallFilm_m(at),
};

export const filmReynoldsRelation: Relation<Readonly<Record<keyof Film, number>>> = {
  id: 'film-reynolds',
  title: 'Reynolds number of a film',
  formula: { latex: String.raw`\mathrm{Re}=4\Gamma/\nu`, plain: 'Re = 4 Γ/ν' },
  symbols: [nu, flow, output('Re', 'film Reynolds number', '1')],
  range: [{ symbol: 'Re', from: null, to: 1500, why: 'above it the film is no longer laminar' }],
  source: 'definition',
  grade: 'V2',
  checks: [
    { source: script, seen: 'computed', inputs: { ...hot }, printed: '666.66667' },
    { source: script, seen: 'computed', inputs: { ...cold }, printed: '35.850501' },
  ],
  of: (at) => filmReynolds(at),
};
