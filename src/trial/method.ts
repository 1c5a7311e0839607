/**
 * Versions of the reduction. A new one is made whenever a figure of the same input would come out differently; older ones stay
 * runnable, so that an old table can be built again, and what was pinned under one stands beside what another gives.
 */
export const methodVersions = [
  { version: '1', what: 'Torque of a spin window is taken as it was held.' },
  {
    version: '2',
    what: 'Torque of a spin window is brought to the speed of its step by the exponent that the run has at that temperature, whose doubt is a cause.',
  },
] as const;
export type MethodVersion = (typeof methodVersions)[number]['version'];

export const currentMethod = '2' satisfies MethodVersion;
