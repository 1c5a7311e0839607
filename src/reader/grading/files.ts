import { button, make, setText } from '../element.ts';
import { fileName } from './file.ts';
import { codesOf, progress, type Sitting } from './sitting.ts';

export interface Files {
  readonly place: HTMLElement;
  readonly show: (sitting: Sitting) => void;
}

/** One line a clip: how far it is, and the word that writes its file. */
export function filesTable(sitting: Sitting, write: (code: string) => void): Files {
  const lines = codesOf(sitting).map((code) => {
    const name = fileName(code, sitting.grader);
    const [done, state] = [make('td'), make('td')];
    const press = button(`Write ${name}`, () => {
      write(code);
    });
    return {
      code,
      done,
      state,
      press,
      line: make('tr', {}, make('th', { scope: 'row' }, code), done, state, make('td', {}, press)),
    };
  });
  const heads = ['Clip', 'Steps graded', 'File', 'Write'].map((head) => make('th', { scope: 'col' }, head));
  const place = make(
    'div',
    { class: 'scroll', tabindex: '0', role: 'group', 'aria-label': 'Files' },
    make(
      'table',
      { class: 'grading-files' },
      make('thead', {}, make('tr', {}, ...heads)),
      make('tbody', {}, ...lines.map(({ line }) => line)),
    ),
  );
  return {
    place,
    show: (now) => {
      for (const { code, done, state, press, line } of lines) {
        const { whole, of } = progress(now, code);
        setText(done, `${String(whole)} of ${String(of)}`);
        setText(state, stateOf(now, code, whole));
        press.disabled = whole === 0;
        line.toggleAttribute('data-here', now.items[now.at]?.code === code);
      }
    },
  };
}

const stateOf = ({ unwritten }: Sitting, code: string, whole: number): string =>
  unwritten.has(code) ? 'not written yet' : whole > 0 ? 'written' : 'nothing to write';
