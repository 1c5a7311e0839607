import { nearest } from '../finding/nearest.ts';

/** A bare name in one folder: no step out of it, no drive, no address, nothing that is hidden or cannot be seen. */
export const isBareName = (file: string): boolean =>
  /^[^./\\~][^/\\:?#%*"<>|]*$/.test(file) && !/[\p{Cc}\p{Cf}]/u.test(file) && file.trim() === file;

/** The nearest name among files of a folder that no note names: what belongs to another run is not what was meant. */
export function nearestSpare(
  name: string,
  home: string,
  among: { readonly paths: Iterable<string>; readonly named: ReadonlySet<string> },
): string | null {
  const spare = [...among.paths].flatMap((path) => (path.startsWith(home) ? [path.slice(home.length)] : []));
  return nearest(
    name,
    spare.filter((file) => !among.named.has(file)),
  );
}
