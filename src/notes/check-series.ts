import type { Finding } from '../finding/finding.ts';
import { nearest } from '../finding/nearest.ts';
import type { Article } from '../trial/article.ts';
import type { Series } from '../trial/book.ts';
import type { NoteHead } from '../trial/note.ts';
import type { Oil } from '../trial/oil.ts';
import type { Plan } from '../trial/plan.ts';
import type { Rig } from '../trial/rig.ts';
import type { ArticleNote } from './article.ts';
import { foundAt, type Gathered } from './gather.ts';
import * as say from './texts-book.ts';
import { unknownName } from './texts-check.ts';

/** What the notes of a series may name. A spoilt note is known by name: it is told once, where it stands. */
export interface Known {
  readonly articles: Gathered<Article>;
  readonly oils: Gathered<Oil>;
  readonly rig: Rig | null;
}

export const namesOf = <T>(of: Gathered<T>): string[] => [...of.records.keys(), ...of.spoilt];

/** A finding when `name` is not known; null when it is. */
export function stranger(
  head: NoteHead,
  path: string,
  what: string,
  name: string,
  known: readonly string[],
): Finding[] {
  if (known.includes(name)) return [];
  return [foundAt(head, path, unknownName(what, name, nearest(name, known), known))];
}

/** Names that the series and its rig sheet use. */
export function checkSeries(series: Series, { articles, oils, rig }: Known): Finding[] {
  const { article, oil } = series.baseline;
  const baseline = articles.records.get(article);
  const names = namesOf(articles);
  const tips = (rig?.instruments ?? []).flatMap((instrument, i) =>
    [...instrument.tip_z_m.keys()]
      .filter((name) => name !== 'other')
      .map((name) => ({ name, path: `instruments.${i}.tip.${name}` })),
  );
  const windows = (rig?.window?.usedOn ?? []).flatMap((name, i) =>
    stranger(rig!, `window.used-on.${i}`, 'article', name, names),
  );
  return [
    ...stranger(series, 'baseline.article', 'article', article, names),
    ...stranger(series, 'baseline.oil', 'oil', oil, namesOf(oils)),
    ...(baseline && baseline.role !== 'baseline' ? [foundAt(baseline, 'role', say.baselineRole(article))] : []),
    ...windows,
    ...tips.flatMap(({ name, path }) => stranger(rig!, path, 'article', name, names)),
    ...[...articles.records.values()]
      .filter(isCopy)
      .flatMap((copy) => [
        ...copy.standsInFor.flatMap((name, i) => stranger(copy, `stands-in-for.${i}`, 'article', name, names)),
        ...(rig && windows.length === 0 && rig.window?.usedOn.includes(copy.id) !== true
          ? [foundAt(copy, 'role', say.windowCapMissing(copy.id))]
          : []),
      ]),
  ];
}

const isCopy = (article: Article): boolean => article.kind === 'window_copy' || article.role === 'window_copy';

export function checkPlan(plan: Plan, { articles, oils }: Known, series: Series | null): Finding[] {
  const main = series?.reference.mainLimit_K ?? null;
  const listed = main === null || plan.limits_K.some((limit) => Math.abs(limit - main) < 1e-6);
  return [
    ...(listed || !series ? [] : [foundAt(series, 'reference.main-limit', say.mainLimitNotPlanned())]),
    ...plan.cells.flatMap((cell, i) => [
      ...stranger(plan, `cells.${i}.article`, 'article', cell.article, namesOf(articles)),
      ...stranger(plan, `cells.${i}.oil`, 'oil', cell.oil, namesOf(oils)),
    ]),
  ];
}

/** Gives each article the level table it names of another. One whose table cannot be had is spoilt too. */
export function withLevelTables(read: Gathered<ArticleNote>): Gathered<Article> {
  const records = new Map<string, Article>();
  const spoilt = new Set(read.spoilt);
  const leansOn = new Map<string, string>();
  const findings = [...read.findings];
  for (const [id, { levelTableOf, ...article }] of read.records) {
    const table = levelTableOf === null ? article.levelTable : read.records.get(levelTableOf)?.levelTable;
    if (levelTableOf === null || table) records.set(id, { ...article, levelTable: table ?? null });
    else {
      spoilt.add(id);
      // a spoilt table is told once, in its own note
      if (read.spoilt.has(levelTableOf)) leansOn.set(id, levelTableOf);
      else if (read.records.has(levelTableOf))
        findings.push(foundAt(article, 'level-table-of', say.noLevelTableThere(levelTableOf)));
      else findings.push(...stranger(article, 'level-table-of', 'article', levelTableOf, [...read.records.keys()]));
    }
  }
  return { records, spoilt, findings, leansOn };
}
