import type { Page } from '../report/page.ts';
import type { Book } from '../trial/book.ts';
import { addressOf } from '../report/frame.ts';
import type { TextFile } from './files.ts';
import { escapedXml } from './xml.ts';

/** Addresses of the pages that a reader looks for; workings are reached from them. None where the book has no address. */
export function sitemap(book: Book, pages: readonly Pick<Page, 'kind' | 'path'>[]): TextFile[] {
  const address = addressOf(book);
  if (address === null) return [];
  const urls = pages
    .filter(({ kind }) => kind !== 'working')
    .map(({ path }) => `  <url><loc>${escapedXml(`${address}${path}`)}</loc></url>`);
  return [
    {
      path: 'sitemap.xml',
      text: `<?xml version="1.0" encoding="utf-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${urls.join('\n')}\n</urlset>\n`,
    },
  ];
}
