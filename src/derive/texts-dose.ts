import { writeNumber } from '../quantity/write.ts';

/** What stands with a thermal dose. */
export const bySumpProbe = 'by the sump probe: surfaces in the mesh are hotter, and no life of the oil follows from it';

export const notCounted = (hours: number): string =>
  `${writeNumber(hours, 2)} h of the log are not counted: gaps, and rows without a reading of the sump`;

export const probeInAir = 'at a step the sump probe hung above the oil: that time counts at what it read';
