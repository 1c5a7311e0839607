import { describe, expect, it } from 'vitest';
import { firstOf, pagesOf, plainSpaces } from './page-at.ts';
import { textsOf } from './reading.ts';

describe('the grading page', () => {
  const { page, at } = pagesOf();
  const grading = page('grading/');
  const data = firstOf(grading, 'grading')!.grading;

  it('plays the coded clips that are in the folder, in the order of their codes', () => {
    expect(data.clips.map(({ code, address }) => [code, address])).toEqual([
      ['B3', 'series/pan/clips/B3.webm'],
      ['K7', 'series/pan/clips/K7.webm'],
    ]);
    expect(data.clips[1]!.steps[0]).toEqual({ name: '150 rpm up', from_s: 56, to_s: 146 });
  });

  it('has the printed scale and what View means', () => {
    expect(data.scales.map(({ key }) => key)).toEqual(['reach', 'side', 'wall', 'bubble', 'tube']);
    expect(data.scales[0]!.anchors).toHaveLength(5);
    expect(data.views).toEqual(['blind', 'partly seen', 'good', 'clear, the grid readable']);
  });

  it('names no article, fill, oil, run or file', () => {
    // but for the title of the series, which is public
    const words = plainSpaces(JSON.stringify(grading)).replaceAll('Shroud or none', '');
    for (const name of [
      'A0w',
      'A1w',
      'A1',
      '2.40',
      '3.59',
      'L1',
      'mineral',
      'F-02',
      'F-03',
      'F-01',
      'clear bowl',
      'shroud',
    ])
      expect(words, name).not.toContain(name);
  });

  it('tells in short how two people grade, and where the file goes', () => {
    const words = plainSpaces(textsOf(grading));
    expect(words).toContain('each alone');
    expect(words).toContain('K7-A.vtt');
    expect(words).toContain('captions: K7.vtt');
  });

  it('is for the house only, and is not made without a coded clip', () => {
    expect(pagesOf({ audience: 'public' }).at('grading/')).toBeUndefined();
    expect(pagesOf({ media: new Map() }).at('grading/')).toBeUndefined();
    expect(at('grading/')).toBeDefined();
  });
});
