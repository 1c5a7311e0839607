import { chapters } from '../physics/all.ts';
import { sources, type SourceKey } from '../physics/sources.ts';
import { relationPath } from './method-path.ts';
import { sourcesPath } from './method.ts';
import { seenWords } from './method-chapter.ts';
import type { Page, Span } from './page.ts';
import { link, listed, row, section, tableBlock } from './spans.ts';

/** Every source of a relation, how far it was seen, and what rests on it. */
export function sourcesPage(): Page {
  const used = chapters.flatMap(({ relations }) => relations);
  const keys = (Object.keys(sources) as SourceKey[]).filter((key) => used.some(({ source }) => source === key));
  const rank = ['published', 'seen', 'memory', 'none'];
  const order = [...keys].sort((a, b) => rank.indexOf(sources[a].seen) - rank.indexOf(sources[b].seen));
  return {
    kind: 'method',
    path: sourcesPath,
    title: 'Sources',
    description: 'Where the relations come from, and how far each source was seen.',
    whereabouts: [link('method/', 'Method'), ' · sources'],
    lead: [
      'Where the relations come from. A source that was recalled and not looked up says so; look it up before you lean on it.',
    ],
    banners: [],
    series: null,
    sections: [
      section('sources', 'Sources of relations', [
        tableBlock(
          'sources-table',
          ['wide source', 'how far it was seen', 'wide relations'],
          order.map((key) => {
            const { authors, year, title, where, seen } = sources[key];
            const text = [authors, title, where, year === null ? null : String(year)].filter((part) => part !== null);
            return row(
              `${text.join(', ')}.`,
              seen === 'none' ? 'needs none' : seenWords[seen],
              listed(
                used
                  .filter(({ source }) => source === key)
                  .map(({ id, title: name }): Span[] => [link(relationPath(id), name)]),
                ', ',
              ),
            );
          }),
        ),
      ]),
    ],
  };
}
