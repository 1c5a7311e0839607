import MarkdownIt from 'markdown-it';

/**
 * Words of a note: CommonMark with raw HTML shown as text. Headings go below the page's own, links go only to the web,
 * pictures are named and not shown (they are published by another way).
 */
export const wordsToHtml = (markdown: string): string => reader.render(markdown);

const reader = new MarkdownIt({ html: false, linkify: false, typographer: false });

reader.core.ruler.push('house', (state) => {
  for (const token of state.tokens) {
    if (token.type === 'heading_open' || token.type === 'heading_close')
      token.tag = `h${Math.min(6, Number(token.tag.slice(1)) + 2)}`;
    if (token.children === null) continue;
    const open: boolean[] = [];
    token.children = token.children.filter((child) => {
      if (child.type === 'link_open') open.push(/^(?:https?|mailto):/i.test(child.attrGet('href') ?? ''));
      if (child.type === 'link_close') return open.pop() === true;
      return child.type !== 'link_open' || open.at(-1) === true;
    });
  }
});

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
