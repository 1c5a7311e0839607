import { expect } from 'vitest';

/**
 * Checks against a published figure: "toAgreeWithPrinted" to half of its last printed digit;
 * "toShareDigits" to so many correct digits, for figures printed longer than double precision can reach.
 */
declare module 'vitest' {
  interface Matchers<T> {
    toAgreeWithPrinted(printed: string): T;
    toShareDigits(printed: string, digits: number): T;
  }
}

expect.extend({
  toAgreeWithPrinted(received: unknown, printed: string) {
    const { value, half } = readPrinted(printed);
    const off = typeof received === 'number' ? Math.abs(received - value) : NaN;
    return {
      // A hair over the half, for a printed figure that is itself no binary fraction.
      pass: off <= half * (1 + 1e-9),
      message: () =>
        `${String(received)} ${off <= half ? 'agrees' : 'does not agree'} with the printed ${printed} (± ${half})`,
    };
  },
  toShareDigits(received: unknown, printed: string, digits: number) {
    const { value } = readPrinted(printed);
    const shared = typeof received === 'number' ? -Math.log10(Math.abs(received - value) / Math.abs(value)) : NaN;
    return {
      pass: shared >= digits,
      message: () => `${String(received)} has ${shared.toFixed(1)} digits of ${printed}; ${digits} asked`,
    };
  },
});

/** "1.27E-03" is 0.00127 ± 0.000005; "150" is 150 ± 0.5. Anything else is a slip of the test. */
function readPrinted(printed: string): { readonly value: number; readonly half: number } {
  const parts = /^[-−+]?\d+(?:\.(\d*))?(?:[eE]([-+]?\d+))?$/.exec(printed);
  if (parts === null) throw new Error(`"${printed}" is not a printed number`);
  const place = Number(parts[2] ?? 0) - (parts[1] ?? '').length;
  return { value: Number(printed.replace('−', '-')), half: 0.5 * 10 ** place };
}
