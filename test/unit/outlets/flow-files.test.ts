import { describe, expect, it } from 'vitest';
import { flowFiles } from '../../../src/outlets/flow-files.ts';
import { clipAddresses, stillAddress } from '../../../src/report/media-address.ts';
import type { DerivedRun } from '../../../src/trial/derived.ts';
import type { SeriesRecord } from '../../../src/trial/series.ts';
import { clip, flow, run, seen, tied, uncut } from './flow-run.ts';

const graded = run({
  observations: [
    seen(60, 'up', { observer: 'QZX', from_s: 51, to_s: 61 }),
    seen(60, 'up', { observer: 'VWQ', from_s: 51, to_s: 61 }),
    seen(60, 'up', { observer: 'JXK', pass: 'joint', from_s: 51, to_s: 61 }),
  ],
});
const record = {
  series: { id: 'hill-bowl' },
  runs: [graded, run({ id: 'S-01', clips: [] })],
} as unknown as SeriesRecord;
const derived = new Map([['F-01', { flow: flow([tied(clip(), uncut)]) } as unknown as DerivedRun]]);

describe('the text files of a series beside its clips', () => {
  it('are captions and chapters of every clip, and nothing for a run without one', () => {
    const files = flowFiles({ record, derived, audience: 'house' });
    expect(files.map(({ path }) => path)).toEqual([
      'series/hill-bowl/clips/F-01.vtt',
      'series/hill-bowl/clips/F-01.chapters.txt',
    ]);
    expect(files[0]!.text).toMatch(/observer QZX[^]*observer VWQ[^]*observer JXK pass joint/);
    expect(files[1]!.text).toMatch(/^00:00 At rest\n00:50 60 rpm, up\n/);
  });

  it('name no observer to the public', () => {
    const text = flowFiles({ record, derived, audience: 'public' })
      .map((file) => file.text)
      .join('');
    expect(text).toMatch(/observer 1 \|[^]*observer 2 \|[^]*observer joint pass joint/);
    expect(text).not.toMatch(/QZX|VWQ|JXK/);
  });
});

describe('addresses', () => {
  it('of clips go by their code, or by the run and a count, and end as the file ends', () => {
    const clips = [
      clip({ file: 'a.MP4' }),
      clip({ file: 'b.webm', code: 'K7' }),
      clip({ file: 'c.webm' }),
      clip({ file: 'd.webm', code: 'K7' }),
    ];
    expect(clipAddresses('hill-bowl', { id: 'F-01', clips }).map((each) => each.clip.replace(/.*\//, ''))).toEqual([
      'F-01.mp4',
      'K7.webm',
      'F-01-2.webm',
      'K7-2.webm',
    ]);
  });

  it('of stills are their names without ending, one part of an address whatever was typed', () => {
    expect(stillAddress('hill-bowl', 'F-01-290.png')).toBe('series/hill-bowl/stills/F-01-290');
    expect(stillAddress('hill-bowl', '../up.png')).not.toMatch(/\.\.|stills\/.*\//);
  });
});
