/**
 * NIST/ITL Statistical Reference Datasets, one-way analysis of variance (public domain), a line a group.
 */

/** StRD SiRstv: silicon resistivity, five instruments. */
export const siRstv: readonly (readonly number[])[] = [
  [196.3052, 196.124, 196.189, 196.2569, 196.3403],
  [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
  [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
  [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
  [196.2119, 196.1051, 196.185, 196.0052, 196.209],
];

/**
 * StRD SmLs01, SmLs04 and SmLs07 by their rule: nine groups of 21 readings, the first at its group's tenth, then one tenth
 * below and above it in turn; the whole part is 1, 1e6 or 1e12. Read as decimals, as a file would be.
 */
export const simulatedGroups = (whole: string): number[][] =>
  [4, 3, 5, 3, 5, 3, 5, 3, 5].map((tenth) =>
    Array.from({ length: 21 }, (_, i) => Number(`${whole}.${i === 0 ? tenth : i % 2 === 1 ? tenth - 1 : tenth + 1}`)),
  );
