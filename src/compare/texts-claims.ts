import { writeNumber } from '../quantity/write.ts';
import type { Cell } from '../trial/derived.ts';

/** Sentences about claims and splits. */

export const shareOfNothing = 'the whole difference is not separated from nothing, so that no share of it is told';

export const noFigure = (of: { cell: Cell; quantity: string }): string =>
  `no run gives ${of.quantity} of ${cellWords(of.cell)} under these conditions`;

export const onlyBound = (of: { cell: Cell; quantity: string }): string =>
  `${of.quantity} of ${cellWords(of.cell)} was not reached: a bound is no figure`;

export const noSplit = 'heat made and final rise of both are needed for a share';

export const noScatter = 'no repeat says how far one run scatters';

const cellWords = ({ article, fill_m3, oil, tilt_ratio }: Cell): string =>
  `${article} with ${writeNumber(fill_m3 * 1e3, 2)} L of ${oil}${tilt_ratio === 0 ? '' : `, tilt ${writeNumber(tilt_ratio * 100, 0)} %`}`;

export const noAreas = (missing: readonly string[]): string => {
  const articles = missing.filter((id) => id !== 'axle');
  const write = [
    ...(articles.length === 0 ? [] : [`outside-area in the notes of ${articles.join(' and ')}`]),
    ...(missing.includes('axle') ? ['rejecting-area in rig.md'] : []),
  ];
  return `what the surface of the article alone can account for is not known: write ${write.join(', and ')}`;
};
