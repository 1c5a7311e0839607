import { describe, expect, it } from 'vitest';
import { readClipData } from '../../../src/reader/film/clip-data.ts';

describe('what the page says of a clip', () => {
  it('is read with its pieces, steps and cues', () => {
    const data = {
      pieces: [{ clip_s: 0, to_clip_s: 3, offset_s: 1 }],
      steps: [],
      cues: [],
      captionsLabel: 'Observations',
    };
    expect(readClipData(JSON.stringify(data))).toEqual(data);
  });

  it.each(['', '{', 'null', '3', '{}', '{"pieces":[],"steps":{}}'])('is nothing in %s', (json) => {
    expect(readClipData(json)).toBeNull();
  });
});
