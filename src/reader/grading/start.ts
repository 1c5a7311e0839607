import type { Observation } from '../../trial/flow.ts';
import { make, setText } from '../element.ts';
import { readObserver } from './file.ts';
import { orderFor, orderInAddress, readOrder } from './items.ts';
import type { Grader } from './sitting.ts';

/** What is asked before the first clip. */
export function startForm(begin: (grader: Grader) => void): HTMLFormElement {
  const observer = make('input', {
    ...{ type: 'text', id: 'observer', size: '8', maxlength: '20', autocomplete: 'off', spellcheck: 'false' },
    ...{ required: true, 'aria-describedby': 'observer-says' },
  });
  const says = make('span', { id: 'observer-says', class: 'hint', role: 'status' }, observerHint);
  const first = choice('radio', 'pass', 'first', true);
  const joint = choice('radio', 'pass', 'joint', false);
  const hidden = hideable.map((what) => ({ what, box: choice('checkbox', 'blind', what, what !== 'article') }));
  const order = make('input', { type: 'text', id: 'order', size: '8', inputmode: 'numeric', autocomplete: 'off' });
  order.value = String(orderInAddress(location.hash) ?? '');
  const form = make(
    'form',
    { class: 'grading-start', novalidate: true },
    make('p', {}, make('label', { for: 'observer' }, 'Observer'), observer, says),
    group('Pass', [
      make('label', {}, first, 'first grades, given alone'),
      make('label', {}, joint, 'joint look, where first grades differ'),
    ]),
    group('Hidden from you', [
      ...hidden.map(({ what, box }) => make('label', {}, box, what)),
      make('span', { class: 'hint' }, 'This page says nothing of them. Take the mark off what you know all the same.'),
    ]),
    make(
      'p',
      {},
      make('label', { for: 'order' }, 'Order of the clips'),
      order,
      make('span', { class: 'hint' }, 'A number; empty: one made from your letters.'),
    ),
    make('p', { class: 'grading-begin' }, make('button', { type: 'submit' }, 'Begin')),
  );
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const initials = readObserver(observer.value);
    observer.toggleAttribute('aria-invalid', initials === null);
    setText(says, initials === null ? `This will not do in a file. ${observerHint}` : observerHint);
    if (initials === null) {
      observer.focus();
      return;
    }
    const pass = joint.checked ? 'joint' : 'first';
    const blind = hidden.flatMap(({ what, box }) => (box.checked ? [what] : []));
    begin({ observer: initials, pass, blind, order: readOrder(order.value) ?? orderFor(initials, pass) });
  });
  return form;
}

const observerHint = 'Your letters as the notes use them, as A, or A+B for a joint look.';
const hideable = ['article', 'fill', 'oil'] as const satisfies Observation['blind'];

function choice(type: 'radio' | 'checkbox', name: string, value: string, checked: boolean): HTMLInputElement {
  const made = make('input', { type, name, value });
  made.checked = checked;
  return made;
}

const group = (legend: string, of: readonly Node[]): HTMLElement =>
  make('fieldset', {}, make('legend', {}, legend), ...of);

/** Who grades, as one line. */
export function graderLine({ observer, pass, blind, order }: Grader): string {
  const hidden = blind.length === 0 ? 'nothing hidden' : `hidden: ${blind.join(', ')}`;
  return `Observer ${observer} · ${pass === 'first' ? 'first grades' : 'joint look'} · ${hidden} · order ${String(order)}`;
}
