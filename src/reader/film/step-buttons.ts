import { button, make } from '../element.ts';
import { shortName } from './steps.ts';

export interface StepButtons {
  readonly row: HTMLElement;
  /** Marks the step that is seen; '' marks none. */
  readonly mark: (step: string) => void;
}

/** A word for every step. Their unit is said once, in front. */
export function stepButtons(label: string, names: readonly string[], go: (name: string) => void): StepButtons {
  const buttons = new Map(
    names.map((name) => [
      name,
      button(
        shortName(name),
        () => {
          go(name);
        },
        { 'aria-label': name },
      ),
    ]),
  );
  const inRpm = names.some((name) => shortName(name) !== name);
  const row = make(
    'div',
    { class: 'clip-steps', role: 'group', 'aria-label': label },
    make('span', { class: 'clip-steps-name' }, inRpm ? `${label}, rpm` : label),
    ...buttons.values(),
  );
  return {
    row,
    mark: (step) => {
      for (const [name, each] of buttons)
        if (name === step) each.setAttribute('aria-current', 'step');
        else each.removeAttribute('aria-current');
    },
  };
}
