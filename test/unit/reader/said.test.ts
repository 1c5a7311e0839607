import { describe, expect, it } from 'vitest';
import { said, saidAt } from '../../../src/reader/film/said.ts';

const cue = (from_s: number, to_s: number, text: string) => ({ from_s, to_s, text });

describe('what was said of a moment', () => {
  it('is what all observers said whose time holds it, each in its place', () => {
    const moments = said([cue(1, 11, 'A'), cue(1, 11, 'B'), cue(20, 30, 'A later')]);
    expect(moments).toEqual([
      { from_s: 1, to_s: 11, texts: ['A', 'B'] },
      { from_s: 20, to_s: 30, texts: ['A later'] },
    ]);
    expect(saidAt(moments, 1)?.texts).toEqual(['A', 'B']);
    expect(saidAt(moments, 11)).toBeNull();
    expect(saidAt(moments, 15)).toBeNull();
    expect(saidAt(said([]), 3)).toBeNull();
  });

  it('changes where one begins or ends within another', () => {
    expect(said([cue(0, 10, 'A'), cue(4, 6, 'B')])).toEqual([
      { from_s: 0, to_s: 4, texts: ['A'] },
      { from_s: 4, to_s: 6, texts: ['A', 'B'] },
      { from_s: 6, to_s: 10, texts: ['A'] },
    ]);
  });
});
