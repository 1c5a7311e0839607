import { blocks } from '../../finding/finding.ts';
import type { Audience } from '../../report/input.ts';
import { stillStore, type StillStore } from '../pictures/stills.ts';
import { buildSite } from '../site/build.ts';
import { filesBelow } from '../disk/book.ts';
import { type ArchiveBuilt, buildArchive, manySeries } from './archive.ts';
import { madeFrom, notABook } from './make.ts';
import { wrongOut } from './out.ts';
import { counted, progress, sayFindings } from './say.ts';

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
  const { folder, out, json } = input;
  const { tell, end } = progress();
  const built = await (async () => {
    const wrong = notABook(folder) ?? (await wrongOut(input));
    if (wrong !== null) return wrong;
    const listed = filesBelow(folder);
    return manySeries(listed) === null
      ? await buildWhole({ ...input, tell, store })
      : await buildArchive({ ...input, tell, listed });
  })().finally(end);
  if (typeof built === 'string') {
    process.stderr.write(`${built}\n`);
    return 2;
  }
  const { written, findings } = built;
  sayFindings(findings, json);
  if (written === null) {
    process.stderr.write(`Nothing was written; ${out} is as it was.\n`);
    return 1;
  }
  if (!json) process.stderr.write(`${written} pages and files in ${out}\n`);
  return blocks(findings) ? 1 : 0;
}

/** A book of a few series is made as one. */
async function buildWhole(
  input: BuildCall & { readonly tell: (what: string) => void; readonly store: StillStore },
): Promise<ArchiveBuilt | string> {
  const made = await madeFrom(input);
  if (typeof made === 'string') return made;
  const { pages, files, frame, shown, findings } = made;
  if (frame === null || (blocks(findings) && input.audience === 'public')) return { written: null, findings };
  const { written } = await buildSite({ pages, files, frame, shown, out: input.out, tell: counted(input.tell) });
  return { written, findings };
}
