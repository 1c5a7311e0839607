import type { FindPart, FindSeries, FindText } from '../../trial/find.ts';
import { claimWords } from '../../trial/claim.ts';
import { gradeKinds } from '../../trial/flow.ts';
import { scales } from '../../trial/grade-anchors.ts';
import { answerOf, type Answer, type FoundClaim, type FoundRun, type WordsFound } from './answer.ts';
import type { Ask, AskField } from './ask.ts';
import { articleKey } from './differs.ts';
import { wordIndex, type FoundText } from './words.ts';

export interface Choice {
  readonly value: string;
  readonly text: string;
}

export interface Found {
  readonly answer: Answer;
  readonly texts: readonly FoundText[];
}

/** The whole book, as the parts beside the page tell it. */
export interface FindBook {
  readonly series: readonly FindSeries[];
  readonly heldRuns: number;
  /** Of a field that is chosen from a list. */
  readonly choices: (field: AskField) => readonly Choice[] | null;
  /** Takes in some more words; true when all are in. Asked before, it takes in the rest first. */
  readonly read: (most: number) => boolean;
  readonly ask: (ask: Ask) => Found;
}

export function bookOf(parts: readonly FindPart[]): FindBook {
  const series = parts.flatMap((part) => part.series ?? []);
  const texts: readonly FindText[] = parts.flatMap((part) => part.texts);
  const words = wordIndex(texts);
  const lists = listsOf(series);
  return {
    series,
    heldRuns: series.reduce((sum, { heldRuns }) => sum + heldRuns, 0),
    choices: (field) => lists[field] ?? null,
    read: words.read,
    ask: (ask) => {
      const hits = ask.words === '' ? [] : words.ask(ask.words);
      const answer = answerOf(series, ask, ask.words === '' ? null : foundOn(hits));
      return { answer, texts: isNarrowed(ask) ? hits.filter(aboutOf(answer)) : hits };
    },
  };
}

const isNarrowed = (ask: Ask): boolean =>
  Object.entries(ask).some(([field, value]) => field !== 'words' && value !== '' && value !== null);

/** Words of a run are its own: its title names the article, and what is said of an article is not said of each of its runs. */
function foundOn(hits: readonly FoundText[]): WordsFound {
  const pages = new Set(hits.map(({ path }) => pageOf(path)));
  const sections = new Set(hits.map(({ path }) => path));
  return {
    run: (of) => pages.has(runPath(of)),
    claim: (of) => sections.has(claimPath(of)),
  };
}

/** With conditions asked as well, only words about what was found under them. */
function aboutOf({ runs, claims }: Answer): (hit: FoundText) => boolean {
  const pages = new Set(runs.flatMap((of) => [runPath(of), articlePath(of), oilPath(of)]));
  const sections = new Set(claims.map(claimPath));
  return ({ path }) => pages.has(pageOf(path)) || sections.has(path);
}

const pageOf = (path: string): string => path.replace(/#.*$/, '');

export const runPath = ({ series, run }: FoundRun): string => `series/${series.id}/runs/${run[0]}/`;
export const claimPath = ({ series, claim }: FoundClaim): string => `series/${series.id}/claims/#${claim[0]}`;
const articlePath = ({ series, run }: FoundRun): string =>
  `series/${series.id}/articles/${series.articles[series.cells[run[2]]![0]]?.[0] ?? ''}/`;
const oilPath = ({ series, run }: FoundRun): string =>
  `series/${series.id}/oils/${series.oils[series.cells[run[2]]![1]]?.[0] ?? ''}/`;

/** What the book holds, so that nobody has to guess how it is spelled. */
function listsOf(all: readonly FindSeries[]): Partial<Record<AskField, readonly Choice[]>> {
  const runs = all.flatMap((series) => series.runs);
  const plainly = (values: readonly string[]): Choice[] =>
    [...new Set(values)].sort().map((value) => ({ value, text: value.replaceAll('_', ' ') }));
  const oils = new Map<string, Set<string>>();
  for (const [id, , grade] of all.flatMap((series) => series.oils)) {
    const ids = oils.get(grade) ?? new Set();
    oils.set(grade, ids.add(id));
  }
  const verdicts = all.flatMap((series) => series.verdicts.flatMap((verdict) => verdict.split(', ')));
  const claims = new Set(all.flatMap((series) => series.claims.map(([, , word]) => word)));
  return {
    trial: plainly(runs.map(([, trial]) => trial)),
    kind: plainly(all.flatMap(({ articles }) => articles.map(([, , kind]) => kind))),
    article: plainly(all.flatMap(({ articles }) => articles.map(([id, name]) => articleKey(id, name)))),
    oil: [...oils]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([grade, ids]) => ({ value: grade, text: `${grade} (${[...ids].sort().join(', ')})` })),
    basis: plainly(runs.map(([, , , basis]) => basis)),
    grade: gradeKinds.map((kind) => ({ value: kind, text: scales[kind].name })),
    value: plainly(['0', '1', '2', '3', '4']),
    word: [...claimWords.filter((word) => claims.has(word)).map(asChoice), ...plainly(verdicts)],
  };
}

const asChoice = (word: string): Choice => ({ value: word, text: word });
