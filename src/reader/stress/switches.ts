import type { StressView } from '../../report/page.ts';
import type { Choice } from '../../trial/stress.ts';
import { make } from '../element.ts';
import { nameOf } from './state.ts';

export interface Switches {
  readonly place: HTMLElement;
  readonly taken: () => readonly Choice[];
  readonly show: (taken: readonly Choice[]) => void;
}

/** Kinds of which one at most can be taken, with what stands there when none is. */
const groups: readonly { readonly kinds: readonly Choice['kind'][]; readonly name: string; readonly none: string }[] = [
  { kinds: ['sump'], name: 'Temperature of the oil', none: 'as it was asked' },
  { kinds: ['limit'], name: 'Limit', none: 'as it was asked' },
  { kinds: ['fill'], name: 'Fill', none: 'as it was asked' },
  { kinds: ['drift'], name: 'Drift', none: 'as the series has it' },
  { kinds: ['ambient'], name: 'Tolerance of ambient', none: 'as the series has it' },
  { kinds: ['airflow'], name: 'Tolerance of airflow', none: 'as the series has it' },
  { kinds: ['causes'], name: 'Causes', none: 'as they are stated' },
];

/** A list for each kind of which one is taken, and a box for each run. */
export function switches(choices: StressView['choices'], changed: () => void): Switches {
  const byName = new Map(choices.map(({ choice }) => [nameOf(choice), choice]));
  const lists = groups.flatMap(({ kinds, name, none }) => {
    const own = choices.filter(({ choice }) => kinds.includes(choice.kind));
    if (own.length === 0) return [];
    const list = make('select', {}, make('option', { value: '' }, none));
    for (const { choice, text } of own) list.append(make('option', { value: nameOf(choice) }, text));
    list.addEventListener('change', changed);
    return [{ list, label: make('label', {}, make('span', {}, name), list) }];
  });
  const boxes = choices.flatMap(({ choice, text }) => {
    if (!('run' in choice)) return [];
    const box = make('input', { type: 'checkbox', value: nameOf(choice) });
    box.addEventListener('change', changed);
    return [{ box, label: make('label', {}, box, ` ${text}`) }];
  });
  return {
    place: make(
      'div',
      { class: 'stress-switches' },
      ...lists.map(({ label }) => label),
      make(
        'details',
        {},
        make('summary', {}, 'Runs left out, or put back whole'),
        make('div', { class: 'stress-runs' }, ...boxes.map(({ label }) => label)),
      ),
    ),
    taken: () =>
      [...lists.map(({ list }) => list.value), ...boxes.flatMap(({ box }) => (box.checked ? [box.value] : []))].flatMap(
        (name) => byName.get(name) ?? [],
      ),
    show: (taken) => {
      const names = new Set(taken.map(nameOf));
      for (const { list } of lists) list.value = [...list.options].find(({ value }) => names.has(value))?.value ?? '';
      for (const { box } of boxes) box.checked = names.has(box.value);
    },
  };
}
