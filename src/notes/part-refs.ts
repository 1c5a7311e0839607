import MarkdownIt from 'markdown-it';
import { nearest } from '../finding/nearest.ts';
import type { Finding } from '../finding/finding.ts';
import { placeAt } from '../finding/place.ts';
import { refSchemes, type PartRef, type RefScheme } from '../trial/part.ts';
import type { Note } from './note.ts';
import * as say from './texts-parts.ts';

const reader = new MarkdownIt({ html: false, linkify: false });

/**
 * What the words of a part refer to, in their order. The Markdown reader says what is a link; its place is the next stretch of
 * the text that spells it.
 */
export function refsOf(note: Note): { readonly refs: readonly PartRef[]; readonly findings: readonly Finding[] } {
  const refs: PartRef[] = [];
  const findings: Finding[] = [];
  let from = Math.max(0, note.text.lastIndexOf(note.body));
  for (const { href, words, picture } of linksOf(note.body)) {
    const [, scheme = '', target = ''] = /^([a-z-]+):(.*)$/is.exec(href) ?? [];
    if (scheme === '' || /^(?:https?|mailto)$/i.test(scheme)) continue;
    const at = note.text.indexOf(href, from);
    const offset = at < 0 ? from : at;
    if (at >= 0) from = at + href.length;
    const place = placeAt({
      offset,
      length: at < 0 ? 0 : href.length,
      file: note.file,
      text: note.text,
      starts: note.starts,
    });
    if (!isScheme(scheme)) findings.push({ ...say.refScheme(scheme, nearest(scheme, refSchemes)), place });
    else if (pictured.has(scheme) !== picture) findings.push({ ...say.refForm(scheme, target, picture), place });
    else refs.push({ scheme, target, href, words, place });
  }
  return { refs, findings };
}

const isScheme = (word: string): word is RefScheme => (refSchemes as readonly string[]).includes(word);
/** These are written as pictures, the others as links. */
const pictured: ReadonlySet<RefScheme> = new Set(['chart', 'still']);

interface MarkdownLink {
  readonly href: string;
  readonly words: string;
  readonly picture: boolean;
}

function linksOf(markdown: string): MarkdownLink[] {
  return reader.parse(markdown, {}).flatMap(({ children }) =>
    (children ?? []).flatMap((token, i, all): MarkdownLink[] => {
      if (token.type === 'image') return [{ href: spelled(token.attrGet('src')), words: token.content, picture: true }];
      if (token.type !== 'link_open') return [];
      const end = all.findIndex((one, k) => k > i && one.type === 'link_close');
      const words = all.slice(i + 1, end).map(({ content }) => content);
      return [{ href: spelled(token.attrGet('href')), words: words.join(''), picture: false }];
    }),
  );
}

/** The Markdown reader writes an address for the web; in the note it stands as it was typed. */
export function spelled(address: string | null): string {
  try {
    return decodeURI(address ?? '');
  } catch {
    return address ?? '';
  }
}
