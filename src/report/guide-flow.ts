import { gradeKinds } from '../trial/flow.ts';
import { scales } from '../trial/grade-anchors.ts';
import type { Section } from './page.ts';
import { code, fold, listOf, prose, row, section, strong, tableBlock } from './spans.ts';

/** A flow trial as the guide shows it: a note, and a captions file beside it. Both are read by a test as they stand. */
export const flowNote = {
  file: 'pan-depth/runs/F-01.md',
  yaml: `id: F-01
trial: flow
status: accepted
article: A1
oil: L1
rig-state: M1-a
refit: 1
order: 1
started: 2026-05-05T09:00:00+02:00
ended: 2026-05-05T09:30:00+02:00
operators: [K, R]
released-by: K
released-on: 2026-05-05T08:55:00+02:00
fill: { basis: volume, mass-in: 1607 g, temperature: 20.5 °C, level-left: -70 mm, level-right: -70 mm }
ambient: { place: "shielded, 1 m upstream", start: 20.4 °C, end: 21.0 °C }
airflow: 0 m/s
log: { file: F-01.csv, map: film }
clips:
  - file: F-01.mp4
    code: K7                 # what graders see instead of the run
    sync: 00:00:12.000       # where the film shows the lamp flash; the log has the event "sync" in that row
    captions: F-01.vtt       # what was seen, beside the note
    kept: camera shelf 2     # a film need not lie in the folder
observations:                # or written here, a block an observer
  - observer: R
    blind: [fill, oil]       # what was hidden from R
    clip: F-01.mp4
    steps:
      100 rpm up:   { at: 00:01:12.000, reach: 1, side: 1, wall: 0, bubble: 0, tube: 0, view: 3, words: "single drops at the pocket" }
      200 rpm up:   { at: 00:03:12.000, reach: 2, side: 2, wall: 1, bubble: 1, tube: 0, view: 3 }
      200 rpm down: { at: 00:09:12.000, reach: ng, side: ng, wall: ng, bubble: ng, tube: ng, view: 1, words: "milky, lamp not to be made out" }
settle:                      # read after the stop, from the gear's standstill
  - { after: 0 s, bubble: 2, foam: 3 mm }
  - { after: 60 s, bubble: 1, foam: 0 mm }
stills:
  - file: F-01-200.png       # in pan-depth/pictures/
    step: 200 rpm up
    clip: F-01.mp4
    at: 00:03:17.000
    rule: offset             # offset, event or chosen; chosen is labelled on the page
    offset: 5 s
    caption: "Broken sheet to the pocket."
    alt: "A1 at 200 rpm, way up: a broken sheet reaches the pinion pocket; the wall is wet and throws nothing back."`,
};

export const flowCaptions = {
  file: 'pan-depth/runs/F-01.vtt',
  text: `WEBVTT

00:01:12.000 --> 00:01:22.000
run F-01 step 1 rpm 100 up | observer K blind fill oil | reach 1 side 1 wall 0 bubble 0 tube 0 view 3 | level -73 swing 2

00:03:12.000 --> 00:03:22.000
run F-01 step 2 rpm 200 up | observer K blind fill oil | reach 3 side 2 wall 1 bubble 1 tube 0 view 3 | words: closed sheet, narrow

00:03:12.000 --> 00:03:22.000
run F-01 step 2 rpm 200 up | observer K+R pass joint | reach 2 side 2 wall 1 bubble 1 tube 0 view 3
`,
};

/** How a flow trial is filmed, graded and written down. */
export const flowGuide = (): Section =>
  section(
    'flow-trial',
    'A flow trial',
    [
      prose(
        'The gears are watched through a window while they turn at stepped speeds without load, up and then down again. What is seen is graded by people, so that it can be compared; the level is logged.',
      ),
      listOf([
        [
          strong('Film it whole.'),
          ' Camera fixed, shutter short, exposure locked, lamps outside. Hold each step of the plan for a minute or longer after the level has come to rest, then go down through the same speeds.',
        ],
        [
          strong('Tie the clocks.'),
          ' Flash a lamp once that the camera sees, and have the logger write ',
          code('sync'),
          ' in its event column in the same moment. Under the clip, ',
          code('sync:'),
          ' is the time on the film at which the flash is seen. Everything else follows: a camera that ran some seconds ahead is found out, and cues, chapters and the mark on the traces are moved by it.',
        ],
        [
          strong('Cut it if you like.'),
          ' Under ',
          code('pieces:'),
          ' write where each piece begins in the clip and on the film.',
        ],
        [
          strong('Grade it twice.'),
          ' Two people, each alone, each of the same clips, by code. The page Grading plays coded clips and takes grades by key; it opens from the disk. Where they differ they look again together, as a ',
          code('joint'),
          ' pass; first grades are kept.',
        ],
        [
          strong('Look at ten seconds'),
          ' after the hold begins, and grade what is there by the scale below. What cannot be seen is ',
          code('ng'),
          ', never 0. With View 0 or 1 everything is ng.',
        ],
        [
          strong('Describe, and no more.'),
          ' Words say what was there: no cause, no verdict, nothing that it looks like.',
        ],
        [
          strong('Take stills by rule'),
          ', at one time into the hold in every run. One that was chosen by hand may be shown, and says so.',
        ],
        [
          strong('Keep reading after the stop.'),
          ' Level, bubbles and foam at 0, 10, 30, 60, 120, 300 and 600 seconds from the standstill of the gear.',
        ],
      ]),
      prose(code(flowNote.file), ', its clip, its log and its captions beside it:'),
      { kind: 'code', language: 'yaml', text: flowNote.yaml },
      prose(
        code(flowCaptions.file),
        ' is WebVTT, as players of films read it; its times are those of the clip. What the note holds under ',
        code('observations:'),
        ' and what stands here are the same thing written two ways, and may be mixed.',
      ),
      { kind: 'code', language: 'text', text: flowCaptions.text },
      fold(
        'The scale',
        tableBlock(
          'guide-scale',
          ['number grade', ...gradeKinds.map((kind) => `wide ${scales[kind].name}: ${scales[kind].of}`)],
          ([0, 1, 2, 3, 4] as const).map((grade) =>
            row(String(grade), ...gradeKinds.map((kind) => scales[kind].anchors[grade])),
          ),
        ),
      ),
    ],
    [
      {
        name: 'When grades may be used.',
        text: [
          code('series.md'),
          ' holds the rule: ',
          code('agreement: { within-one: 90 %, kappa: 0.6 }'),
          ' unless it says otherwise. A kind of grade that fails it is labelled so wherever it stands.',
        ],
      },
      {
        name: 'What it cannot say.',
        text: ['It is unloaded, mostly cold, and behind a window. It is no word on wear, and none on a loaded axle.'],
      },
    ],
  );
