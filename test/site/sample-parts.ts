import type { SiteFrame } from '../../src/report/frame.ts';
import type { Block, MarginNote, Page, PageKind, Section, Span, Table } from '../../src/report/page.ts';

/** Small shapes that the sample pages are made of. */
export const series = 'hill-bowl';
export const root = `series/${series}/`;

export const figure = (text: string, id: string): Span => ({ kind: 'figure', to: `${root}working/${id}/`, text, id });
export const article = (mark: number, id: string, name: string): readonly Span[] => [
  { kind: 'article', mark, text: id, to: `${root}articles/${id}/` },
  ` ${name}`,
];
export const link = (to: string, text: string): Span => ({ kind: 'link', to, text });
export const prose = (...text: readonly Span[]): Block => ({ kind: 'prose', text });
export const note = (name: string, ...text: readonly Span[]): MarginNote => ({ name, text });
export const part = (
  id: string,
  heading: string | null,
  blocks: readonly Block[],
  margin: readonly MarginNote[] = [],
): Section => ({
  id,
  heading,
  blocks,
  margin,
});

export function page(kind: PageKind, path: string, title: string, more: Partial<Page>): Page {
  const whereabouts: readonly Span[] = path.startsWith(root) ? [link(root, 'The Hill Bowl Series'), ` · ${kind}`] : [];
  const plain = { whereabouts, lead: [], banners: [], sections: [], description: `${title}.` };
  return { kind, path, title, series: path.startsWith(root) ? series : null, ...plain, ...more };
}

export function table(id: string, heads: readonly string[], rows: readonly (readonly (readonly Span[])[])[]): Table {
  const columns = heads.map((head, i): Table['columns'][number] =>
    head.startsWith('#') ? { head: head.slice(1), align: 'number' } : { head, align: i === 0 ? 'wide' : 'text' },
  );
  return { id: `${id}-rows`, caption: null, columns, rows: rows.map((cells) => ({ cells })) };
}

export const frame: SiteFrame = {
  lab: 'Quillstone Axle Room',
  bookName: 'The Quillstone book',
  language: 'en',
  pathPrefix: '/',
  invented: true,
  address: null,
  nav: [
    { text: 'Method', to: 'method/' },
    { text: 'Cautions', to: 'cautions/' },
    { text: 'Words', to: 'words/' },
    { text: 'Guide', to: 'guide/' },
    { text: 'Checks', to: 'checks/' },
  ],
  seriesNav: {
    [series]: [
      { text: 'The Hill Bowl Series', to: root },
      { text: 'Standing', to: `${root}standing/` },
      { text: 'Runs', to: `${root}runs/` },
      { text: 'Plan', to: `${root}plan/` },
      { text: 'Rig', to: `${root}rig/` },
      { text: 'Ledger', to: `${root}ledger/` },
    ],
  },
  footer: ['Words and figures under CC-BY-4.0.', 'Corrections: corrections@quillstone.example'],
};
