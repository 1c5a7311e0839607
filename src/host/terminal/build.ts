import { blocks } from '../../finding/finding.ts';
import type { Audience } from '../../report/input.ts';
import { buildSite } from '../site/build.ts';
import { madeFrom } from './make.ts';
import { progress, sayFindings } from './say.ts';

/**
 * `dipmark build`: the site of a folder. A house book is built round what cannot be read and says so; a public one is not
 * published while an error stands. What cannot be built leaves the last good site as it was.
 */
export async function build(input: {
  folder: string;
  out: string;
  audience: Audience;
  json: boolean;
}): Promise<number> {
  const { tell, end } = progress();
  const made = madeFrom({ ...input, tell });
  if (typeof made === 'string') {
    end();
    process.stderr.write(`${made}\n`);
    return 2;
  }
  const stopped = blocks(made.findings);
  if (made.book === null || made.frame === null || (stopped && input.audience === 'public')) {
    end();
    sayFindings(made.findings, input.json);
    process.stderr.write(`Nothing was written; ${input.out} is as it was.\n`);
    return 1;
  }
  const { written } = await buildSite({
    pages: made.pages,
    files: made.files,
    frame: made.frame,
    out: input.out,
    tell: (done, all, what) => {
      tell(`${done} of ${all}  ${what}`);
    },
  });
  end();
  sayFindings(made.findings, input.json);
  if (!input.json) process.stderr.write(`${written} pages in ${input.out}\n`);
  return stopped ? 1 : 0;
}
