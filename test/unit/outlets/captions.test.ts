import { describe, expect, it } from 'vitest';
import { readCaptions } from '../../../src/notes/captions.ts';
import { captionsOf } from '../../../src/outlets/captions.ts';
import type { FlowRun } from '../../../src/trial/derived.ts';
import type { Observation } from '../../../src/trial/flow.ts';
import { clip, flow, run, seen, speed_rad_s, tied, uncut } from './flow-run.ts';

const captions = (
  observations: readonly Observation[],
  of: { clips?: ReturnType<typeof clip>[]; flow?: FlowRun | null; observerAs?: (name: string) => string } = {},
): string => {
  const clips = of.clips ?? [clip()];
  return captionsOf({
    run: run({ clips, observations }),
    clip: clips[0]!,
    flow: of.flow === undefined ? flow([tied(clips[0]!, uncut)]) : of.flow,
    observerAs: of.observerAs ?? ((name) => name),
  });
};

const read = (text: string) =>
  readCaptions(
    { path: 'hill/runs/F-01.vtt', bytes: new TextEncoder().encode(text), sha256: '' },
    { run: 'F-01', clip: clip(), steps_rad_s: [60, 120].map(speed_rad_s), before: [] },
  );

/** As the standard has it (W3C, WebVTT: The Web Video Text Tracks Format, 4.1): head, blocks, blank lines, hours with two digits or more. */
const timings = (text: string): readonly string[] => text.split('\n').filter((line) => line.includes('-->'));

describe('captions of a clip', () => {
  const written: readonly Observation[] = [
    seen(60, 'up', {
      observer: 'A',
      from_s: 51.004,
      to_s: 61.004,
      grades: { reach: 1, side: 2, wall: 3, bubble: 4, tube: 'ng' },
      level_z_m: -0.057,
      swing_m: 0.003,
      foam_m: 0,
      detach_rad: (300 * Math.PI) / 180,
      words: 'single drops & a "film" <3 mm> at the pocket --> none at the lip | later',
      blind: ['fill', 'oil'],
    }),
    seen(60, 'up', { observer: 'B', from_s: 51.25, to_s: 61.25, view: 2 }),
    seen(120, 'up', { observer: 'A', from_s: 161, to_s: 171, pass: 'joint' }),
  ];

  it('are read back as what was seen, their times to the millisecond', () => {
    const { observations, findings } = read(captions(written));
    expect(findings).toEqual([]);
    expect(observations).toHaveLength(3);
    for (const [i, { from_s, to_s, ...back }] of observations.entries()) {
      const meant = written[i]!;
      // Asked of captions: right to 10 ms.
      expect(Math.abs(from_s! - meant.from_s!)).toBeLessThan(0.01);
      expect(Math.abs(to_s! - meant.to_s!)).toBeLessThan(0.01);
      expect(back).toMatchObject({
        observer: meant.observer,
        pass: meant.pass,
        blind: meant.blind,
        grades: meant.grades,
        view: meant.view,
        words: meant.words,
      });
      expect(back.step.outputSpeed_rad_s).toBeCloseTo(meant.step.outputSpeed_rad_s, 6);
    }
    expect(observations[0]!.level_z_m).toBeCloseTo(-0.057, 9);
    expect(observations[0]!.detach_rad).toBeCloseTo((300 * Math.PI) / 180, 9);
  });

  it('are a file of the standard: its head alone on the first line, times with hours, no arrow within words', () => {
    const text = captions(written);
    expect(text.startsWith('WEBVTT\n\n')).toBe(true);
    expect(timings(text)).toEqual([
      '00:00:51.004 --> 00:01:01.004',
      '00:00:51.250 --> 00:01:01.250',
      '00:02:41.000 --> 00:02:51.000',
    ]);
    expect(text).toContain(
      'run F-01 step 1 rpm 60 up | observer A blind fill oil | reach 1 side 2 wall 3 bubble 4 tube ng',
    );
  });

  it('show what was written at the rig at the hold of its step, in the time of the clip', () => {
    // The hold at 120 rpm begins at 153.4 s of the log; the camera is 7.4 s ahead of it.
    expect(timings(captions([seen(120, 'up')]))).toEqual(['00:02:40.800 --> 00:02:50.800']);
  });

  it('of a cut clip show it in the piece that holds the beginning of its step, and no longer than the piece', () => {
    const of = clip();
    const pieces = [
      { clip_s: 0, to_clip_s: 10, offset_s: 20 - 7.4 },
      { clip_s: 10, to_clip_s: 16, offset_s: 150.8 - 7.4 },
    ];
    // Hold of 60: film 50.8 s, in no piece. Hold of 120: film 160.8 s is clip 10 s; the piece ends at 16 s.
    const text = captions([seen(60, 'up'), seen(120, 'up')], { flow: flow([tied(of, pieces)]) });
    expect(timings(text)).toEqual(['00:00:10.000 --> 00:00:16.000']);
    expect(text).toContain('NOTE\nOne observation has no time in this clip');
    expect(read(text).findings).toEqual([]);
  });

  it('keep the time that was written where nothing ties the clip, and say what has none', () => {
    const text = captions([seen(60, 'up', { from_s: 36, to_s: 46 }), seen(120, 'up')], { flow: null });
    expect(timings(text)).toEqual(['00:00:36.000 --> 00:00:46.000']);
    expect(text).toContain('One observation has no time in this clip');
  });

  it('leave out what was graded in another clip of the run', () => {
    const clips = [clip(), clip({ file: 'F-01-close.webm' })];
    const other = seen(60, 'up', { clip: 'F-01-close.webm', from_s: 5, to_s: 15 });
    expect(timings(captions([other], { clips }))).toEqual([]);
  });

  it('call observers by what the reader may know of them', () => {
    const text = captions(written, { observerAs: (name) => (name === 'A' ? '1' : '2') });
    expect(text).toContain('| observer 1 blind');
    expect(text).toContain('| observer 2 |');
    expect(text).not.toMatch(/observer [AB]\b/);
  });

  it('are an empty file of the standard where nobody wrote anything', () => {
    expect(captions([])).toBe('WEBVTT\n');
    expect(read('WEBVTT\n').findings).toEqual([]);
  });
});
