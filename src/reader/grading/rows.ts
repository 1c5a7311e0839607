import type { GradingView } from '../../report/page.ts';
import type { Graded } from '../../trial/flow.ts';
import { make } from '../element.ts';
import { isUnseen, type Marks, type Row, rows, standing, valuesOf } from './marks.ts';

/** A row and its printed scale. */
export interface Scale {
  readonly row: Row;
  readonly name: string;
  readonly of: string;
  readonly anchors: readonly (readonly [value: Graded, text: string])[];
}

export const scalesOf = ({ scales, views }: Pick<GradingView, 'scales' | 'views'>): readonly Scale[] =>
  rows.map((row) => {
    const scale = scales.find(({ key }) => key === row);
    const texts = row === 'view' ? views : (scale?.anchors ?? []);
    const text = (value: Graded): string => (value === 'ng' ? 'cannot be told in this picture' : (texts[value] ?? ''));
    const unseen = row === 'view' ? 'what the window shows; 0 or 1 makes every grade ng' : (scale?.of ?? '');
    return {
      row,
      name: row === 'view' ? 'View' : (scale?.name ?? row),
      of: unseen,
      anchors: valuesOf(row).map((value) => [value, text(value)] as const),
    };
  });

export interface GradeRows {
  readonly place: HTMLElement;
  readonly show: (marks: Marks, row: Row) => void;
  readonly focus: (row: Row) => void;
}

export interface RowsUse {
  readonly grade: (row: Row, value: Graded) => void;
  readonly stand: (row: Row) => void;
}

/** Six rows of numbers; the row that keys go to is the one that holds the focus. */
export function gradeRows(scales: readonly Scale[], use: RowsUse): GradeRows {
  const made = scales.map((scale) => oneRow(scale, use));
  const place = make('div', { class: 'grade-rows' }, ...made.map(({ line }) => line));
  return {
    place,
    show: (marks, row) => {
      for (const { scale, line, inputs } of made) {
        const value = standing(marks, scale.row);
        line.toggleAttribute('data-here', scale.row === row);
        for (const [of, input] of inputs) {
          input.checked = of === value;
          input.disabled = scale.row !== 'view' && isUnseen(marks);
        }
      }
    },
    focus: (row) => {
      const inputs = made.find(({ scale }) => scale.row === row)?.inputs ?? [];
      const chosen = inputs.find(([, input]) => input.checked) ?? inputs[0];
      chosen?.[1].focus({ preventScroll: true });
    },
  };
}

function oneRow(scale: Scale, use: RowsUse) {
  const inputs = scale.anchors.map(([value, text]): readonly [Graded, HTMLInputElement] => {
    const spoken = value === 'ng' ? 'ng, not gradable' : `${String(value)}: ${text}`;
    const input = make('input', { type: 'radio', name: `grade-${scale.row}`, 'aria-label': spoken });
    input.addEventListener('change', () => {
      use.grade(scale.row, value);
    });
    return [value, input];
  });
  const name = make('span', { class: 'grade-name', id: `grade-${scale.row}` }, scale.name);
  const line = make(
    'div',
    { class: 'grade-row', role: 'radiogroup', 'aria-labelledby': `grade-${scale.row}` },
    name,
    ...inputs.map(([value, input]) => make('label', {}, input, make('span', {}, String(value)))),
  );
  line.addEventListener('focusin', () => {
    use.stand(scale.row);
  });
  return { scale, line, inputs };
}
