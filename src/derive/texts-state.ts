import { writeNumber } from '../quantity/write.ts';
import { lastMove_ratio, type BrokenInLoad } from '../trial/break-in.ts';

export const notSettled = (of: { state: string; runs: number; load: BrokenInLoad; within_ratio: number }) => {
  const move = lastMove_ratio(of.load);
  return {
    code: 'state-not-settled',
    level: 'warning' as const,
    says: `In rig state ${of.state} the efficiency at ${writeNumber(of.load.power_W / 1e3, 1)} kW still ${move > 0 ? 'rose' : 'fell'} by ${points(move)} from the middle of its break-in to the end; ${of.runs === 1 ? 'one run was' : `${of.runs} runs were`} made in it.`,
    why: `Its own criterion is ${points(of.within_ratio)}. While a gear set still beds in, a later article looks better than an earlier one.`,
    write: 'Break it in further, write the new efficiencies under a new state, and run the baseline again in it.',
  };
};

/** Of a difference of two efficiencies, in the percent that they are written in. */
const points = (ratio: number): string => `${writeNumber(Math.abs(ratio) * 100, 2)} %`;
