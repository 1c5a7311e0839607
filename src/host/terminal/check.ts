import { blocks } from '../../finding/finding.ts';
import type { Audience } from '../../report/input.ts';
import { madeFrom } from './make.ts';
import { progress, sayFindings } from './say.ts';

/** `dipmark check`: every finding of the folder, nothing written. */
export function check(input: { folder: string; json: boolean; audience: Audience }): number {
  const { tell, end } = progress();
  const made = madeFrom({ ...input, tell });
  end();
  if (typeof made === 'string') {
    process.stderr.write(`${made}\n`);
    return 2;
  }
  sayFindings(made.findings, input.json, true);
  return blocks(made.findings) ? 1 : 0;
}
