import { button, make, setText } from '../element.ts';
import { joined } from './joined.ts';
import { save } from './store.ts';

/** For whoever keeps the list of codes: files of two observers become the one file that a note names. */
export function joinFiles(): HTMLElement {
  const files = make('input', { type: 'file', id: 'join-files', accept: '.vtt,text/vtt', multiple: true });
  const says = make('p', { class: 'hint', role: 'status' });
  const join = async (): Promise<void> => {
    const chosen = await Promise.all(
      [...(files.files ?? [])].map(async (file) => ({ name: file.name, text: await file.text() })),
    );
    const made = joined(chosen);
    setText(
      says,
      made.ok ? `${made.name} has ${String(made.cues)} cues. Put it beside the note of its run.` : made.why,
    );
    if (made.ok) save(made.name, made.text);
  };
  return make(
    'details',
    { class: 'fold' },
    make('summary', {}, 'Files of two observers as one'),
    make(
      'p',
      {},
      make('label', { for: 'join-files' }, 'Files of one clip'),
      ' ',
      files,
      ' ',
      button('Write one file', () => void join()),
    ),
    says,
  );
}
