import type { Effect } from '../trial/compared.ts';

/** What stands with a difference: its basis, what it rests on, why it is indicative only, what its margin says. */
export const effectNotes = (e: Effect): string[] => [
  e.basis,
  ...e.notes,
  ...e.indicative.map((why) => `indicative: ${why}`),
  ...marginNotes(e),
];

const marginNotes = ({ margin }: Effect): string[] =>
  margin === null
    ? []
    : [
        ...(margin.equal ? ['equal within the margin'] : []),
        ...(margin.noWorse === true ? ['no worse than the margin'] : []),
      ];

export const byTrialsNote =
  'the interval is the one by trials: at an end the linear one lies off by more than a tenth of the standard uncertainty';
