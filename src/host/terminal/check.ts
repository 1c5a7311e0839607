import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { blocks } from '../../finding/finding.ts';
import { asJson } from '../../finding/show.ts';
import type { Audience } from '../../report/input.ts';
import { checkSums, sumsFile } from '../pack/sums.ts';
import { stillStore } from '../pictures/stills.ts';
import { madeFrom } from './make.ts';
import { missingText } from './missing.ts';
import { reachJson, reachText } from './reach.ts';
import { progress, sayFindings, sayJson } from './say.ts';

/** `dipmark check`: every finding of the folder, and of a plan without runs what it can separate; nothing stays written. */
export async function check(input: {
  folder: string;
  json: boolean;
  audience: Audience;
  deep?: boolean;
}): Promise<number> {
  if (input.deep === true) return checkDeep(input);
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
    const missing = missingText(made.series);
    if (missing !== '') process.stdout.write(`\n${missing}`);
  }
  return blocks(made.findings) ? 1 : 0;
}

/** Every sum of a pack, and then the notes in it. */
function checkDeep(input: { folder: string; json: boolean; audience: Audience }): number {
  if (!existsSync(join(input.folder, sumsFile))) {
    process.stderr.write(
      `${input.folder} is no pack: it has no ${sumsFile}. Name the folder that dipmark pack wrote.\n`,
    );
    return 2;
  }
  const { findings, verified } = checkSums(input.folder);
  if (input.json) sayJson(findings.map(asJson));
  else {
    sayFindings(findings, false, true);
    process.stdout.write(`${verified.toFixed(0)} files are as they were packed.\n`);
  }
  return blocks(findings) ? 1 : 0;
}
