import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const filesBelow = (folder: string): string[] =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesBelow(path) : path.endsWith('.ts') ? [path] : [];
  });

const sources = filesBelow('src');
const text = new Map(sources.map((path) => [path, readFileSync(path, 'utf8')]));

/** Floors of the house; imports go down only, and rooms on one floor do not know each other. */
const floor: Readonly<Record<string, number>> = {
  finding: 0,
  quantity: 1,
  trial: 2,
  physics: 2,
  statistics: 2,
  notes: 3,
  logs: 3,
  derive: 3,
  compare: 4,
  ledger: 5,
  report: 6,
  charts: 7,
  outlets: 7,
  pipeline: 8,
  host: 9,
  reader: 9,
};
const roomOf = (path: string): string => {
  const [, room = ''] = path.split('/');
  return room.endsWith('.ts') ? 'pipeline' : room;
};
const importsOf = (path: string): string[] =>
  [...text.get(path)!.matchAll(/from '(\.[^']+)'/g)].map(([, to]) => join(path, '..', to!));

describe('the house', () => {
  it('knows the floor of every room', () => {
    for (const path of sources) expect(floor[roomOf(path)], path).toBeDefined();
  });

  it('has arrows that go down only', () => {
    const wrong = sources.flatMap((path) =>
      importsOf(path)
        .filter((to) => roomOf(to) !== roomOf(path) && floor[roomOf(to)]! >= floor[roomOf(path)]!)
        .map((to) => `${path} → ${to}`),
    );
    expect(wrong).toEqual([]);
  });

  it('keeps disk, clock, chance, terminal and locale in the host', () => {
    const host =
      /from 'node:|\bprocess\.|\bconsole\.|Date\.now|new Date\(\)|Math\.random|toLocale|\bIntl\.|localeCompare/;
    const wrong = sources.filter((path) => roomOf(path) !== 'host' && host.test(text.get(path)!));
    expect(wrong).toEqual([]);
  });

  it('has no file over 300 lines and no drawer for leftovers', () => {
    for (const path of sources) {
      expect(text.get(path)!.split('\n').length, path).toBeLessThanOrEqual(301);
      expect(path).not.toMatch(/util|helper|common|misc|manager/);
    }
  });

  it('does not put a kelvin into a degree', () => {
    const suffix =
      /([A-Za-z0-9]+)_(degC|K|Nm|W|m3|m|s|kg|Pa_s|m2_s|rad_s|W_K|J_K)\s*:\s*[A-Za-z0-9.]*_(degC|K|Nm|W|m3|m|s|kg|Pa_s|m2_s|rad_s|W_K|J_K)\b(?!\s*[-+*/?(])/g;
    const wrong = sources.flatMap((path) =>
      [...text.get(path)!.matchAll(suffix)].filter(([, , a, b]) => a !== b).map(([all]) => `${path}: ${all}`),
    );
    expect(wrong).toEqual([]);
  });

  it('does not read what was planted in a demo', () => {
    for (const path of sources) expect(text.get(path)!, path).not.toMatch(/JSON\.parse\([^)]*truth/);
    const named = sources.filter((path) => text.get(path)!.includes('truth.json'));
    // Named only where the reader of a folder passes it over.
    expect(named.every((path) => path.startsWith('src/notes/'))).toBe(true);
  });
});
