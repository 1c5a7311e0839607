import type { Finding } from '../finding/finding.ts';
import { writeNumber } from '../quantity/write.ts';
import type { At, Result } from '../trial/derived.ts';
import { rowPlace } from './faults.ts';
import type { Ready } from './run.ts';
import * as texts from './texts.ts';

/** How many times its band a loss may lie off before it is told. The band is wide already; common practice, no source. */
const times = 3;

/** Spin power that lies far off what models let one expect, at most of its speeds and temperatures: told once, at its worst. */
export function farFromModels({ reading, input }: Ready, results: readonly Result[]): readonly Finding[] {
  if (reading === null) return [];
  const bands = new Map(
    results.flatMap(({ quantity, at, band }) =>
      quantity === 'loss-estimate' && band ? [[keyOf(at), band] as const] : [],
    ),
  );
  const held = results.flatMap(({ quantity, at, estimate }) => {
    const band = bands.get(keyOf(at));
    if (quantity !== 'spin-power' || estimate === null || band === undefined) return [];
    return [
      {
        at,
        band,
        power: estimate.value,
        off: Math.max(estimate.value / band.high, band.low / Math.max(estimate.value, 1e-9)),
      },
    ];
  });
  const far = held.filter(({ off }) => off > times);
  if (far.length * 2 <= held.length) return [];
  const worst = far.reduce((a, b) => (b.off > a.off ? b : a));
  return [
    texts.farFromModels({
      ...{ place: rowPlace(reading.log, 0, 'torque-in'), run: input.run.id, power: worst.power },
      ...{ low: worst.band.low, high: worst.band.high, at: wordsOf(worst.at) },
    }),
  ];
}

const keyOf = ({ outputSpeed_rad_s, sump_K }: At): string => `${String(outputSpeed_rad_s)} ${String(sump_K)}`;
const wordsOf = ({ outputSpeed_rad_s = 0, sump_K }: At): string =>
  `${writeNumber((outputSpeed_rad_s * 30) / Math.PI, 0)} rpm${typeof sump_K === 'number' ? ` and ${writeNumber(sump_K - 273.15, 0)} °C` : ''}`;
