import { make } from '../element.ts';
import { type Focus, printedKeys } from './keys.ts';

/** What the keys are for where they are pressed. */
export function focusOf(target: EventTarget | null): Focus {
  if (target instanceof HTMLInputElement)
    return target.type === 'text' ? 'words' : target.type === 'radio' ? 'row' : 'button';
  if (target instanceof HTMLVideoElement) return 'player';
  return target instanceof Element && target.closest('button, a, summary') !== null ? 'button' : 'row';
}

/** The keys, printed. */
export const keyList = (): HTMLElement =>
  make(
    'dl',
    { class: 'key-list', 'aria-label': 'Keys' },
    ...printedKeys.map(([key, does]) => make('div', {}, make('dt', {}, make('kbd', {}, key)), make('dd', {}, does))),
  );
