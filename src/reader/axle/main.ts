import { ownAxle } from '../../compare/own-axle.ts';
import type { OwnAxleView } from '../../report/page.ts';
import { readAsked, type AxleTyped } from '../../report/own-axle-read.ts';
import { speedsText, typedAddress, typedFrom } from '../../report/own-axle-words.ts';
import { button, make, setText } from '../element.ts';
import { fieldsOf } from './fields.ts';
import { resultTable } from './result.ts';

const place = document.querySelector<HTMLElement>('.axle');
if (place !== null) open(place);

/** Fields over a table of figures. The address holds what was typed, so that a case can be sent to somebody. */
function open(into: HTMLElement): void {
  const view = JSON.parse(into.querySelector('.axle-data')?.textContent ?? '{}') as OwnAxleView;
  const said = make('p', { role: 'status', class: 'axle-said' });
  const notes = make('ul', { class: 'axle-notes' });
  const table = resultTable(view);
  const fields = fieldsOf(view, () => {
    history.replaceState(null, '', typedAddress(fields.typed(), view.typed));
    tell(fields.typed());
  });
  const tell = (typed: AxleTyped): void => {
    const read = readAsked(typed, view.data.load !== null);
    fields.mark(read.ok ? new Map() : read.wrong);
    table.place.hidden = !read.ok;
    if (!read.ok) {
      notes.replaceChildren();
      setText(said, 'Not worked out: see the fields that are marked.');
      return;
    }
    const answer = ownAxle(view.data, read.asked);
    table.show(answer, read.asked.drive);
    setText(said, speedsText(answer, read.asked, view.withUs));
    notes.replaceChildren(...answer.notes.map((note) => make('li', {}, note)));
  };
  const follow = (): void => {
    const typed = typedFrom(location.hash, view.typed);
    fields.show(typed);
    tell(typed);
  };
  into.append(
    fields.place,
    button('The case of the series', () => {
      history.replaceState(null, '', '#');
      follow();
    }),
    said,
    table.place,
    notes,
  );
  follow();
  addEventListener('hashchange', () => {
    if (location.hash.includes('=')) follow();
  });
}
