import type { GradingView } from '../../report/page.ts';
import { findWord } from '../../notes/banned-words.ts';
import { button, make, setText } from '../element.ts';
import { anchorsBeside } from './anchors.ts';
import { fileOf } from './file.ts';
import { filesTable } from './files.ts';
import { joinFiles } from './join.ts';
import { focusOf, keyList } from './key-list.ts';
import { press, type Then } from './keys.ts';
import { standing } from './marks.ts';
import { player } from './player.ts';
import { gradeRows, scalesOf } from './rows.ts';
import { goBy, grade, marksAt, progress, say, type Sitting, toRow, wrote } from './sitting.ts';
import { graderLine } from './start.ts';
import { keep, save } from './store.ts';

export interface Desk {
  readonly place: HTMLElement;
  /** When the desk is in the page. */
  readonly open: () => void;
  readonly isUnwritten: () => boolean;
}

/** Clip, rows, printed scale and files of one evening; every change goes through `now`. */
export function desk(first: Sitting, view: GradingView, leave: () => void): Desk {
  let sitting = first;
  const scales = scalesOf(view);
  const play = player();
  const anchors = anchorsBeside(scales);
  const name = make('h2', { class: 'desk-name' });
  const done = make('p', { class: 'desk-progress', role: 'status' });
  const said = make('p', { class: 'desk-said', role: 'status' });
  const words = make('input', { type: 'text', id: 'words', maxlength: '300', autocomplete: 'off' });
  const wordsSaid = make('p', { class: 'hint words-said', role: 'status' });

  const now = (next: Sitting): void => {
    const before = sitting;
    sitting = next;
    if (next.marks !== before.marks) keep(next);
    if (next.at !== before.at) {
      setText(said, '');
      showItem();
    }
    show();
  };
  const write = (code: string): void => {
    const { name: file, text, cues } = fileOf(sitting, code);
    const { whole, of } = progress(sitting, code);
    if (cues === 0) {
      setText(said, `No step of ${code} is graded in every row; nothing was written.`);
      return;
    }
    save(file, text);
    const rest = of - whole;
    setText(
      said,
      `${file} is written, with ${count(cues)}${rest === 0 ? '' : `; ${count(rest)} of ${code} not graded in every row`}.`,
    );
    now(wrote(sitting, code));
  };
  const rows = gradeRows(scales, {
    grade: (row, value) => {
      now(grade(sitting, value, row));
    },
    stand: (row) => {
      now(toRow(sitting, row));
    },
  });
  const files = filesTable(sitting, write);

  const showItem = (): void => {
    const item = sitting.items[sitting.at];
    if (item === undefined) return;
    setText(name, `Clip ${item.code} · ${item.step}`);
    words.value = marksAt(sitting, item).words;
    play.show(item);
  };
  const show = (): void => {
    const item = sitting.items[sitting.at];
    if (item === undefined) return;
    const marks = marksAt(sitting, item);
    const { whole, of } = progress(sitting);
    setText(done, `${String(whole)} of ${String(of)} steps graded`);
    rows.show(marks, sitting.row);
    anchors.show(sitting.row, standing(marks, sitting.row));
    files.show(sitting);
    back.disabled = sitting.at === 0;
    on.disabled = sitting.at === sitting.items.length - 1;
    const word = findWord(words.value);
    setText(wordsSaid, word === null ? '' : `“${word.word}”: ${word.banned.why} ${word.banned.write}`);
  };

  words.addEventListener('input', () => {
    now(say(sitting, words.value));
  });
  const step = (way: -1 | 1) => (): void => {
    now(goBy(sitting, way));
    rows.focus(sitting.row);
  };
  const back = button('Step before', step(-1));
  const on = button('Next step', step(1));
  const after: Readonly<Record<Then, () => void>> = {
    again: play.again,
    pause: play.pause,
    slow: play.slow,
    words: () => {
      words.focus();
    },
    write: () => {
      const item = sitting.items[sitting.at];
      if (item) write(item.code);
    },
  };

  const place = make(
    'div',
    { class: 'desk', tabindex: '-1' },
    make('div', { class: 'desk-head' }, name, done),
    make('div', { class: 'desk-film' }, play.place),
    make(
      'div',
      { class: 'desk-grades' },
      rows.place,
      make('p', { class: 'desk-words' }, make('label', { for: 'words' }, 'Words'), words),
      wordsSaid,
      make('p', { class: 'desk-steps' }, back, on),
      said,
    ),
    make('div', { class: 'desk-anchors' }, anchors.place),
    make('div', { class: 'desk-keys' }, keyList()),
    make('div', { class: 'desk-files' }, make('h3', {}, 'Files'), files.place, joinFiles()),
    make(
      'p',
      { class: 'desk-grader' },
      graderLine(sitting.grader),
      ' ',
      button('Another observer', () => {
        play.stop();
        leave();
      }),
    ),
  );
  place.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const pressed = press(sitting, event.key, focusOf(event.target));
    if (pressed === null) return;
    event.preventDefault();
    now(pressed.sitting);
    if (pressed.then === null) rows.focus(sitting.row);
    else after[pressed.then]();
  });
  return {
    place,
    open: () => {
      showItem();
      show();
      place.scrollIntoView();
      rows.focus(sitting.row);
    },
    isUnwritten: () => sitting.unwritten.size > 0,
  };
}

const count = (steps: number): string => (steps === 1 ? '1 step' : `${String(steps)} steps`);
