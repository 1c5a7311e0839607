/** Why a fit is refused, in one place. The reader gets these as the reason beside "not ranked" or "cannot tell". */

export const tooFewReadings = (readings: number, unknowns: number): string =>
  `${readings} readings for ${unknowns} unknowns leave nothing to judge the scatter by.`;

export const columnFollows = (name: string): string =>
  `${name} cannot be told apart from the other unknowns: every change of it goes with a change of theirs.`;

export const notANumber = 'A reading or a setting is not a number.';
