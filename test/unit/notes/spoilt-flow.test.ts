import { describe, expect, it } from 'vitest';
import { F01, flowBook, flowOutcome, spoilFlow } from './flow-book.ts';
import { eachKeepsTheRest, type FlowRow } from './spoilt-flow.ts';

const alt = 'alt: "P0w at 60 rpm, way up: single drops at the pocket."';

const inNote: readonly FlowRow[] = [
  {
    title: 'a grade of 5',
    was: 'wall: 0, bubble: 0, tube: 0, view: 3, level',
    is: 'wall: 5, bubble: 0, tube: 0, view: 3, level',
    finds: 'grade-off-scale F-01.md:35',
    marks: 'wall: |5',
    says: 'wall is 5; the scale goes from 0 to 4, or ng.',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a grade between two',
    was: 'wall: 0, bubble: 0, tube: 0, view: 3, level',
    is: 'wall: 2-3, bubble: 0, tube: 0, view: 3, level',
    finds: 'grade-off-scale F-01.md:35',
    marks: 'wall: |2-3',
    says: 'wall is 2-3; the scale',
    left: [3, 2, 2, 2],
  },
  {
    title: 'half a grade',
    was: 'bubble: 1, foam',
    is: 'bubble: 1.5, foam',
    finds: 'grade-off-scale F-01.md:38',
    marks: 'bubble: |1.5',
    says: 'bubble is 1.5; the scale',
    left: [4, 2, 2, 1],
  },
  {
    title: 'a View of 4',
    was: 'tube: 0, view: 2 }',
    is: 'tube: 0, view: 4 }',
    finds: 'grade-off-scale F-01.md:36',
    marks: 'view: |4',
    says: 'view is 4; the scale goes from 0 to 3.',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a grade that is missing',
    was: 'tube: 0, view: 2 }',
    is: 'view: 2 }',
    finds: 'field-missing F-01.md:36',
    marks: 'up: |{',
    says: '"tube" is missing',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a grade beside View 1',
    was: 'tube: 0, view: 2 }',
    is: 'tube: 0, view: 1 }',
    finds: 'grade-unseen F-01.md:36',
    marks: 'side: |1',
    says: 'read as ng',
    level: 'notice',
  },
  {
    title: 'a step without its way',
    was: '120 rpm up: {',
    is: '120 rpm: {',
    finds: 'step-form F-01.md:36',
    marks: '|120 rpm',
    says: 'Write  120 rpm up.',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a step without its unit',
    was: '120 rpm up: {',
    is: '120 down: {',
    finds: 'step-form F-01.md:36',
    marks: '|120 down',
    says: 'Write  120 rpm down.',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a step that nobody planned',
    was: '120 rpm up: {',
    is: '122 rpm up: {',
    finds: 'step-unplanned F-01.md:36',
    marks: '|122 rpm up',
    says: 'The nearest is 120 rpm up.',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a sample at a step that nobody planned',
    was: '58 °C, step: 290 rpm up',
    is: '58 °C, step: 300 rpm up',
    finds: 'step-unplanned F-01.md:40',
    marks: 'step: |300 rpm up',
    says: 'The nearest is 290 rpm up.',
  },
  {
    title: 'a still at a step that nobody planned',
    was: 'step: 60 rpm up\n',
    is: 'step: 70 rpm down\n',
    finds: 'step-unplanned F-01.md:54',
    marks: 'step: |70 rpm down',
    says: 'The nearest is 60 rpm down.',
    left: [4, 1, 2, 2],
  },
  {
    title: 'a time with two readings',
    was: 'at: 00:00:36.000, reach',
    is: 'at: 00:36, reach',
    finds: 'timecode-unclear F-01.md:35',
    marks: 'at: |00:36',
    says: 'It may be hours and minutes or minutes and seconds.',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a time outside the clip',
    was: 'at: 00:00:36.000, reach',
    is: 'at: 00:02:05.000, reach',
    finds: 'clip-time-outside F-01.md:35',
    marks: 'at: |00:02:05.000',
    says: 'The clip is 00:02:10.000 long.',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a still outside the clip',
    was: 'at: 00:00:41.000',
    is: 'at: 00:02:41.000',
    finds: 'clip-time-outside F-01.md:45',
    marks: 'at: |00:02:41.000',
    says: '00:02:41.000 lies outside the clip.',
    left: [4, 1, 2, 2],
  },
  {
    title: 'a time without its clip',
    was: '    clip: F-01.webm\n    for',
    is: '    for',
    finds: 'at-without-clip F-01.md:34',
    marks: 'at: |00:00:36.000',
    says: 'no clip is named',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a clip of another name',
    was: '    clip: F-01.webm\n    for',
    is: '    clip: F-01.wbem\n    for',
    finds: 'clip-unknown F-01.md:32',
    marks: 'clip: |F-01.wbem',
    says: 'Did you mean "F-01.webm"?',
    left: [2, 2, 2, 2],
  },
  {
    title: 'an observation that stands twice',
    was: '\nsettle:',
    is: '\n  - { observer: B, steps: { 60 rpm up: { reach: 1, side: 1, wall: 0, bubble: 0, tube: 0, view: 3 } } }\nsettle:',
    finds: 'observation-twice F-01.md:37',
    marks: '{ |60 rpm up',
    says: 'graded this step twice',
  },
  {
    title: 'a clip that is written twice',
    was: 'F-01-b.mp4',
    is: 'F-01.webm',
    finds: 'clip-twice F-01.md:28',
    marks: 'file: |F-01.webm',
    says: '"F-01.webm" stands twice',
    left: [4, 2, 1, 2],
  },
  {
    title: 'pieces out of order',
    was: 'clip: 00:01:00.000, film',
    is: 'clip: 00:00:00.000, film',
    finds: 'pieces-order F-01.md:27',
    marks: 'clip: |00:00:00.000',
    says: 'in the order of the clip',
    left: [2, 2, 1, 2],
  },
  {
    title: 'a row after the stop that comes too early',
    was: '{ after: 30 s',
    is: '{ after: 0 s',
    finds: 'not-rising F-01.md:39',
    marks: 'after: |0 s',
    says: 'in rising order',
    left: [4, 2, 2, 1],
  },
  {
    title: 'a still by offset without its offset',
    was: '    offset: 5 s\n',
    is: '',
    finds: 'field-missing F-01.md:46',
    marks: 'rule: |offset',
    says: 'Write  offset: 5 s',
    left: [4, 1, 2, 2],
  },
  {
    title: 'a still by event without its event',
    was: '    event: "first drops"\n',
    is: '',
    finds: 'field-missing F-01.md:55',
    marks: 'rule: |event',
    says: 'Write  event: "first mist"',
    left: [4, 1, 2, 2],
  },
  {
    title: 'a still with an offset that its rule does not use',
    was: 'rule: offset',
    is: 'rule: chosen',
    finds: 'field-one-too-many F-01.md:47',
    marks: 'offset: |5 s',
    says: 'Write  rule: offset',
    left: [4, 1, 2, 2],
  },
  {
    title: 'a still without an alt text',
    was: `    ${alt}\n`,
    is: '',
    finds: 'field-missing F-01.md:53',
    marks: '- |file',
    says: 'it names the article, the step and what is visible',
    left: [4, 1, 2, 2],
  },
  {
    title: 'an empty alt text',
    was: alt,
    is: 'alt: ""',
    finds: 'text-empty F-01.md:58',
    marks: 'alt: |""',
    says: 'it names the article, the step and what is visible',
    left: [4, 1, 2, 2],
  },
  {
    title: 'a cause among the words of an observation',
    was: '"single drops at the pocket"',
    is: '"single drops because of the low level"',
    finds: 'word-not-plain F-01.md:35',
    marks: 'drops |because of',
    says: 'It gives a cause',
    level: 'warning',
  },
  {
    title: 'a verdict in an alt text',
    was: 'single drops at the pocket.',
    is: 'a good sheet at the pocket.',
    finds: 'word-not-plain F-01.md:58',
    marks: 'a |good',
    says: '"good" stands in these words.',
    level: 'warning',
  },
  {
    title: 'a verdict in a caption',
    was: 'caption: "Single drops."',
    is: 'caption: "Single drops, and that is\n      dry   enough."',
    finds: 'word-not-plain F-01.md:58',
    marks: '|dry   enough',
    says: '"dry enough"',
    level: 'warning',
  },
  {
    title: 'a group that a comma has cut',
    was: 'words: "single drops at the pocket"',
    is: 'words: single drops, at the pocket',
    finds: 'comma-in-value F-01.md:35',
    marks: 'words: |single drops, at the pocket',
    says: 'Put the value in quotes',
    left: [3, 2, 2, 2],
  },
  {
    title: 'clips as bare names',
    was: flowBook[F01]!.toString().split('clips:\n')[1]!.split('observations:')[0]!,
    is: '  - F-01.webm\n  - F-02.mp4\n',
    finds: 'field-shape F-01.md:19',
    marks: '- |F-01.webm',
    says: 'Write  clips: [{ file: F-01.webm }].',
    left: [2, 2, 0, 2],
  },
];

describe('a flow run with one thing spoilt in its note keeps the rest, and says where', () => {
  eachKeepsTheRest(F01, inNote);

  it('leaves nothing of a step that was looked at through a blind window', () => {
    const { run } = flowOutcome(spoilFlow(F01, 'tube: 0, view: 2 }', 'tube: 0, view: 0 }'));
    const seen = run.observations.find((o) => o.observer === 'B' && o.view === 0);
    expect(Object.values(seen!.grades)).toEqual(['ng', 'ng', 'ng', 'ng', 'ng']);
  });

  it('takes 291 rpm for the planned 290 rpm, within 1 %', () => {
    const { run, placed } = flowOutcome(spoilFlow(F01, '58 °C, step: 290 rpm up', '58 °C, step: 291 rpm up'));
    expect(placed).toEqual([]);
    expect(run.airSample?.step.outputSpeed_rad_s).toBeCloseTo((290 * Math.PI) / 30, 9);
  });

  it('says of observations in a spin trial that nothing is made of them: flow-field-elsewhere', () => {
    const { placed } = flowOutcome(spoilFlow(F01, 'trial: flow', 'trial: check'));
    expect(placed).toEqual([
      'flow-field-elsewhere F-01.md:30:3',
      'flow-field-elsewhere F-01.md:38:3',
      'flow-field-elsewhere F-01.md:40:13',
    ]);
  });

  it('says nothing at all where nothing is wrong', () => {
    const { placed, run } = flowOutcome(flowBook);
    expect(placed).toEqual([]);
    expect(run.observations.map((o) => [o.observer, o.clip, o.from_s, o.to_s])).toEqual([
      ['B', 'F-01.webm', 36, 46],
      ['B', 'F-01.webm', null, null],
      ['A', 'F-01.webm', 36, 46],
      ['A', 'F-01.webm', 70, 80],
    ]);
    expect(run.clips[0]).toMatchObject({ code: 'K7', length_s: 130, sync_s: 12, captions: 'F-01.vtt' });
    expect(run.clips[0]?.pieces).toEqual([
      { clip_s: 0, film_s: 8 },
      { clip_s: 60, film_s: 120 },
    ]);
    expect(run.clips[1]).toMatchObject({ shows: 'film', code: null, pieces: [{ clip_s: 0, film_s: 0 }] });
    expect(run.settle).toMatchObject([
      { after_s: 0, bubble: 1 },
      { after_s: 30, level_z_m: -0.069, bubble: null },
    ]);
    expect(run.airSample?.mass_kg).toBeCloseTo(0.078, 12);
  });
});
