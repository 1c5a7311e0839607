import { calibration, zeroDrift, type Contribution } from './causes.ts';
import { ratioOf, type Reading } from './reading.ts';
import { meanOf } from './readings-of.ts';

/** What calibration and zero of the torque flanges do to a power difference, W per N·m. */
export function torqueChain(
  reading: Reading,
  output_rad_s: number,
): { of: Contribution | null; sensitivity: number }[] {
  const chain = [
    { kind: 'torque-in', watts: output_rad_s * ratioOf(reading.rig) },
    { kind: 'torque-out-left', watts: -output_rad_s },
    { kind: 'torque-out-right', watts: -output_rad_s },
  ] as const;
  return chain.flatMap(({ kind, watts }) => {
    const instrument = reading.instrument(kind);
    if (instrument === null || reading.channel(kind) === null) return [];
    const mid = meanOf(reading.channel(kind)!).mean;
    return [
      { of: calibration(instrument, mid), sensitivity: watts },
      { of: zeroDrift(reading.run, instrument), sensitivity: watts },
    ];
  });
}
