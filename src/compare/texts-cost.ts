import { writeNumber } from '../quantity/write.ts';

export const noRadius = 'the rig sheet gives no rolling radius, so no road speed is known';

export const tooFast = ({ duty_m_s, fastest_m_s }: { duty_m_s: number; fastest_m_s: number }): string =>
  `the duty goes to ${writeNumber(duty_m_s * 3.6, 1)} km/h, and the fastest speed that was run with both is ${writeNumber(fastest_m_s * 3.6, 1)} km/h`;
