import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';

/** A folder that carries the number of the process it belongs to, so that one that was killed can be told from one that works. */
interface Owned {
  readonly path: string;
  readonly process: number;
}

/** A fresh folder of this process alone; those of processes that are gone are taken away. */
export function ownFolder(parent: string, name: string): string {
  for (const { path, process: owner } of owned(parent, name))
    if (!isAlive(owner)) rmSync(path, { recursive: true, force: true });
  return mkdtempSync(join(parent, `${name}${process.pid.toFixed(0)}-`));
}

/** Every such folder or file beside it, whoever made it. */
export function owned(parent: string, name: string): readonly Owned[] {
  const all = safely(() => readdirSync(parent)) ?? [];
  return all.sort().flatMap((entry) => {
    const [, number] = entry.startsWith(name) ? (/^(\d+)-[A-Za-z0-9]{6}/.exec(entry.slice(name.length)) ?? []) : [];
    return number === undefined ? [] : [{ path: join(parent, entry), process: Number(number) }];
  });
}

/** Whether a process of that number works on this machine, ours or another's. */
export function isAlive(number: number): boolean {
  try {
    process.kill(number, 0);
    return true;
  } catch (trouble) {
    return trouble instanceof Error && 'code' in trouble && trouble.code === 'EPERM';
  }
}

function safely<T>(make: () => T): T | null {
  try {
    return make();
  } catch {
    return null;
  }
}
