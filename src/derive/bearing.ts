import { estimate, type Cause } from '../quantity/estimate.ts';
import type { Result } from '../trial/derived.ts';
import { calibration, gather, readingScatter } from './causes.ts';
import { logSource, type Reading } from './reading.ts';
import { meanOf } from './readings-of.ts';

/** Pinion bearing race above sump, mean of a stretch: what the oil that reaches the pinion is judged by, without a window. */
export function bearingRise(reading: Reading, rows: readonly [number, number]): { results: Result[]; causes: Cause[] } {
  const bearing = reading.channel('pinion-bearing');
  const sump = reading.channel('sump');
  if (bearing === null || sump === null) return { results: [], causes: [] };
  const above = meanOf(bearing.subarray(...rows).map((b, i) => b - sump[rows[0] + i]!));
  if (above.n < 8) return { results: [], causes: [] };
  const probes = [reading.instrument('pinion-bearing'), reading.instrument('sump')];
  const found = gather([
    { of: probes[0] ? calibration(probes[0], 370) : null, sensitivity: 1 },
    { of: probes[1] ? calibration(probes[1], 370) : null, sensitivity: -1 },
    {
      of: readingScatter({ run: reading.run.id, what: 'bearing above sump', u: above.u, dof: above.dof }),
      sensitivity: 1,
    },
  ]);
  return {
    causes: [...found.causes],
    results: [
      {
        quantity: 'bearing-rise',
        at: {},
        estimate: estimate(above.mean, found.parts),
        bound: null,
        class: 'measured',
        relation: 'difference-of-readings',
        method: 'heat-up/last-half-hour',
        notes: ['mean of the last half hour'],
        given: [
          {
            symbol: 'Δb',
            name: 'pinion bearing less sump, last half hour',
            value: above.mean,
            u: above.u,
            unit: 'K',
            from: logSource(reading.log, 'pinion-bearing', rows),
          },
        ],
        steps: [],
      },
    ],
  };
}
