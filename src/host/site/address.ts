/**
 * Address of a link as it stands on a page, relative, so that the site works from a disk and under any prefix.
 * Pages end in `index.html`: a folder opened from a disk shows its list, not its page. Null: not an address to link to.
 */
export function hrefFrom(pagePath: string, to: string): string | null {
  if (/^(?:https?|mailto):/i.test(to)) return to;
  if (/^[a-z][a-z0-9+.-]*:/i.test(to) || to.startsWith('//')) return null;
  const [path, anchor] = splitAt(to, '#');
  const tail = anchor === undefined ? '' : `#${encodeURIComponent(anchor)}`;
  if (path === '' && to.startsWith('#')) return tail;
  const file = path === '' || path.endsWith('/') ? `${path}index.html` : path;
  return `${relative(pagePath, file.replace(/^\//, ''))}${tail}`;
}

/** Path of a file of the site seen from a page. */
export function relative(pagePath: string, file: string): string {
  const here = pagePath.split('/').slice(0, -1);
  const there = file.split('/');
  let shared = 0;
  while (shared < here.length && shared < there.length - 1 && here[shared] === there[shared]) shared += 1;
  const up = '../'.repeat(here.length - shared);
  return up + there.slice(shared).map(encodeURIComponent).join('/');
}

const splitAt = (text: string, mark: string): readonly [string, string?] => {
  const place = text.indexOf(mark);
  return place < 0 ? [text] : [text.slice(0, place), text.slice(place + 1)];
};

/** A page or file may only be written inside the site. A bad one is our own bug, so it throws. */
export function insideSite(path: string): string {
  if (path.startsWith('/') || path.includes('\\') || path.split('/').some((part) => part === '..' || part === '.'))
    throw new Error(`A page asked to be written outside the site: ${path}`);
  return path;
}

/** File of a page: its folder's index. */
export const pageFile = (path: string): string => `${insideSite(path)}index.html`;
