import { describe, expect, it } from 'vitest';
import { calibration } from '../../src/derive/causes.ts';
import { timeToLimit } from '../../src/physics/lumped.ts';
import { loss_W } from '../../src/physics/power.ts';
import {
  combine,
  difference,
  estimate,
  exact,
  mean,
  quotient,
  standardUncertainty,
  type Estimate,
} from '../../src/quantity/estimate.ts';
import { leastSquares } from '../../src/statistics/least-squares.ts';
import { coverageFactor } from '../../src/statistics/student.ts';
import type { Accuracy, Instrument } from '../../src/trial/rig.ts';
import '../matchers.ts';
import { expectNear } from './agreement.ts';

const script = 'independent script';
const relative = (of: Estimate) => standardUncertainty(of) / Math.abs(of.value);
const instrument = (
  id: string,
  accuracy: Omit<Accuracy, 'asWritten'>,
  range: readonly [number, number] | null = null,
): Instrument => ({
  id,
  measures: 'torque',
  what: id,
  range,
  accuracy: { asWritten: '', ...accuracy },
  repeat: null,
  calibratedOn: null,
  nextDue: null,
  checkedOn: null,
  certificate: null,
  position: null,
  tip_z_m: new Map(),
  zero: 0,
  zeroPolicy: 'none',
  shareGroup: id,
});
const read = (by: Instrument, value: number): Estimate => {
  const { cause, u } = calibration(by, value);
  return estimate(value, [{ cause: cause.id, u }]);
};

describe('what an instrument promises, as a standard uncertainty (JCGM 100:2008 4.3.7 to 4.3.9, from memory)', () => {
  it.each([
    { says: '4.3.7, limits ± 0.40e-6 1/K', value: 0.4e-6, k: null, printed: '0.23E-06' },
    // Taken at the middle of its bounds, as the guide takes it.
    {
      says: '4.3.8, from −0.40e-6 to 0.12e-6 1/K of 16.80e-6',
      value: (16.92e-6 - 16.4e-6) / 2,
      k: null,
      printed: '0.15E-06',
    },
    { says: '4.3.7, limits of 1', value: 1, k: null, printed: '0.57735027' },
    { says: '4.3.9, ± 1 holding 99.73 % of a normal distribution, k 3', value: 1, k: 3, printed: '0.33333333' },
  ])('$says: $printed', ({ value, k, printed }) => {
    expect(calibration(instrument('any', { of: 'absolute', value, k }), 0).u).toAgreeWithPrinted(printed);
  });
});

describe(`loss as the small rest of two large powers (${script})`, () => {
  // 10 kW in, 97 % of it out through 4 : 1.
  const [in_Nm, out_Nm] = [100, 388];
  const shareLost = (torqueIn: Instrument, torqueOut: Instrument) =>
    difference(exact(1), quotient(scaledBy(read(torqueOut, out_Nm), 25), scaledBy(read(torqueIn, in_Nm), 100)));
  const scaledBy = (torque: Estimate, speed_rad_s: number) =>
    combine(loss_W({ in: { speed_rad_s, torque_Nm: torque.value }, outs: [] }), [
      { of: torque, sensitivity: speed_rad_s },
    ]);

  it('torque meters of 0.1 % of reading leave 4.5726239 % of a loss of 3 %', () => {
    const ofReading = { of: 'reading', value: 0.001, k: 1 } as const;
    const share = shareLost(instrument('in', ofReading), instrument('out', ofReading));
    expectNear(share.value, 0.03, 1e-12);
    expectNear(relative(share), 0.045726239, 1e-7);
  });

  it('0.2 % of range, read at 40 % of it, leave 22.863119 %', () => {
    const ofRange = { of: 'range', value: 0.002, k: 1 } as const;
    const meter = (id: string, reading: number) => instrument(id, ofRange, [-reading / 0.4, reading / 0.4]);
    expectNear(relative(shareLost(meter('in', in_Nm), meter('out', out_Nm))), 0.22863119, 1e-7);
  });

  it('two axles back to back need 2437.1134 W of supply at 40 kW, known to the 0.2 % of its one meter', () => {
    const [first, second] = [40000 / 0.97, 40000 * 0.97];
    const shaft = (power_W: number) => ({ speed_rad_s: 100, torque_Nm: power_W / 100 });
    const supply_W = loss_W({ in: shaft(first), outs: [shaft(second)] });
    expectNear(supply_W, 2437.1134, 1e-7);
    const motor = read(instrument('motor', { of: 'reading', value: 0.002, k: 1 }), supply_W / 100);
    expectNear(relative(scaledBy(motor, 100)), 0.002, 1e-12);
  });

  it('0.1650 kW of scatter in three repeats is 0.0594 % of 314.2 kW (40 CFR 1037.560, largest power from memory), and 0.130 % by t', () => {
    const repeats = mean([1, 2, 3].map((run) => estimate(1.6, [{ cause: `run ${run}`, u: 0.165 }])));
    const share = (standardUncertainty(repeats) / 314.2) * 100;
    expect(coverageFactor(0.95, Infinity) * share).toAgreeWithPrinted('0.0594');
    // The rule takes the normal factor; t of JCGM 100 table G.2 for two degrees is 4.30: 4.30 · 0.165/√3/314.2 by hand.
    expect(coverageFactor(0.95, 2) * share).toAgreeWithPrinted('0.130');
  });
});

describe(`loss by heat, without a torque meter (${script})`, () => {
  it('4 % of shed and 0.3 K on each of two temperatures 60 K apart leave 4.0620192 %', () => {
    const rise_K = difference(
      estimate(363.15, [{ cause: 'sump', u: 0.3 }]),
      estimate(303.15, [{ cause: 'air', u: 0.3 }]),
    );
    const shed = estimate(11, [{ cause: 'shed', u: 11 * 0.04 }]);
    const heat = combine(shed.value * rise_K.value, [
      { of: shed, sensitivity: rise_K.value },
      { of: rise_K, sensitivity: shed.value },
    ]);
    expectNear(relative(heat), 0.040620192, 1e-7);
  });

  it('sheds of 11 and 12.1 W/K, 5 % of it common, 1.5 % their own: a ratio of 1.1 to 2.1213203 %, not 7.3824115 %', () => {
    const shed = (name: string, value: number, common: string) =>
      estimate(value, [
        { cause: common, u: 0.05 * value },
        { cause: `own of ${name}`, u: 0.015 * value },
      ]);
    const ratio = quotient(shed('second', 12.1, 'rig'), shed('first', 11, 'rig'));
    expectNear(ratio.value, 1.1, 1e-12);
    expectNear(relative(ratio), 0.021213203, 1e-7);
    const apart = quotient(shed('second', 12.1, 'one rig'), shed('first', 11, 'another rig'));
    expectNear(relative(apart), 0.073824115, 1e-7);
  });

  it('2 K on a final temperature of 103.8 °C are 405.6457 s on the 4459.051 s to 95 °C', () => {
    const time_s = (final_C: number) => {
      const heat_W = 11 * (final_C - 22);
      const run = { start_K: 295.15, ambient_K: 295.15, heat_W, shed_W_K: 11, store_J_K: 22000, limit_K: 368.15 };
      const answer = timeToLimit(run);
      return answer?.kind === 'reached' ? answer.time_s : NaN;
    };
    const final_C = estimate(103.8, [{ cause: 'final', u: 2 }]);
    const slope = (time_s(103.8 + 1e-4) - time_s(103.8 - 1e-4)) / 2e-4;
    const time = combine(time_s(103.8), [{ of: final_C, sensitivity: slope }]);
    expectNear(time.value, 4459.051, 1e-6);
    expectNear(standardUncertainty(time), 405.6457, 1e-6);
  });
});

describe(`load, churning and drag of six made-up steps (${script}, without noise)`, () => {
  const steps = [
    { speed_rad_s: 40, through_W: 0, nu_mm2_s: 60, loss_W: 61.9288743425 },
    { speed_rad_s: 40, through_W: 20000, nu_mm2_s: 40, loss_W: 498.832992755 },
    { speed_rad_s: 75, through_W: 0, nu_mm2_s: 25, loss_W: 142.842577018 },
    { speed_rad_s: 75, through_W: 30000, nu_mm2_s: 18, loss_W: 796.320379382 },
    { speed_rad_s: 110, through_W: 0, nu_mm2_s: 14, loss_W: 238.601246444 },
    { speed_rad_s: 110, through_W: 40000, nu_mm2_s: 12, loss_W: 1113.10332897 },
  ];
  const fit = leastSquares({
    design: steps.map((s) => [
      s.through_W,
      (s.speed_rad_s / 50) ** 1.8 * (s.nu_mm2_s / 20) ** 0.21,
      s.speed_rad_s / 50,
    ]),
    y: steps.map((s) => s.loss_W),
  });
  if (!fit.ok) throw new Error(fit.why);

  it('least squares give back what made them: 0.022, 45 W and 30 W', () => {
    [0.022, 45, 30].forEach((made, i) => {
      expectNear(fit.coefficients[i]!, made, 1e-6);
    });
  });

  it('their condition number of 17.1359 says that churning and drag are nearly one story', () => {
    expectNear(fit.condition, 17.1359, 1e-4);
  });
});
