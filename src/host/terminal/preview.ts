import { rmSync, watch } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Audience } from '../../report/input.ts';
import { ownFolder } from '../disk/own-folder.ts';
import { stillStore } from '../pictures/stills.ts';
import { type Rebuilder, rebuilder } from './rebuild.ts';
import { progress, sayFindings } from './say.ts';
import { serve } from './serve.ts';

/** `dipmark preview`: builds into a folder of its own, serves it to this machine only, and builds again when a note is saved. */
export async function preview(input: { folder: string; port: number; audience: Audience }): Promise<number> {
  const own = ownFolder(tmpdir(), 'dipmark-preview-');
  const store = stillStore();
  const { tell, end } = progress();
  const { folder, audience } = input;
  const rebuild = rebuilder({ folder, out: join(own, 'site'), audience, tell, store });
  try {
    return await previewIn(join(own, 'site'), { rebuild, end }, input);
  } finally {
    await rebuild.close();
    store.close();
    rmSync(own, { recursive: true, force: true });
  }
}

async function previewIn(
  out: string,
  { rebuild, end }: { readonly rebuild: Rebuilder; readonly end: () => void },
  { folder, port }: { folder: string; port: number },
): Promise<number> {
  const again = async (): Promise<number> => {
    const started = performance.now();
    const { written, findings, why } = await rebuild().finally(end);
    if (why === null) sayFindings(findings, false);
    else process.stderr.write(`${why}\n`);
    if (written === null) return why === null ? 1 : 2;
    process.stderr.write(`${written} pages and files in ${((performance.now() - started) / 1000).toFixed(1)} s\n`);
    return 0;
  };
  const first = await again();
  if (first !== 0) return first;
  const server = await serve({ folder: out, port });
  process.stderr.write(`Open http://127.0.0.1:${server.port}/   (stop with Ctrl-C)\n`);
  const watching = onSave(folder, async () => {
    const failed = await again().catch((error: unknown) => {
      process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
      return 1;
    });
    if (failed !== 0) process.stderr.write('The last good pages stay.\n');
  });
  await new Promise<void>((resolve) => {
    process.once('SIGINT', resolve);
    process.once('SIGTERM', resolve);
  });
  await watching.stop();
  server.close();
  return 0;
}

/** Calls after a note or log below the folder was saved: one call for saves that come together, one call at a time. */
function onSave(folder: string, then: () => Promise<void>): { stop: () => Promise<void> } {
  let waiting: NodeJS.Timeout | null = null;
  let busy = Promise.resolve();
  const watcher = watch(folder, { recursive: true }, (_, name) => {
    if (name === null || /(^|[/\\])(\.|_site|_cards|node_modules)/.test(name)) return;
    if (waiting !== null) clearTimeout(waiting);
    waiting = setTimeout(() => {
      busy = busy.then(then);
    }, 120);
  });
  return {
    stop: async () => {
      watcher.close();
      if (waiting !== null) clearTimeout(waiting);
      await busy;
    },
  };
}
