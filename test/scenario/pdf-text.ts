import { inflateSync } from 'node:zlib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A PDF as a general-purpose reader finds it: nothing of ours reads it here. */
export interface ReadPdf {
  /** Page by page, lines as they stand. */
  readonly pages: readonly string[];
  /** What a screen reader says of each picture. */
  readonly alternatives: readonly string[];
  readonly outline: readonly string[];
  readonly metadata: string;
  readonly attachments: number;
  readonly tagged: boolean;
  readonly language: string | null;
  readonly links: readonly string[];
}

interface TreeNode {
  readonly alt?: string;
  readonly children?: readonly TreeNode[];
}

type Titles = readonly { readonly title: string; readonly items: Titles }[];

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages: string[] = [];
  const alternatives: string[] = [];
  const links: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    pages.push(items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join(''));
    alternatives.push(...altsOf((await page.getStructTree()) as TreeNode | null));
    const notes = (await page.getAnnotations()) as readonly { readonly url?: string; readonly dest?: unknown }[];
    links.push(...notes.map(({ url, dest }) => url ?? `inside ${JSON.stringify(dest)}`));
  }
  const { info, metadata } = await document.getMetadata();
  const named = (list: Titles | null): string[] => (list ?? []).flatMap(({ title, items }) => [title, ...named(items)]);
  const attached = (await document.getAttachments()) as Readonly<Record<string, unknown>> | null;
  const marked = (await document.getMarkInfo()) as { readonly Marked: boolean } | null;
  const { Language = null } = info as { readonly Language?: string | null };
  const read = {
    ...{ pages, alternatives, links, language: Language },
    outline: named(await document.getOutline()),
    metadata: JSON.stringify([info, metadata]),
    attachments: Object.keys(attached ?? {}).length,
    tagged: marked?.Marked === true,
  };
  await document.destroy();
  return read;
}

const altsOf = (node: TreeNode | null): string[] =>
  node === null ? [] : [...(node.alt === undefined ? [] : [node.alt]), ...(node.children ?? []).flatMap(altsOf)];

/** Every byte of the file as text, with each compressed stream opened: for names that no reader would show. */
export function openedBytes(bytes: Uint8Array): string {
  const raw = Buffer.from(bytes);
  const opened = [raw.toString('latin1')];
  for (let at = raw.indexOf('stream\n'); at >= 0; at = raw.indexOf('stream\n', at + 7)) {
    const end = raw.indexOf('endstream', at);
    if (end < 0) break;
    try {
      const inside = inflateSync(raw.subarray(at + 7, end));
      opened.push(inside.toString('latin1'));
    } catch {
      // a stream that is not compressed stands in the first text
    }
  }
  // texts of the outline and the like may be UTF-16: their letters stand between zeros
  return opened.join('\n').replaceAll('\0', '');
}
