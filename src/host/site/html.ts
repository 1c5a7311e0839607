import type { TableView } from './blocks.ts';
import { brokenAtSlashes, keptTogether } from './kept-together.ts';
import type { MarkView, SpanView } from './spans.ts';
import type { NavView } from './view.ts';

/**
 * Words with their links, and rows of tables, as finished HTML: they are nine tenths of what is printed, and the loops of a
 * template take ten times as long over them.
 */
export const html = {
  spans: spansHtml,
  items: (list: readonly (readonly SpanView[])[]) => list.map((item) => `<li>${spansHtml(item)}</li>`).join(''),
  facts: (list: readonly { readonly name: string; readonly value: readonly SpanView[] }[]) =>
    list.map(({ name, value }) => `<div><dt>${safe(name)}</dt><dd>${spansHtml(value)}</dd></div>`).join(''),
  rows: rowsHtml,
  heads: (columns: TableView['columns']) => columns.map(headHtml).join('\n'),
  links: (list: readonly NavView[]) =>
    list
      .map(({ href, here, text }) => `<a href="${safe(href)}"${here ? ' aria-current="page"' : ''}>${safe(text)}</a>`)
      .join('\n'),
} as const;

function spansHtml(spans: readonly SpanView[]): string {
  return spans.map(spanHtml).join('');
}

function rowsHtml(rows: TableView['rows']): string {
  return rows
    .map(({ anchor, role, cells }) => {
      const id = anchor === null || anchor === '' ? '' : ` id="${safe(anchor)}"`;
      const of = role === null ? '' : ` class="${safe(role)}"`;
      return `<tr${id}${of}>\n${cells.map(cellHtml).join('')}</tr>\n`;
    })
    .join('');
}

function headHtml({ head, unit, align }: TableView['columns'][number]): string {
  if (head === '' && unit === null) return `<td class="${align}"></td>`;
  const of = unit === null ? '' : `<span class="unit">${head === '' ? '' : ', '}${safe(unit)}</span>`;
  return `<th scope="col" class="${align}">${keptTogether(head)}${of}</th>`;
}

function cellHtml({ align, short, plain, spans, bar }: TableView['rows'][number]['cells'][number]): string {
  const words = plain === null ? spansHtml(spans) : keptTogether(plain);
  return `<td class="${align}${short ? ' short' : ''}">${words}${bar === null ? '' : barHtml(bar)}</td>\n`;
}

function spanHtml(span: SpanView): string {
  switch (span.kind) {
    case 'text':
      return keptTogether(span.text);
    case 'link':
      return `<a href="${safe(span.href)}">${keptTogether(span.text)}</a>`;
    case 'figure':
      return `<a class="figure" href="${safe(span.href)}" data-figure="${safe(span.id ?? '')}">${safe(span.text)}</a>`;
    case 'strong':
      return `<strong>${keptTogether(span.text)}</strong>`;
    case 'verdict':
      return `<span class="verdict">${safe(span.text)}</span>`;
    case 'blank':
      return `<span class="blank"><span class="unseen">to be written in: ${safe(span.text)}</span></span>`;
    case 'code':
      return `<code>${brokenAtSlashes(span.text)}</code>`;
    case 'article': {
      const words = keptTogether(span.text);
      const name = span.href === null ? words : `<a href="${safe(span.href)}">${words}</a>`;
      return `<span class="article">${markHtml(span.mark)}${name}</span>`;
    }
  }
}

const markHtml = ({ shape, colour, hollow }: MarkView): string => {
  const look = hollow ? 'fill="var(--paper)" stroke="COLOUR" stroke-width="0.42"' : 'fill="COLOUR"';
  return `<svg class="mark" viewBox="-1.3 -1.3 2.6 2.6" width="12" height="12" aria-hidden="true" focusable="false"><path d="${safe(shape)}" ${look.replace('COLOUR', safe(colour))}/></svg>`;
};

const barHtml = (share: number): string =>
  `<svg class="share" viewBox="0 0 100 10" width="100" height="10" preserveAspectRatio="none" aria-hidden="true" focusable="false"><rect width="100" height="10" fill="var(--tint)"/><rect width="${String(share)}" height="10" fill="var(--link)"/></svg>`;

const signs: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
  '\\': '&#92;',
};
const special = /[&<>"'\\]/;
const safe = (text: string): string =>
  special.test(text) ? text.replace(/[&<>"'\\]/g, (sign) => signs[sign] ?? sign) : text;
