import { describe, expect, it } from 'vitest';
import { readNotes } from '../../../src/notes/book.ts';
import { sumOfWords } from '../../../src/notes/pins.ts';
import { asFiles, type Files, goodBook } from './good-book.ts';

const file = 'hill-bowl/parts/2-second.md';
const beside = 'hill-bowl/parts/2-second.pins';
const words =
  'It takes [spin power](figure:S-07/spin-power@290rpm,60Cel); see [the run](see:S-07).\n\n![The bowl](chart:section)\n';
const note = `---
id: 2-second
number: 2
title: Second
summary: What it takes to turn.
status: out
published: 2026-05-05
asks: [Q-1]
answers:
  - { question: Q-2, by: [S-07] }
---
${words}`;
const pins = `part\t2-second\t2026-05-05\t1
words\t${sumOfWords(words)}
figure\tS-07/spin-power@290rpm,60Cel\t241 ± 9 W\t241\t232\t250\tW
file\thill-bowl/runs/S-07.csv\t00ff
`;
const question = (id: string, more = ''): string =>
  `  - { id: ${id}, text: "Is it so?", raised-by: reader, raised-on: 2026-03-20, kind: loss${more} }\n`;
const register = `questions:\n${question('Q-1')}${question('Q-2')}`;
const claims = (questions = register): string => goodBook['hill-bowl/claims.md']!.replace('---\n', `---\n${questions}`);

const book = (change: Files = {}): Files => ({
  ...goodBook,
  'hill-bowl/claims.md': claims(),
  [file]: note,
  [beside]: pins,
  ...change,
});
const read = (files: Files) => {
  const { findings, series } = readNotes(asFiles(files));
  const all = [...findings, ...series.flatMap((s) => s.findings)];
  const found = all.filter((f) => /\/parts\/2|claims/.test(f.place.file) && f.level !== 'notice');
  return {
    found: found.map(({ code, level, place }) => [code, level, place.line]),
    parts: series[0]!.parts.filter(({ number }) => number === 2),
    questions: series[0]!.questions,
  };
};
const withNote = (was: string, is: string): Files => {
  if (!note.includes(was)) throw new Error(`the note does not hold ${was}`);
  return book({ [file]: note.replace(was, () => is) });
};

describe('a part', () => {
  it('is read with its pins and what its words refer to, with nothing to find', () => {
    const { found, parts, questions } = read(book());
    expect(found).toEqual([]);
    expect(questions.map(({ id }) => id)).toEqual(['Q-1', 'Q-2']);
    expect(parts[0]).toMatchObject({
      id: '2-second',
      number: 2,
      asks: ['Q-1'],
      answers: [{ question: 'Q-2', by: ['S-07'] }],
    });
    expect(parts[0]!.refs.map(({ scheme, target, place }) => [scheme, target, place.line, place.column])).toEqual([
      ['figure', 'S-07/spin-power@290rpm,60Cel', 12, 23],
      ['see', 'S-07', 12, 75],
      ['chart', 'section', 14, 13],
    ]);
    const pin = parts[0]!.pins!.figures.get('S-07/spin-power@290rpm,60Cel');
    expect(pin).toMatchObject({ shown: '241 ± 9 W', value: 241, low: 232, high: 250, unit: 'W' });
  });

  it.each([
    ['not pinned, and so not out', book({ [beside]: '' }), [['pins-row', 'error', 1]], 0],
    ['pins of a draft', withNote('status: out', 'status: draft'), [['pins-of-draft', 'warning', 6]], 1],
    [
      'another day than was pinned',
      withNote('published: 2026-05-05', 'published: 2026-05-06'),
      [['pins-day', 'warning', 7]],
      1,
    ],
    ['words that are not those of the day', withNote('It takes', 'It took'), [['part-rewritten', 'warning', 4]], 1],
    ['out without a day', withNote('published: 2026-05-05\n', ''), [['field-missing', 'error', 6]], 0],
    ['withdrawn without a reason', withNote('status: out', 'status: withdrawn'), [['field-missing', 'error', 6]], 0],
    ['a number that is not that of its file', withNote('number: 2', 'number: 3'), [['part-number', 'error', 2]], 0],
    [
      'the number of another part',
      book({ [file]: note.replaceAll('2-second', '1-second').replace('number: 2', 'number: 1') }),
      [],
      0,
    ],
    [
      'a question that is not in the register',
      withNote('asks: [Q-1]', 'asks: [Q-7]'),
      [['question-unknown', 'error', 8]],
      0,
    ],
    [
      'an answer before the question',
      book({ 'hill-bowl/claims.md': claims(register.replaceAll('2026-03-20', '2026-06-20')) }),
      [['question-days', 'warning', 10]],
      1,
    ],
  ])('%s', (_, files, found, parts) => {
    const is = read(files);
    if (found.length > 0) expect(is.found).toEqual(found);
    expect(is.parts).toHaveLength(parts);
  });

  it('that says out and has no pins is told to be pinned', () => {
    const rest = Object.fromEntries(Object.entries(book()).filter(([path]) => path !== beside));
    expect(read(rest).found).toEqual([['part-not-pinned', 'warning', 6]]);
  });

  it('may not have the number of another one', () => {
    const twice = book({ 'hill-bowl/parts/2-other.md': note.replaceAll('2-second', '2-other') });
    expect(read(twice).found).toContainEqual(['part-number', 'error', 3]);
    expect(read(twice).parts).toHaveLength(1);
  });

  it.each([
    ['a kind of link that is none', '(figure:S-07', '(figur:S-07', 'ref-kind'],
    ['a chart written as a link', '![The bowl](chart:section)', '[The bowl](chart:section)', 'ref-form'],
    ['a figure written as a picture', '[spin power](figure:', '![spin power](figure:', 'ref-form'],
  ])('tells of %s, at its place', (_, was, is, code) => {
    const told = read(withNote(was, is)).found.filter(([of]) => of === code);
    expect(told).toEqual([[code, 'warning', was.startsWith('!') ? 14 : 12]]);
  });

  it('tells of pins that stand beside no part', () => {
    const { findings, series } = readNotes(asFiles({ ...goodBook, 'hill-bowl/parts/9-gone.pins': pins }));
    const told = [...findings, ...series.flatMap((s) => s.findings)].filter(({ place }) =>
      place.file.endsWith('.pins'),
    );
    expect(told.map(({ code }) => code)).toEqual(['pins-alone']);
  });
});

describe('the register of questions', () => {
  it('leaves out a question that ended in two ways, and one whose id is taken', () => {
    const both = ', dropped: { on: 2026-05-01, why: "x" }, handed-on: { on: 2026-05-01, to: "y", why: "z" }';
    const is = read(book({ 'hill-bowl/claims.md': claims(`${register}${question('Q-3', both)}${question('Q-1')}`) }));
    expect(is.found.map(([code]) => code)).toEqual(['question-state', 'id-twice']);
    expect(is.questions.map(({ id }) => id)).toEqual(['Q-1', 'Q-2']);
  });
});
