import { density_kg_m3 } from '../physics/density.ts';
import { jetPowerBand_W } from '../physics/jets.ts';
import { ringReynolds, ringSpeedFromOutput_rad_s } from '../physics/speeds.ts';
import type { LogLogLine } from '../physics/viscosity.ts';
import { estimate, type Cause } from '../quantity/estimate.ts';
import type { DerivedRun, FlowRun, Given, Result } from '../trial/derived.ts';
import type { Oil } from '../trial/oil.ts';
import type { Rig } from '../trial/rig.ts';
import { calibration, gather } from './causes.ts';
import { atStep, type Hold } from './flow-steps.ts';
import { logSource, type Reading } from './reading.ts';
import { nuAt } from './readings-of.ts';

export interface Oiled {
  readonly rig: Rig;
  readonly oil: Oil;
  readonly line: LogLogLine;
}

/** Reynolds number of the ring gear in the oil of each hold, and the ceiling of what the thrown oil can cost. */
export function besideThePicture(
  reading: Reading,
  holds: readonly Hold[],
  of: Oiled,
): { results: Result[]; causes: Cause[] } {
  const results: Result[] = [];
  const causes: Cause[] = [];
  const probe = reading.instrument('sump');
  for (const hold of holds) {
    if (hold.sump_K === null) continue;
    const sump_K = hold.sump_K;
    const re = reynoldsAt(hold.step.outputSpeed_rad_s, sump_K, of);
    if (re === null) continue;
    const warmer = reynoldsAt(hold.step.outputSpeed_rad_s, sump_K + 1, of) ?? re;
    const found = gather([{ of: probe && calibration(probe, sump_K), sensitivity: warmer - re }]);
    causes.push(...found.causes);
    const given: Given[] = [
      {
        symbol: 'T',
        name: 'sump of the hold',
        value: sump_K - 273.15,
        u: null,
        unit: '°C',
        from: logSource(reading.log, 'sump', hold.window),
      },
    ];
    results.push({
      quantity: 'reynolds',
      at: atStep(hold.step),
      estimate: estimate(re, found.parts),
      bound: null,
      class: 'derived from measurement',
      relation: 'ring-reynolds',
      method: 'flow/reynolds',
      notes: ofTheSheet(of.oil),
      given,
      steps: [viscosityStep(of.line, sump_K)],
    });
    const band =
      hold.level === null || hold.step.direction === 'down' ? null : jetBand(hold, hold.level.mean, sump_K, of);
    if (band === null) continue;
    results.push({
      quantity: 'jet-power',
      at: atStep(hold.step),
      estimate: null,
      bound: null,
      band: { low: band.low_W, high: band.high_W },
      class: 'model estimate',
      relation: 'jet-power-band',
      method: 'flow/jet-power',
      notes: [
        'an estimate from momentum for the oil that the ring gear throws, and no result of this trial',
        'what carrier, bolt heads, pinion and bearings move is not in it, so that a cover may be measured to save more',
      ],
      given,
      steps: [viscosityStep(of.line, sump_K)],
    });
  }
  return { results, causes };
}

function jetBand(hold: Hold, level_z_m: number, sump_K: number, { rig, oil, line }: Oiled) {
  if (rig.ringFace_m === null || rig.toothHeight_m === null) return null;
  return jetPowerBand_W({
    ring_rad_s: ringSpeedFromOutput_rad_s({ output_rad_s: hold.step.outputSpeed_rad_s, teeth: rig }),
    radius_m: rig.ringRadius_m,
    face_m: rig.ringFace_m,
    toothHeight_m: rig.toothHeight_m,
    immersion_m: rig.ringRadius_m + level_z_m,
    nu_m2_s: nuAt(line, sump_K),
    density_kg_m3: density_kg_m3({ ...oil, oil_K: sump_K }),
  });
}

export function reynoldsAt(output_rad_s: number, sump_K: number, { rig, line }: Oiled): number | null {
  if (rig.ringFace_m === null) return null;
  const nu_m2_s = nuAt(line, sump_K);
  return Number.isNaN(nu_m2_s)
    ? null
    : ringReynolds({
        ring_rad_s: ringSpeedFromOutput_rad_s({ output_rad_s, teeth: rig }),
        radius_m: rig.ringRadius_m,
        face_m: rig.ringFace_m,
        nu_m2_s,
      });
}

/** A sheet that states no doubt of its viscosities lends none to the figure, which then looks surer than it is. */
export const ofTheSheet = (oil: Oil): string[] =>
  oil.nu40PlusMinus === undefined && oil.nu100PlusMinus === undefined
    ? ['the ± is of the temperature alone: the oil sheet states none for its viscosities']
    : ['the ± is of the temperature alone'];

export const viscosityStep = (line: LogLogLine, sump_K: number) => ({
  says: 'Viscosity at that temperature, by the line through the two of the oil sheet',
  formula: 'ν(T)',
  value: nuAt(line, sump_K) * 1e6,
  unit: 'mm²/s',
});

/**
 * A flow trial set beside the loaded run it is meant to stand for: the same article (or the one its window copy stands in
 * for), fill, oil and tilt. Reynolds at each speed as it would be at that run's final temperature.
 */
export function besideLoaded(
  flow: DerivedRun,
  input: Oiled & { articles: readonly string[]; loaded: readonly DerivedRun[] },
): DerivedRun {
  const { articles, loaded } = input;
  const meant = loaded.find(
    ({ cell, leftOut }) =>
      leftOut === null &&
      articles.includes(cell.article) &&
      cell.oil === flow.cell.oil &&
      cell.tilt_ratio === flow.cell.tilt_ratio &&
      Math.abs(cell.fill_m3 - flow.cell.fill_m3) < 1e-9,
  );
  const final = meant?.results.find(({ quantity }) => quantity === 'final-temperature');
  if (flow.flow === null || meant === undefined || final?.estimate == null) return flow;
  const hot = final.estimate;
  const results: Result[] = [];
  const ratios: number[] = [];
  for (const trial of flow.results) {
    const speed = trial.at.outputSpeed_rad_s;
    if (trial.quantity !== 'reynolds' || trial.estimate === null || speed === undefined) continue;
    const re = reynoldsAt(speed, hot.value, input);
    if (re === null) continue;
    const warmer = reynoldsAt(speed, hot.value + 1, input) ?? re;
    ratios.push(re / trial.estimate.value);
    if (trial.at.direction === 'down') continue;
    results.push({
      quantity: 'reynolds-loaded',
      at: trial.at,
      estimate: estimate(
        re,
        hot.parts.map(({ cause, u }) => ({ cause, u: u * (warmer - re) })),
      ),
      bound: null,
      class: 'derived from measurement',
      relation: 'ring-reynolds',
      method: 'flow/reynolds',
      notes: [`at the final temperature of ${meant.run}`, ...ofTheSheet(input.oil)],
      given: [
        {
          symbol: 'T',
          name: `final temperature of ${meant.run}`,
          value: hot.value - 273.15,
          u: null,
          unit: '°C',
          from: { kind: 'result', run: meant.run, quantity: 'final-temperature', at: final.at },
        },
      ],
      steps: [viscosityStep(input.line, hot.value)],
    });
  }
  if (ratios.length === 0) return flow;
  const middle = [...ratios].sort((a, b) => a - b)[Math.floor(ratios.length / 2)]!;
  return {
    ...flow,
    results: [...flow.results, ...results],
    causes: [...flow.causes, ...meant.causes],
    flow: { ...flow.flow, standsFor: { run: meant.run, reynoldsTimesLower: middle } satisfies FlowRun['standsFor'] },
  };
}
