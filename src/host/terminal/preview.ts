import { watch } from 'node:fs';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Remember } from '../../pipeline.ts';
import type { Audience } from '../../report/input.ts';
import { buildSite, pictureMemo } from '../site/build.ts';
import { serve } from './serve.ts';
import { madeFrom } from './make.ts';
import { progress, sayFindings } from './say.ts';

/** `dipmark preview`: builds into a folder of its own, serves it to this machine only, and builds again when a note is saved. */
export async function preview(input: { folder: string; port: number; audience: Audience }): Promise<number> {
  const out = join(mkdtempSync(join(tmpdir(), 'dipmark-')), 'site');
  const remember = remembering();
  const memo = pictureMemo();
  const { tell, end } = progress();
  const rebuild = async (): Promise<boolean> => {
    const started = performance.now();
    const made = madeFrom({ ...input, tell, remember: remember.of });
    if (typeof made === 'string' || made.frame === null) {
      end();
      process.stderr.write(typeof made === 'string' ? `${made}\n` : '');
      if (typeof made !== 'string') sayFindings(made.findings, false);
      return false;
    }
    const { written } = await buildSite({ pages: made.pages, files: made.files, frame: made.frame, out, memo });
    remember.forget();
    end();
    sayFindings(made.findings, false);
    process.stderr.write(`${written} pages in ${((performance.now() - started) / 1000).toFixed(1)} s\n`);
    return true;
  };
  if (!(await rebuild())) return 2;
  const server = await serve({ folder: out, port: input.port });
  process.stderr.write(`Open http://127.0.0.1:${server.port}/   (stop with Ctrl-C)\n`);
  let waiting: NodeJS.Timeout | null = null;
  let busy = Promise.resolve(true);
  const watcher = watch(input.folder, { recursive: true }, (_, name) => {
    if (name === null || /(^|[/\\])(\.|_site|node_modules)/.test(name)) return;
    if (waiting !== null) clearTimeout(waiting);
    waiting = setTimeout(() => {
      busy = busy.then(rebuild).catch((error: unknown) => {
        process.stderr.write(`${error instanceof Error ? error.message : String(error)}\nThe last good pages stay.\n`);
        return false;
      });
    }, 120);
  });
  await new Promise<void>((resolve) => {
    process.once('SIGINT', resolve);
    process.once('SIGTERM', resolve);
  });
  watcher.close();
  server.close();
  await busy;
  rmSync(join(out, '..'), { recursive: true, force: true });
  return 0;
}

/** Keeps answers from one build to the next; what a build did not ask for is forgotten after it. */
function remembering(): { of: Remember; forget: () => void } {
  let kept = new Map<string, unknown>();
  let asked = new Map<string, unknown>();
  return {
    of: <T>(key: string, make: () => T): T => {
      const value = (asked.get(key) ?? kept.get(key) ?? make()) as T;
      asked.set(key, value);
      return value;
    },
    forget: () => {
      kept = asked;
      asked = new Map();
    },
  };
}
