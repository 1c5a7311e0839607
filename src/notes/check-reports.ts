import type { Finding } from '../finding/finding.ts';
import type { Article } from '../trial/article.ts';
import { keptBack, toldIn } from '../trial/kept-back.ts';
import type { Part } from '../trial/part.ts';
import type { Report } from '../trial/report.ts';
import type { SourceFile } from '../trial/series.ts';
import { stranger } from './check-series.ts';
import { foundAt, gather, withEffect } from './gather.ts';
import { readReport } from './report-note.ts';
import * as say from './texts-reports.ts';

/** What a client copy may name. */
export interface Reportable {
  readonly folder: string;
  readonly articles: ReadonlyMap<string, Article>;
  readonly oils: readonly string[];
  readonly runs: readonly string[];
  readonly claims: readonly string[];
  readonly parts: readonly Part[];
}

/** Client copies in the order of their names; one that names a stranger, or would give a name away, is left out alone. */
export function readReports(
  files: readonly SourceFile[],
  known: Reportable,
): { readonly reports: readonly Report[]; readonly findings: readonly Finding[] } {
  const { folder } = known;
  const read = gather(
    files.filter(({ path }) => /^reports\/[^/]+\.md$/.test(path.slice(folder.length + 1))),
    readReport,
  );
  const checked = [...read.records.values()].map((report) => ({ report, findings: checkReport(report, known) }));
  return {
    reports: checked.filter(({ findings }) => findings.length === 0).map(({ report }) => report),
    findings: withEffect([...read.findings, ...checked.flatMap(({ findings }) => findings)], say.reportLeftOut, {
      series: folder,
    }),
  };
}

function checkReport(report: Report, known: Reportable): Finding[] {
  const all = (field: string, what: string, names: readonly string[], of: readonly string[]): Finding[] =>
    names.flatMap((name, i) => stranger(report, `${field}.${i.toFixed(0)}`, what, name, of));
  return [
    ...all('articles', 'article', report.articles, [...known.articles.keys()]),
    ...all('claims', 'claim', report.claims, known.claims),
    ...all('withheld', 'run', report.withheld, known.runs),
    ...all(
      'parts',
      'part',
      report.parts,
      known.parts.map(({ id }) => id),
    ),
    ...report.parts.flatMap((id, i) =>
      known.parts.some((part) => part.id === id && part.status === 'draft')
        ? [foundAt(report, `parts.${i.toFixed(0)}`, say.overDraft(id))]
        : [],
    ),
    ...checkAliases(report, known),
    ...checkWords(report, known),
  ];
}

function checkAliases(report: Report, known: Reportable): Finding[] {
  const real = realNames(known);
  return [...report.aliases].flatMap(([article, as], i, all): Finding[] => {
    const at = (field: string) => `aliases.${i.toFixed(0)}.${field}`;
    const what = real.get(as.toLowerCase());
    const other = all.slice(0, i).find(([, name]) => name.toLowerCase() === as.toLowerCase());
    return [
      ...(report.articles.includes(article) ? [] : [foundAt(report, at('article'), say.aliasOutside(article))]),
      ...(what === undefined ? [] : [foundAt(report, at('as'), say.aliasIsReal(as, what))]),
      ...(other === undefined ? [] : [foundAt(report, at('as'), say.aliasTwice(as, other[0]))]),
    ];
  });
}

/** What the note itself says is printed as it stands: it must not tell what it keeps back. */
function checkWords(report: Report, { articles }: Reportable): Finding[] {
  const kept = keptBack(report, articles);
  const texts = [
    ['title', 'The title', report.title],
    ['client', 'The name of the client', report.client],
    ['supersedes', 'What it takes the place of', report.supersedes ?? ''],
    ...report.notTested.map((text, i) => [`not-tested.${i.toFixed(0)}`, 'What was not tested', text]),
    ...report.signedBy.map((text, i) => [`signed-by.${i.toFixed(0)}`, 'Who signs', text]),
    ['aliases', 'The words under the fields', report.body],
  ] as const;
  return texts.flatMap(([field, where, text]) => {
    const told = toldIn(text, kept);
    return told === null ? [] : [foundAt(report, field, say.nameTold(where, told.real, told.as))];
  });
}

/** Every name of the series that an alias could be taken for. */
const realNames = ({ articles, oils, runs }: Reportable): ReadonlyMap<string, string> =>
  new Map(
    [
      ...[...articles.values()].flatMap(({ id, name }) => [
        [id, 'the id of an article'],
        [name, `the name of ${id}`],
      ]),
      ...oils.map((id) => [id, 'the id of an oil']),
      ...runs.map((id) => [id, 'the id of a run']),
    ].map(([name, what]) => [name!.toLowerCase(), what!]),
  );
