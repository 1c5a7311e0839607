import { gradeKinds } from '../../src/trial/flow.ts';
import { scales, viewAnchors } from '../../src/trial/grade-anchors.ts';
import type { Block, ClipView, Page, StillView } from '../../src/report/page.ts';
import { chart, film, framedSection, settle } from './sample-charts.ts';
import { article, link, note, page, part, prose, root, table } from './sample-parts.ts';

/** Sample sheets of the flow trial: what happens behind a window, with clips, stills and grades. */

const steps = ['60 rpm up', '120 rpm up', '200 rpm up', '290 rpm up', '390 rpm up', '520 rpm up'].map((name, i) => ({
  name,
  from_s: 8 + 20 * i,
  to_s: 26 + 20 * i,
}));

const clip = (run: string, id: string, traces: string | null): ClipView => ({
  id,
  source: `hill-bowl/runs/${run}.webm`,
  address: `${root}clips/${run}.webm`,
  captions: `${root}clips/${run}.vtt`,
  title: `Clip of ${run}, a drawing that moves: </script><!-- "quoted" & 'so on'`,
  drawing: true,
  cues: steps.map(({ from_s, name }) => ({
    from_s,
    to_s: from_s + 10,
    text: `Observer A: Reach 3 at ${name}. </script>`,
  })),
  steps,
  pieces: [{ clip_s: 0, to_clip_s: 130, offset_s: 4.6 }],
  traces,
});

const still = (name: string, prefix = '', more: Partial<StillView> = {}): StillView => ({
  id: `${prefix}still-${name}`,
  source: `hill-bowl/pictures/${name}.png`,
  address: `${root}stills/${name}`,
  alternative: `${name}: a closed sheet climbs the gear and leaves it at the upper right.`,
  caption: [
    { kind: 'strong', text: '290 rpm, way up.' },
    ' Closed sheet, narrower than half the face. 5 s into the hold.',
  ],
  drawing: true,
  ...more,
});
const broken = still('F-01-cut', '', { source: 'hill-bowl/pictures/F-01-cut.jpg' });

/** Captions and chapters of the sample clips, as the outlets write them. */
export const flowTexts = ['F-01', 'F-02'].flatMap((run) => [
  {
    path: `${root}clips/${run}.vtt`,
    text: `WEBVTT\n\n00:00:08.000 --> 00:00:18.000\nrun ${run} rpm 60 up | observer A\n`,
  },
  { path: `${root}clips/${run}.chapters.txt`, text: '00:00 At rest\n00:08 60 rpm, up\n' },
]);

const grades = (id: string): Block => ({
  kind: 'table',
  table: table(
    id,
    ['seen', '#P0w, F-01', '#P4w, F-02', 'difference'],
    gradeKinds.map((kind, i) => [
      [scales[kind].name],
      [String(i)],
      [i === 3 ? 'ng' : String(4 - i)],
      [i === 3 ? 'not gradable' : 'equal'],
    ]),
  ),
});

const runPage = page('run', `${root}runs/F-01/`, 'P0w, 2.40 L of O1: oil reaches the pinion from 60 rpm on', {
  lead: ['Single drops at 60 rpm, a closed sheet from 200 on; it foams at 390 and clears in two minutes.'],
  sections: [
    part(
      'picture',
      null,
      [
        { kind: 'clip', clip: clip('F-01', 'clip', 'picture-film') },
        {
          kind: 'chart',
          chart: chart('film', 'Level, sump and speed while the film ran', film, ['Tinted: the holds.']),
        },
        { kind: 'clip', clip: { ...clip('F-09', 'away', null), title: 'Kept on the camera shelf.' } },
      ],
      [note('Before power', 'Guards on.'), note('Camera clock', 'The camera is 7.4 s ahead of the logger.')],
    ),
    part('stills', 'Stills', [
      { kind: 'stills', items: [still('F-01-60'), still('F-01-290'), broken] },
      { kind: 'fold', summary: 'One more', blocks: [{ kind: 'stills', items: [still('F-01-290', 'more-')] }] },
    ]),
    part('settle', 'After the stop', [{ kind: 'chart', chart: chart('settle', 'Level after the stop', settle) }]),
  ],
});

const stepPart = (rpm: number, frame: Block) =>
  part(
    `${rpm}rpm`,
    `${rpm} wheel rpm, way up`,
    [
      {
        kind: 'pair',
        id: `${rpm}rpm-pair`,
        sides: [
          {
            title: [...article(0, 'P0w', ', 2.40 L')],
            blocks: [{ kind: 'stills', items: [still('F-01-290', `${rpm}-`)] }, frame],
          },
          {
            title: [...article(4, 'P4w', ', 2.40 L')],
            blocks: [{ kind: 'stills', items: [still('F-02-290', `${rpm}-`)] }],
          },
        ],
      },
      grades(`grades-${rpm}`),
    ],
    rpm === 290 ? [note('Not the same moment', 'The two stills were not taken by one rule.')] : [],
  );

const pairPage = page('side-by-side', `${root}side-by-side/F-01~F-02/`, 'P0w and P4w, side by side', {
  lead: ['Same litres: 2.40 L of O1 in both. The shroud takes Reach from 3 to 2 at 290 rpm.'],
  sections: [
    part(
      'both',
      null,
      [{ kind: 'two-clips', id: 'clips', clips: [clip('F-01', 'left', null), clip('F-02', 'right', null)] }],
      [
        note(
          'Same litres',
          'The same litres may stand at another level here, and the level moves what the gear carries.',
        ),
        note('Read with care', 'Both without load, behind windows.'),
        note('The two runs', link(`${root}runs/F-01/`, 'F-01'), ' and F-02.'),
      ],
    ),
    ...[60, 120, 200, 290, 390, 520].map((rpm) =>
      stepPart(rpm, { kind: 'chart', chart: chart(`section-${rpm}`, 'Section with the running level', framedSection) }),
    ),
  ],
});

const gradesPage = page('grades', `${root}grades/`, 'Observers agree well enough on Reach, and not on Wall hit', {
  sections: gradeKinds.map((kind) =>
    part(
      kind,
      scales[kind].name,
      [
        {
          kind: 'table',
          table: table(
            `grid-${kind}`,
            ['article and fill', ...[60, 120, 200, 290, 390, 520].map((rpm) => `#${rpm} up`)],
            [
              [[...article(0, 'P0w', ', 2.40 L')], ...[1, 2, 3, 3, 3, 4].map((g) => [`${g}`])],
              [[...article(4, 'P4w', ', 2.40 L')], ...[0, 1, 1, 2, 2, 'ng'].map((g) => [`${g}`])],
            ],
          ),
        },
      ],
      [note('How sure', 'Kappa 0.81 over 96 pairs.')],
    ),
  ),
});

const gradingPage = page('grading', `${root}grading/`, 'Grade the clips', {
  lead: ['Two people grade the same clips, each alone.'],
  sections: [
    part(
      'grade',
      null,
      [
        {
          kind: 'grading',
          grading: {
            clips: ['F-01', 'F-09'].map((code) => ({ code, address: `${root}clips/${code}.webm`, steps })),
            scales: gradeKinds.map((key) => ({
              key,
              name: scales[key].name,
              of: scales[key].of,
              anchors: Object.values(scales[key].anchors),
            })),
            views: Object.values(viewAnchors),
          },
        },
      ],
      [note('Ten seconds', 'Look at the ten seconds after the hold begins.')],
    ),
    part('how', 'How two people grade', [prose('Each opens this page alone.')]),
  ],
});

export const flowPages: readonly Page[] = [runPage, pairPage, gradesPage, gradingPage];
