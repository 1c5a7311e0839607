import type { OwnAxleView } from '../../report/page.ts';
import { otherOil, type AxleField, type AxleTyped } from '../../report/own-axle-read.ts';
import { make, setText } from '../element.ts';

export interface Fields {
  readonly place: HTMLElement;
  readonly typed: () => AxleTyped;
  readonly show: (typed: AxleTyped) => void;
  /** Says beside each field why it will not do. */
  readonly mark: (wrong: ReadonlyMap<AxleField, string>) => void;
}

/** A field for each thing asked; the viscosities of another oil and the battery only where they are called for. */
export function fieldsOf(view: OwnAxleView, changed: () => void): Fields {
  const rows = view.fields.map((of) => {
    const id = `axle-${of.field}`;
    const input =
      of.choices === undefined
        ? make('input', { id, type: 'text', autocomplete: 'off', spellcheck: 'false', 'aria-describedby': `${id}-hint ${id}-why` }) // prettier-ignore
        : make('select', { id, 'aria-describedby': `${id}-hint ${id}-why` });
    for (const { value, text } of of.choices ?? []) input.append(make('option', { value }, text));
    const why = make('span', { id: `${id}-why`, class: 'axle-why' });
    const hint = make('span', { id: `${id}-hint`, class: 'axle-hint' }, of.hint);
    input.addEventListener('input', () => {
      fold();
      changed();
    });
    const place = make('div', { class: 'axle-field' }, make('label', { for: id }, of.label), input, hint, why);
    return { field: of.field, input, why, place };
  });
  const valueOf = (field: AxleField): string =>
    rows.find((row) => row.field === field)?.input.value ?? view.typed[field];
  const calledFor = (field: AxleField): boolean =>
    field === 'nu40' || field === 'nu100'
      ? valueOf('oil') === otherOil
      : field !== 'efficiency' || valueOf('drive') === 'electric';
  const fold = (): void => {
    for (const { field, place } of rows) place.hidden = !calledFor(field);
  };
  return {
    place: make('div', { class: 'axle-fields' }, ...rows.map(({ place }) => place)),
    typed: () => ({ ...view.typed, ...Object.fromEntries(rows.map(({ field, input }) => [field, input.value])) }),
    show: (typed) => {
      for (const { field, input } of rows) input.value = typed[field];
      fold();
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
