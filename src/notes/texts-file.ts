import type { Told } from './note.ts';

/** What is said about a note as a file and as YAML, before any field is read. */
const error = (code: string, says: string, why: string, write: string): Told => ({
  code,
  level: 'error',
  says,
  why,
  write,
});

const shape =
  'A note begins with a line that is exactly ---, then its fields as YAML, then a line that is exactly ---, then its words.';

export const noteEmpty = (): Told =>
  error('note-empty', 'The note is empty.', shape, 'Write the fields between two lines ---.');

export const noteTooLarge = (bytes: number): Told =>
  error(
    'note-too-large',
    `The note has ${bytes} bytes.`,
    'A note is words and a few dozen fields; readings belong in a logger file beside it.',
    'Move the readings to a logger file and name it under log.',
  );

export const utf16 = (): Told =>
  error('note-not-utf8', 'The note is saved as UTF-16.', 'Notes are read as UTF-8.', 'Save the note again as UTF-8.');

export const notText = (): Told =>
  error(
    'note-not-text',
    'The file holds zero bytes, so it is not text.',
    'A note is a text file in UTF-8.',
    'Put the note back from a copy, or give this file another ending than .md.',
  );

export const notUtf8 = (byte: number): Told =>
  error(
    'note-not-utf8',
    `The byte 0x${byte.toString(16).padStart(2, '0')} here is not UTF-8.`,
    'Read as something else, signs such as ° · ± would turn into others unseen.',
    'Save the note again as UTF-8 and look at the signs on this line.',
  );

export function frontMatterStart(line: string): Told {
  const word = /^-{3}\s*([^\s-].*?)\s*$/.exec(line)?.[1];
  if (word !== undefined)
    return error(
      'front-matter-language',
      `The first line asks for front matter in "${word}".`,
      'Front matter is plain YAML; nothing in a note is ever run.',
      'Write --- alone on the first line and the fields under it as YAML.',
    );
  const says = line.trim() === '---' ? 'The first line has blanks beside ---.' : 'The first line is not ---.';
  return error('front-matter-start', says, shape, 'Write --- alone on the first line.');
}

export const frontMatterEnd = (line: string): Told =>
  error(
    'front-matter-end',
    `"${line}" begins with --- but is not the closing line.`,
    'The fields end at the first line that begins with ---, and it has to be exactly that.',
    'Write --- alone on this line.',
  );

export const frontMatterUnclosed = (): Told =>
  error(
    'front-matter-unclosed',
    'The front matter opened here is never closed.',
    'Without a closing line the words of the note would be read as fields.',
    'Write --- alone on the line after the last field.',
  );

export const directive = (line: string): Told =>
  error(
    'yaml-directive',
    `"${line}" is a YAML directive.`,
    'It would change how the fields under it are read.',
    'Take the line out; notes are read as YAML 1.2.',
  );

export const aliases = (most: number): Told =>
  error(
    'yaml-aliases',
    `The aliases (*name) of this note bring in more than ${most} values.`,
    'A note that grows without end cannot be read.',
    'Write the values out where they are meant.',
  );

export const aliasUnknown = (name: string): Told =>
  error(
    'yaml-alias-unknown',
    `*${name} stands for nothing above it.`,
    'In YAML a value that begins with * is an alias.',
    `Put the value in quotes: "*${name}".`,
  );

export const tooDeep = (most: number): Told =>
  error(
    'yaml-too-deep',
    'The fields are nested too deeply.',
    `No note goes deeper than ${most} levels.`,
    'Take out the extra brackets or indents.',
  );

export const keyNotWord = (): Told =>
  error(
    'key-not-a-word',
    'A field here has no plain name.',
    'Each field is a word, a colon and its value.',
    'Write  name: value.',
  );

export const notFields = (): Told =>
  error(
    'front-matter-no-fields',
    'The front matter is not a list of fields.',
    'Each line of it is a field: a word, a colon, a blank and its value.',
    'Write  name: value  on each line.',
  );

/** One text a kind of YAML trouble; `line` is the line it stands on, `word` what stands there. */
export function yaml(code: string, message: string, line: string, word: string): Told {
  if (/^ *\t/.test(line) || code === 'TAB_AS_INDENT')
    return error(
      'yaml-tab',
      'The line is indented with a tab.',
      'A tab has no agreed width, so it cannot say what belongs to what.',
      'Indent with two blanks.',
    );
  switch (code) {
    case 'DUPLICATE_KEY':
      return error(
        'field-twice',
        `"${word}" stands twice.`,
        'It cannot be told which of the two is meant.',
        `Keep one "${word}" and take the other out.`,
      );
    case 'TAG_RESOLVE_FAILED':
      return error(
        'yaml-tag',
        'The value carries a tag (!…).',
        'A note holds plain text and numbers; a tag would ask for something else to be made of them.',
        'Take the word with ! out, or put the value in quotes.',
      );
    case 'MISSING_CHAR':
      return error(
        'yaml-unclosed',
        'A quote or bracket opened here is not closed.',
        'What follows would be read as part of it.',
        'Close it with the same sign.',
      );
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'BLOCK_IN_FLOW':
      return error(
        'yaml-colon',
        'A second colon with a blank after it stands in this value.',
        'YAML reads it as a field inside the field.',
        'Put the whole value in quotes.',
      );
    case 'BAD_SCALAR_START':
      return error(
        'yaml-sign',
        `A value cannot begin with ${word.slice(0, 1)}.`,
        'YAML keeps this sign for itself.',
        'Put the value in quotes.',
      );
    case 'BAD_INDENT':
      return error(
        'yaml-indent',
        'This line does not line up with the lines it belongs to.',
        'Fields of one group start in one column, and a bracket opened above is closed before the next field.',
        'Move the line under its neighbours, or close the bracket above.',
      );
    case 'BAD_ALIAS':
      return error(
        'yaml-alias-unknown',
        'A value that begins with * or & stands alone here.',
        'YAML keeps these signs for aliases.',
        'Put the value in quotes.',
      );
    default:
      if (/^\s*(- )?[\w-]+:[^\s/]/.test(line))
        return error(
          'yaml-no-blank',
          'No blank stands after the colon.',
          'YAML takes the word, the colon and the value for one word.',
          `Write  ${line.trim().replace(':', ': ')}.`,
        );
      return error(
        'yaml-unreadable',
        `The line cannot be read as YAML: ${plain(message)}.`,
        'Fields are read only when the whole front matter can be read.',
        'Write  name: value, and put values with : # [ ] { } , in quotes.',
      );
  }
}

const plain = (message: string): string => (message.split('\n')[0] ?? '').replace(/\.$/, '').toLowerCase();
