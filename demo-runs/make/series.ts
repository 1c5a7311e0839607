import { articleTexts } from './articles.ts';
import { claimsText } from './claims.ts';
import { instruments, instrumentText } from './instruments.ts';
import { laterCampaign } from './later.ts';
import { mapTexts } from './maps.ts';
import { orderSeed, tableCells } from './order.ts';

/** Every note of the series that is not a run. */
export const seriesTexts = (made: {
  seed: number;
  draws: number;
  select: boolean;
  quiet: boolean;
}): [string, string][] =>
  [
    ['series.md', series(made)] as const,
    ['rig.md', rig()] as const,
    ['plan.md', plan()] as const,
    ['claims.md', claimsText] as const,
    ...articleTexts(made),
  ].map(([path, text]) => [`hill-bowl/${path}`, text]);

const series = (made: { seed: number; draws: number; select: boolean }): string => `---
format: 1
id: hill-bowl
title: The Hill Bowl Series
summary: Five bowls and inserts for the rear axle of a battery-driven hill minibus, compared for oil flow, spin loss, heat and supply of the pinion bearing, at the same litres and at the same level.
question: Does the shape of the bowl change what the axle loses and how hot it runs, or is it only the oil that goes in with it?
started: 2026-03-02
licence: CC-BY-4.0
conflicts: none declared
baseline: { article: P0, fill: 2.40 L, oil: O1 }
reference: { wheel-speed: 290 rpm, sump: [40 °C, 60 °C, 80 °C], main-sump: 60 °C, main-limit: 95 °C, airflow: 4.0 m/s, ambient: 21 °C }
tolerance: { ambient: 4 K, airflow: 0.3 m/s, level: 3 mm, fill: 0.05 L, speed: 1 %, tilt: 0.5 % }
coverage: 95 %
family: 5 %
margins: { declared: 2026-03-01, spin-power: 12 W, final-rise: 2 K, bearing-rise: 2 K }
repeat-rule: { refit-torque: 0.035 N·m }
agreement: { within-one: 90 %, kappa: 0.6 }
campaigns:
  - { id: ${laterCampaign.id}, from: ${laterCampaign.from}, why: "${laterCampaign.why}" }
duty:
  drive: electric
  drive-efficiency: 86 %
  consumption: 62 kWh/100 km
  trip-scatter: 4 %
  mix: [{ share: 30 %, speed: 15 km/h }, { share: 50 %, speed: 30 km/h }, { share: 20 %, speed: 45 km/h }]
not-tested:
  - "wear and life: no run is long enough"
  - "cold starts: the bench cannot be cooled"
  - "towing, and roads of any kind"
  - "a second sample of any article"
shown-to: public
---
The town of Osmerfell runs six converted minibuses between the station and the upper quarter, all day, with 22 kW at the wheels on the long climb. Their operator, the Osmerfell Hill Shuttle, asked whether one of the roomier bowls on offer would save current or only cost oil. The axle is a plain hypoid beam axle with a bolted bowl.

Three things go with every bowl and are easily taken for it: the litres that go in, the level they stand at, and the fan. So each bowl is run at the same litres as the standard one and, where that puts the oil somewhere else, at the same level too.

Wear is not looked at here. Nor is anything that happens below 20 °C, apart from what the oil sheet gives.

All of it is invented: town, lab, parts and readings. The runs were drawn by a seeded maker, seed ${made.seed}${
  made.select
    ? `; the effects of refitting and of the fan were drawn ${made.draws} ${made.draws === 1 ? 'time' : 'times'}, until the eight planted claims came out as the story tells them`
    : ', with nothing chosen'
}.
`;

const rig = (): string => `---
id: Q-1
name: Quillstone rear-axle bench
kind: axle_bench
gear-kind: hypoid
teeth: { pinion: 9, ring: 41 }
ring: { diameter: 248 mm, face: 38 mm, tooth-height: 11.6 mm }
offset: -32 mm
rejecting-area: 0.90 m²
rolling-radius: 0.338 m
pinion-front: { ahead: 190 mm, below: 32 mm, race-radius: 45 mm }
bearings:
  - { at: pinion, bore: 45 mm, outside: 90 mm, turning-torque: 0.4 N·m }
  - { at: pinion, bore: 40 mm, outside: 80 mm, turning-torque: 0.4 N·m }
  - { at: ring, bore: 50 mm, outside: 90 mm }
  - { at: ring, bore: 50 mm, outside: 90 mm }
  - { at: wheel, bore: 50 mm, outside: 90 mm }
  - { at: wheel, bore: 50 mm, outside: 90 mm }
seals:
  - { at: pinion, shaft: 50 mm }
  - { at: wheel, shaft: 55 mm }
  - { at: wheel, shaft: 55 mm }
heights: { tube-lip: -38 mm, filler-lip: -52 mm, floor: -132 mm }
differential: open_two_outputs
boundary: [input flange, pinion shaft, axle, hub bearings, hub flanges]
drive: induction motor with two input flanges that change places, one for spin trials and one for loaded trials
absorbers: two hub-coupled absorbers, held to equal speed
airflow-device: axial fan in a duct, air speed read at 3 points of the mouth
window: { used-on: [P0w, P1w, P2w, P4w], material: polycarbonate, max-sump: 60 °C }
states:
  - id: Q1-a
    from: 2026-03-01
    gearset-hours: 140 h
    preload-touched: false
    break-in:
      settled-within: 0.2 %
      loads:
        - { power: 11 kW, start: 93.9 %, middle: 94.8 %, end: 94.9 % }
        - { power: 22 kW, start: 94.6 %, middle: 95.5 %, end: 95.6 % }
    note: "run in during the autumn; preload last set at 22 h"
  - { id: ${laterCampaign.rigState}, from: ${laterCampaign.from}, gearset-hours: 212 h, preload-touched: true, note: "gears out and in again in the winter, preload set anew, then run in for 60 h" }
instruments:
${instrumentText(instruments)}
maps:
${mapTexts()}
shown-to: public
---
A bench cradle that tilts 12 % either way, with pins at each stop. The input motor drives the pinion through one of two torque flanges; the low one comes off before a loaded trial and its place is taken by a spacer of the same length. Brakes are off, hub bearings are in, and both outputs are held to equal speed so that the differential does not turn in itself.

The hub flanges have carried a constant zero since they were mounted, 1.8 N·m on the left and −0.9 N·m on the right. It has been the same at every calibration and is taken off every reading.

Lamps for the window bowls are 12 V, sealed, and stand outside. A second clear screen hangs between camera and window.
`;

const plan = (): string => `---
factors: [article, fill, oil, tilt]
repeat: refit
order: random
seed: ${orderSeed}
baseline-rerun: "at start, middle and end, and between"
steps: [60 rpm, 120 rpm, 200 rpm, 290 rpm, 390 rpm, 520 rpm]
hold: 120 s
steady: { window: 60 s, slope: 0.5 K/min }
temperatures: [40 °C, 60 °C, 80 °C]
limits: [80 °C, 90 °C, 95 °C]
sustained: 20 s
max-time: 150 min
load: { wheel-speed: 290 rpm, power-out: 22 kW }
cells:
${planCells()}
shown-to: public
---
One block is one refit: drain, weigh, refit, weigh in, wait 20 minutes, read the level left and right. A repeat without taking the bowl off is not counted as one.

Spin trials hold the sump at 40, 60 and 80 °C with a heater mat outside and go up through the six wheel speeds at each. Loaded trials start cold, first thing in the morning, and run for 150 minutes at 290 rpm and 22 kW with the fan at 4.0 m/s; four of them are followed by 90 minutes of cooling with the gears still. Window trials go up and down the steps without load, below the limit of the plastic, and end with ten minutes of settling.

The order was shuffled within three rounds of ten cells, the baseline coming back after every sixth.
`;

function planCells(): string {
  const row = (trial: string, article: string, oil: string, fill_L: number, wanted: number, tilt = 0): string =>
    `  - { trial: ${trial}, article: ${article}, oil: ${oil}, fill: ${fill_L.toFixed(2)} L, ${tilt ? `tilt: ${tilt} %, ` : ''}wanted: ${wanted} }`;
  const first = tableCells[0]!;
  return [
    ...tableCells.map((c) => row('spin', c.article, c.oil, c.fill_L, c === first ? 6 : 3)),
    ...tableCells.map((c) => row('heat-up', c.article, c.oil, c.fill_L, c === first ? 2 : 1)),
    ...['P0', 'P3', 'P4'].map((a) => row('cool-down', a, 'O1', 2.4, 1)),
    row('cool-down', 'P1', 'O1', 3.59, 1),
    ...['P0w', 'P1w', 'P2w', 'P4w'].map((a) => row('flow', a, 'O1', 2.4, 1)),
    row('flow', 'P0w', 'O1', 3.2, 1),
    row('flow', 'P1w', 'O1', 3.59, 1),
    ...['P0w', 'P2w', 'P4w'].map((a) => row('flow', a, 'O1', 2.4, 1, 12)),
    ...['P0', 'P4'].map((a) => row('heat-up', a, 'O1', 2.4, 1, 12)),
  ].join('\n');
}
