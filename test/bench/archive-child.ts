import type * as Rebuild from '../../src/host/terminal/rebuild.ts';
import type * as Stills from '../../src/host/pictures/stills.ts';
import type { Told } from './archive.ts';

const compiled = (path: string): Promise<unknown> => import(new URL(`../../dist/${path}`, import.meta.url).href);
const { stillStore } = (await compiled('host/pictures/stills.js')) as typeof Stills;
const { rebuilder } = (await compiled('host/terminal/rebuild.js')) as typeof Rebuild;

/** Builds the folder that it is given, and again whenever it is told to: compiled, as a user has it, so that threads can be had. */
const [folder = '', out = ''] = process.argv.slice(2);
const store = stillStore();
const rebuild = rebuilder({ folder, out, audience: 'house', tell: () => undefined, store });

async function build(): Promise<void> {
  const begun = performance.now();
  const { written, findings } = await rebuild();
  if (written === null) throw new Error(JSON.stringify(findings[0]));
  const told: Told = {
    took_s: (performance.now() - begun) / 1000,
    peak_MB: (process.resourceUsage().maxRSS * 1024) / 1e6,
  };
  process.send!(told);
}

process.on('message', (what) => {
  if (what === 'again') void build();
  else
    void rebuild.close().then(() => {
      store.close();
      process.disconnect();
    });
});
await build();
