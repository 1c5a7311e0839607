import type { StressView } from '../../report/page.ts';
import { button, make, setText } from '../element.ts';
import { addressOf, takenIn } from './state.ts';
import { switches } from './switches.ts';
import { wordsUnder, type Line } from './words.ts';

const place = document.querySelector<HTMLElement>('.stress');
if (place !== null) openDesk(place);

/** Switches over a table of words. The address holds what is taken, so that a view can be sent to somebody. */
function openDesk(into: HTMLElement): void {
  const view = JSON.parse(into.querySelector('.stress-data')?.textContent ?? '{}') as StressView;
  const choices = view.choices.map(({ choice }) => choice);
  const under = wordsUnder(view);
  const said = make('p', { role: 'status', class: 'stress-said' });
  const body = make('tbody');
  const desk = switches(view.choices, () => {
    history.replaceState(null, '', addressOf(desk.taken()));
    tell();
  });
  const tell = (): void => {
    const lines = under(desk.taken());
    fill(body, lines);
    setText(said, sentence(lines, desk.taken().length));
  };
  const follow = (): void => {
    desk.show(takenIn(location.hash, choices));
    tell();
  };
  into.append(
    desk.place,
    button('All as published', () => {
      desk.show([]);
      history.replaceState(null, '', addressOf([]));
      tell();
    }),
    said,
    make(
      'div',
      { class: 'scroll' },
      make(
        'table',
        {},
        make(
          'thead',
          {},
          make(
            'tr',
            {},
            make('th', { scope: 'col', class: 'wide' }, 'claim or step'),
            make('th', { scope: 'col' }, 'as published'),
            make('th', { scope: 'col' }, 'with these choices'),
          ),
        ),
        body,
      ),
    ),
  );
  follow();
  addEventListener('hashchange', () => {
    if (location.hash.startsWith('#with=')) follow();
  });
}

/** Rows are made once and then only told anew. */
function fill(body: HTMLElement, lines: readonly Line[]): void {
  lines.forEach(({ text, word, under }, i) => {
    const row =
      body.children[i] ??
      body.appendChild(
        make(
          'tr',
          {},
          make('th', { scope: 'row' }, text),
          make('td', {}, make('span', { class: 'verdict' }, word)),
          make('td', {}, make('span', { class: 'verdict' })),
        ),
      );
    const changes = under !== null && under !== word;
    row.classList.toggle('changes', changes);
    setText(row.querySelector('td:last-child > span')!, under === null ? 'not run so' : changes ? `→ ${under}` : under);
  });
}

function sentence(lines: readonly Line[], taken: number): string {
  if (taken === 0) return 'Every choice as published.';
  const changed = lines.filter(({ word, under }) => under !== null && under !== word);
  const which = changed.slice(0, 4).map(({ text, under }) => `${text}: ${String(under)}`);
  const more = changed.length > 4 ? `; and ${String(changed.length - 4)} more` : '';
  const made = taken === 1 ? 'One choice made otherwise' : `${String(taken)} choices made otherwise`;
  return changed.length === 0
    ? `${made}; no word changes.`
    : `${made}; ${String(changed.length)} of ${String(lines.length)} words change: ${which.join('; ')}${more}.`;
}
