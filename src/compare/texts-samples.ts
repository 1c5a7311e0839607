import { writeNumber } from '../quantity/write.ts';
import type { SampleChange } from './samples.ts';

/** What can be said of a result of a used sample. */
export const words = {
  changed: 'changed',
  within: 'within the method’s repeatability',
  noTwin: 'no unused sample of this batch',
  notAsked: 'not measured on the unused sample',
  otherMethod: 'by another method than on the unused sample',
} as const;

export const repeatabilityOf = (property: string, sample: string): string =>
  `repeatability of ${property.replace('-', ' ')} in ${sample}`;

/** What a change rests on. `run`: what the oil had seen. */
export const changeNotes = ({ word, after, twin, sample }: SampleChange): string[] => [
  word,
  `less unused sample ${twin?.id ?? ''} of batch ${sample.batch}, both by ${after.method}`,
  'repeatability is stated for one operator, one apparatus and a short time between; two laboratories lie further apart',
  ...(sample.volume_m3 !== null && sample.volume_m3 < 20e-6
    ? [`a sample of ${writeNumber(sample.volume_m3 * 1e6, 0)} mL may hold fewer of the larger particles`]
    : []),
];
