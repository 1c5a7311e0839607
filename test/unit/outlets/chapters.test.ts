import { describe, expect, it } from 'vitest';
import { chaptersOf } from '../../../src/outlets/chapters.ts';
import type { TiedClip } from '../../../src/trial/derived.ts';
import { clip, flow, tied, uncut } from './flow-run.ts';

const chapters = (of = clip(), pieces: TiedClip['pieces'] = uncut): readonly string[] =>
  chaptersOf({ run: 'F-01', clip: of, flow: flow([tied(of, pieces)]) })
    .trimEnd()
    .split('\n');

describe('chapters of a clip', () => {
  // 43.4 s of the log is 50.8 s of the film, 153.4 s is 160.8 s, 263.4 s is 270.8 s, and the stop at 3 700 s is 1:01:47.4.
  it('are its steps in its own time, the clock of the camera applied, seconds cut and hours where there are any', () => {
    expect(chapters()).toEqual([
      '00:00 At rest',
      '00:50 60 rpm, up',
      '02:40 120 rpm, up',
      '04:30 60 rpm, down',
      '1:01:47 Stopped, settling',
    ]);
  });

  // Pieces begin at film 20 s (at rest), 48.8 s (2 s before the hold at 60), 200 s (within 120) and 275 s (within 60 down).
  it('of a cut clip begin where its pieces begin, also where a piece shows the last seconds before its step', () => {
    const cut = [
      { clip_s: 0, film_s: 20 },
      { clip_s: 10, film_s: 48.8 },
      { clip_s: 22, film_s: 200 },
      { clip_s: 32, film_s: 275 },
    ];
    const of = clip({ pieces: cut, length_s: 45 });
    const pieces = cut.map(({ clip_s, film_s }, i) => ({
      clip_s,
      to_clip_s: cut[i + 1]?.clip_s ?? 45,
      offset_s: film_s - clip_s - 7.4,
    }));
    expect(chapters(of, pieces)).toEqual([
      '00:00 At rest',
      '00:10 60 rpm, up',
      '00:22 120 rpm, up',
      '00:32 60 rpm, down',
    ]);
  });

  it('name a step once that goes on over a cut, and each that one piece holds', () => {
    // Film 60 s to 80 s and 90 s to 250 s: 60 rpm in both, then 120 rpm from film 160.8 s on, which is clip 90.8 s.
    const pieces = [
      { clip_s: 0, to_clip_s: 20, offset_s: 60 - 7.4 },
      { clip_s: 20, to_clip_s: 180, offset_s: 70 - 7.4 },
    ];
    expect(chapters(clip(), pieces)).toEqual(['00:00 60 rpm, up', '01:30 120 rpm, up']);
  });

  it('begin with the first second of the film, since players ask for it', () => {
    expect(chapters(clip(), [{ clip_s: 4, to_clip_s: 40, offset_s: 60 }])[0]).toBe('00:00 60 rpm, up');
  });

  it('are not written where nothing ties the clip to the logger; what to write for it is', () => {
    const text = chaptersOf({ run: 'F-01', clip: clip({ sync_s: null }), flow: flow([tied(clip(), [])]) });
    expect(text).toBe(
      'No chapters: nothing ties F-01.webm to the logger. Write  sync: 00:00:12.000  under its clip, the time on the film at which the event "sync" of the log is seen.\n',
    );
    expect(chaptersOf({ run: 'F-01', clip: clip(), flow: null })).toBe(
      'No chapters: no steps were read from a logger file of run F-01.\n',
    );
  });
});
