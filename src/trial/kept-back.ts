import type { Article } from './article.ts';
import type { Report } from './report.ts';

/** An article that a client copy calls by another name. */
interface KeptBack {
  readonly id: string;
  readonly name: string;
  readonly as: string;
}

/** Every article that goes by another name, with the window copies that stand in for it. */
export function keptBack(report: Pick<Report, 'aliases'>, articles: ReadonlyMap<string, Article>): readonly KeptBack[] {
  const own = [...report.aliases].flatMap(([id, as]) => {
    const article = articles.get(id);
    return article === undefined ? [] : [{ id, name: article.name, as }];
  });
  const copies = [...articles.values()].flatMap(({ id, name, role, standsInFor }) => {
    const of = role === 'window_copy' ? own.find((one) => standsInFor.includes(one.id)) : undefined;
    return of === undefined || report.aliases.has(id) ? [] : [{ id, name, as: `${of.as} with a window` }];
  });
  // longer names first: that of a copy holds that of the article
  return [...copies, ...own];
}

/** A text in which each of them goes by its other name, however the two were put together. */
export function renaming(kept: readonly KeptBack[]): (text: string) => string {
  const rules = kept.map(({ id, name, as }) => {
    const [idWord, nameWord] = [escaped(id), escaped(name)];
    const both = `${idWord}[\\s,]+${nameWord}|${nameWord}[\\s,]+${idWord}|${nameWord}|${idWord}`;
    return { find: new RegExp(`${before}(?:[Tt]he\\s+)?(?:${both})${after}`, 'giu'), as };
  });
  return (text) => rules.reduce((now, { find, as }) => now.replace(find, () => as), text);
}

/** A real name a text still tells, and what stands for it; `null` when it tells none. */
export function toldIn(text: string, kept: readonly KeptBack[]): { readonly real: string; readonly as: string } | null {
  for (const { id, name, as } of kept)
    for (const real of [id, name])
      if (new RegExp(`${before}${escaped(real)}${after}`, 'iu').test(text)) return { real, as };
  return null;
}

/** A name is a word of its own: P1 is not in P10, nor in P1w. */
const before = '(?<![\\p{L}\\p{N}])';
const after = '(?![\\p{L}\\p{N}])';
/** Spaces of any kind, and a hyphen or low line where a space may be. */
const escaped = (name: string): string =>
  name
    .split(/[\s_-]+/)
    .map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('[\\s_\\-\\u00ad\\u200b]+');
