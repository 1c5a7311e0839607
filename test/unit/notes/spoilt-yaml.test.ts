import { describe, expect, it } from 'vitest';
import { goodBook } from './good-book.ts';
import { eachGivesOneFinding, outcome, placed, S07, spoil } from './spoilt.ts';
/** A payload that would leave a mark if anything in front matter were run. */
const payload = 'globalThis.ranFrontMatter = true';
const S07body = goodBook[S07]?.slice(4) ?? '';

eachGivesOneFinding('YAML', [
  {
    title: 'a tab as indent',
    was: 'fill: { basis',
    is: 'fill:\n\t{ basis',
    finds: 'yaml-tab S-07.md:17:1',
    write: 'two blanks',
  },
  {
    title: 'a colon without a blank after it',
    was: 'rotation: forward',
    is: 'rotation:forward',
    finds: 'yaml-no-blank S-07.md:19:1',
    write: 'rotation: forward',
  },
  {
    title: 'a line indented too far',
    was: 'rotation: forward',
    is: '  rotation: forward',
    finds: 'yaml-indent S-07.md:19:3',
    write: 'neighbours',
  },
  {
    title: 'a quote that is not closed',
    was: 'rotation: forward',
    is: 'rotation: "forward',
    finds: 'yaml-unclosed S-07.md:19:11',
    write: 'Close',
  },
  {
    title: 'a bracket that is not closed',
    was: 'operators: [A]',
    is: 'operators: [A',
    finds: 'yaml-indent S-07.md:14:1',
    write: 'bracket',
  },
  {
    title: 'a colon inside a value',
    was: 'reason: "connector touched"',
    is: 'reason: connector: touched',
    finds: 'yaml-colon S-07.md:23:59',
    write: 'quotes',
  },
  {
    title: 'a tag that asks for a function',
    was: 'airflow: 0 m/s',
    is: `airflow: !!js/function "${payload}"`,
    finds: 'yaml-tag S-07.md:18:10',
    write: '!',
  },
  {
    title: 'a directive for another YAML',
    was: 'id: S-07',
    is: '%YAML 1.1\nid: S-07',
    finds: 'yaml-directive S-07.md:2:1',
    write: 'YAML 1.2',
  },
  {
    title: 'an alias of nothing',
    was: 'rotation: forward',
    is: 'rotation: *fast',
    finds: 'yaml-alias-unknown S-07.md:19:11',
    write: '"*fast"',
  },
  {
    title: 'fields that are a list',
    was: S07body,
    is: '- a\n---\n',
    finds: 'front-matter-no-fields S-07.md:2:1',
    write: 'name: value',
  },
  {
    title: 'an unclosed front matter',
    was: '\n---\nSecond',
    is: '\nSecond',
    finds: 'front-matter-unclosed S-07.md:1:1',
    write: '---',
  },
  {
    title: 'a closing line that is too long',
    was: '\n---\nSecond',
    is: '\n-----foo\nSecond',
    finds: 'front-matter-end S-07.md:24:1',
    write: '---',
  },
  {
    title: 'no front matter',
    was: goodBook[S07] ?? '',
    is: 'Second refit.\n',
    finds: 'front-matter-start S-07.md:1:1',
    write: '---',
  },
  { title: 'an empty note', was: goodBook[S07] ?? '', is: '', finds: 'note-empty S-07.md:1:1', write: '---' },
]);

describe('front matter is never run', () => {
  const openings = [
    '---js',
    '---javascript',
    '---JS',
    '---JavaScript',
    '--- js',
    '---  JavaScript ',
    '---jsLegacy',
    '---node',
    '---json',
    '---toml',
    '---coffee',
    '---constructor',
    '---toString',
    '---__proto__',
    '---yaml',
    '\uFEFF---js',
  ];
  it.each(openings)('not when it opens with %j', (opening) => {
    const { loud } = outcome({ ...goodBook, [S07]: `${opening}\n${payload}\n---\nwords\n` });
    expect(placed(loud)).toEqual(['front-matter-language S-07.md:1:1']);
    expect(loud[0]?.says).toContain(opening.replace(/^\uFEFF?---/, '').trim());
    expect(loud[0]?.write).toContain('---');
    expect('ranFrontMatter' in globalThis).toBe(false);
  });

  it.each(['--- ', ' ---', '----', '\n---', '\uFEFF\uFEFF---'])(
    'and a first line %j is not a first line',
    (opening) => {
      const { loud } = outcome(spoil(S07, '---', opening));
      expect(placed(loud)).toEqual(['front-matter-start S-07.md:1:1']);
    },
  );
});

describe('files that are no text', () => {
  const bytes = (text: string, each: (sign: string) => number[]): Uint8Array =>
    Uint8Array.from(Array.from(text).flatMap(each));
  it('a note in Windows-1252 is refused at its first sign that is not UTF-8', () => {
    const latin = bytes(goodBook[S07] ?? '', (sign) => [sign.charCodeAt(0) & 0xff]);
    expect(placed(outcome({ ...goodBook, [S07]: latin }).loud)).toEqual(['note-not-utf8 S-07.md:16:59']);
  });
  it('a note in UTF-16 is refused', () => {
    const wide = Uint8Array.from([
      0xff,
      0xfe,
      ...bytes(goodBook[S07] ?? '', (sign) => [sign.charCodeAt(0) & 0xff, sign.charCodeAt(0) >> 8]),
    ]);
    expect(placed(outcome({ ...goodBook, [S07]: wide }).loud)).toEqual(['note-not-utf8 S-07.md:1:1']);
  });
  it('a binary file called .md is refused', () => {
    expect(placed(outcome({ ...goodBook, [S07]: Uint8Array.from([45, 45, 45, 10, 0, 1]) }).loud)).toEqual([
      'note-not-text S-07.md:1:1',
    ]);
  });
  it('a note of a megabyte is refused', () => {
    const long = `${goodBook[S07] ?? ''}${'word '.repeat(200_000)}`;
    expect(placed(outcome({ ...goodBook, [S07]: long }).loud)).toEqual(['note-too-large S-07.md:1:1']);
  });
});

describe('notes that would grow without end', () => {
  it('aliases of aliases are refused at the one that is too many', () => {
    const steps = Array.from('bcdefghi').map(
      (name, i) =>
        `${name}: &${name} [${Array<string>(9)
          .fill(`*${'abcdefgh'.charAt(i)}`)
          .join(',')}]\n`,
    );
    const bomb = `a: &a [x,x,x,x,x,x,x,x,x]\n${steps.join('')}`;
    const { loud } = outcome(spoil(S07, 'id: S-07', `${bomb}id: S-07`));
    expect(placed(loud)).toEqual(['yaml-aliases S-07.md:4:11']);
  });
  it('an alias of itself is refused', () => {
    const { loud } = outcome(spoil(S07, 'operators: [A]', 'operators: &o [*o]'));
    expect(placed(loud)).toEqual(['yaml-too-deep S-07.md:13:16']);
  });
  it('twenty thousand brackets are refused', () => {
    const { loud } = outcome({ ...goodBook, [S07]: `---\na: ${'['.repeat(20_000)}\n---\n` });
    expect(placed(loud)).toEqual(['yaml-too-deep S-07.md:1:1']);
  });
  it('a plain alias is read as what it stands for', () => {
    const { loud, notes } = outcome(spoil(S07, 'start: 20.8 °C, end: 21.3 °C', 'start: &room 20.8 °C, end: *room'));
    expect(loud).toEqual([]);
    expect(notes.series[0]?.runs[0]?.ambient.end_K).toBeCloseTo(20.8 + 273.15, 10);
  });
});
