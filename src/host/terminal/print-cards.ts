import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { blocks } from '../../finding/finding.ts';
import { printedCards } from '../../report/cards.ts';
import { stillStore } from '../pictures/stills.ts';
import { buildSite } from '../site/build.ts';
import { madeFrom } from './make.ts';
import { wrongOut } from './out.ts';
import { counted, progress, sayFindings } from './say.ts';

/** What is asked of `dipmark print --cards`. */
export interface CardsCall {
  readonly folder: string;
  readonly out: string;
  readonly all: boolean;
  readonly series: string | null;
}

/** `dipmark print --cards`: a card for each planned run that is still to be run, in a folder of its own. */
export async function printCards(input: CardsCall): Promise<number> {
  const { folder, out, all } = input;
  const { tell, end } = progress();
  const store = stillStore();
  const made = await madeFrom({ folder, audience: 'house', tell, store }).finally(() => {
    store.close();
    end();
  });
  if (typeof made === 'string') return refuse(made);
  const wrong = (await wrongOut({ folder, out, usual: '_cards' })) ?? overSite(out) ?? unknownSeries(input, made);
  if (wrong !== null) return refuse(wrong);
  const { frame, findings } = made;
  const stopped = blocks(findings);
  const wanted = made.series.filter(({ record }) => input.series === null || record.series.id === input.series);
  const pages = printedCards(wanted, { all });
  if (stopped) sayFindings(findings, false);
  if (frame === null || pages.length === 0) {
    process.stderr.write(`${nothingToPrint(wanted, all)}\nNothing was written; ${out} is as it was.\n`);
    return stopped ? 1 : 0;
  }
  // Links to the pages of a site would lead nowhere from here.
  const bare = { ...frame, nav: [], seriesNav: {} };
  await buildSite({ pages, files: [], frame: bare, out, tell: counted(tell) }).finally(end);
  const seeds = wanted.flatMap(({ record, outlook }) =>
    outlook.seed === null ? [] : [`${record.series.id}: order drawn from seed ${outlook.seed}`],
  );
  const cards = pages.filter(({ kind, path }) => kind === 'card' && !path.endsWith('/all/')).length;
  process.stderr.write([...seeds, `${cards} ${cards === 1 ? 'card' : 'cards'} in ${out}`, ''].join('\n'));
  return stopped ? 1 : 0;
}

function refuse(why: string): number {
  process.stderr.write(`${why}\n`);
  return 2;
}

/** Cards never take the place of a whole site, which has its page of methods. */
const overSite = (out: string): string | null =>
  existsSync(join(out, 'method', 'index.html'))
    ? `${out} holds a site, and the cards would take its place. Write  --out _cards.`
    : null;

type Series = Exclude<Awaited<ReturnType<typeof madeFrom>>, string>['series'];

function unknownSeries({ series }: CardsCall, made: { readonly series: Series }): string | null {
  const known = made.series.map(({ record }) => record.series.id);
  if (series === null || known.includes(series)) return null;
  return `There is no series ${series} that could be read. Write one of: ${known.join(', ')}`;
}

function nothingToPrint(series: Series, all: boolean): string {
  const without = series.filter(({ record }) => record.plan === null).map(({ record }) => record.series.id);
  if (series.length > 0 && without.length === series.length)
    return `${without.join(', ')}: no plan says what is to be run.`;
  return all ? 'No planned run could be read.' : 'Every planned run is done. Write  --all  for a card of each of them.';
}
