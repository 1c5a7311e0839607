import fc from 'fast-check';

/** How many times the short form is run: one in `npm test`, more in `npm run test:long`. */
export const turns = Number(process.env['FUZZ_TURNS'] ?? 1);

/** Tries a check on so many cases of one seed, and prints how many there were and how long the slowest took. */
export function everyCase<T>(
  of: string,
  arbitrary: fc.Arbitrary<T>,
  check: (one: T) => unknown,
  parameters: { readonly seed: number; readonly numRuns: number },
): void {
  let [cases, slowest_ms] = [0, 0];
  const timed = (one: T): boolean => {
    const begun = performance.now();
    const held = check(one);
    cases++;
    slowest_ms = Math.max(slowest_ms, performance.now() - begun);
    return held !== false;
  };
  fc.assert(fc.property(arbitrary, timed), parameters);
  console.log(`${of}: ${String(cases)} cases, none threw, the slowest took ${slowest_ms.toFixed(0)} ms`);
}
