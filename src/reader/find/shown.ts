import type { FindSeries } from '../../trial/find.ts';
import { button, make } from '../element.ts';
import type { FoundFigure, FoundRun } from './answer.ts';
import { claimPath, runPath, type Found } from './book.ts';
import type { Near } from './nearest.ts';
import { differsWords } from './said.ts';

/** At first; the rest is asked for, so that a change of a field is drawn at once. */
const first = 25;

/** What was found, group by group: what comes nearest, claims, words, runs, figures. */
export const groupsOf = ({ answer, texts }: Found, several: boolean): readonly HTMLElement[] => {
  const { nearest, claims, runs, out, figures } = answer;
  const inSeries = (series: FindSeries): string => (several ? ` · ${series.title}` : '');
  const runItem = (of: FoundRun): HTMLElement =>
    item(
      linkTo(runPath(of), of.run[0]),
      ` ${of.run[1]}, ${cellText(of.series, of.run[2])}, `,
      make('span', { class: 'whole' }, of.run[4]),
      inSeries(of.series),
      ...(of.run[5] === null ? [] : [make('span', { class: 'find-around' }, of.run[5])]),
    );
  return [
    group('Nearest that was tested', nearest, (near) => nearItem(near, inSeries(near.series))),
    group('Claims', claims, (of) =>
      item(
        linkTo(claimPath(of), `${of.claim[0]}: ${of.claim[1]}`),
        ' ',
        make('span', { class: 'verdict' }, of.claim[2]),
        inSeries(of.series),
      ),
    ),
    group('Words', texts, ({ path, title, around }) =>
      item(linkTo(path, title), make('span', { class: 'find-around' }, around)),
    ),
    group('Runs', runs, runItem),
    group('Of this kind, without a figure', out, runItem),
    figureTable(figures, several),
  ].filter((each) => each !== null);
};

const cellText = (series: FindSeries, cell: number): string => series.cells[cell]![3];

function nearItem(near: Near, where: string): HTMLElement {
  const { series, runs, condition } = near;
  const links = runs.flatMap((run, i) => [...(i === 0 ? [] : [', ']), linkTo(runPath({ series, run }), run[0])]);
  const at = condition === null || condition[1] === '' ? '' : `, ${condition[1]}`;
  const [first] = runs;
  return item(
    ...links,
    ` ${first![1]}, ${cellText(series, first![2])}${at}${where}`,
    make('span', { class: 'find-around' }, differsWords(near)),
  );
}

function group<T>(heading: string, all: readonly T[], itemOf: (of: T) => HTMLElement): HTMLElement | null {
  if (all.length === 0) return null;
  const list = make('ul', {}, ...all.slice(0, first).map(itemOf));
  return section(heading, all.length, list, () => {
    list.append(...all.slice(first).map(itemOf));
    return list.children[first]?.querySelector('a') ?? null;
  });
}

function figureTable(all: readonly FoundFigure[], several: boolean): HTMLElement | null {
  if (all.length === 0) return null;
  const rowOf = (of: FoundFigure): HTMLElement => {
    const { what, where, at, text, verdict, path } = figureWords(of);
    return make(
      'tr',
      {},
      make(
        'th',
        { scope: 'row', class: 'wide' },
        where,
        ...(several ? [make('span', { class: 'find-around' }, of.series.title)] : []),
      ),
      make('td', {}, at === '' ? what : `${what}, ${at}`),
      make('td', { class: 'number' }, linkTo(path, text)),
      make('td', {}, ...(verdict === '' ? [] : [make('span', { class: 'verdict' }, verdict)])),
    );
  };
  const body = make('tbody', {}, ...all.slice(0, first).map(rowOf));
  const heads = ['what was run', 'figure', 'value', 'word'];
  const table = make(
    'div',
    { class: 'scroll', tabindex: '0', role: 'group', 'aria-label': 'Figures found' },
    make(
      'table',
      {},
      make(
        'thead',
        {},
        make(
          'tr',
          {},
          ...heads.map((head, i) => make('th', { scope: 'col', class: i === 2 ? 'number' : 'text' }, head)),
        ),
      ),
      body,
    ),
  );
  return section('Figures', all.length, table, () => {
    body.append(...all.slice(first).map(rowOf));
    return body.children[first]?.querySelector('a') ?? null;
  });
}

/** A figure in the words of the ledger, and the address of its working. */
export function figureWords({ series, at: row }: FoundFigure) {
  const { subjects, quantities, conditions, verdicts, figures } = series;
  const [id, suffix, run, cell, against] = subjects[figures.subject[row]!]!;
  const [name, what] = quantities[figures.quantity[row]!]!;
  const [condition, at] = conditions[figures.condition[row]!]!;
  const anchor = [condition, suffix].filter((part) => part !== '').join(',');
  const own = run >= 0 ? `${id}: ${cellText(series, series.runs[run]![2])}` : cellText(series, cell);
  return {
    what: name === 'limit-crossing' ? at : what,
    where: against < 0 ? own : `${own}, less ${cellText(series, against)}`,
    at: name === 'limit-crossing' ? '' : at,
    text: figures.text[row]!,
    verdict: verdicts[figures.verdict[row]!] ?? '',
    path: `series/${series.id}/workings/${id}/${name}/#${anchor === '' ? 'value' : anchor}`,
  };
}

/** What is left is put in on a press; who pressed goes on at the first of it. */
function section(heading: string, all: number, holds: HTMLElement, rest: () => HTMLElement | null): HTMLElement {
  const more = button(`Show ${String(all - first)} more`, () => {
    const next = rest();
    more.remove();
    next?.focus();
  });
  return make(
    'div',
    { class: 'find-group' },
    make('h3', {}, `${heading} (${String(all)})`),
    holds,
    ...(all > first ? [more] : []),
  );
}

const item = (...children: readonly (Node | string)[]): HTMLElement => make('li', {}, ...children);

/** Pages end in their file: a folder opened from the disk shows its list. */
export function hrefOf(path: string): string {
  const [page = '', anchor] = path.split('#');
  const file = page.split('/').map(encodeURIComponent).join('/');
  return `../${file}index.html${anchor === undefined ? '' : `#${encodeURIComponent(anchor)}`}`;
}

const linkTo = (path: string, text: string): HTMLElement => make('a', { href: hrefOf(path) }, text);
