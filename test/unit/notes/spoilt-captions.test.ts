import { describe, expect, it } from 'vitest';
import type { Observation } from '../../../src/trial/flow.ts';
import { F01, flowBook, flowOutcome, spoilFlow, vtt } from './flow-book.ts';
import { eachKeepsTheRest, type FlowRow } from './spoilt-flow.ts';

const withoutPlace = (o: Observation): object => ({ ...o, place: null });

const cue = 'run F-01 step 1 rpm 60 up | observer A';
const inCaptions: readonly FlowRow[] = [
  {
    title: 'no header',
    was: 'WEBVTT\n\nNOTE',
    is: 'NOTE',
    finds: 'captions-header F-01.vtt:1',
    marks: '|NOTE graded from the clip',
    says: 'Write WEBVTT alone',
    left: [2, 2, 2, 2],
  },
  {
    title: 'words under the header',
    was: 'WEBVTT\n',
    is: 'WEBVTT\nflow trial\n',
    finds: 'captions-header F-01.vtt:2',
    marks: '|flow trial',
    says: 'an empty line after WEBVTT',
  },
  {
    title: 'a comma in a time',
    was: '00:00:36.000 -->',
    is: '00:00:36,000 -->',
    finds: 'captions-time F-01.vtt:5',
    marks: '|00:00:36,000',
    says: 'after a point',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a line separator before a time, which is no end of a line here',
    was: '00:00:36.000 -->',
    is: '\u202800:00:36.000 -->',
    finds: 'captions-time F-01.vtt:5',
    marks: '|\u202800:00:36.000',
    says: 'is not a time',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a time that is cut',
    was: '--> 00:01:20.000',
    is: '--> 00:01:20',
    finds: 'captions-time F-01.vtt:8',
    marks: '--> |00:01:20',
    says: '"00:01:20" is not a time.',
    left: [3, 2, 2, 2],
  },
  {
    title: 'an end that is missing',
    was: '--> 00:01:20.000',
    is: '-->',
    finds: 'captions-time F-01.vtt:8',
    marks: '-->|',
    says: 'A time is missing',
    left: [3, 2, 2, 2],
  },
  {
    title: 'an end before the start',
    was: '--> 00:01:20.000',
    is: '--> 00:01:02.000',
    finds: 'captions-end F-01.vtt:8',
    marks: '--> |00:01:02.000',
    says: 'ends after it begins',
    left: [3, 2, 2, 2],
  },
  {
    title: 'cues out of order',
    was: '00:01:10.000 --> 00:01:20.000',
    is: '00:00:10.000 --> 00:00:20.000',
    finds: 'captions-order F-01.vtt:8',
    marks: '|00:00:10.000 --> 00:00:20.000',
    says: 'begins before the one above',
    level: 'warning',
  },
  {
    title: 'cues of one observer that overlap',
    was: '00:01:10.000 --> 00:01:20.000',
    is: '00:00:45.000 --> 00:00:55.000',
    finds: 'captions-overlap F-01.vtt:8',
    marks: '|00:00:45.000 --> 00:00:55.000',
    says: 'two observers, or two passes, may overlap',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a cue outside the clip',
    was: '00:01:10.000 --> 00:01:20.000',
    is: '00:02:10.000 --> 00:02:20.000',
    finds: 'clip-time-outside F-01.vtt:8',
    marks: '|00:02:10.000 --> 00:02:20.000',
    says: '00:02:10.000 long',
    left: [3, 2, 2, 2],
  },
  {
    title: 'words without a time',
    was: 'NOTE graded',
    is: 'graded',
    finds: 'captions-no-time F-01.vtt:3',
    marks: '|graded from the clip',
    says: 'or NOTE before them',
  },
  {
    title: 'a cue that somebody put behind NOTE',
    was: '\n\n00:01:10.000',
    is: '\n\nNOTE\n00:01:10.000',
    finds: 'captions-time-in-note F-01.vtt:9',
    marks: '|00:01:10.000 --> 00:01:20.000',
    says: 'whatever stands above it',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a step that nobody planned',
    was: 'step 2 rpm 120',
    is: 'rpm 130',
    finds: 'step-unplanned F-01.vtt:9',
    marks: 'rpm |130',
    says: 'The nearest is 120 rpm.',
    left: [3, 2, 2, 2],
  },
  {
    title: 'another run',
    was: cue,
    is: cue.replace('F-01', 'F-02'),
    finds: 'cue-run F-01.vtt:6',
    marks: 'run |F-02',
    says: 'Write  run F-01',
    left: [3, 2, 2, 2],
  },
  {
    title: 'another code',
    was: 'run K7',
    is: 'run k7',
    finds: 'cue-run F-01.vtt:9',
    marks: 'run |k7',
    says: 'as graders know it K7',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a grade of 5',
    was: 'reach 2',
    is: 'reach 5',
    finds: 'grade-off-scale F-01.vtt:9',
    marks: 'reach |5',
    says: 'reach is 5; the scale goes from 0 to 4, or ng.',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a grade between two',
    was: 'reach 2',
    is: 'reach 2-3',
    finds: 'grade-off-scale F-01.vtt:9',
    marks: 'reach |2-3',
    says: 'reach is 2-3;',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a View of ng',
    was: 'view 2',
    is: 'view ng',
    finds: 'grade-off-scale F-01.vtt:9',
    marks: 'view |ng',
    says: 'from 0 to 3',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a grade that is missing',
    was: 'wall 1 ',
    is: '',
    finds: 'cue-incomplete F-01.vtt:9',
    marks: 'view |2',
    says: 'wall is missing',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a grade without its number',
    was: 'wall 1 ',
    is: 'wall ',
    finds: 'cue-incomplete F-01.vtt:9',
    marks: '1 |wall',
    says: 'Nothing stands after wall.',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a misspelt word',
    was: 'bubble 0 tube 0 view 2',
    is: 'buble 0 tube 0 view 2',
    finds: 'cue-word F-01.vtt:9',
    marks: '1 |buble',
    says: 'Did you mean "bubble"?',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a word that nobody knows in the place of a grade',
    was: 'bubble 0 tube 0 view 2',
    is: '__proto__ 0 tube 0 view 2',
    finds: 'cue-word F-01.vtt:9',
    marks: '1 |__proto__',
    says: 'Known are run, step',
    left: [3, 2, 2, 2],
  },
  {
    title: 'an arrow among its words',
    was: 'words: single drops',
    is: 'words: single --> drops',
    finds: 'captions-arrow F-01.vtt:6',
    marks: 'single |-->',
    says: 'Write  --&gt;',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a word that stands twice',
    was: 'wall 1 ',
    is: 'wall 1 wall 2 ',
    finds: 'cue-word-twice F-01.vtt:9',
    marks: '1 |wall',
    says: 'Keep one',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a direction that is missing',
    was: 'rpm 120 up',
    is: 'rpm 120',
    finds: 'cue-word F-01.vtt:9',
    marks: 'rpm |120',
    says: 'up or down',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a number with a comma',
    was: 'level -57',
    is: 'level -57,5',
    finds: 'cue-number F-01.vtt:6',
    marks: 'level |-57,5',
    says: 'in mm',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a level in the wrong unit',
    was: 'level -57',
    is: 'level -57000',
    finds: 'value-impossible F-01.vtt:6',
    marks: 'level |-57000',
    says: 'between -2000 and 2000',
    left: [3, 2, 2, 2],
  },
  {
    title: 'other words than an observation',
    was: 'run K7 step 2',
    is: 'lamp K7 step 2',
    finds: 'cue-form F-01.vtt:9',
    marks: '|lamp',
    says: 'other words stand in a NOTE',
    left: [3, 2, 2, 2],
  },
  {
    title: 'a grade beside View 1',
    was: 'view 2',
    is: 'view 1',
    finds: 'grade-unseen F-01.vtt:9',
    marks: 'view |1',
    says: 'read as ng',
    level: 'notice',
  },
  {
    title: 'a verdict among its words',
    was: 'words: single drops at',
    is: 'words: single drops, fine for',
    finds: 'word-not-plain F-01.vtt:6',
    marks: 'drops, |fine',
    says: '"fine" stands',
    level: 'warning',
  },
  {
    title: 'one observer twice at one step, in note and captions',
    was: 'K7 step 2 rpm 120 up | observer A',
    is: 'K7 step 2 rpm 120 up | observer B',
    finds: 'observation-twice F-01.vtt:9',
    marks: 'run |K7',
    says: 'pass: joint',
    left: [3, 2, 2, 2],
  },
];

describe('a flow run with one thing spoilt in its captions keeps the rest, and says where', () => {
  eachKeepsTheRest(vtt, inCaptions);

  it('tells a whole file of another run once: cue-run', () => {
    const text = flowBook[vtt]!.toString().replaceAll('run F-01', 'run F-05').replaceAll('run K7', 'run F-05');
    const { placed, run } = flowOutcome({ ...flowBook, [vtt]: text });
    expect(placed).toEqual(['cue-run F-01.vtt:6:5']);
    expect(run.observations).toHaveLength(2);
  });

  it('lists the first twenty of many mistakes and counts the rest: more-findings', () => {
    const many = Array.from({ length: 300 }, () => '\n00:00:05.000 --> 00:00:10.000\nrun F-01 lamp\n').join('');
    const { findings, run } = flowOutcome({ ...flowBook, [vtt]: `WEBVTT\n${many}` });
    expect(findings).toHaveLength(21);
    expect(findings.filter(({ code }) => code === 'more-findings').map(({ says, level }) => [says, level])).toEqual([
      ['580 more findings in this captions file.', 'error'],
    ]);
    expect(run.observations).toHaveLength(2);
  });

  it('takes twelve observers of a run, and tells the thirteenth once: observers-too-many', () => {
    const one = (i: number): string =>
      `\n00:00:36.000 --> 00:00:46.000\nrun F-01 rpm 60 up | observer Q${String(i)} | reach 1 side 1 wall 0 bubble 0 tube 0 view 3\n`;
    const many = (n: number) =>
      flowOutcome({ ...flowBook, [vtt]: `WEBVTT\n${Array.from({ length: n }, (_, i) => one(i)).join('')}` });
    // B stands in the note
    expect([many(11).placed, many(11).run.observations.length]).toEqual([[], 13]);
    expect([many(40).placed, many(40).run.observations.length]).toEqual([['observers-too-many F-01.vtt:37:5'], 13]);
  });

  it('names no observer in what it only remarks, since that stands on public pages', () => {
    const remarks = inCaptions.filter(({ level }) => level !== undefined);
    expect(remarks.length).toBeGreaterThan(2);
    for (const f of remarks.flatMap(({ was, is }) => flowOutcome(spoilFlow(vtt, was, is)).findings))
      expect([f.says, f.why, f.write].join(' ')).not.toMatch(/observer [AB]\b/);
  });

  const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
  it.each([
    ['captions-not-utf8', 'UTF-16', Uint8Array.from([0xff, 0xfe, 0x57, 0])],
    ['captions-not-utf8', '0xfc', Uint8Array.from([...bytes('WEBVTT\n\nNOTE h'), 0xfc, ...bytes('lle\n')])],
    ['captions-not-text', 'zero bytes', Uint8Array.from([...bytes('WEBVTT\n\n'), 0, 0])],
    ['captions-too-large', '400001 bytes', new Uint8Array(400_001).fill(0x20)],
  ])('is told as %s when it has %s, and the run stands', (code, says, content) => {
    const { findings, run } = flowOutcome({ ...flowBook, [vtt]: content });
    expect(findings.map((f) => f.code)).toEqual([code]);
    expect(`${findings[0]!.says}${findings[0]!.effect ?? ''}`).toContain(says);
    expect(run.observations).toHaveLength(2);
  });

  it('has the same observations whatever its line ends, and with a byte order mark', () => {
    const plain = flowOutcome(flowBook).run.observations.map(withoutPlace);
    for (const end of ['\r\n', '\r']) {
      const text = `\uFEFF${flowBook[vtt]!.toString().replaceAll('\n', end)}`;
      const { run, placed } = flowOutcome({ ...flowBook, [vtt]: text });
      expect(placed).toEqual([]);
      expect(run.observations.map(withoutPlace)).toEqual(plain);
    }
  });

  it('lets two observers and two passes overlap', () => {
    const more = `${flowBook[vtt]!.toString()}
00:01:12.000 --> 00:01:22.000
run F-01 rpm 120 up | observer A pass joint | reach 2 side 1 wall 1 bubble 0 tube 0 view 2

00:01:13.000 --> 00:01:23.000
run F-01 rpm 120 up | observer C | reach 2 side 1 wall 1 bubble 0 tube 0 view 2
`;
    const { placed, run } = flowOutcome({ ...flowBook, [vtt]: more });
    expect(placed).toEqual([]);
    expect(run.observations).toHaveLength(6);
  });
});

describe('the captions file of a clip', () => {
  const tell = (files: typeof flowBook): string[] => flowOutcome(files).placed.map((p) => p);

  it('that is not there is told at its name, with the nearest one: captions-missing', () => {
    const { findings, run } = flowOutcome(spoilFlow(F01, 'captions: F-01.vtt', 'captions: F-01.vt'));
    expect(findings.map((f) => f.code)).toEqual(['captions-missing']);
    expect(findings[0]).toMatchObject({
      write: 'Did you mean  captions: F-01.vtt ?',
      effect: 'The clip is kept without them.',
    });
    expect([run.clips.length, run.observations.length]).toEqual([2, 2]);
  });

  it('is never looked for outside the folder of the note: media-outside', () => {
    for (const name of ['../series.md', '/etc/F-01.vtt', 'C:F-01.vtt', '..\\F-01.vtt', 'x/F-01.vtt'])
      expect(tell(spoilFlow(F01, 'captions: F-01.vtt', `captions: ${name}`))).toEqual(['media-outside F-01.md:24:15']);
  });

  it('belongs to one clip: captions-twice', () => {
    expect(tell(spoilFlow(F01, 'kept: camera shelf 2', 'kept: shelf, captions: F-01.vtt'))).toEqual([
      'captions-twice F-01.md:28:48',
    ]);
  });

  it.each([
    ['K7-A.vtt', true],
    ['k7-b.vtt', true],
    ['F-01 A+B.vtt', true],
    ['K7.vtt', false],
    ['F-01-2.vtt', false],
    ['Film.vtt', false],
  ])('called %s says who observed: captions-name-tells is %s', (name, tells) => {
    const { [vtt]: content, ...rest } = flowBook;
    const files = { ...rest, [vtt.replace('F-01.vtt', name)]: content! };
    const { findings, run } = flowOutcome(spoilFlow(F01, 'captions: F-01.vtt', `captions: ${name}`, files));
    const place = 'captions-name-tells notice hill-bowl/runs/F-01.md 24:15';
    expect(findings.map((f) => `${f.code} ${f.level} ${f.place.file} ${f.place.line}:${f.place.column}`)).toEqual(
      tells ? [place] : [],
    );
    expect(run.observations).toHaveLength(4);
  });

  it('that no clip names is worth a word: captions-not-named', () => {
    const { findings } = flowOutcome({ ...flowBook, 'hill-bowl/runs/extra.vtt': 'WEBVTT\n' });
    expect(findings.map((f) => [f.code, f.level, f.place.file])).toEqual([
      ['captions-not-named', 'notice', 'hill-bowl/runs/extra.vtt'],
    ]);
  });
});
