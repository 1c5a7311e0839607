import { keptMarks, keptText } from './keep.ts';
import type { Marks } from './marks.ts';
import type { Grader, Sitting } from './sitting.ts';

/** Each observer and pass has its own; a browser may keep nothing of files from the disk, and the page then goes without. */
const nameOf = ({ observer, pass }: Grader): string => `dipmark grades ${location.pathname} ${observer} ${pass}`;

export function keep(sitting: Sitting): void {
  try {
    localStorage.setItem(nameOf(sitting.grader), keptText(sitting));
  } catch {
    // kept as long as the page is open
  }
}

export function kept(grader: Grader): ReadonlyMap<string, Marks> {
  try {
    return keptMarks(localStorage.getItem(nameOf(grader)));
  } catch {
    return new Map();
  }
}

export function rememberOrder(order: number): void {
  try {
    history.replaceState(null, '', `#order=${String(order)}`);
  } catch {
    // the number is printed on the page as well
  }
}

/** Hands a text over to the browser to be saved. */
export function save(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'text/vtt' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // not before the browser has taken it over
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 10_000);
}
