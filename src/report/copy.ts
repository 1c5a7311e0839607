import { keptBack, renaming, toldIn } from '../trial/kept-back.ts';
import type { Report } from '../trial/report.ts';
import { articleWords } from './cite.ts';
import { amendmentsChapter, cautionsChapter, filesChapter, notTestedChapter } from './copy-back.ts';
import { methodChapter, summaryChapter, testedChapter } from './copy-front.ts';
import { doubtChapter, resultsChapter, standingChapter } from './copy-results.ts';
import { copyView } from './copy-view.ts';
import { dateWords } from './dates.ts';
import type { SeriesInput } from './input.ts';
import type { Paper } from './paper.ts';
import { listed } from './spans.ts';
import type { View } from './view.ts';

/**
 * One client copy whole: the same figures, words and charts as the site, narrowed to what this client is given, under
 * the names that this paper uses. `told` is a real name that is kept back and stands in it all the same; then it is not to be printed.
 */
export function paperOf(input: SeriesInput, report: Report): { readonly paper: Paper; readonly told: string | null } {
  const { view, left } = copyView(input, report);
  const kept = keptBack(report, input.record.articles);
  const chapters = [
    summaryChapter(view, report, left),
    testedChapter(view, report),
    methodChapter(view),
    resultsChapter(view),
    standingChapter(view),
    doubtChapter(view),
    cautionsChapter(view),
    notTestedChapter(view, report, left),
    amendmentsChapter(view, report),
    filesChapter(view),
  ].filter(({ sections }) => sections.length > 0);
  const { book } = input;
  const paper = withTexts<Paper>(
    {
      ...{ number: report.id, issue: report.version, title: report.title, issued: report.issued },
      ...{ language: book.language, lab: book.lab, supersedes: report.supersedes, invented: book.invented },
      ...{ front: frontOf(view, report), standing: standingOf(view, report), chapters, signedBy: report.signedBy },
    },
    renaming(kept),
  );
  return { paper, told: toldIn(JSON.stringify(paper), kept)?.real ?? null };
}

function frontOf(view: View, report: Report): Paper['front'] {
  const { input, runs } = view;
  const days = runs.flatMap(({ started, ended }) => [started, ended]).sort();
  const rows: (readonly [string, Paper['front'][number]['value']] | null)[] = [
    ['Tested by', [input.book.lab]],
    ['For', [report.client]],
    ['Series', [view.series.title]],
    ['Articles', listed(report.articles.map((id) => [articleWords(view, id)]))],
    ['Rig', [view.rig.name]],
    days.length === 0 ? null : ['Tested', [`${dateWords(days[0]!)} to ${dateWords(days.at(-1)!)}`]],
    ['Issued', [report.issued === null ? 'not issued: a draft' : dateWords(report.issued)]],
    report.supersedes === null ? null : ['Takes the place of', [report.supersedes]],
    ['Contact', [input.book.contact]],
    ['Conflicts of interest', [view.series.conflicts]],
  ];
  return rows.filter((row) => row !== null).map(([name, value]) => ({ name, value }));
}

/** Said on the first page, whatever the paper holds. */
const standingOf = (view: View, report: Report): Paper['standing'] => [
  ['Results concern only the items that were tested, in the state that they were in.'],
  ['Laid out after the elements of a report in ISO/IEC 17025:2017, clause 7.8. It is not an accredited report.'],
  ...(report.status === 'draft' ? [['This is a draft. Nothing in it is given out.']] : []),
  ...(view.input.book.invented ? [['All data in it are invented, to show what such a paper holds.']] : []),
];

/** The same thing with every text in it changed, however deep; nothing else is touched. */
function withTexts<T>(thing: T, change: (text: string) => string): T {
  if (typeof thing === 'string') return change(thing) as T;
  if (Array.isArray(thing)) return thing.map((item: unknown) => withTexts(item, change)) as T;
  if (thing instanceof Map)
    return new Map(
      [...thing].map(([key, value]: [unknown, unknown]) => [withTexts(key, change), withTexts(value, change)]),
    ) as T;
  if (typeof thing !== 'object' || thing === null) return thing;
  return Object.fromEntries(
    Object.entries(thing).map(([key, value]: [string, unknown]) => [change(key), withTexts(value, change)]),
  ) as T;
}
