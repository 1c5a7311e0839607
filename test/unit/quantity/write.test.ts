import { describe, expect, it } from 'vitest';
import {
  digitsFor,
  usFor,
  writeMeasured,
  writeNumber,
  writeQuantity,
  writeWithUS,
} from '../../../src/quantity/write.ts';

const plain = (text: string): string => text.replace(/\u202f/g, ' ');

describe('numbers on the page', () => {
  it('carry a true minus and never a minus zero', () => {
    expect(writeNumber(-9.54, 1)).toBe('\u22129.5');
    expect(writeNumber(-0.04, 1)).toBe('0.0');
    expect(writeNumber(-0, 2)).toBe('0.00');
  });

  it('part thousands by a narrow no-break space from 10 000 on, and no decimals', () => {
    expect(writeNumber(9999, 0)).toBe('9999');
    expect(writeNumber(10000, 0)).toBe('10\u202f000');
    expect(writeNumber(-1234567.12345, 5)).toBe('\u22121\u202f234\u202f567.12345');
  });

  it('are never NaN or infinite: that is our bug and says so', () => {
    expect(() => writeNumber(NaN, 1)).toThrow('cannot show');
    expect(() => writeNumber(Infinity, 1)).toThrow('cannot show');
  });

  it('round halves of their decimal digits to even, not of their binary ones', () => {
    expect(
      [0.125, 2.675, 2.665, 0.5, 1.5, 1.005].map((v) => writeNumber(v, v < 2 && v * 2 === Math.round(v * 2) ? 0 : 2)),
    ).toEqual(['0.12', '2.68', '2.66', '0', '2', '1.00']);
  });

  it('round to tens and hundreds, and down to nothing', () => {
    expect([writeNumber(4127, -1), writeNumber(4127, -2), writeNumber(4, -2), writeNumber(60, -2)]).toEqual([
      '4130',
      '4100',
      '0',
      '100',
    ]);
  });

  it('stay plain however small or large', () => {
    expect(writeNumber(1e-7, 9)).toBe('0.000000100');
    expect(plain(writeNumber(1e21, 0))).toBe('1 000 000 000 000 000 000 000');
  });
});

describe('units on the page', () => {
  it('stand behind a narrow no-break space, also % and °C; ° of angle stands close', () => {
    expect(writeQuantity(368.85, '°C', 1)).toBe('95.7\u202f°C');
    expect(writeQuantity(0.12, '%', 0)).toBe('12\u202f%');
    expect(writeQuantity(Math.PI / 6, '°', 0)).toBe('30°');
    expect(writeQuantity(78, '1', 0)).toBe('78');
  });

  it('are names of the table, and a slip is our bug', () => {
    expect(() => writeQuantity(1, 'furlong', 0)).toThrow('no unit is named');
  });
});

describe('a measured value', () => {
  it('goes to the place of its uncertainty, also in tens', () => {
    expect(plain(writeMeasured({ value: 4127, u: 61.7, k: 2, unit: 'W' }).text)).toBe('4130 ± 120 W');
  });

  it('takes its place again when rounding adds a digit: 9.96 becomes 10', () => {
    expect(plain(writeMeasured({ value: 91.25, u: 9.96, k: 1, unit: 'W' }).text)).toBe('91 ± 10 W');
    expect(digitsFor(9.96)).toBe(0);
  });

  it('may be shown with one digit', () => {
    expect(plain(writeMeasured({ value: -28.3, u: 4.4, k: 2, unit: 'W', digits: 1 }).text)).toBe('\u221228 ± 9 W');
  });

  it('is doubled to k = 2 when nothing is said', () => {
    expect(writeMeasured({ value: 1, u: 0.1, unit: 'W' }).plusMinus).toBe('0.20');
  });

  it('without uncertainty shows four digits and ± 0', () => {
    expect(plain(writeMeasured({ value: 2.4, u: 0, unit: 'L' }).text)).toBe('2.400 ± 0 L');
    expect(plain(writeMeasured({ value: 0, u: 0, unit: 'W' }).text)).toBe('0 ± 0 W');
  });
});

describe('US customary in brackets', () => {
  it('is rounded from full precision with its own uncertainty', () => {
    expect(plain(writeWithUS({ value: 0.0024, u: 0.00001, k: 2, unit: 'L' }))).toBe(
      '2.400 ± 0.020 L (2.536 ± 0.021 US qt)',
    );
  });

  it('of a temperature difference has no 32', () => {
    expect(plain(writeWithUS({ value: 50, u: 0.5, k: 1, unit: 'K', difference: true }))).toBe(
      '50.00 ± 0.50 K (90.00 ± 0.90 Δ°F)',
    );
  });

  it('is left out where the trade uses one unit for both', () => {
    expect(usFor('rpm')).toBeNull();
    expect(plain(writeWithUS({ value: 170e-6, u: 1e-6, k: 1, unit: 'mm²/s' }))).toBe('170.0 ± 1.0 mm²/s');
  });
});
