import { finiteOrNull, input, output, type Relation } from './relation.ts';

/** Efficiency of a crossed-axis mesh, and friction terms of cylindrical gears. For plausibility: friction is known to ± 40 %. */

const script = 'computed by an independent script';

export type Mesh = {
  readonly friction: number;
  readonly pressureAngle_rad: number;
  readonly pinionSpiral_rad: number;
  readonly ringSpiral_rad: number;
};
const degrees = (x: number): number => (x * Math.PI) / 180;
const symbols = [
  input('friction', 'μ', 'mean friction of the mesh', '1'),
  input('pressureAngle_rad', 'φn', 'normal pressure angle of the loaded flank', '°'),
  input('pinionSpiral_rad', 'β1', 'spiral angle of the pinion', '°'),
  input('ringSpiral_rad', 'β2', 'spiral angle of the ring gear', '°'),
];
const range: Relation['range'] = [
  { symbol: 'μ', from: 0.02, to: 0.12, why: 'a mesh with an extreme-pressure oil has 0.03 to 0.08' },
];
const hypoid: Mesh = {
  ...{ friction: 0.05, pressureAngle_rad: degrees(20) },
  ...{ pinionSpiral_rad: degrees(50), ringSpiral_rad: degrees(30) },
};
const share = (above: number, below: number): number | null =>
  above > 0 && below > 0 ? finiteOrNull(above / below) : null;

export const meshDriveRelation: Relation<Mesh> = {
  id: 'mesh-drive',
  title: 'Efficiency of a crossed-axis mesh, driving',
  formula: {
    latex: String.raw`\eta=\frac{\cos\varphi_n+\mu\tan\beta_2}{\cos\varphi_n+\mu\tan\beta_1}`,
    plain: 'η = (cos φn + μ tan β2)/(cos φn + μ tan β1)',
  },
  symbols: [...symbols, output('η', 'efficiency', '1')],
  range,
  source: 'crossedAxis',
  grade: 'VC',
  checks: [
    { source: script, seen: 'computed', inputs: hypoid, printed: '0.9692577' },
    {
      source: 'without offset both angles are equal and nothing slides lengthwise',
      seen: 'computed',
      inputs: { ...hypoid, pinionSpiral_rad: degrees(35), ringSpiral_rad: degrees(35) },
      printed: '1.0000000',
    },
  ],
  of: ({ friction, pressureAngle_rad, pinionSpiral_rad, ringSpiral_rad }) =>
    share(
      Math.cos(pressureAngle_rad) + friction * Math.tan(ringSpiral_rad),
      Math.cos(pressureAngle_rad) + friction * Math.tan(pinionSpiral_rad),
    ),
};

export const meshCoastRelation: Relation<Mesh> = {
  ...meshDriveRelation,
  id: 'mesh-coast',
  title: 'Efficiency of a crossed-axis mesh, coasting',
  formula: {
    latex: String.raw`\eta=\frac{\cos\varphi_n-\mu\tan\beta_1}{\cos\varphi_n-\mu\tan\beta_2}`,
    plain: 'η = (cos φn − μ tan β1)/(cos φn − μ tan β2)',
  },
  checks: [{ source: script, seen: 'computed', inputs: hypoid, printed: '0.9662722' }],
  of: ({ friction, pressureAngle_rad, pinionSpiral_rad, ringSpiral_rad }) =>
    share(
      Math.cos(pressureAngle_rad) - friction * Math.tan(pinionSpiral_rad),
      Math.cos(pressureAngle_rad) - friction * Math.tan(ringSpiral_rad),
    ),
};

type Spirals = Pick<Mesh, 'pinionSpiral_rad' | 'ringSpiral_rad'>;
export const meshSlidingRelation: Relation<Spirals> = {
  id: 'mesh-sliding',
  title: 'Lengthwise sliding of a crossed-axis mesh',
  formula: {
    latex: String.raw`\frac{v_s}{v_1}=\cos\beta_1(\tan\beta_1-\tan\beta_2)`,
    plain: 'vs/v1 = cos β1·(tan β1 − tan β2)',
  },
  symbols: [symbols[2]!, symbols[3]!, output('vs/v1', 'sliding over the pitch speed of the pinion', '1')],
  range: [],
  source: 'crossedAxis',
  grade: 'VC',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { pinionSpiral_rad: degrees(50), ringSpiral_rad: degrees(30) },
      printed: '0.3949308',
    },
  ],
  of: ({ pinionSpiral_rad, ringSpiral_rad }) =>
    finiteOrNull(Math.cos(pinionSpiral_rad) * (Math.tan(pinionSpiral_rad) - Math.tan(ringSpiral_rad))),
};

type MeanFriction = {
  readonly lineLoad_N_m: number;
  readonly sumSpeed_m_s: number;
  readonly curvature_m: number;
  readonly viscosity_Pa_s: number;
  readonly Ra_m: number;
  readonly oilFactor: number;
};
export const meanFrictionRelation: Relation<MeanFriction> = {
  id: 'mesh-mean-friction',
  title: 'Mean friction of a mesh of cylindrical gears',
  formula: {
    latex: String.raw`\mu=0.048\left(\frac{F_{bt}/b}{v_\Sigma\rho_{red}}\right)^{0.2}\eta^{-0.05}R_a^{0.25}X_L`,
    plain: 'μ = 0.048·((Fbt/b)/(vΣ·ρred))^0.2·η^−0.05·Ra^0.25·X_L; N/mm, m/s, mm, mPa·s, µm',
  },
  symbols: [
    input('lineLoad_N_m', 'Fbt/b', 'load along the face', 'N/mm'),
    input('sumSpeed_m_s', 'vΣ', 'sum of the surface speeds', 'm/s'),
    input('curvature_m', 'ρred', 'reduced radius', 'mm'),
    input('viscosity_Pa_s', 'η', 'dynamic viscosity', 'mPa·s'),
    input('Ra_m', 'Ra', 'roughness, mean', 'µm'),
    input('oilFactor', 'X_L', 'factor of the oil: 1 mineral, 0.8 polyalphaolefin', '1'),
    output('μ', 'mean friction', '1'),
  ],
  range: [],
  source: 'schlenk1994',
  grade: 'V2',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: {
        ...{ lineLoad_N_m: 300e3, sumSpeed_m_s: 8, curvature_m: 0.012 },
        ...{ viscosity_Pa_s: 0.012, Ra_m: 0.6e-6, oilFactor: 1 },
      },
      printed: '0.04685867',
    },
  ],
  of: (of) => {
    const loaded = (of.lineLoad_N_m * 1e-3) / (of.sumSpeed_m_s * of.curvature_m * 1e3);
    if (!(loaded > 0 && of.viscosity_Pa_s > 0 && of.Ra_m > 0)) return null;
    return finiteOrNull(
      0.048 * loaded ** 0.2 * (of.viscosity_Pa_s * 1e3) ** -0.05 * (of.Ra_m * 1e6) ** 0.25 * of.oilFactor,
    );
  },
};

type LossFactor = {
  readonly pinionTeeth: number;
  readonly gearRatio: number;
  readonly helix_rad: number;
  readonly approach: number;
  readonly recess: number;
};
export const lossFactorRelation: Relation<LossFactor> = {
  id: 'mesh-loss-factor',
  title: 'Loss factor of a pair of cylindrical gears (unverified)',
  formula: {
    latex: String.raw`H_v=\frac{\pi(u+1)}{z_1u\cos\beta_b}(1-\varepsilon_\alpha+\varepsilon_1^2+\varepsilon_2^2)`,
    plain: 'Hv = π(u + 1)/(z1·u·cos βb)·(1 − ε1 − ε2 + ε1² + ε2²); loss = P·μ·Hv',
  },
  symbols: [
    input('pinionTeeth', 'z1', 'teeth of the pinion', '1'),
    input('gearRatio', 'u', 'ratio of teeth', '1'),
    input('helix_rad', 'βb', 'base helix angle', '°'),
    input('approach', 'ε1', 'contact ratio before the pitch point', '1'),
    input('recess', 'ε2', 'contact ratio after it', '1'),
    output('Hv', 'loss factor', '1'),
  ],
  range: [],
  source: 'isoTr14179of2',
  grade: 'U',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { pinionTeeth: 20, gearRatio: 2, helix_rad: 0, approach: 0.8, recess: 0.85 },
      printed: '0.16787886',
    },
  ],
  of: ({ pinionTeeth, gearRatio, helix_rad, approach, recess }) =>
    pinionTeeth > 0 && gearRatio > 0 && Math.cos(helix_rad) > 0
      ? finiteOrNull(
          ((Math.PI * (gearRatio + 1)) / (pinionTeeth * gearRatio * Math.cos(helix_rad))) *
            (1 - approach - recess + approach ** 2 + recess ** 2),
        )
      : null,
};

type MeshCoefficient = { readonly nu_m2_s: number; readonly loadIntensity_Pa: number; readonly pitchSpeed_m_s: number };
export const meshCoefficientRelation: Relation<MeshCoefficient> = {
  id: 'mesh-coefficient',
  title: 'Friction coefficient of a mesh by a technical report (unverified)',
  formula: {
    latex: String.raw`f_m=\frac{\nu^{-0.223}K^{-0.40}}{3.239\,V^{0.70}}`,
    plain: 'fm = ν^−0.223·K^−0.40/(3.239·V^0.70); mm²/s, N/mm², m/s',
  },
  symbols: [
    input('nu_m2_s', 'ν', 'kinematic viscosity', 'mm²/s'),
    input('loadIntensity_Pa', 'K', 'load intensity', 'MPa'),
    input('pitchSpeed_m_s', 'V', 'speed at the pitch circle', 'm/s'),
    output('fm', 'friction coefficient', '1'),
  ],
  range: [
    { symbol: 'V', from: 2, to: 25, why: 'recalled for 2 to 25 m/s' },
    { symbol: 'K', from: 1.4e6, to: 14e6, why: 'recalled for 1.4 to 14 N/mm²' },
  ],
  source: 'isoTr14179of1',
  grade: 'U',
  checks: [
    {
      source: `${script} from recalled constants`,
      seen: 'computed',
      inputs: { nu_m2_s: 15e-6, loadIntensity_Pa: 4e6, pitchSpeed_m_s: 8 },
      printed: '0.02261173',
    },
  ],
  of: ({ nu_m2_s, loadIntensity_Pa, pitchSpeed_m_s }) =>
    nu_m2_s > 0 && loadIntensity_Pa > 0 && pitchSpeed_m_s > 0
      ? finiteOrNull(((nu_m2_s * 1e6) ** -0.223 * (loadIntensity_Pa * 1e-6) ** -0.4) / (3.239 * pitchSpeed_m_s ** 0.7))
      : null,
};
