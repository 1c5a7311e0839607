import { input, output, type Relation } from './relation.ts';

export interface ShaftEnd {
  readonly speed_rad_s: number;
  readonly torque_Nm: number;
}

/**
 * Power of a turning shaft.
 *
 *   P = ω T
 *
 * speed        [rad/s], torque [N·m]
 * returns      P [W]
 * range        none
 * source       definition      check: 250 lbf·ft at 2500 rpm are 88738.077 W
 */
export const shaftPower_W = (shaft: ShaftEnd): number => shaft.speed_rad_s * shaft.torque_Nm;

/**
 * Loss between the shafts: what goes in and does not come out.
 *
 *   P_loss = ω_in T_in − Σ ω_out T_out
 *
 * speeds       [rad/s] by tooth counts from one counter, torques [N·m] less their zeros
 * returns      P_loss [W]; without outputs (spin) all that goes in
 * range        steady speed: a change of speed stores energy in the parts
 * source       cfr1037        check: 845.1 N·m through 3.731 and 3000 N·m at 100 rpm leave 1602.9 W
 */
export const loss_W = (shafts: { in: ShaftEnd; outs: readonly ShaftEnd[] }): number =>
  shafts.outs.reduce((left, out) => left - shaftPower_W(out), shaftPower_W(shafts.in));

const rpm = Math.PI / 30;

export const shaftPowerRelation: Relation<Readonly<Record<keyof ShaftEnd, number>>> = {
  id: 'shaft-power',
  title: 'Power of a turning shaft',
  formula: { latex: String.raw`P=\omega T`, plain: 'P = ω T' },
  symbols: [
    input('speed_rad_s', 'ω', 'speed', 'rad/s'),
    input('torque_Nm', 'T', 'torque', 'N·m'),
    output('P', 'power', 'W'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: '250 lbf·ft at 2500 rpm, computed by an independent script',
      seen: 'computed',
      inputs: { speed_rad_s: 2500 * rpm, torque_Nm: 250 * 1.3558179483314004 },
      printed: '88738.077',
    },
    {
      source: 'the same: hp = lbf·ft × rpm/5252.113, common practice',
      seen: 'memory',
      inputs: { speed_rad_s: 2500 * rpm, torque_Nm: 250 * 1.3558179483314004 },
      printed: '119.000',
      unit: 'hp (mechanical)',
    },
  ],
  of: (shaft) => shaftPower_W(shaft),
};

type Shafts = {
  readonly in_rad_s: number;
  readonly in_Nm: number;
  readonly out_rad_s: number;
  readonly out_Nm: number;
};
export const lossRelation: Relation<Shafts> = {
  id: 'loss-between-shafts',
  title: 'Loss between the shafts',
  formula: {
    latex: String.raw`P_\mathrm{loss}=\omega_\mathrm{in}T_\mathrm{in}-\sum\omega_\mathrm{out}T_\mathrm{out}`,
    plain: 'P loss = ω in T in − Σ ω out T out',
  },
  symbols: [
    input('in_rad_s', 'ω in', 'input speed', 'rad/s'),
    input('in_Nm', 'T in', 'input torque', 'N·m'),
    input('out_rad_s', 'ω out', 'output speed', 'rad/s'),
    input('out_Nm', 'T out', 'output torque, both sides together', 'N·m'),
    output('P loss', 'loss', 'W'),
  ],
  range: [],
  source: 'cfr1037',
  grade: 'V1',
  checks: [
    {
      source: 'formula of 40 CFR 1037.560, inputs from memory, result computed by an independent script',
      seen: 'computed',
      inputs: { in_rad_s: 100 * rpm * 3.731, in_Nm: 845.1, out_rad_s: 100 * rpm, out_Nm: 3000 },
      printed: '1602.9254',
      note: 'the regulation prints 1603.9 W for one of its repeats',
    },
  ],
  of: (s) =>
    loss_W({
      in: { speed_rad_s: s.in_rad_s, torque_Nm: s.in_Nm },
      outs: [{ speed_rad_s: s.out_rad_s, torque_Nm: s.out_Nm }],
    }),
};
