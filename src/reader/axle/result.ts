import type { OwnAxleView } from '../../report/page.ts';
import { rowWords } from '../../report/own-axle-words.ts';
import type { Drive } from '../../trial/book.ts';
import type { AxleAnswer } from '../../trial/own-axle.ts';
import { make, setText } from '../element.ts';

export interface ResultTable {
  readonly place: HTMLElement;
  readonly show: (answer: AxleAnswer, drive: Drive) => void;
}

/** A row an article; made once and then only told anew. */
export function resultTable(view: OwnAxleView): ResultTable {
  const head = (text: string, kind: string) => make('th', { scope: 'col', class: kind }, text);
  const rows = view.data.articles.map(({ id, name }) => {
    const notes = make('span', { class: 'axle-row-notes' });
    const cells = view.heads.map(() => make('td', { class: 'number' }));
    const row = make('tr', {}, make('th', { scope: 'row' }, `${id} ${name}`, notes), ...cells);
    if (id === view.data.baseline.article) row.className = 'baseline';
    return { id, row, cells, notes };
  });
  return {
    place: make(
      'div',
      { class: 'scroll', tabindex: '0', role: 'region', 'aria-label': 'Figures for your axle' },
      make(
        'table',
        { class: 'many' },
        make('thead', {}, make('tr', {}, head('article', 'wide'), ...view.heads.map((text) => head(text, 'number')))),
        make('tbody', {}, ...rows.map(({ row }) => row)),
      ),
    ),
    show: (answer, drive) => {
      for (const { id, cells, notes } of rows) {
        const found = answer.rows.find(({ article }) => article === id);
        if (found === undefined) continue;
        const words = rowWords(found, drive, view.withUs);
        words.cells.forEach(({ text, told }, i) => {
          setText(cells[i]!, text);
          cells[i]!.classList.toggle('axle-refused', !told);
        });
        setText(notes, words.notes.join(' '));
      }
    },
  };
}
