/**
 * Places each of several may take, counted from the lowest, by the simultaneous intervals of all pairs: first place is one more
 * than those separated below it, last place the number of all less those separated above it.
 *
 *   [1 + #{b : b below a}, m − #{b : b above a}]
 *
 * source  method of Al Mohamad, Goeman and van Zwet, Biometrics 77 (2021) (from memory)   check: e-Handbook 7.4.7.1
 */
export function rankIntervals(given: {
  readonly values: ReadonlyMap<string, number>;
  readonly separated: (a: string, b: string) => boolean;
}): Map<string, readonly [number, number]> {
  const { values, separated } = given;
  const all = [...values];
  return new Map(
    all.map(([a, value]) => {
      const apart = all.filter(([b]) => b !== a && separated(a, b));
      const below = apart.filter(([, other]) => other < value).length;
      return [a, [1 + below, all.length - (apart.length - below)] as const];
    }),
  );
}
