import type { Reading } from '../finding/finding.ts';
import type { Exclusion, Fill, Run, Zero } from '../trial/run.ts';
import {
  assumed,
  code,
  group,
  headFields,
  instant,
  list,
  named,
  optional,
  quantity,
  recommended,
  required,
  shaped,
  text,
  type ValuesOf,
  whole,
  words,
} from './fields.ts';
import { flowFields } from './flow-fields.ts';
import { toFlow } from './flow.ts';
import type { Note } from './note.ts';
import { fillVolume, tilt, trialWords } from './plan.ts';
import type { Into } from './read-value.ts';
import { readRecord, tellAt } from './record.ts';
import * as say from './texts-check.ts';
import { channelKinds } from '../trial/rig.ts';

const ruler = quantity('length', '-52 mm', { hard: ['-2 m', '2 m'], soft: ['-400 mm', '400 mm'] });
const roomTemperature = quantity('temperature', '20.8 °C', { hard: ['-60 °C', '80 °C'], soft: ['-30 °C', '45 °C'] });
const torqueZero = quantity('torque', '0.02 N·m', { hard: ['-1000 N·m', '1000 N·m'] });
const intoTheRun = quantity('time', '1810 s', { hard: ['0 s', '1000 h'] });

const fillKind = group(
  {
    basis: required(words('volume', 'level', 'plug'), 'Same litres and same level are two comparisons.'),
    'mass-in': optional(
      quantity('mass', '2152 g', { hard: ['1 g', '200 kg'], soft: ['0.3 kg', '40 kg'] }),
      'Grams poured in give the litres at 20 °C.',
    ),
    volume: optional(fillVolume, 'Litres as poured, where they were not weighed.'),
    temperature: required(roomTemperature, 'Oil poured cold is more oil.'),
    wait: recommended(
      quantity('time', '20 min', { hard: ['0 s', '100 h'] }),
      'A level is read after the oil has run down.',
    ),
    'level-left': recommended(ruler, 'The level that was read checks the litres.'),
    'level-right': recommended(ruler, 'Two readings show an axle that does not stand level.'),
  },
  [['mass-in', 'volume']],
);

const exclusion = group({
  from: required(intoTheRun, 'Where the part left out begins.'),
  to: required(intoTheRun, 'Where it ends.'),
  channels: optional(list(words(...channelKinds), 1), 'The channels left out; all of them unless said.'),
  reason: required(text('connector touched'), 'Leaving out without a reason is choosing a result.'),
  by: required(text('A'), 'Who decided it.'),
  on: optional(shaped('2026-03-18', '^\\d{4}-\\d{2}-\\d{2}', 'a date'), 'When it was decided.'),
});

/** `<series>/runs/<id>.md` */
export const runKind = group({
  id: required(code('S-07'), 'It is the name of the file, and is never used again.'),
  trial: required(trialWords, 'It says how the run is read.'),
  status: required(
    words('accepted', 'draft', 'checked', 'set aside', 'superseded'),
    'Only what was looked at becomes a figure; what was set aside stays visible.',
  ),
  'status-reason': optional(text('belt slip'), 'A run set aside needs its reason.'),
  article: required(code('P4'), 'What was fitted.'),
  oil: required(code('O1'), 'What was in it.'),
  'rig-state': required(code('Q1-a'), 'How the rig stood.'),
  refit: required(whole('2', [1, 1000]), 'Only refits are repeats.'),
  order: required(whole('19', [1, 100000]), 'Drift is counted along the order of the runs.'),
  started: required(instant, 'The clock of the run.'),
  ended: optional(instant, 'Zeros drift between start and end.'),
  operators: required(list(text('A'), 1), 'Who stood at the bench.'),
  'released-by': optional(text('A'), 'Who released the set-up to run.'),
  'released-on': optional(instant, 'When it was released to run.'),
  fill: required(fillKind, 'Loss follows the fill.'),
  ambient: required(
    group({
      place: required(text('"shielded, 1 m upstream"'), 'Where the room was measured.'),
      start: required(roomTemperature, 'The room at the start.'),
      end: required(roomTemperature, 'The room at the end.'),
    }),
    'A rise is counted from the room.',
  ),
  airflow: required(
    quantity('speed', '4.0 m/s', { hard: ['0 m/s', '100 m/s'], soft: ['0 m/s', '30 m/s'] }),
    'Moving air carries heat away; write 0 m/s for still air.',
  ),
  tilt: assumed(tilt, '0 %', 'Rise over run, nose up positive.'),
  rotation: assumed(
    words('forward', 'reverse'),
    'forward',
    'Turned backwards, the ring gear throws the oil the other way.',
  ),
  zeros: optional(
    named(
      'instrument',
      group({
        before: required(torqueZero, 'What the flange read at rest before the run.'),
        after: recommended(torqueZero, 'What it read at rest after the run: the drift between.'),
      }),
    ),
    'The zero of each torque flange, taken off its readings.',
  ),
  log: optional(
    group({
      file: required(text('S-07.csv'), 'The logger file, beside the note.'),
      map: required(code('bench-1'), 'Which columns of it hold what; a map of the rig sheet.'),
    }),
    'The readings of the run.',
  ),
  exclude: optional(list(exclusion), 'Parts of the readings that are left out, each with its reason.'),
  'from-run': optional(code('H-03'), 'The heat-up that a cool-down follows.'),
  'gear-state': optional(words('still', 'slow-roll'), 'Whether the gears turned while it cooled.'),
  ...flowFields,
  ...headFields,
});

type RunValues = ValuesOf<(typeof runKind)['fields']>;

export const readRun = (note: Note): Reading<Run> =>
  readRecord(runKind, note, (v, head, into): Run => {
    checkWhole(v, into);
    return {
      ...head,
      id: v.id,
      trial: v.trial,
      status: v.status,
      statusReason: v['status-reason'],
      article: v.article,
      oil: v.oil,
      rigState: v['rig-state'],
      refit: v.refit,
      order: v.order,
      started: v.started.asWritten,
      ended: (v.ended ?? v.started).asWritten,
      operators: v.operators,
      releasedBy: v['released-by'],
      releasedOn: v['released-on']?.asWritten ?? null,
      fill: toFill(v.fill),
      ambient: { place: v.ambient.place, start_K: v.ambient.start.value, end_K: v.ambient.end.value },
      airflow_m_s: v.airflow.value,
      tilt_ratio: v.tilt.value,
      rotation: v.rotation,
      zeros: [...(v.zeros ?? [])].map(([instrument, zero]) => toZero(instrument, zero)),
      log: v.log,
      exclude: (v.exclude ?? []).map(toExclusion),
      fromRun: v['from-run'],
      gearState: v['gear-state'],
      ...toFlow(v, head, into),
    };
  });

/** What holds between the fields of one run. */
function checkWhole(v: RunValues, into: Into): void {
  if (v.status !== 'draft' && !v.ended)
    tellAt(into, 'started', say.neededFor('ended', 'a run that was run', 'ended: 2026-03-17T11:52:00+01:00'));
  if (v.status !== 'draft' && !v.log)
    tellAt(into, 'status', say.neededFor('log', `a run that is ${v.status}`, 'log: { file: S-07.csv, map: bench-1 }'));
  if (v.ended && v.ended.epoch_s < v.started.epoch_s)
    tellAt(into, 'ended', say.endedBeforeStarted(v.started.asWritten));
  if (v.status === 'set aside' && v['status-reason'] === null) tellAt(into, 'status', say.setAsideReason());
  if (v.trial === 'cool-down' && v['from-run'] === null)
    tellAt(into, 'trial', say.neededFor('from-run', 'a cool-down', 'from-run: H-03'));
  if (v.trial === 'cool-down' && v['gear-state'] === null)
    tellAt(into, 'trial', say.neededFor('gear-state', 'a cool-down', 'gear-state: still'));
  if (v.fill.basis === 'level' && !v.fill['level-left'] && !v.fill['level-right'])
    tellAt(into, 'fill.basis', say.neededFor('level-left', 'a fill to a level', 'level-left: -52 mm'));
  for (const [i, e] of (v.exclude ?? []).entries())
    if (e.to.value <= e.from.value)
      tellAt(into, `exclude.${i}.to`, say.notRising('to', e.to.asWritten, e.from.asWritten));
}

const toFill = (v: RunValues['fill']): Fill => ({
  basis: v.basis,
  mass_kg: v['mass-in']?.value ?? null,
  volume_m3: v.volume?.value ?? null,
  temperature_K: v.temperature.value,
  wait_s: v.wait?.value ?? null,
  levelLeft_z_m: v['level-left']?.value ?? null,
  levelRight_z_m: v['level-right']?.value ?? null,
});

type ZeroValues = NonNullable<RunValues['zeros']> extends ReadonlyMap<string, infer Z> ? Z : never;

const toZero = (instrument: string, v: ZeroValues): Zero => ({
  instrument,
  before_Nm: v.before.value,
  after_Nm: v.after?.value ?? null,
  step_Nm: Math.max(v.before.step, v.after?.step ?? 0),
});

const toExclusion = (v: NonNullable<RunValues['exclude']>[number]): Exclusion => ({
  from_s: v.from.value,
  to_s: v.to.value,
  channels: v.channels ?? [],
  reason: v.reason,
  by: v.by,
  on: v.on,
});
