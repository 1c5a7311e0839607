import { shownCorrections } from '../report/amended.ts';
import { shownObjections } from '../report/amends.ts';
import { isOut, partName, partPath, partsOf } from '../report/parts-view.ts';
import type { View } from '../report/view.ts';
import type { Book } from '../trial/book.ts';
import { addressOf } from '../report/frame.ts';
import type { TextFile } from './files.ts';
import { escapedXml } from './xml.ts';

/** One dated thing that readers of the feed are told. */
export interface FeedEntry {
  /** Site path with anchor; with the address of the book it is the permanent name of the entry. */
  readonly path: string;
  readonly title: string;
  /** A day. */
  readonly published: string;
  readonly updated: string;
  readonly summary: string;
}

/** Parts of a series that are out, corrections, and objections with their answers. */
export function feedEntries(view: View): readonly FeedEntry[] {
  return [
    ...partsOf(view)
      .filter(isOut)
      .map((part): FeedEntry => {
        const [published] = [part.published!];
        const corrected = view.input.reaches
          .filter(
            ({ correction, figures }) =>
              correction.publishedOn > published &&
              figures.some(({ id }) => part.pins?.figures.has(id)) &&
              shownCorrections(view).some(({ id }) => id === correction.id),
          )
          .map(({ correction }) => correction.publishedOn);
        return {
          path: partPath(view, part),
          title: `${view.series.title}, ${partName(part)}`,
          published,
          updated: corrected.at(-1) ?? published,
          summary: part.status === 'withdrawn' ? `Withdrawn: ${part.why ?? ''}` : part.summary,
        };
      }),
    ...shownCorrections(view).map((c) => ({
      path: `${view.base}amends/#${c.id}`,
      title: `${view.series.title}, correction ${c.id}`,
      published: c.publishedOn,
      updated: c.publishedOn,
      summary: c.what,
    })),
    ...shownObjections(view).map((o) => ({
      path: `${view.base}amends/#${o.id}`,
      title: `${view.series.title}, objection ${o.id}`,
      published: o.received,
      updated: o.received,
      summary: o.text,
    })),
  ];
}

/** Atom (RFC 4287), the newest first, from days in the notes alone; none where the book has no address, since entries are named by theirs. */
export function feed(book: Book, told: readonly FeedEntry[]): TextFile[] {
  const address = addressOf(book);
  if (address === null) return [];
  const entries = [...told].sort(newestFirst);
  const x = escapedXml;
  const at = (day: string): string => `${day}T00:00:00Z`;
  const lines = [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${x(book.language)}">`,
    `  <title>${x(book.name)}</title>`,
    `  <id>${x(address)}</id>`,
    `  <link href="${x(address)}"/>`,
    `  <link rel="self" type="application/atom+xml" href="${x(`${address}feed.xml`)}"/>`,
    `  <updated>${at(entries[0]?.updated ?? '1970-01-01')}</updated>`,
    `  <author><name>${x(book.lab)}</name></author>`,
    `  <rights>${x(book.licence)}</rights>`,
    ...entries.flatMap((entry) => [
      '  <entry>',
      `    <title>${x(entry.title)}</title>`,
      `    <id>${x(`${address}${entry.path}`)}</id>`,
      `    <link href="${x(`${address}${entry.path}`)}"/>`,
      `    <published>${at(entry.published)}</published>`,
      `    <updated>${at(entry.updated)}</updated>`,
      `    <summary>${x(entry.summary)}</summary>`,
      '  </entry>',
    ]),
    '</feed>',
  ];
  return [{ path: 'feed.xml', text: `${lines.join('\n')}\n` }];
}

const newestFirst = (a: FeedEntry, b: FeedEntry): number =>
  a.updated > b.updated ? -1 : a.updated < b.updated ? 1 : a.path < b.path ? -1 : 1;
