import type { Graded } from '../../trial/flow.ts';
import { make } from '../element.ts';
import type { Row } from './marks.ts';
import type { Scale } from './rows.ts';

export interface Anchors {
  readonly place: HTMLElement;
  readonly show: (row: Row, value: Graded | null) => void;
}

/** The printed scale of the row in hand. All scales lie on each other, so that nothing moves when the row changes. */
export function anchorsBeside(scales: readonly Scale[]): Anchors {
  const made = scales.map((scale) => {
    const lines = scale.anchors.map(([value, text]) => ({
      value,
      line: make('div', {}, make('dt', {}, String(value)), make('dd', {}, text)),
    }));
    const sheet = make(
      'div',
      { class: 'anchors-of' },
      make('p', {}, make('strong', {}, scale.name), ` · ${scale.of}`),
      make('dl', {}, ...lines.map(({ line }) => line)),
    );
    return { row: scale.row, sheet, lines };
  });
  return {
    place: make('div', { class: 'anchors' }, ...made.map(({ sheet }) => sheet)),
    show: (row, value) => {
      for (const each of made) {
        each.sheet.toggleAttribute('data-here', each.row === row);
        for (const { line, value: of } of each.lines) line.toggleAttribute('data-given', of === value);
      }
    },
  };
}
