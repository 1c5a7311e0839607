/** Why runs of a later campaign stand where they stand. */

export const notRunAgain = (campaign: string): string => `the baseline was not run again in ${campaign}`;

export const notRunBefore = (campaign: string): string => `the baseline was not run before ${campaign}`;

export const notFirst = (of: { campaign: string; run: string }): string =>
  `the baseline was not run first in ${of.campaign}: ${of.run} came before it`;

export const notLast = (of: { campaign: string; run: string }): string =>
  `the baseline was not run again after ${of.run}, the last of ${of.campaign}`;

export const otherCampaign = (campaign: string): string =>
  `one side was run in ${campaign}, which stands in a table of its own`;

export const noScatter = 'neither repeats nor causes say how far the baseline may lie from itself';

export const within = 'the baseline lies within what it repeats';

export const beyond = 'the baseline moved by more than it repeats';

export const beyondAdjusted =
  'the baseline moved by more than it repeats, and the series said beforehand that this is taken off';

export const tooFewToAdjust = (least: number): string =>
  `the baseline moved by more than it repeats, and fewer than ${least} runs of it on either side are too few to take that off`;

export const chosenLate =
  'the baseline moved by more than it repeats, and that it is taken off was not declared before the campaign';
