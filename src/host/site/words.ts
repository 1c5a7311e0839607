import MarkdownIt from 'markdown-it';
import type { SpanView } from './spans.ts';
import { spelled } from '../../notes/part-refs.ts';

/**
 * Words of a note: CommonMark with raw HTML shown as text. Headings go below the page's own, links go only to the web,
 * pictures are named and not shown (they are published by another way).
 */
export const wordsToHtml = (markdown: string, refs: Readonly<Record<string, readonly SpanView[]>> = {}): string =>
  reader.render(markdown, { refs } satisfies Around);

/** What stands in place of links of the house's own, by their address. */
interface Around {
  readonly refs: Readonly<Record<string, readonly SpanView[]>>;
}

type Token = ReturnType<MarkdownIt['parse']>[number];

const reader = new MarkdownIt({ html: false, linkify: false, typographer: false });

reader.core.ruler.push('house', (state) => {
  for (const token of state.tokens) {
    if (token.type === 'heading_open' || token.type === 'heading_close')
      token.tag = `h${Math.min(6, Number(token.tag.slice(1)) + 2)}`;
    if (token.children === null) continue;
    const open: boolean[] = [];
    const { refs } = state.env as Around;
    token.children = withRefs(token.children, refs, () => new state.Token('ref', '', 0)).filter((child) => {
      if (child.type === 'link_open') open.push(/^(?:https?|mailto):/i.test(child.attrGet('href') ?? ''));
      if (child.type === 'link_close') return open.pop() === true;
      return child.type !== 'link_open' || open.at(-1) === true;
    });
  }
});

/** A link of the house's own, with all that stands in it, becomes what it refers to. */
function withRefs(children: readonly Token[], refs: Around['refs'], make: () => Token): Token[] {
  const kept: Token[] = [];
  let inside: Token | null = null;
  for (const child of children) {
    if (inside === null && child.type === 'link_open' && Object.hasOwn(refs, spelled(child.attrGet('href')))) {
      inside = make();
      inside.content = (refs[spelled(child.attrGet('href'))] ?? []).map(spanHtml).join('');
      kept.push(inside);
    } else if (inside === null) kept.push(child);
    if (child.type === 'link_close') inside = null;
  }
  return kept;
}

reader.renderer.rules['ref'] = (tokens, place) => tokens[place]?.content ?? '';

function spanHtml(span: SpanView): string {
  const text = reader.utils.escapeHtml(span.text);
  if (span.kind === 'verdict') return `<span class="verdict">${text}</span>`;
  if (span.kind === 'strong' || span.kind === 'code') return `<${span.kind}>${text}</${span.kind}>`;
  if (!('href' in span) || span.href === null) return text;
  const href = reader.utils.escapeHtml(span.href);
  return span.kind === 'figure'
    ? `<a class="figure" href="${href}" data-figure="${reader.utils.escapeHtml(span.id ?? '')}">${text}</a>`
    : `<a href="${href}">${text}</a>`;
}

reader.renderer.rules['image'] = (tokens, place) => {
  const name = tokens[place]?.content ?? '';
  return name === '' ? '' : `<span class="unshown">[${reader.utils.escapeHtml(name)}]</span>`;
};

/** Alignment of table columns would be a style attribute, which the page's policy forbids. */
for (const cell of ['th_open', 'td_open'])
  reader.renderer.rules[cell] = (tokens, place, options, _env, self) => {
    const style = tokens[place]?.attrGet('style');
    if (style) tokens[place]?.attrSet('style', '');
    return self
      .renderToken(tokens, place, options)
      .replace(' style=""', style?.includes('right') ? ' class="number"' : '');
  };
