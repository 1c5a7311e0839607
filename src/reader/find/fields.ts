import { make, setText } from '../element.ts';
import { askFields, type AskField, type AskTyped } from './ask.ts';
import type { FindBook } from './book.ts';
import { labels } from './said.ts';

export interface Fields {
  readonly place: HTMLElement;
  readonly typed: () => AskTyped;
  readonly show: (typed: AskTyped) => void;
  /** Says beside each field why it will not do. */
  readonly mark: (wrong: ReadonlyMap<AskField, string>) => void;
}

const hints: Readonly<Partial<Record<AskField, string>>> = {
  fill: 'such as 2.40 L',
  speed: 'such as 290 rpm',
  sump: 'such as 60 °C, or “own”',
};

/** Words first, over the whole width; then a field for each condition. A list with one choice tells nothing and is left out. */
export function fieldsOf(book: FindBook, changed: () => void): Fields {
  const rows = askFields.flatMap((field) => {
    const id = `find-${field}`;
    const choices = book.choices(field);
    if (choices !== null && choices.length === 0) return [];
    const hint = hints[field];
    const told = hint === undefined ? `${id}-why` : `${id}-hint ${id}-why`;
    const input =
      choices === null
        ? make('input', { id, type: field === 'words' ? 'search' : 'text', autocomplete: 'off', spellcheck: 'false', 'aria-describedby': told }) // prettier-ignore
        : make('select', { id, 'aria-describedby': told }, make('option', { value: '' }, 'any'));
    for (const { value, text } of choices ?? []) input.append(make('option', { value }, text));
    input.addEventListener('input', changed);
    const why = make('span', { id: `${id}-why`, class: 'find-why' });
    const place = make(
      'div',
      { class: field === 'words' ? 'find-field find-words' : 'find-field' },
      make('label', { for: id }, labels[field]),
      input,
      ...(hint === undefined ? [] : [make('span', { id: `${id}-hint`, class: 'find-hint' }, hint)]),
      why,
    );
    return [{ field, input, why, place }];
  });
  return {
    place: make('div', { class: 'find-fields' }, ...rows.map(({ place }) => place)),
    typed: () =>
      Object.fromEntries(
        askFields.map((field) => [field, rows.find((row) => row.field === field)?.input.value ?? '']),
      ) as Record<AskField, string>,
    show: (typed) => {
      for (const { field, input } of rows) input.value = typed[field];
    },
    mark: (wrong) => {
      for (const { field, input, why } of rows) {
        const says = wrong.get(field) ?? '';
        setText(why, says);
        if (says === '') input.removeAttribute('aria-invalid');
        else input.setAttribute('aria-invalid', 'true');
      }
    },
  };
}
