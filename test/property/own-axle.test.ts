import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ownAxle, referenceCase } from '../../src/compare/own-axle.ts';
import { rowWords, speedsText } from '../../src/report/own-axle-words.ts';
import type { AxleAsked } from '../../src/trial/own-axle.ts';
import { demoMade } from '../scenario/demo.ts';

const { data } = demoMade().series[0]!.ownAxle!;
const reference = referenceCase(data);
const wild = fc.oneof(
  fc.constantFrom(0, -1, 1, 1e-12, 1e12, 1e300, NaN, Infinity, -Infinity),
  fc.double({ min: -1e3, max: 1e3, noNaN: true }),
);
/** Near the case of the series or far from it. */
const around = (value: number) =>
  fc.oneof(
    fc.double({ min: 0.8, max: 1.2, noNaN: true }).map((by) => by * value),
    wild,
  );
const asked: fc.Arbitrary<AxleAsked> = fc.record({
  ratio: around(reference.ratio),
  radius_m: fc.oneof(fc.constant(null), around(reference.radius_m!)),
  wheel_rad_s: around(reference.wheel_rad_s),
  power_W: around(reference.power_W),
  ambient_K: around(reference.ambient_K),
  airflow_m_s: around(reference.airflow_m_s),
  fill_m3: around(reference.fill_m3),
  oil: fc.oneof(
    fc.constantFrom('O1', 'O2', '__proto__', ''),
    fc.record({ nu40_m2_s: around(1e-4), nu100_m2_s: around(1.5e-5) }),
  ),
  sump_K: around(reference.sump_K),
  drive: fc.constantFrom('electric', 'petrol', 'petrolTurbo', 'diesel'),
  driveEfficiency: around(0.9),
});

describe("whatever is asked of a reader's own axle", () => {
  it('has a finite answer with its doubt, or a reason in words', () => {
    fc.assert(
      fc.property(asked, (of) => {
        const answer = ownAxle(data, of);
        for (const row of answer.rows)
          for (const told of [row.spin, row.less, row.cost, row.final]) {
            if (told.kind === 'none') expect(told.why).not.toBe('');
            else if (told.kind === 'value') expect(Number.isFinite(told.value) && told.half >= 0).toBe(true);
            else expect(told.low <= told.high && Number.isFinite(told.high - told.low)).toBe(true);
          }
        const said = answer.rows.flatMap((row) => rowWords(row, of.drive, true).cells.map(({ text }) => text));
        expect([...said, speedsText(answer, of, true)].join(' ')).not.toMatch(/NaN|Infinity|undefined|null/);
      }),
      { numRuns: 1000, seed: 20260302 },
    );
  });
});
