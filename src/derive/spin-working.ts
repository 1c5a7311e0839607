import type { Given, Step } from '../trial/derived.ts';
import { logSource, speedChannel, type Reading } from './reading.ts';
import type { SpinPoint } from './spin.ts';

/** What a figure of spin loss is made of, and the lines between that and the figure. */
export const givenOf = (p: SpinPoint, reading: Reading, omega: number): Given[] => [
  {
    symbol: 'T_raw',
    name: 'torque as logged, mean of the window',
    value: p.raw_Nm,
    u: p.u_Nm,
    unit: 'N·m',
    from: logSource(reading.log, 'torque-in', p.rows),
  },
  {
    symbol: 't',
    name: 'sump temperature, mean of the window',
    value: p.sump_K - 273.15,
    u: p.uSump_K,
    unit: '°C',
    from: logSource(reading.log, 'sump', p.rows),
  },
  {
    symbol: 'ω',
    name: 'speed of the input shaft at this step of the plan',
    value: omega,
    u: null,
    unit: 'rad/s',
    from: logSource(reading.log, speedChannel(reading), p.rows),
  },
];

export const stepsOf = (s: {
  nearest: SpinPoint;
  value: number;
  ref_K: number;
  perLnNu: number;
  x: number;
  alone: boolean;
}): Step[] => [
  {
    says: 'Less the zero at that time of the run',
    formula: 'T = T_raw − z(t)',
    value: s.nearest.held_Nm,
    unit: 'N·m',
  },
  ...toStep(s.nearest),
  {
    says: 'Viscosity at the sump temperature of the window',
    formula: 'log log(ν + 0.7) = A − B·log T',
    value: s.nearest.nu_m2_s * 1e6,
    unit: 'mm²/s',
  },
  {
    says: 'Viscosity at the reference temperature',
    formula: 'log log(ν + 0.7) = A − B·log T',
    value: Math.exp(s.x) * 1e6,
    unit: 'mm²/s',
  },
  {
    says: s.alone ? 'Slope of torque against ln ν, taken as 0.3 T' : 'Slope of torque against ln ν here',
    formula: 'dT/d ln ν',
    value: s.perLnNu,
    unit: 'N·m',
  },
  {
    says: 'Torque at the reference temperature, through the windows of this speed',
    formula: 'T_ref = Σ T_i·L_i(ln ν_ref)',
    value: s.value,
    unit: 'N·m',
  },
];

/** The way from the speed that was held to the step of the plan, where it was gone. */
const toStep = ({ toStep: way, torque_Nm, held_ratio }: SpinPoint): Step[] =>
  way === null
    ? []
    : [
        {
          says: 'Speed held in the window, over the step of the plan',
          formula: 'n/n_step',
          value: held_ratio,
          unit: '1',
        },
        {
          says: 'Exponent of torque in speed at this temperature, of this run',
          formula: 'e',
          value: way.exponent,
          unit: '1',
        },
        {
          says: 'Brought to the step',
          formula: 'T_step = T·(n_step/n)^e',
          value: torque_Nm,
          unit: 'N·m',
        },
      ];
