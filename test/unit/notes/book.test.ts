import { describe, expect, it } from 'vitest';
import { readNotes } from '../../../src/notes/book.ts';
import { asFiles, goodBook } from './good-book.ts';

const read = readNotes(asFiles(goodBook));
const [series] = read.series;

describe('a good book', () => {
  it('gives no findings above notice', () => {
    const loud = [...read.findings, ...(series?.findings ?? [])].filter((f) => f.level !== 'notice');
    expect(loud).toEqual([]);
    expect(read.series).toHaveLength(1);
  });
});
