import MarkdownIt from 'markdown-it';
import type { Inline, Node } from './nodes.ts';

type Token = ReturnType<MarkdownIt['parse']>[number];
const reader = new MarkdownIt({ html: false, linkify: false, typographer: false });

/** Words of a note as the paper prints them: CommonMark, raw HTML as text, links only to the web, pictures by their name. */
export const wordsToNodes = (markdown: string): Node[] => blocksOf(reader.parse(markdown, {}));

function blocksOf(tokens: readonly Token[]): Node[] {
  const nodes: Node[] = [];
  let heading = false;
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    if (token.type === 'heading_open') heading = true;
    else if (token.type === 'inline') {
      nodes.push({ kind: heading ? 'name' : 'prose', text: inlineOf(token.children ?? []) });
      heading = false;
    } else if (token.type === 'bullet_list_open' || token.type === 'ordered_list_open') {
      const end = closing(tokens, i);
      nodes.push({ kind: 'list', ordered: token.type.startsWith('o'), items: itemsOf(tokens.slice(i + 1, end)) });
      i = end;
    } else if (token.type === 'fence' || token.type === 'code_block') nodes.push({ kind: 'code', text: token.content });
    else if (token.type === 'table_open') {
      const end = closing(tokens, i);
      nodes.push(tableOf(tokens.slice(i + 1, end)));
      i = end;
    }
  }
  return nodes;
}

const itemsOf = (tokens: readonly Token[]): Node[][] =>
  between(tokens, 'list_item_open', 'list_item_close').map(blocksOf);

function tableOf(tokens: readonly Token[]): Node {
  const rows = between(tokens, 'tr_open', 'tr_close').map((row) =>
    row.flatMap((token) => (token.type === 'inline' ? [inlineOf(token.children ?? [])] : [])),
  );
  const [head = [], ...body] = rows;
  return {
    kind: 'table',
    caption: null,
    columns: head.map((text) => ({ head: text.map((part) => part.text).join(''), align: 'wide', share: 1 })),
    rows: body.map((cells) => ({ cells, role: null })),
  };
}

/** What stands between each opening token and its own closing one. */
function between(tokens: readonly Token[], open: string, close: string): Token[][] {
  const found: Token[][] = [];
  let depth = 0;
  for (const token of tokens) {
    if (token.type === close && --depth === 0) continue;
    if (depth > 0) found.at(-1)!.push(token);
    if (token.type === open && depth++ === 0) found.push([]);
  }
  return found;
}

function closing(tokens: readonly Token[], from: number): number {
  let depth = 0;
  for (let i = from; i < tokens.length; i++) {
    depth += tokens[i]!.nesting;
    if (depth === 0) return i;
  }
  return tokens.length - 1;
}

function inlineOf(tokens: readonly Token[]): Inline[] {
  const spans: Inline[] = [];
  let kind: Inline['kind'] = 'text';
  let to: string | null = null;
  for (const token of tokens) {
    if (token.type === 'strong_open') kind = 'strong';
    else if (token.type === 'em_open') kind = 'verdict';
    else if (token.type === 'strong_close' || token.type === 'em_close') kind = 'text';
    else if (token.type === 'link_open') to = webOnly(token.attrGet('href'));
    else if (token.type === 'link_close') to = null;
    else if (token.type === 'code_inline') spans.push({ kind: 'code', text: token.content });
    else if (token.type === 'softbreak' || token.type === 'hardbreak') spans.push({ kind: 'text', text: ' ' });
    else if (token.type === 'image')
      spans.push({ kind: 'text', text: token.content === '' ? '' : `[${token.content}]` });
    else if (token.content !== '')
      spans.push(to === null ? { kind, text: token.content } : { kind: 'link', text: token.content, to });
  }
  return spans;
}

const webOnly = (href: string | null): string | null => (/^(?:https?|mailto):/i.test(href ?? '') ? href : null);
