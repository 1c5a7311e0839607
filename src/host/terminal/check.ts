import { blocks } from '../../finding/finding.ts';
import { asJson } from '../../finding/show.ts';
import type { Audience } from '../../report/input.ts';
import { stillStore } from '../pictures/stills.ts';
import { madeFrom } from './make.ts';
import { reachJson, reachText } from './reach.ts';
import { progress, sayFindings, sayJson } from './say.ts';

/** `dipmark check`: every finding of the folder, and of a plan without runs what it can separate; nothing stays written. */
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
  if (input.json) sayJson([...made.findings.map(asJson), ...reachJson(made.series)]);
  else {
    const ahead = reachText(made.series);
    if (ahead !== '') process.stdout.write(`${ahead}\n`);
    sayFindings(made.findings, false, true);
  }
  return blocks(made.findings) ? 1 : 0;
}
