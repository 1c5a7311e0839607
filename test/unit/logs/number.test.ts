import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumber } from '../../../src/logs/number.ts';

const point = '.'.charCodeAt(0);
const readText = (text: string, decimal = point): number => {
  const bytes = new TextEncoder().encode(`,${text},`);
  return readNumber(bytes, 1, bytes.length - 1, decimal);
};
const digits = (min: number, max: number): fc.Arbitrary<string> =>
  fc.array(fc.integer({ min: 0, max: 9 }), { minLength: min, maxLength: max }).map((d) => d.join(''));
const sign = fc.constantFrom('', '-', '+');
const written = fc
  .tuple(
    sign,
    digits(1, 22),
    fc.option(digits(0, 20)),
    fc.option(fc.tuple(fc.constantFrom('e', 'E'), sign, digits(1, 3))),
  )
  .map(
    ([s, whole, part, power]) =>
      `${s}${whole}${part === null ? '' : `.${part}`}${power === null ? '' : power.join('')}`,
  );

// The oracle is Number(), which ECMA-262 (StringNumericLiteral) rounds correctly.
describe('a number of a log', () => {
  it('equals Number(text) to the last bit', () => {
    fc.assert(
      fc.property(written, (text) => Object.is(readText(text), Number(text))),
      { seed: 20260302, numRuns: 20_000 },
    );
  });

  it('of any double comes back as it was written', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (x) => readText(`${x}`) === x),
      { seed: 20260302, numRuns: 20_000 },
    );
  });

  it.each([
    '-0',
    '.5',
    '5.',
    '0.1',
    '9007199254740993',
    '1e22',
    '1e23',
    '1.7976931348623157e308',
    '4.9e-324',
    '123456789012345678e-40',
  ])('%s is read as Number reads it', (text) => {
    expect(Object.is(readText(text), Number(text))).toBe(true);
  });

  it('with a declared decimal comma is the same number', () => {
    expect(readText('-12,375e2', ','.charCodeAt(0))).toBe(-1237.5);
    expect(readText('1,23456789012345678', ','.charCodeAt(0))).toBe(1.23456789012345678);
  });

  it.each([
    '',
    '-',
    '+',
    '.',
    'e5',
    '1e',
    '1e+',
    '--1',
    '1.2.3',
    '0x1F',
    '1d5',
    '1 ',
    ' 1',
    '1_000',
    'NaN',
    'Infinity',
    '１',
  ])('%j is none', (text) => {
    expect(readText(text)).toBeNaN();
  });
});
