import fc from 'fast-check';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  combine,
  difference,
  estimate,
  mean,
  quotient,
  scaled,
  standardUncertainty,
  type Estimate,
} from '../../src/quantity/estimate.ts';
import { readAccuracy, readNumber, readQuantity } from '../../src/quantity/read.ts';
import { readDay, readInstant } from '../../src/quantity/time.ts';
import { differenceFromSI, fromSI, toSI, unitNamed, units } from '../../src/quantity/units.ts';
import { digitsFor, writeConcise, writeMeasured, writeNumber, writeQuantity } from '../../src/quantity/write.ts';

const seeded = { seed: 20260302, numRuns: 200 };
const tens = fc.integer({ min: -4, max: 5 });
const typed = fc.tuple(fc.integer({ min: -999999, max: 999999 }), fc.integer({ min: 0, max: 4 }));

describe('reading what was written', () => {
  const named = units.filter((unit) => unit.name !== '1');
  it.each(named)('gives the number back in $name ($dimension)', (unit) => {
    fc.assert(
      fc.property(typed, ([digits, decimals]) => {
        const number = unit.dimension === 'temperature' ? Math.abs(digits) : digits;
        const value = Number(`${number}e${-decimals}`);
        const read = readQuantity(writeQuantity(toSI(unit, value), unit.name, decimals), unit.dimension);
        expect(read.ok).toBe(true);
        if (!read.ok) return;
        expect(read.value.unit).toBe(unit.name);
        expect(writeQuantity(read.value.value, unit.name, decimals)).toBe(
          writeQuantity(toSI(unit, value), unit.name, decimals),
        );
        const slack = 1e-12 * (Math.abs(value) + Math.abs(unit.zero / unit.factor));
        expect(Math.abs(fromSI(unit, read.value.value) - value)).toBeLessThanOrEqual(slack);
      }),
      { ...seeded, numRuns: 40 },
    );
  });

  it('gives a plain number back, with either decimal sign', () => {
    fc.assert(
      fc.property(typed, fc.boolean(), ([digits, decimals], comma) => {
        const value = Number(`${digits}e${-decimals}`);
        const text = writeNumber(value, decimals);
        const read = readNumber(comma && decimals !== 3 ? text.replace('.', ',') : text);
        expect(read.ok && read.value + 0).toBe(value + 0);
      }),
      seeded,
    );
  });

  it('gives the uncertainty back with its coverage factor', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 500, noNaN: true }), fc.integer({ min: 1, max: 99 }), (value, u) => {
        const written = writeMeasured({ value, u: u / 100, k: 2, unit: 'N·m' });
        const read = readQuantity(`${written.value} N·m ± ${written.plusMinus} N·m (k=2)`, 'torque');
        expect(read.ok && read.value.plusMinus?.k).toBe(2);
        expect(read.ok && Math.abs(read.value.plusMinus!.value - u / 50)).toBeLessThan(0.05 * (u / 50));
      }),
      seeded,
    );
  });

  it('never throws, and places its trouble inside the text', () => {
    const sign = fc.constantFrom(
      ...Array.from('0123456789.,:/-+±()=k% °µ·²³½"\'eEFCKLNmqtinf\u2212\u202f\u00a0\ud83d\u0301'),
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 20 }),
      fc.array(sign).map((s) => s.join('')),
    );
    fc.assert(
      fc.property(text, fc.constantFrom(...new Set(units.map((u) => u.dimension))), (input, dimension) => {
        const results = [
          readQuantity(input, dimension),
          readQuantity(input, ['temperature', dimension], { field: 'sump' }),
          readNumber(input),
          readAccuracy(input, dimension),
          readInstant(input),
          readDay(input),
        ];
        for (const read of results) {
          if (read.ok) continue;
          const { offset, length } = read.trouble;
          expect(offset).toBeGreaterThanOrEqual(0);
          expect(length).toBeGreaterThanOrEqual(0);
          expect(offset + length).toBeLessThanOrEqual(Math.max(input.length, 0) + (length <= 1 ? 1 : 0));
        }
        const quantity = results[0]!;
        if (quantity.ok) expect(Number.isFinite((quantity.value as { value: number }).value)).toBe(true);
      }),
      { ...seeded, numRuns: 3000 },
    );
  });
});

describe('units against mathjs 15.2.0 as an independent program', () => {
  const math = create(all as Parameters<typeof create>[0]);
  it.each([
    ['in', 'in', 'm'],
    ['ft', 'ft', 'm'],
    ['mi', 'mi', 'm'],
    ['in²', 'in^2', 'm^2'],
    ['ft²', 'ft^2', 'm^2'],
    ['in³', 'in^3', 'm^3'],
    ['L', 'L', 'm^3'],
    ['US gal', 'gallon', 'm^3'],
    ['lb', 'lbm', 'kg'],
    ['oz', 'oz', 'kg'],
    ['lbf', 'lbf', 'N'],
    ['lbf·ft', 'lbf ft', 'N m'],
    ['lbf·in', 'lbf in', 'N m'],
    ['hp (mechanical)', 'hp', 'W'],
    ['Btu', 'BTU', 'J'],
    ['Btu/h', 'BTU/hour', 'W'],
    ['W/K', 'W/K', 'W/K'],
    ['Btu/(h·°F)', 'BTU/(hour degR)', 'W/K'],
    ['Btu/(lb·°F)', 'BTU/(lbm degR)', 'J/(kg K)'],
    ['psi', 'psi', 'Pa'],
    ['bar', 'bar', 'Pa'],
    ['km/h', 'km/hour', 'm/s'],
    ['mph', 'mi/hour', 'm/s'],
    ['ft/min', 'ft/minute', 'm/s'],
    ['°', 'deg', 'rad'],
    ['g/cm³', 'g/cm^3', 'kg/m^3'],
    ['lb/ft³', 'lbm/ft^3', 'kg/m^3'],
    ['mm²/s', 'mm^2/s', 'm^2/s'],
    ['kJ/(kg·K)', 'kJ/(kg K)', 'J/(kg K)'],
    ['kWh', 'kW hour', 'J'],
    ['h', 'hour', 's'],
    ['mV', 'mV', 'V'],
  ])('%s', (name, theirs, base) => {
    const independent = math.unit(1, theirs).toNumber(base);
    // mathjs keeps gallon, hp and psi to nine or ten digits.
    expect(Math.abs(unitNamed(name)!.factor / independent - 1)).toBeLessThan(1e-8);
  });
});

describe('temperatures', () => {
  it('come back through the other scale', () => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 500, noNaN: true }), (t) => {
        const [celsius, fahrenheit] = [unitNamed('°C')!, unitNamed('°F')!];
        const there = fromSI(fahrenheit, toSI(celsius, t));
        expect(Math.abs(there - (1.8 * t + 32))).toBeLessThan(1e-9);
        expect(Math.abs(fromSI(celsius, toSI(fahrenheit, there)) - t)).toBeLessThan(1e-9);
      }),
      seeded,
    );
  });

  it('differ by 1.8 times as many degrees Fahrenheit, whatever the zero', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -100, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (t, d) => {
          const fahrenheit = unitNamed('°F')!;
          const [a, b] = [t + 273.15, t + d + 273.15];
          const rise = fromSI(fahrenheit, b) - fromSI(fahrenheit, a);
          expect(Math.abs(rise - differenceFromSI(unitNamed('Δ°F')!, b - a))).toBeLessThan(1e-9);
          expect(Math.abs(rise - 1.8 * d)).toBeLessThan(1e-9);
        },
      ),
      seeded,
    );
  });
});

describe('digits', () => {
  it('an uncertainty shows two significant digits, never one or three', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 9999 }), tens, (n, power) => {
        const u = Number(`${n}e${power - 4}`);
        const shown = writeNumber(u, digitsFor(u)).replace(/[\u202f.]/g, '');
        const significant = shown.replace(/^0+/, '');
        expect(Number(significant.slice(0, 2))).toBeGreaterThanOrEqual(10);
        expect(significant.slice(2)).toMatch(/^0*$/);
      }),
      seeded,
    );
  });

  it('rounding moves a number by half a place at most, and never shows minus zero', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: -2, max: 6 }),
        (value, decimals) => {
          const text = writeNumber(value, decimals);
          const back = Number(text.replace('\u2212', '-').replace(/\u202f/g, ''));
          expect(Math.abs(back - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals * (1 + 1e-9) + 1e-9);
          expect(back === 0 && text.startsWith('\u2212')).toBe(false);
        },
      ),
      seeded,
    );
  });

  it('the short form and the long form show the same value', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.double({ min: 1e-3, max: 50, noNaN: true }),
        (value, u) => {
          const long = writeMeasured({ value, u, k: 1, unit: 'W' });
          expect(writeConcise({ value, u }).split('(')[0]).toBe(long.value);
        },
      ),
      seeded,
    );
  });
});

describe('estimates', () => {
  const part = fc.record({
    cause: fc.constantFrom('a', 'b', 'c', 'd', 'e'),
    u: fc.double({ min: -2, max: 2, noNaN: true }),
  });
  const any = fc
    .record({ value: fc.double({ min: 1, max: 100, noNaN: true }), parts: fc.array(part, { maxLength: 6 }) })
    .map(({ value, parts }): Estimate => estimate(value, parts));
  const partOf = (e: Estimate, cause: string): number => e.parts.find((p) => p.cause === cause)?.u ?? 0;

  /** What each cause does to f, by moving all its inputs together by a little and back. */
  const moved = (inputs: readonly Estimate[], f: (x: readonly number[]) => number, cause: string): number => {
    const h = 1e-5;
    const at = (side: number): number => f(inputs.map((e) => e.value + side * h * partOf(e, cause)));
    return (at(1) - at(-1)) / (2 * h);
  };
  const agree = (result: Estimate, inputs: readonly Estimate[], f: (x: readonly number[]) => number): void => {
    expect(result.value).toBeCloseTo(f(inputs.map((e) => e.value)), 9);
    for (const cause of ['a', 'b', 'c', 'd', 'e']) {
      const expected = moved(inputs, f, cause);
      expect(Math.abs(partOf(result, cause) - expected)).toBeLessThan(1e-6 * (1 + Math.abs(expected)));
    }
  };

  it('difference(a, a) is 0 ± 0 with no parts', () => {
    fc.assert(
      fc.property(any, (a) => {
        expect(difference(a, a)).toEqual({ value: 0, parts: [] });
      }),
      seeded,
    );
  });

  it('mean, difference, quotient and multiples propagate to first order (central differences)', () => {
    fc.assert(
      fc.property(any, any, fc.double({ min: -3, max: 3, noNaN: true }), (a, b, factor) => {
        agree(difference(a, b), [a, b], ([x, y]) => x! - y!);
        agree(quotient(a, b), [a, b], ([x, y]) => x! / y!);
        agree(mean([a, b, a]), [a, b], ([x, y]) => (2 * x! + y!) / 3);
        agree(scaled(a, factor), [a], ([x]) => factor * x!);
      }),
      seeded,
    );
  });

  it('combine takes the sensitivities of any relation: power from torque and speed', () => {
    fc.assert(
      fc.property(any, any, (torque, speed) => {
        const power = combine(torque.value * speed.value, [
          { of: torque, sensitivity: speed.value },
          { of: speed, sensitivity: torque.value },
        ]);
        agree(power, [torque, speed], ([t, w]) => t! * w!);
      }),
      seeded,
    );
  });

  it('a cause that two share cancels in their difference, and one that they do not share stays', () => {
    fc.assert(
      fc.property(any, any, fc.double({ min: -5, max: 5, noNaN: true }), (a, b, u) => {
        const shared = { cause: 'torque cell', u };
        const [one, other] = [estimate(a.value, [...a.parts, shared]), estimate(b.value, [...b.parts, shared])];
        expect(standardUncertainty(difference(one, other))).toBeCloseTo(standardUncertainty(difference(a, b)), 12);
        const own = difference(one, b);
        expect(Math.abs(partOf(own, 'torque cell'))).toBe(Math.abs(u));
      }),
      seeded,
    );
  });

  it('the order of parts and of inputs changes nothing but rounding', () => {
    fc.assert(
      fc.property(any, any, any, (a, b, c) => {
        const [one, other] = [mean([a, b, c]), mean([c, a, b])];
        expect(one.value).toBeCloseTo(other.value, 10);
        expect(standardUncertainty(one)).toBeCloseTo(standardUncertainty(other), 12);
      }),
      seeded,
    );
  });
});
