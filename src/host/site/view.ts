import type { SiteFrame } from '../../report/frame.ts';
import type { Page, Section } from '../../report/page.ts';
import { hrefFrom, pageFile, relative } from './address.ts';
import type { BlocksAt, BlockView, ChartView, PictureOf } from './blocks.ts';
import { blockView } from './blocks.ts';
import type { BesideView } from './media-blocks.ts';
import { scriptsFor } from './media-blocks.ts';
import { everyBlock } from './shown.ts';
import type { SpanView } from './spans.ts';
import { spansFor } from './spans.ts';

/** A page as the templates print it. Nothing is left to be worked out there. */
export interface SheetView {
  readonly kind: string;
  readonly file: string;
  readonly title: string;
  /** Of the browser's tab: the page, then the book. */
  readonly tab: string;
  readonly description: string;
  readonly whereabouts: readonly SpanView[];
  readonly lead: readonly SpanView[];
  readonly banners: readonly { readonly code: string; readonly text: readonly SpanView[] }[];
  /** On the home page the first drawing stands beside the title. */
  readonly hero: ChartView | null;
  readonly sections: readonly SectionView[];
  readonly index: readonly { readonly href: string; readonly text: string }[];
  /** For machines that read the page: where its feed is, what its data are, how it is shown elsewhere. */
  readonly machines: MachinesView;
  readonly assets: string;
  /** Files of scripts, beside the style sheet; most pages need none. */
  readonly scripts: readonly string[];
  readonly home: string;
  readonly seriesNav: readonly NavView[];
  readonly nav: readonly NavView[];
}

export interface MachinesView {
  readonly feed: string | null;
  /** JSON that cannot end its element. */
  readonly dataset: string | null;
  readonly open: { readonly url: string; readonly picture: string | null } | null;
}

export interface NavView {
  readonly text: string;
  readonly href: string;
  readonly here: boolean;
}

export interface SectionView {
  readonly id: string;
  readonly heading: string | null;
  readonly blocks: readonly BlockView[];
  readonly margin: readonly {
    readonly name: string;
    readonly code: string | null;
    readonly text: readonly SpanView[];
    readonly list: readonly (readonly SpanView[])[];
  }[];
}

export function sheetView(
  page: Page,
  frame: SiteFrame,
  made: { readonly pictureOf: PictureOf; readonly beside: BesideView },
): SheetView {
  const spans = spansFor(page.path);
  const nav = (links: SiteFrame['nav']): readonly NavView[] =>
    links.map(({ text, to }) => ({ text, href: hrefFrom(page.path, to) ?? '', here: to === page.path }));
  const seriesLinks = page.series === null ? [] : (frame.seriesNav[page.series] ?? []);
  const once = frame.nav.filter(({ to }) => !seriesLinks.some((link) => link.to === to));
  const sections = page.sections.map((section) => sectionView(section, { ...made, page: page.path, spans }));
  const hero = page.kind === 'book' ? firstDrawing(sections) : null;
  return {
    kind: page.kind,
    file: pageFile(page.path),
    title: page.title,
    tab: page.title === frame.bookName ? page.title : `${page.title} · ${frame.bookName}`,
    description: page.description,
    whereabouts: spans(page.whereabouts),
    lead: spans(page.lead),
    banners: page.banners.map(({ code, text }) => ({ code, text: spans(text) })),
    hero,
    sections: hero === null ? sections : sections.map((section) => without(section, hero)),
    index: page.sections.flatMap(({ id, heading, inIndex = heading }) =>
      inIndex === null ? [] : [{ href: `#${encodeURIComponent(id)}`, text: inIndex }],
    ),
    machines: machinesView(page, frame, made.beside),
    assets: relative(page.path, 'assets/'),
    scripts: scriptsFor(everyBlock(page.sections.flatMap(({ blocks }) => blocks))),
    home: relative(page.path, 'index.html'),
    seriesNav: nav(seriesLinks),
    nav: nav(once),
  };
}

const sectionView = (section: Section, at: BlocksAt): SectionView => ({
  id: section.id,
  heading: section.heading,
  blocks: section.blocks.map((block) => blockView(block, at)),
  margin: section.margin.map((note) => ({
    // A name is closed by a full stop where words follow it, whoever wrote it.
    name: note.text.length > 0 && !/[.:?!]$/.test(note.name) ? `${note.name}.` : note.name,
    code: note.code ?? null,
    text: at.spans(note.text),
    list: (note.list ?? []).map(at.spans),
  })),
});

const openly: ReadonlySet<string> = new Set(['book', 'series', 'part', 'standing', 'claims', 'own-axle']);

function machinesView(page: Page, frame: SiteFrame, beside: BesideView): MachinesView {
  const { address } = frame;
  const picture = page.series === null ? null : `series/${page.series}/picture.png`;
  return {
    feed: beside.textOf('feed.xml') === null ? null : relative(page.path, 'feed.xml'),
    dataset:
      page.kind === 'series' ? (beside.textOf(`${page.path}dataset.jsonld`)?.replaceAll('<', '\\u003c') ?? null) : null,
    open:
      address === null || !openly.has(page.kind)
        ? null
        : {
            url: `${address}${page.path}`,
            picture: picture !== null && beside.hasPicture(picture) ? `${address}${picture}` : null,
          },
  };
}

const firstDrawing = (sections: readonly SectionView[]): ChartView | null =>
  sections
    .flatMap(({ blocks }) => blocks)
    .flatMap((block) => (block.kind === 'chart' && block.chart.kind === 'section' ? [block.chart] : []))[0] ?? null;

const without = (section: SectionView, chart: ChartView): SectionView => ({
  ...section,
  blocks: section.blocks.filter((block) => block.kind !== 'chart' || block.chart !== chart),
});
