import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** A folder of a package, and where it goes below the tool. */
export interface TreePart {
  readonly from: string;
  readonly to: string;
}

interface Described {
  readonly version: string;
  readonly dependencies?: Readonly<Record<string, string>>;
}

/**
 * What the tool needs to run, found the way Node finds it: each dependency of a dependency, none that is optional and none for
 * developers. Two versions of one package are kept apart where they were.
 */
export function productionTree(root: string): readonly TreePart[] {
  const placed = new Map<string, string>();
  const parts: TreePart[] = [];
  const visit = (folder: string, to: string): void => {
    for (const name of Object.keys(describedIn(folder).dependencies ?? {}).sort()) {
      const from = found(name, folder);
      if (from === null) throw new Error(`${name} is not installed beside the tool.`);
      const top = `node_modules/${name}`;
      const place = placed.get(top) === undefined || placed.get(top) === from ? top : join(to, top);
      if (placed.get(place) === from) continue;
      placed.set(place, from);
      parts.push({ from, to: place });
      visit(from, place);
    }
  };
  visit(root, '');
  return parts;
}

const describedIn = (folder: string): Described =>
  JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Described;

/** Upwards from a folder, as Node looks. */
function found(name: string, from: string): string | null {
  const here = join(from, 'node_modules', name);
  if (existsSync(join(here, 'package.json'))) return here;
  const up = dirname(from);
  return up === from ? null : found(name, up);
}
