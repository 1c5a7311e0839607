import type { Block, Span } from './page.ts';
import { code, link, listOf, prose, strong } from './spans.ts';

/**
 * Words of the guide as they are typed: `code`, **strong** and [words](address) in them become spans. Only for words of our own.
 */
export const said = (text: string): Span[] =>
  text.split(/(`[^`]+`|\*\*[^*]+\*\*|\[[^\]]+\]\([^)]+\))/).flatMap((part): Span[] => {
    if (part === '') return [];
    if (part.startsWith('`')) return [code(part.slice(1, -1))];
    if (part.startsWith('**')) return [strong(part.slice(2, -2))];
    const [, words, to] = /^\[([^\]]+)\]\(([^)]+)\)$/.exec(part) ?? [];
    return words !== undefined && to !== undefined ? [link(to, words)] : [part];
  });

export const says = (text: string): Block => prose(...said(text));
export const steps = (...items: readonly string[]): Block => listOf(items.map(said));
