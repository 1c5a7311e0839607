import { describe, expect, it } from 'vitest';
import { lineStarts, placeAt } from '../../../src/finding/place.ts';

const at = (text: string, offset: number, length?: number) =>
  placeAt({ file: 'a.md', text, starts: lineStarts(text), offset, ...(length === undefined ? {} : { length }) });

describe('places, as an editor counts', () => {
  it.each([
    ['LF', 'one\ntwo\nthree'],
    ['CRLF', 'one\r\ntwo\r\nthree'],
    ['a lone CR', 'one\rtwo\rthree'],
    ['mixed ends', 'one\r\ntwo\nthree'],
  ])('lines end at %s', (_, text) => {
    expect(at(text, text.indexOf('wo'), 2)).toEqual({ file: 'a.md', line: 2, column: 2, length: 2, lineText: 'two' });
    expect(at(text, text.indexOf('three'))).toMatchObject({ line: 3, column: 1, lineText: 'three' });
  });

  it('an empty line is a line, and so is what follows the last end', () => {
    expect(lineStarts('a\n\nb\n')).toEqual([0, 2, 3, 5]);
    expect(at('a\n', 2)).toMatchObject({ line: 2, column: 1, lineText: '' });
  });

  it('the end of a text and beyond it is its last place', () => {
    expect(at('ab', 2)).toMatchObject({ line: 1, column: 3 });
    expect(at('ab', 99)).toMatchObject({ line: 1, column: 3 });
    expect(at('', 0)).toMatchObject({ line: 1, column: 1, lineText: '' });
  });

  it('columns count UTF-16 code units, and a byte order mark is not counted', () => {
    expect(at('😀x', 2)).toMatchObject({ column: 3 });
    expect(at('\uFEFFid: 1', 1)).toMatchObject({ column: 1, lineText: 'id: 1' });
  });

  it('an underline stays on its line', () => {
    expect(at('fill: 2\nnext', 6, 20)).toMatchObject({ column: 7, length: 1 });
    expect(at('fill:\nnext', 5, 0)).toMatchObject({ column: 6, length: 1 });
  });

  it('a place between CR and LF belongs to the line that ends there', () => {
    expect(at('ab\r\ncd', 3)).toMatchObject({ line: 1, column: 3 });
  });
});
