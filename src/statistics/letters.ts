/**
 * Compact letters: cells that share a letter are not separated, and every pair not separated shares one.
 * Holds also where separation is not transitive, as with unequal numbers of runs. One cell alone gets the letter a.
 *
 * source  insert and absorb: Piepho, J. Computational and Graphical Statistics 13 (2004) 456 (from memory)
 */
export function compactLetters(given: {
  readonly order: readonly string[];
  readonly separated: (a: string, b: string) => boolean;
}): Map<string, string> {
  const { order, separated } = given;
  let groups: ReadonlySet<string>[] = [new Set(order)];
  order.forEach((a, i) => {
    for (const b of order.slice(i + 1)) {
      if (separated(a, b)) groups = absorb(groups.flatMap((group) => split(group, a, b)));
    }
  });
  const rank = new Map(order.map((name, i) => [name, i]));
  const places = (group: ReadonlySet<string>) => [...group].map((name) => rank.get(name)!);
  const sorted = groups.map(places).sort(byFirstDifference);
  return new Map(order.map((name, i) => [name, sorted.flatMap((g, n) => (g.includes(i) ? [letter(n)] : [])).join('')]));
}

/** Insert: a group that holds a separated pair becomes two, one without each. */
function split(group: ReadonlySet<string>, a: string, b: string): ReadonlySet<string>[] {
  if (!group.has(a) || !group.has(b)) return [group];
  return [a, b].map((out) => new Set([...group].filter((name) => name !== out)));
}

/** Absorb: a group that lies in another says nothing of its own. */
const absorb = (groups: readonly ReadonlySet<string>[]): ReadonlySet<string>[] =>
  groups.filter(
    (group, i) => !groups.some((other, j) => i !== j && within(group, other) && (group.size < other.size || j < i)),
  );

const within = (group: ReadonlySet<string>, other: ReadonlySet<string>): boolean =>
  [...group].every((name) => other.has(name));

function byFirstDifference(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < Math.min(a.length, b.length); i++) if (a[i] !== b[i]) return a[i]! - b[i]!;
  return a.length - b.length;
}

const alphabet = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';
const letter = (n: number): string =>
  alphabet[n % alphabet.length]! + (n < alphabet.length ? '' : String(Math.floor(n / alphabet.length) + 1));
