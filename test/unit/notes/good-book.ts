import { createHash } from 'node:crypto';
import type { SourceFile } from '../../../src/trial/series.ts';

/** An invented book in which nothing is wrong, as a map of path → text. */
export const goodBook: Readonly<Record<string, string>> = {
  'book.md': `---
name: The Quillstone book
lab: Quillstone Axle Room
hook: "Two bowls, the same oil, the same level: how many watts is a shape worth?"
contact: corrections@quillstone.example
licence: CC-BY-4.0
invented: true
shown-to: public
---
All of it is invented.
`,
  'hill-bowl/series.md': `---
format: 1
id: hill-bowl
title: The Hill Bowl Series
summary: Two bowls on one axle.
question: What is a deep bowl worth?
started: 2026-03-02
conflicts: none declared
baseline: { article: P0, fill: 2.40 L, oil: O1 }
reference: { wheel-speed: 290 rpm, sump: [40 °C, 60 °C, 80 °C], main-sump: 60 °C, main-limit: 95 °C, airflow: 4.0 m/s }
tolerance: { ambient: 3 K, airflow: 0.3 m/s }
coverage: 95 %
shown-to: public
---
`,
  'hill-bowl/rig.md': `---
id: Q-1
name: Quillstone rear-axle bench
kind: axle_bench
gear-kind: hypoid
teeth: { pinion: 9, ring: 41 }
ring: { diameter: 248 mm, face: 38 mm }
offset: -32 mm
rolling-radius: 0.338 m
pinion-front: { ahead: 190 mm, below: 32 mm, race-radius: 45 mm }
heights: { tube-lip: -38 mm, filler-lip: -52 mm, floor: -132 mm }
differential: open_two_outputs
boundary: [input flange, hub flanges]
drive: motor at the input
absorbers: two, at the hubs
window: { used-on: [P0w], material: polycarbonate, max-sump: 60 °C }
states:
  - { id: Q1-a, from: 2026-03-01, gearset-hours: 140 h, preload-touched: false, note: "as built" }
instruments:
  - id: torque-low
    measures: torque
    what: input flange for spin trials
    range: [0 N·m, 50 N·m]
    accuracy: "± 0.05 % of range"
    repeat: 0.015 N·m
    calibrated: 2026-01-12
    next-due: 2027-01-12
    zero-policy: before-after
  - id: enc-1
    measures: speed
    what: encoder on the input
    accuracy: "± 0.3 rpm"
    calibrated: 2026-01-12
    next-due: 2027-01-12
    zero-policy: none
  - id: tc-1
    measures: temperature
    what: sump probe
    accuracy: "± 0.3 K (k=2)"
    calibrated: 2026-01-12
    next-due: 2027-01-12
    tip: { other: -76 mm, P1: -112 mm }
    zero-policy: none
    share-group: loggerbox
maps:
  bench-low:
    delimiter: ","
    decimal: "."
    header: 1
    missing: ["", NaN]
    clock: { column: t_s, unit: s }
    columns:
      n_in:   { is: pinion-speed, unit: rpm, instrument: enc-1 }
      tq_in:  { is: torque-in, unit: N·m, instrument: torque-low, sign: 1, max-step: 5 N·m/s }
      T_sump: { is: sump, unit: °C, instrument: tc-1, plausible: [-40 °C, 200 °C], max-step: 2 K/s, stuck: 120 s }
      evt:    { is: event }
---
The bench as it stood.
`,
  'hill-bowl/plan.md': `---
factors: [article, fill]
repeat: refit
order: random
seed: 20260302
baseline-rerun: at start, middle and end
steps: [60 rpm, 120 rpm, 200 rpm, 290 rpm]
hold: 120 s
steady: { window: 60 s, slope: 0.5 K/min }
temperatures: [40 °C, 60 °C, 80 °C]
limits: [80 °C, 90 °C, 95 °C]
sustained: 20 s
max-time: 150 min
load: { wheel-speed: 290 rpm, power-out: 22 kW }
cells:
  - { trial: spin, article: P0, oil: O1, fill: 2.40 L, wanted: 3 }
  - { trial: spin, article: P1, oil: O1, fill: 3.59 L, wanted: 3 }
---
`,
  'hill-bowl/articles/P0.md': `---
id: P0
name: pressed bowl as fitted
kind: bowl
role: baseline
inside-shape: domed
material: steel
wall: 2.5 mm
mass: 3.1 kg
obtained: used
samples: 1
condition: as fitted
level-table:
  method: pour_and_dip
  rows:
    - { z: -132 mm, volume: 0.00 L }
    - { z: -110 mm, volume: 0.40 L }
    - { z: -95 mm, volume: 0.85 L }
    - { z: -80 mm, volume: 1.38 L }
    - { z: -65 mm, volume: 1.95 L }
    - { z: -52 mm, volume: 2.45 L }
    - { z: -38 mm, volume: 3.05 L }
profile:
  wall: [[40, -128], [95, -118], [128, -80]]
  shroud: { radius: 131 mm, from: -60°, to: 150° }
---
`,
  'hill-bowl/articles/P1.md': `---
id: P1
name: deep bowl
kind: bowl
role: candidate
inside-shape: deep
material: aluminium
obtained: bought_retail
samples: 1
condition: new
max-sump: 115 °C
level-table-of: P0
---
`,
  'hill-bowl/articles/P0w.md': `---
id: P0w
name: clear copy
kind: window_copy
role: window_copy
stands-in-for: [P0]
differences: ["clear all round"]
inside-shape: domed
material: polycarbonate
obtained: made_here
samples: 1
condition: new
level-table-of: P0
---
`,
  'hill-bowl/oils/O1.md': `---
id: O1
name: mineral 85W-90
grade: SAE 85W-90
base: mineral
viscosity: { at-40: 170 mm²/s, at-100: 15.6 mm²/s, source: measured }
density-15: 900 kg/m³
specific-heat: 2000 J/(kg·K)
batch: B-0311
hours-used: 0 h
---
`,
  'hill-bowl/runs/S-07.md': `---
id: S-07
trial: spin
shown-to: public
status: accepted
article: P1
oil: O1
rig-state: Q1-a
refit: 2
order: 19
started: 2026-03-17T10:05:00+01:00
ended: 2026-03-17T11:52:00+01:00
operators: [A]
released-by: A
released-on: 2026-03-17T09:58:00+01:00
fill: { basis: volume, mass-in: 2152 g, temperature: 20.5 °C, wait: 20 min, level-left: -52 mm, level-right: -52 mm }
ambient: { place: "shielded, 1 m upstream", start: 20.8 °C, end: 21.3 °C }
airflow: 0 m/s
rotation: forward
zeros: { torque-low: { before: 0.021 N·m, after: 0.043 N·m } }
log: { file: S-07.csv, map: bench-low }
exclude:
  - { from: 1810 s, to: 1822 s, channels: [sump], reason: "connector touched", by: A }
---
Second refit. Nothing leaked.
`,
  'hill-bowl/runs/S-07.csv': 't_s,n_in,tq_in,T_sump,evt\n0,0,0,21,\n',
  'hill-bowl/runs/S-08.md': `---
id: S-08
trial: spin
status: accepted
article: P0
oil: O1
rig-state: Q1-a
refit: 3
order: 20
started: 2026-03-18T10:05:00+01:00
ended: 2026-03-18T11:52:00+01:00
operators: [A, B]
fill: { basis: volume, volume: "2,40 L", temperature: 20.5 °C, wait: 20 min, level-left: -53 mm, level-right: -53 mm }
ambient: { place: shielded, start: 20.8 °C, end: 21.3 °C }
airflow: 0 m/s
zeros: { torque-low: { before: 0.043 N·m, after: 0.051 N·m } }
log: { file: S-08.csv, map: bench-low }
---
`,
  'hill-bowl/runs/S-08.csv': 't_s,n_in,tq_in,T_sump,evt\n0,0,0,22,\n',
  'hill-bowl/claims.md': `---
claims:
  - id: CL-1
    sentence: P1 at the same level settles at least 5 K lower than P0.
    made: 2026-03-01
    by: supplier
    of: { article: P1, fill: 3.59 L, oil: O1 }
    against: { article: P0, fill: 2.40 L, oil: O1 }
    quantity: final-rise
    direction: lower
    by-at-least: 5 K
  - id: CL-2
    sentence: P1 spins with less than P0.
    made: 2026-03-19
    of: { article: P1, fill: 3.59 L }
    quantity: spin-power
    direction: lower
    at: { wheel-speed: 290 rpm, sump: 60 °C }
  - id: CL-3
    sentence: "Most of it is heat not made, and the bearing stays within 2 K."
    made: 2026-03-01
    by: reader
    clauses:
      - { of: { article: P1, fill: 3.59 L }, quantity: makes-less-share, direction: at-least, by-at-least: 50 % }
      - { of: { article: P1, fill: 3.59 L, tilt: 12 % }, quantity: bearing-rise, direction: within, by-at-least: 2 K }
    override: { word: leaning, by: A, on: 2026-05-02, why: "one bowl only" }
  - id: CL-4
    sentence: P1 takes longer to 95 °C.
    made: 2026-03-01
    by: operator
    of: { article: P1, fill: 3.59 L }
    quantity: limit-crossing
    direction: higher
    by-at-least: 7 min
    at: { limit: 95 °C }
shown-to: public
---
Put before the first bowl went on, but for one.
`,
  'hill-bowl/parts/1-first.md':
    '---\nid: 1-first\nnumber: 1\ntitle: First\nsummary: What stands in the bowl.\nstatus: draft\n---\nLater.\n',
};
export type Files = Readonly<Record<string, string | Uint8Array>>;

export const asFiles = (files: Files): SourceFile[] =>
  Object.entries(files).map(([path, content]) => {
    const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
    return { path, bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
  });
