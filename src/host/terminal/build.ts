import { blocks } from '../../finding/finding.ts';
import type { Audience } from '../../report/input.ts';
import { stillStore, type StillStore } from '../pictures/stills.ts';
import { buildSite } from '../site/build.ts';
import { madeFrom } from './make.ts';
import { wrongOut } from './out.ts';
import { counted } from './rebuild.ts';
import { progress, sayFindings } from './say.ts';

/**
 * `dipmark build`: the site of a folder. A house book is built round what cannot be read and says so; a public one is not
 * published while an error stands. What cannot be built leaves the last good site as it was.
 */
export async function build(input: BuildCall): Promise<number> {
  const store = stillStore();
  try {
    return await buildWith(store, input);
  } finally {
    store.close();
  }
}

interface BuildCall {
  folder: string;
  out: string;
  audience: Audience;
  json: boolean;
}

async function buildWith(store: StillStore, input: BuildCall): Promise<number> {
  const { out, audience, json } = input;
  const { tell, end } = progress();
  const made = await madeFrom({ ...input, tell, store });
  const wrong = typeof made === 'string' ? made : await wrongOut(input);
  if (typeof made === 'string' || wrong !== null) {
    end();
    process.stderr.write(`${wrong}\n`);
    return 2;
  }
  const { pages, files, frame, shown, findings } = made;
  const stopped = blocks(findings);
  if (frame === null || (stopped && audience === 'public')) {
    end();
    sayFindings(findings, json);
    process.stderr.write(`Nothing was written; ${out} is as it was.\n`);
    return 1;
  }
  const { written } = await buildSite({ pages, files, frame, shown, out, tell: counted(tell) }).finally(end);
  sayFindings(findings, json);
  if (!json) process.stderr.write(`${written} pages and files in ${out}\n`);
  return stopped ? 1 : 0;
}
