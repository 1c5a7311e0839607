import type { Inline, Node, PaperNodes } from './nodes.ts';
import type { Sheet } from './printer.ts';

/** The paper as one HTML document for a browser that prints it: the same nodes in the same order. */
export function htmlOf(
  paper: PaperNodes,
  how: { readonly sheet: Sheet; readonly colours: ReadonlyMap<string, string>; readonly css: string },
): string {
  const issue = `${paper.number}, issue ${String(paper.issue)}${paper.issued === null ? ', draft' : ''}`;
  const tokens = [...how.colours].map(([name, colour]) => `${name}:${colour}`).join(';');
  const page = `@page{size:${how.sheet};@bottom-left{content:${cssText(`${paper.lab} · ${issue}`)}}}`;
  return `<!doctype html>
<html lang="${safe(paper.language)}"><head><meta charset="utf-8"><title>${safe(`${paper.number}: ${paper.title}`)}</title>
<meta name="author" content="${safe(paper.lab)}"><style>:root{${tokens}}${how.css}${page}</style></head><body>
<header><p class="soft">${safe(paper.lab)}</p><h1>${safe(paper.title)}</h1><p>${safe(issue)}</p>
${factsOf(paper.front)}<div class="standing">${paper.standing.map((text) => `<p>${spans(text)}</p>`).join('')}</div></header>
<nav><h2>Contents</h2><ol>${paper.chapters.map(({ id, heading }) => `<li><a href="#${safe(id)}">${safe(heading)}</a></li>`).join('')}<li><a href="#signatures">Signatures</a></li></ol></nav>
${paper.chapters.map(chapterOf).join('\n')}
<section class="chapter"><h2 id="signatures">Signatures</h2><p>Signed by hand, on paper or on a copy of this file. Without a signature it is not handed over.</p>
${paper.signedBy.map((role) => `<div class="signs"><p>${safe(role)}</p><span>name</span><span>signature</span><span>date</span></div>`).join('')}
<p class="soft">${safe(issue)} ends here.</p></section>
</body></html>
`;
}

const chapterOf = ({ id, heading, sections }: PaperNodes['chapters'][number]): string =>
  `<section class="chapter"><h2 id="${safe(id)}">${safe(heading)}</h2>${sections.map(sectionOf).join('\n')}</section>`;

function sectionOf({
  id,
  heading,
  lead,
  notes,
  under,
  rest,
}: PaperNodes['chapters'][number]['sections'][number]): string {
  const margin =
    notes.length === 0
      ? ''
      : `<aside${under ? ' class="under"' : ''}>${notes
          .map(({ name, text, list }) => `<p><strong>${safe(name)}</strong> ${spans(text)}</p>${listOf(list)}`)
          .join('')}</aside>`;
  const head = heading === null ? '' : `<h3 id="${safe(id)}">${safe(heading)}</h3>`;
  const body = rest.map((node) => nodeOf(node)).join('');
  return under || notes.length === 0
    ? `${head}${body}${margin}`
    : `${head}<div class="beside"><div>${lead.map((node) => nodeOf(node, true)).join('')}</div>${margin}</div>${body}`;
}

const listOf = (items: readonly (readonly Inline[])[]): string =>
  items.length === 0 ? '' : `<ul>${items.map((item) => `<li>${spans(item)}</li>`).join('')}</ul>`;

function nodeOf(node: Node, beside = false): string {
  switch (node.kind) {
    case 'prose':
      return `<p>${spans(node.text)}</p>`;
    case 'name':
      return `<p class="name"><strong>${spans(node.text)}</strong></p>`;
    case 'notice':
      return `<p class="notice">${spans(node.text)}</p>`;
    case 'list': {
      const tag = node.ordered ? 'ol' : 'ul';
      return `<${tag}>${node.items.map((item) => `<li>${item.map((inner) => nodeOf(inner)).join('')}</li>`).join('')}</${tag}>`;
    }
    case 'code':
    case 'formula':
      return `<pre class="${node.kind}">${safe(node.text)}</pre>`;
    case 'facts':
      return factsOf(node.rows);
    case 'table':
      return tableOf(node);
    case 'chart':
      return `<figure${beside ? ' class="narrow"' : ''}><div role="img" aria-label="${safe(node.alternative)}">${beside ? node.narrow : node.wide}</div><figcaption>${spans(node.caption)}</figcaption></figure>`;
  }
}

function tableOf({ caption, columns, rows }: Extract<Node, { kind: 'table' }>): string {
  if (rows.length === 0) return '';
  const side = (i: number): string => (columns[i]?.align === 'number' ? ' class="number"' : '');
  const head = columns.map(({ head: text }, i) => `<th scope="col"${side(i)}>${safe(text)}</th>`).join('');
  const body = rows.map(
    ({ cells, role }) =>
      `<tr class="${role ?? ''}">${cells.map((cell, i) => `<td${side(i)}>${spans(cell)}</td>`).join('')}</tr>`,
  );
  const many = columns.length > 8 ? 'many' : columns.length > 5 ? 'some' : 'few';
  return `<table class="${many}${rows.length <= 14 ? ' short' : ''}">${caption === null ? '' : `<caption>${safe(caption)}</caption>`}<thead><tr>${head}</tr></thead><tbody>${body.join('')}</tbody></table>`;
}

const factsOf = (rows: readonly { readonly name: string; readonly value: readonly Inline[] }[]): string =>
  `<dl>${rows.map(({ name, value }) => `<div><dt>${safe(name)}</dt><dd>${spans(value)}</dd></div>`).join('')}</dl>`;

const spans = (list: readonly Inline[]): string => list.map(span).join('');

function span({ kind, text, to = '', mark }: Inline): string {
  const words = safe(text);
  switch (kind) {
    case 'text':
      return words;
    case 'strong':
      return `<strong>${words}</strong>`;
    case 'verdict':
      return `<em>${words}</em>`;
    case 'code':
      return `<code>${words}</code>`;
    case 'blank':
      return '<span class="blank"></span>';
    case 'link':
      return `<a href="${safe(to)}">${words}</a>`;
    case 'inside':
      return `<a href="#${safe(to)}">${words}</a>`;
    case 'mark':
      return `${mark === undefined ? '' : markOf(mark)}${words}`;
  }
}

function markOf({ colour, hollow, points }: NonNullable<Inline['mark']>): string {
  const paint = `fill="${hollow ? '#fff' : `var(${colour})`}" stroke="var(${colour})" stroke-width=".3"`;
  const shape =
    points === null
      ? `<circle r=".85" ${paint}/>`
      : `<polygon points="${points.map((point) => point.join(',')).join(' ')}" ${paint}/>`;
  return `<svg class="mark" viewBox="-1.2 -1.2 2.4 2.4" aria-hidden="true">${shape}</svg> `;
}

const safe = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** A text inside a style sheet that stands inside a page: nothing of it can end either. */
const cssText = (text: string): string =>
  `"${text.replaceAll(/[^\p{L}\p{N} ]/gu, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `)}"`;
