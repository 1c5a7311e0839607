import { mineralOil, pressedBowl } from './articles.ts';
import { drawRun, type Making } from './draws.ts';
import { drawCalibration, type Instrument, instruments, instrumentText } from './instruments.ts';
import { hillGear } from './law.ts';
import { mapTexts } from './maps.ts';
import { noteText } from './note.ts';
import type { RunPlan } from './order.ts';
import { digitsOf } from './readings.ts';
import { still, stream } from './random.ts';
import { logText } from './recording.ts';
import { makeRun } from './run.ts';
import type { SpinSteps } from './timeline.ts';
import { spread } from './truth.ts';
import { olderWords } from './words-older.ts';

const folder = 'where-the-oil-stands';
const firstDay = '2024-09-09';
const steps: SpinSteps = {
  ...{ lead_s: 60, hold_s: 90, warm_s: 300, even_s: 60, idle_rpm: 200 },
  steps_rpm: [60, 120, 200, 290],
  temps_C: [40, 60],
};
const length_s = 1212;

/** Fill and start of the eight runs: the baseline first, between and last, the other fills twice. */
const fills: readonly [number, number, string][] = [
  [2.4, 0, '09:20'],
  [2.0, 0, '11:05'],
  [2.8, 1, '09:35'],
  [2.4, 1, '11:20'],
  [2.8, 2, '09:15'],
  [2.0, 2, '10:50'],
  [2.4, 3, '09:40'],
  [2.4, 3, '11:25'],
];

/** The lab's small series of 2024, on the older gears: same bowl, same oil, three fills. */
export function olderSeries({ seed, quiet }: { seed: number; quiet: boolean }): ReadonlyMap<string, string> {
  const calibration = drawCalibration(olderInstruments, quiet ? still : stream(seed, 0, 2));
  const making: Making = {
    ...{ seed: seed + 100_000, quiet, calibration, spin: steps },
    gear: { ...hillGear, constant_Nm: 0.62 },
  };
  const files = new Map<string, string>();
  const put = (path: string, text: string): unknown => files.set(`${folder}/${path}`, text);
  put('series.md', series);
  put('rig.md', rig);
  put('plan.md', plan);
  for (const [path, text] of [pressedBowl(), mineralOil('2024-08-30', 'B-0247')]) put(path, text);
  const made = plans().map((p) => makeRun(p, drawRun(p, making, 1), making, null));
  for (const run of made) {
    put(`runs/${run.plan.id}.md`, noteText(run, { rigState: 'Q0-c', firstDay, words: olderWords, quiet }));
    put(`runs/${run.plan.id}.csv`, logText(run.recording, digitsOf('low', quiet)));
  }
  put('truth.json', spread({ invented: true, seed, quiet, calibration, faults: [] }, made));
  return files;
}

const plans = (): readonly RunPlan[] =>
  fills.map(([fill_L, day, clock], i) => {
    const [hours, minutes] = clock.split(':').map(Number) as [number, number];
    return {
      ...{ id: `W-${i + 1}`, trial: 'spin', article: 'P0', oil: 'O1', fill_L, tilt_pct: 0 },
      ...{ order: i + 1, refit: i + 1, start_s: day * 86_400 + hours * 3600 + minutes * 60, length_s, fromRun: null },
    };
  });

const olderInstruments: readonly Instrument[] = instruments
  .filter(({ id }) => !['torque-high', 'level-eye'].includes(id))
  .map(({ checked, ...i }) => ({
    ...i,
    ...(i.more ? { more: i.more.map((line) => line.replace(/, P1.*}/, ' }')) } : {}),
    ...(checked ? { checked: '2024-09-06' } : {}),
    ...{ calibrated: '2024-06-10', due: '2025-06-10', certificate: i.certificate.replace('Q-22', 'Q-17') },
  }));

const series = `---
format: 1
id: ${folder}
title: Where the Oil Stands
summary: One bowl, one oil, three fills, on the gears the bench had in 2024.
question: How much of the spin loss comes with the level?
started: ${firstDay}
conflicts: none declared
baseline: { article: P0, fill: 2.40 L, oil: O1 }
reference: { wheel-speed: 290 rpm, sump: [40 °C, 60 °C], main-sump: 60 °C }
shown-to: public
---
A short series made while the cradle was new: the pressed bowl at 2.00, 2.40 and 2.80 L. It was meant to show whether a decilitre either way matters before anybody argues about bowls.

The gears were an older set, changed in the winter of 2025. Nothing here may be put in one row with a later run before the baseline has been run again.
`;

const rig = `---
id: Q-0
name: Quillstone rear-axle bench, older gears
kind: axle_bench
gear-kind: hypoid
teeth: { pinion: 9, ring: 41 }
ring: { diameter: 248 mm, face: 38 mm }
offset: -32 mm
rolling-radius: 0.338 m
pinion-front: { ahead: 190 mm, below: 32 mm, race-radius: 45 mm }
heights: { tube-lip: -38 mm, filler-lip: -52 mm, floor: -132 mm }
differential: open_two_outputs
boundary: [input flange, pinion shaft, axle, hub bearings, hub flanges]
drive: induction motor through the low torque flange
absorbers: two hub-coupled absorbers, held to equal speed
states:
  - { id: Q0-c, from: 2024-09-02, gearset-hours: 610 h, preload-touched: true, note: "pinion preload set again after a bearing change" }
instruments:
${instrumentText(olderInstruments)}
maps:
${mapTexts(['bench-low'])}
shown-to: public
---
The same cradle and axle housing as today, with the gearset it had until 2025. Preload was set again a week before the first run, after the front pinion bearing had been changed.
`;

const plan = `---
factors: [fill]
repeat: refit
order: fixed
baseline-rerun: "first, between and last"
steps: [60 rpm, 120 rpm, 200 rpm, 290 rpm]
hold: 90 s
steady: { window: 60 s, slope: 0.5 K/min }
temperatures: [40 °C, 60 °C]
limits: [80 °C, 90 °C, 95 °C]
sustained: 20 s
max-time: 150 min
cells:
  - { trial: spin, article: P0, oil: O1, fill: 2.00 L, wanted: 2 }
  - { trial: spin, article: P0, oil: O1, fill: 2.40 L, wanted: 4 }
  - { trial: spin, article: P0, oil: O1, fill: 2.80 L, wanted: 2 }
shown-to: public
---
Two refits at each of the outer fills, four at the middle one, on four mornings.
`;
