import { blocks } from '../../finding/finding.ts';
import type { Audience } from '../../report/input.ts';
import { stillStore } from '../pictures/stills.ts';
import { madeFrom } from './make.ts';
import { progress, sayFindings } from './say.ts';

/** `dipmark check`: every finding of the folder; nothing stays written. */
export async function check(input: { folder: string; json: boolean; audience: Audience }): Promise<number> {
  const { tell, end } = progress();
  const store = stillStore();
  const made = await madeFrom({ ...input, tell, store }).finally(() => {
    store.close();
    end();
  });
  if (typeof made === 'string') {
    process.stderr.write(`${made}\n`);
    return 2;
  }
  sayFindings(made.findings, input.json, true);
  return blocks(made.findings) ? 1 : 0;
}
