import { describe, expect, it } from 'vitest';
import { readVtt } from '../../../src/notes/vtt.ts';
import { fileName, fileOf, readObserver } from '../../../src/reader/grading/file.ts';
import { joined } from '../../../src/reader/grading/joined.ts';
import { say, type Sitting } from '../../../src/reader/grading/sitting.ts';
import { readCue } from '../../../src/trial/read-cue.ts';
import { grader, sat, typed } from './grading.ts';

const cuesIn = (text: string) => readVtt(text).cues.map((cue) => ({ ...cue, is: readCue(cue.text) }));
const graded = (more: Parameters<typeof sat>[0] = {}): Sitting =>
  typed(sat(more), '3', '3', '2', '1', '0', 'n', 'Enter', '1', 'Enter', '2', '4');

describe('the file of a clip', () => {
  it('has a cue for every step that is graded in all rows, over the ten seconds or what the hold has of them', () => {
    const file = fileOf(graded(), 'K7');
    expect(file.cues).toBe(2);
    expect(readVtt(file.text).troubles).toEqual([]);
    expect(cuesIn(file.text).map(({ from_s, to_s }) => [from_s, to_s])).toEqual([
      [11, 21],
      [23, 30],
    ]);
  });

  it('says what was graded, by whom, and what was hidden, under the code of the clip', () => {
    const [first, second] = cuesIn(fileOf(graded(), 'K7').text).map(({ is }) => is);
    expect(first?.troubles).toEqual([]);
    expect(first?.run?.text).toBe('K7');
    expect(first?.noted).toMatchObject({
      ...{ observer: 'A', pass: 'first', blind: ['fill', 'oil'], view: 3, words: null },
      step: { direction: 'up' },
      grades: { reach: 3, side: 2, wall: 1, bubble: 0, tube: 'ng' },
    });
    expect(first!.noted!.step.outputSpeed_rad_s).toBeCloseTo((60 * 2 * Math.PI) / 60, 9);
    expect(second?.noted?.grades).toEqual({ reach: 'ng', side: 'ng', wall: 'ng', bubble: 'ng', tube: 'ng' });
  });

  it('keeps words as they were typed, signs of markup and all, on one line', () => {
    const file = fileOf(
      say(typed(sat(), '3', '1', '1', '1', '1', '1'), ' drops --> <b> & more\n\nat the pocket '),
      'K7',
    );
    expect(readVtt(file.text).troubles).toEqual([]);
    expect(cuesIn(file.text).map(({ is }) => is.noted?.words)).toEqual(['drops --> <b> & more at the pocket']);
  });

  it('is empty of a clip that nobody graded', () => {
    expect(fileOf(graded(), 'R4')).toEqual({ name: 'R4-A.vtt', text: 'WEBVTT\n', cues: 0 });
  });

  it('goes by the code, the observer and the pass', () => {
    expect(fileName('K7', grader)).toBe('K7-A.vtt');
    expect(fileName('K7', { observer: 'A+B', pass: 'joint' })).toBe('K7-A+B-joint.vtt');
    expect(fileName('../K/7', grader)).toBe('---K-7-A.vtt');
  });
});

describe('an observer', () => {
  it.each([
    ['A', 'A'],
    [' ab ', 'ab'],
    ['A+B', 'A+B'],
    ['Ö2', 'Ö2'],
  ])('"%s" is %s', (text, initials) => {
    expect(readObserver(text)).toBe(initials);
  });

  it.each(['', ' ', '1', 'A B', 'A|B', 'A-->', '<A>', 'Abcdefghi'])('is none in "%s"', (text) => {
    expect(readObserver(text)).toBeNull();
  });
});

describe('files of two observers', () => {
  const first = { name: 'K7-A.vtt', text: fileOf(graded(), 'K7').text };
  const second = { name: 'K7-B.vtt', text: fileOf(graded({ observer: 'B' }), 'K7').text };

  it('become one, in order of time, with every cue of both', () => {
    const one = joined([second, first]);
    if (!one.ok) throw new Error(one.why);
    expect([one.name, one.cues]).toEqual(['K7.vtt', 4]);
    const cues = cuesIn(one.text);
    expect(cues.map(({ from_s }) => from_s)).toEqual([11, 11, 23, 23]);
    expect(cues.map(({ is }) => is.noted?.observer).sort()).toEqual(['A', 'A', 'B', 'B']);
  });

  it('are read with any ends of lines', () => {
    expect(joined([first, { ...second, text: `\uFEFF${second.text.replaceAll('\n', '\r\n')}` }]).ok).toBe(true);
  });

  it.each([
    [[first], /two files/],
    [[first, first], /repeats an observer/],
    [[first, { name: 'x.vtt', text: 'hello' }], /x\.vtt is no captions file/],
    [[first, { name: 'x.vtt', text: 'WEBVTT\n\n00:00:01.000 --> 00:00:02.000\nhello\n' }], /x\.vtt has a cue/],
    [[first, { name: 'R4-B.vtt', text: second.text.replaceAll('K7', 'R4') }], /K7 and R4/],
  ])('are not made one where that would lose or repeat something', (files, why) => {
    const one = joined(files);
    expect(one.ok ? '' : one.why).toMatch(why);
  });
});
