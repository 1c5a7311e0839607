import { writeNumber } from '../quantity/write.ts';
import type { Plan } from '../trial/plan.ts';
import { outputSpeed, type Reading } from './reading.ts';

/** What the run held and what was looked for, so that a wrong column, tooth count or plan shows. */
export function noWindow(reading: Reading, plan: Plan): string {
  const span = (values: Float64Array | null, shown: (v: number) => number): string => {
    const known = values?.filter((v) => !Number.isNaN(v)) ?? new Float64Array(0);
    if (known.length === 0) return 'nothing';
    const [low, high] = [shown(known.reduce((a, b) => Math.min(a, b))), shown(known.reduce((a, b) => Math.max(a, b)))];
    return `${writeNumber(low, 0)} to ${writeNumber(high, 0)}`;
  };
  const rpmOf = (w: number): number => (w * 30) / Math.PI;
  const celsius = (t: number): number => t - 273.15;
  const list = (values: readonly number[]): string => values.map((v) => writeNumber(v, 0)).join(', ');
  return (
    `no steady window at a planned step and temperature: the output shaft reads ${span(outputSpeed(reading), rpmOf)} rpm and the sump ` +
    `${span(reading.channel('sump'), celsius)} °C, the plan asks for ${list(plan.steps_rad_s.map(rpmOf))} rpm at ` +
    `${list(plan.temperatures_K.map(celsius))} °C held ${writeNumber(plan.hold_s, 0)} s`
  );
}
