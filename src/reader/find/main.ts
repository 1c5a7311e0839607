import type { FindPart } from '../../trial/find.ts';
import { button, make, setText } from '../element.ts';
import { askAddress, askFrom, nothingAsked, readAsk } from './ask.ts';
import { bookOf } from './book.ts';
import { fieldsOf } from './fields.ts';
import { saidOf } from './said.ts';
import { groupsOf } from './shown.ts';

// The parts are scripts that stand after this one: all of them have run when the page is read to its end.
addEventListener('DOMContentLoaded', () => {
  const place = document.querySelector<HTMLElement>('.find');
  if (place !== null) open(place, (self as { dipmarkFind?: readonly FindPart[] }).dipmarkFind ?? []);
});

/** So many stretches of words are taken in at once: some ten milliseconds. */
const piece = 100;

/** Fields over lists of what was found. The address holds what was asked, so that an answer can be sent to somebody. */
function open(into: HTMLElement, parts: readonly FindPart[]): void {
  const book = bookOf(parts);
  let allRead = false;
  const said = make('p', { role: 'status', class: 'find-said' });
  const found = make('div', { class: 'find-found' });
  const fields = fieldsOf(book, () => {
    history.replaceState(null, '', askAddress(fields.typed()));
    tell();
  });
  const tell = (): void => {
    const typed = fields.typed();
    const read = readAsk(typed);
    fields.mark(read.ok ? new Map() : read.wrong);
    if (!read.ok) {
      found.replaceChildren();
      setText(said, 'Not asked: see the fields that are marked.');
      return;
    }
    if (!allRead && read.ask.words !== '') {
      setText(said, 'Reading the words of the book …');
      return;
    }
    const answer = book.ask(read.ask);
    setText(said, saidOf(answer, typed, book.heldRuns));
    found.replaceChildren(...groupsOf(answer, book.series.length > 1));
  };
  const follow = (): void => {
    fields.show(askFrom(location.hash));
    tell();
  };
  into.append(
    fields.place,
    button('Ask anew', () => {
      history.replaceState(null, '', '#');
      fields.show(nothingAsked);
      tell();
      into.querySelector('input')?.focus();
    }),
    said,
    found,
  );
  follow();
  const readOn = (): void => {
    allRead = book.read(piece);
    if (!allRead) setTimeout(readOn);
    else if (fields.typed().words !== '') tell();
  };
  setTimeout(readOn);
  addEventListener('hashchange', () => {
    if (location.hash.includes('=')) follow();
  });
}
