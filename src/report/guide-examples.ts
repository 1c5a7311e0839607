import type { NoteKind } from './guide-fields.ts';

/** One example a kind of note, invented, for the guide. Fields are those of the folder format; comments say what may be left out. */
export interface NoteExample {
  readonly id: string;
  readonly kind: NoteKind;
  readonly heading: string;
  readonly file: string;
  readonly says: string;
  readonly yaml: string;
}

export const noteExamples: readonly NoteExample[] = [
  {
    id: 'note-book',
    kind: 'book',
    heading: 'The book',
    file: 'book.md',
    says: 'One for the whole folder: who you are and how the pages look.',
    yaml: `name: The Millrace book
lab: Millrace Axle Bench
hook: "Does a deeper pan run cooler, or does it only hold more?"
contact: corrections@millrace.example
units-shown: si            # si-and-us adds US units in brackets
licence: CC-BY-4.0
shown-to: public`,
  },
  {
    id: 'note-series',
    kind: 'series',
    heading: 'A series',
    file: 'pan-depth/series.md',
    says: 'The question, the baseline, and the conditions at which things are compared. The folder’s name is the id.',
    yaml: `format: 1
id: pan-depth
title: Pan depth
summary: Two pans and one oil on the same axle, at the same litres and at the same level.
question: Does the deeper pan make less heat, shed more, or only take longer?
started: 2026-05-04
conflicts: none declared   # never empty
baseline: { article: A0, fill: 1.80 L, oil: L1 }
reference:
  wheel-speed: 300 rpm     # a gear box writes output-speed
  sump: [40 °C, 60 °C, 80 °C]
  main-sump: 60 °C
  main-limit: 95 °C
  airflow: 4.0 m/s
shown-to: public`,
  },
  {
    id: 'note-rig',
    kind: 'rig',
    heading: 'The rig',
    file: 'pan-depth/rig.md',
    says: 'Teeth, heights, what lies inside the loss figure, every instrument, and how the logger’s columns are to be read.',
    yaml: `id: M-1
name: Millrace rear-axle bench
kind: axle_bench
gear-kind: hypoid
teeth: { pinion: 11, ring: 41 }
ring: { diameter: 222 mm }
offset: -30 mm
rolling-radius: 0.320 m
heights: { tube-lip: -35 mm, filler-lip: -48 mm, floor: -120 mm }
differential: open_two_outputs
boundary: [input flange, hub flanges]
drive: motor with a torque flange
absorbers: one at each hub
states:
  - { id: M1-a, from: 2026-05-01, preload-touched: false, note: "as built" }
instruments:
  - id: torque-in
    measures: torque
    what: input flange
    range: [0 N·m, 50 N·m]
    accuracy: "± 0.05 % of range"   # no k: limits
    calibrated: 2026-02-01
    next-due: 2027-02-01
    zero-policy: before-after
  - { id: encoder, measures: speed, what: input shaft, range: [0 rpm, 6000 rpm], accuracy: ± 0.01 % of reading }
  - { id: sump-probe, measures: temperature, what: sump, range: [0 °C, 150 °C], accuracy: ± 0.3 K (k=2) }
  - { id: glass, measures: level, what: rule on the window, range: [-130 mm, 0 mm], accuracy: ± 1 mm }
maps:
  bench:
    delimiter: ";"
    decimal: ","
    header: 1
    clock: { column: t_s, unit: s }
    columns:
      n_in:   { is: pinion-speed, unit: rpm, instrument: encoder }
      tq_in:  { is: torque-in, unit: N·m, instrument: torque-in }
      T_sump: { is: sump, unit: °C, instrument: sump-probe, plausible: [-40 °C, 200 °C], max-step: 2 K/s }
  film:                      # a flow trial also logs the level, and the flash that ties the camera
    delimiter: ";"
    decimal: ","
    header: 1
    clock: { column: t_s, unit: s }
    columns:
      n_in:   { is: pinion-speed, unit: rpm, instrument: encoder }
      T_sump: { is: sump, unit: °C, instrument: sump-probe }
      z:      { is: level, unit: mm, instrument: glass }
      what:   { is: event }`,
  },
  {
    id: 'note-plan',
    kind: 'plan',
    heading: 'The plan',
    file: 'pan-depth/plan.md',
    says: 'What is varied on purpose, how often each cell is to be run, and in which order. A difference in a factor is the subject; any other is a mismatch.',
    yaml: `factors: [article, fill]
repeat: refit
order: random
seed: 20260504
baseline-rerun: "at start, middle and end"
steps: [100 rpm, 200 rpm, 300 rpm, 400 rpm]
hold: 120 s
steady: { window: 60 s, slope: 0.5 K/min }
temperatures: [40 °C, 60 °C, 80 °C]
limits: [80 °C, 90 °C, 95 °C]
sustained: 20 s
max-time: 150 min
cells:
  - { trial: spin, article: A0, oil: L1, fill: 1.80 L, wanted: 6 }
  - { trial: spin, article: A1, oil: L1, fill: 1.80 L, wanted: 3 }`,
  },
  {
    id: 'note-article',
    kind: 'article',
    heading: 'An article',
    file: 'pan-depth/articles/A1.md',
    says: 'What is compared, how it was obtained, and how much oil stands below each height in it.',
    yaml: `id: A1
name: deep pan
kind: bowl
role: candidate
inside-shape: deep
material: aluminium
obtained: bought_retail
samples: 1
condition: new
level-table:
  method: pour_and_dip
  rows:                    # six or more, both columns rising
    - { z: -120 mm, volume: 0.25 L }
    - { z: -105 mm, volume: 0.70 L }
    - { z: -90 mm, volume: 1.20 L }
    - { z: -75 mm, volume: 1.72 L }
    - { z: -60 mm, volume: 2.25 L }
    - { z: -45 mm, volume: 2.80 L }`,
  },
  {
    id: 'note-oil',
    kind: 'oil',
    heading: 'An oil',
    file: 'pan-depth/oils/L1.md',
    says: 'Two viscosities with their source, density, and the batch that was in the axle. Samples are optional: a used one is held against the unused one of its batch.',
    yaml: `id: L1
name: mineral 80W-90
grade: SAE 80W-90
base: mineral
viscosity: { at-40: 145 mm²/s, at-100: 14.2 mm²/s, source: data_sheet }
density-15: 897 kg/m³
specific-heat: 2000 J/(kg·K)
batch: L-0504
hours-used: 0 h
samples:
  - id: L1-new
    point: unused            # or drain-mid, syringe; never the first gush
    batch: L-0504
    taken-on: 2026-05-04
    results:
      - { property: iron, method: ASTM D5185, value: 2 mg/kg, repeatability: 3 mg/kg }
  - id: L1-used
    point: drain-mid
    batch: L-0504
    after-run: S-01
    taken-on: 2026-05-06
    results:
      - { property: iron, method: ASTM D5185, value: 11 mg/kg, repeatability: 3 mg/kg }`,
  },
  {
    id: 'note-run',
    kind: 'run',
    heading: 'A run',
    file: 'pan-depth/runs/S-01.md',
    says: 'One trial. The words under the second line of dashes are yours: what was seen, heard and smelled. The logger file lies beside the note and is never changed.',
    yaml: `id: S-01
trial: spin                # flow, spin, heat-up, cool-down
status: accepted
article: A1
oil: L1
rig-state: M1-a
refit: 1
order: 4
started: 2026-05-06T09:10:00+02:00
ended: 2026-05-06T10:40:00+02:00
operators: [K]
released-by: K             # left empty, the sheet says so
released-on: 2026-05-06T09:05:00+02:00
fill: { basis: volume, mass-in: 1607 g, temperature: 20.5 °C, level-left: -70 mm, level-right: -70 mm }
ambient: { place: "shielded, 1 m upstream", start: 20.4 °C, end: 21.0 °C }
airflow: 0 m/s
zeros: { torque-in: { before: 0.021 N·m, after: 0.035 N·m } }
log: { file: S-01.csv, map: bench }
exclude:
  - { from: 900 s, to: 912 s, channels: [sump], reason: "connector touched", by: K }`,
  },
  {
    id: 'note-claims',
    kind: 'claims',
    heading: 'Claims',
    file: 'pan-depth/claims.md',
    says: 'One for the series: sentences that its runs can refute, each with its rule and the day it was put. Written before the runs they rest on, they are worth more; written after, they are stamped so.',
    yaml: `claims:
  - id: CL-1
    sentence: The deeper pan at the standard litres settles at least 2 K lower.
    made: 2026-05-02         # before the first run
    by: supplier             # a role; left out, the house put it
    of: { article: A1, fill: 1.80 L }
    against: { article: A0, fill: 1.80 L }   # left out, the baseline is meant
    quantity: final-rise
    direction: lower         # lower, higher, within; at-least for a share
    by-at-least: 2 K         # left out, any difference will do
  - id: CL-2
    sentence: It spins with less, and keeps the pinion bearing within 1 K.
    made: 2026-05-02
    clauses:                 # a claim that says two things holds only where both do
      - of: { article: A1, fill: 1.80 L }
        quantity: spin-power
        direction: lower
        at: { wheel-speed: 300 rpm, sump: 60 °C }
      - { of: { article: A1, fill: 1.80 L }, quantity: bearing-rise, direction: within, by-at-least: 1 K }
questions:
  - { id: Q-1, text: "Does it reach the pinion?", raised-by: reader, raised-on: 2026-05-01, kind: flow }
  - { id: Q-2, text: "What does it take to turn?", raised-by: house, raised-on: 2026-05-01, kind: loss }
# - { …, dropped: { on: 2026-06-01, why: "it needs a road" } }   or handed-on: { on: …, to: …, why: … }
shown-to: public`,
  },
  {
    id: 'note-amendment',
    kind: 'amendment',
    heading: 'A correction, or an objection',
    file: 'pan-depth/amendments/COR-01.md',
    says: 'One for each. A correction says what was wrong and what is read otherwise from now on; the logger file and the note of the run stay as they are, and what it moved is worked out. An objection says what somebody held against the series, and the answer.',
    yaml: `id: COR-01
kind: input                  # input, calibration, method, identity, text; or objection
shown-to: public
found-on: 2026-07-16
found-by: reader             # a role, never a name
published-on: 2026-07-20
since: 2026-05-12
what: "The sump of S-01 was read 0.5 K too warm."
cause: "The probe was plugged into the channel of another one."
rule: "Plugs carry the name of their channel."
changes:
  - { run: S-01, channel: sump, add: -0.5 K }
# - { instrument: tc-1, channel: sump, times: 1.002, from: 2026-05-01, to: 2026-05-31 }
# - { run: S-01, field: fill.mass-in, write: 1602 g }`,
  },
  {
    id: 'note-part',
    kind: 'part',
    heading: 'A part',
    file: 'pan-depth/parts/1-what-stands-in-the-pan.md',
    says: 'One for each instalment, its file called by its number. Numbers and names are said by reference in the words: [spin power](figure:S-01/spin-power@300rpm,60Cel) becomes the figure, [CL-1](claim:CL-1) the word of the claim, [that run](see:S-01) a link; a picture by itself, ![Against the baseline](chart:standing?of=spin-power), becomes the chart, with standing, speed, heat, heat-up?runs=H-01,H-02, claims, grades, section and level, or still: and the name of a still. When it is out, dipmark pin keeps what it showed on its day; from then on the page has then and now beside each other wherever they differ, and says why.',
    yaml: `id: 1-what-stands-in-the-pan
number: 1
title: What stands in the pan
summary: Where the oil stands, and whether it reaches the pinion.
status: draft                # out once it is pinned; withdrawn with why:
# published: 2026-06-02      # the day it came out
asks: [Q-1]                  # questions of claims.md that it puts
answers:
  - { question: Q-2, by: [S-01] }
shown-to: public`,
  },
  {
    id: 'note-report',
    kind: 'report',
    heading: 'A client copy',
    file: 'pan-depth/reports/CR-01.md',
    says: 'What one client is given, under which names, and what of it is withheld. It is for the house: nothing of it, not even that it is there, is in a public build. A correction that reaches what it reports says so on the amends page of the house, so that a new issue is not forgotten. The words under it say what was asked, and name nothing that is kept back. The command  dipmark print CR-01  makes one PDF of it, with the figures as they stood on the day it was issued; a paper that is handed over is never changed by printing it again.',
    yaml: `id: CR-01
title: Two pans on one axle
client: Client A             # never a name of a person or a firm
version: 1
status: draft                # issued, with the day
# issued: 2026-06-20
# supersedes: CR-01, issue 1
articles: [A0, A1]           # their runs are in it
claims: [CL-1]
# parts: [1-what-stands-in-the-pan]
aliases:
  - { article: A1, as: Article B }
# withheld: [S-01]           # the paper says how many are withheld
# withheld-why: "not bought by the client"
not-tested: [wear]
signed-by: [head of the lab] # by hand; the lines stay blank`,
  },
];
