import {
  assumed,
  bySteps,
  code,
  grade,
  group,
  list,
  optional,
  part,
  quantity,
  required,
  step,
  text,
  timecode,
  viewGrade,
  words,
} from './fields.ts';

/** What becomes of a part of a flow trial that cannot be read; the run and its logged figures stand without it. */
export const clipLeftOut = 'This clip is left out, and with it its captions; the run stands without them.';
export const filmLeftOut = 'This clip is left out; its captions are read all the same.';
export const observationLeftOut = 'This observation is left out; the run stands without it.';
export const observationsLeftOut = 'These observations are left out; the run stands without them.';
export const stillLeftOut = 'This still is left out; the run stands without it.';
export const settleLeftOut = 'This row is left out; the run stands without it.';
export const sampleLeftOut = 'The sample is left out; the run stands without it.';
const partLeftOut = 'This part is left out; the run stands without it.';

const height = (like: string) => quantity('length', like, { hard: ['-2 m', '2 m'], soft: ['-400 mm', '400 mm'] });
const size = (like: string, most: string) => quantity('length', like, { hard: ['0 mm', '1 m'], soft: ['0 mm', most] });
const foam = size('4 mm', '200 mm');

const clip = group({
  file: required(text('F-01.webm'), 'The clip, beside the note.'),
  code: optional(code('K7'), 'What graders see instead of the run; without it the clip is not graded blind.'),
  shows: assumed(words('film', 'drawing'), 'film', 'A drawing that moves is not a film of the rig.'),
  length: optional(timecode, 'A cue that lies outside the clip is told by it.'),
  sync: optional(timecode, 'The film time at which the sync event of the log is seen ties film and logger.'),
  captions: optional(text('F-01.vtt'), 'A WebVTT file beside the note with what was seen, in times of the clip.'),
  kept: optional(text('camera shelf 2'), 'Where the clip is kept when it is not in the folder.'),
  pieces: optional(
    list(
      group({
        clip: required(timecode, 'Where the piece begins in the clip.'),
        film: required(timecode, 'Where the same picture stands in the film it was cut from.'),
      }),
      1,
    ),
    'A clip that was cut has lost time, and each piece its own.',
  ),
});

const seen = group({
  at: optional(timecode, 'Where in the clip the window of the grade begins.'),
  reach: required(grade, 'Oil carried over to the pinion pocket, 0 to 4.'),
  side: required(grade, 'Oil that leaves the gear at its sides, 0 to 4.'),
  wall: required(grade, 'Oil that strikes the wall or the roof, 0 to 4.'),
  bubble: required(grade, 'Air in the oil, by the grid behind it, 0 to 4.'),
  tube: required(grade, 'Oil past the lip of the axle tube, 0 to 4.'),
  view: required(viewGrade, 'How much could be seen, 0 to 3; with 0 or 1 nothing is graded.'),
  level: optional(height('-57 mm'), 'The running level on the window rule.'),
  swing: optional(size('3 mm', '100 mm'), 'How far the level swings to either side.'),
  foam: optional(foam, 'Height of the foam.'),
  detach: optional(
    quantity('angle', '300 °', { hard: ['0 °', '360 °'] }),
    'Where the sheet leaves the rim, clockwise from the top.',
  ),
  words: optional(text('"single drops at the pocket"'), 'What was seen, without its cause and without a verdict.'),
});

const observations = group({
  observer: required(text('A'), 'Agreement is counted between observers.'),
  pass: assumed(words('first', 'joint'), 'first', 'First grades are kept when two observers look again together.'),
  blind: optional(list(words('article', 'fill', 'oil'), 1), 'What was hidden from the observer; nothing unless said.'),
  clip: optional(text('F-01.webm'), 'The clip that was graded; none when the observer sat at the rig.'),
  for: assumed(quantity('time', '10 s', { hard: ['1 s', '1 h'] }), '10 s', 'How long was looked at each step.'),
  steps: required(bySteps(part(observationLeftOut, seen)), 'What was seen, step by step.'),
});

const still = group({
  file: required(text('F-01-290.png'), 'The picture, in the folder pictures of the series.'),
  step: required(step, 'Pictures are compared at one step.'),
  clip: optional(text('F-01.webm'), 'The clip it was taken from.'),
  at: optional(timecode, 'Where in the clip it was taken.'),
  rule: required(
    words('offset', 'event', 'chosen'),
    'A picture taken by a rule can be compared; a chosen one is labelled so.',
  ),
  offset: optional(
    quantity('time', '5 s', { hard: ['0 s', '24 h'] }),
    'With rule offset: how long after the hold begins.',
  ),
  event: optional(text('"first mist"'), 'With rule event: what happened.'),
  shows: assumed(words('photograph', 'drawing'), 'photograph', 'A drawing is not what the camera saw.'),
  alters: optional(list(words('crop', 'scale', 'annotation'), 1), 'What was done to the picture; nothing unless said.'),
  caption: required(text('"Closed sheet, narrower than half the face."'), 'It stands under the picture.'),
  alt: required(
    text('"P0w at 290 rpm, way up: a closed sheet over the gear, narrower than half its face"'),
    'An alt text stands for the picture where it cannot be seen: it names the article, the step and what is visible.',
  ),
  rights: optional(text('CC-BY-4.0'), 'The licence of the picture, where it has its own.'),
});

const settle = group({
  after: required(quantity('time', '30 s', { hard: ['0 s', '100 h'] }), 'Counted from the standstill of the gear.'),
  level: optional(height('-69 mm'), 'The level on the window rule.'),
  bubble: optional(grade, 'Air still in the oil, 0 to 4.'),
  foam: optional(foam, 'Height of the foam.'),
});

const airSample = group({
  mass: required(quantity('mass', '78.0 g', { hard: ['0.1 g', '100 kg'] }), 'What the sample weighs.'),
  volume: required(quantity('volume', '100 mL', { hard: ['1 mL', '100 L'] }), 'How much room oil and air took.'),
  temperature: required(
    quantity('temperature', '58 °C', { hard: ['-60 °C', '300 °C'] }),
    'Oil without air has its density at this temperature.',
  ),
  step: required(step, 'The step at which it was drawn.'),
});

/** What a run note says of a flow trial. */
export const flowFields = {
  clips: optional(part(partLeftOut, list(part(clipLeftOut, clip))), 'Films of the run, and how their time is tied.'),
  observations: optional(
    part(partLeftOut, list(part(observationsLeftOut, observations))),
    'What was seen behind the window, by whom.',
  ),
  settle: optional(part(partLeftOut, list(part(settleLeftOut, settle))), 'What was read after the stop.'),
  'air-sample': optional(part(sampleLeftOut, airSample), 'Oil and air drawn off and weighed within seconds.'),
  stills: optional(part(partLeftOut, list(part(stillLeftOut, still))), 'Pictures of the run.'),
} as const;
