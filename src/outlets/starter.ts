import type { noteKinds } from '../notes/json-schema.ts';
import type { ProposedMap } from '../logs/proposed-map.ts';
import type { TextFile } from './files.ts';
import { mapLines } from './starter-map.ts';

type NoteKind = keyof typeof noteKinds;

/** The six things that a book begins with, as people say them. */
export interface Beginning {
  readonly lab: string;
  readonly question: string;
  /** What is fitted now, and what is held against it. */
  readonly baseline: string;
  readonly candidate: string;
  /** "2.40 L" */
  readonly fill: string;
  /** "SAE 80W-90" */
  readonly oil: string;
}

/** The six questions, each with an answer that it could have. */
export const beginnings: Readonly<Record<keyof Beginning, { readonly asks: string; readonly like: string }>> = {
  lab: { asks: 'Whose bench is it?', like: 'Millrace Axle Bench' },
  question: { asks: 'What do you want to know?', like: 'Does a deeper pan run cooler?' },
  baseline: { asks: 'What is fitted now?', like: 'standard pan' },
  candidate: { asks: 'What is held against it?', like: 'deep pan' },
  fill: { asks: 'How much oil goes in?', like: '1.80 L' },
  oil: { asks: 'Which oil, as it says on the drum?', like: 'SAE 80W-90' },
};

/**
 * The notes of a new book: one series with two articles, one oil and one run that is a draft. It builds at once. What nobody
 * was asked is written as a likely value and named under `guessed:`, so that no figure ever rests on it.
 */
export function startedBook(
  of: Beginning,
  with_: { readonly day: string; readonly map: ProposedMap | null; readonly log: string },
): readonly TextFile[] {
  const { day } = with_;
  const file = (path: string, kind: NoteKind, head: string, body = ''): TextFile => ({
    path,
    text: `---\n${explainedBy(path, kind)}\n${head.trim()}\n---\n${body}`,
  });
  const words = 'Words for the reader: where the articles come from, and who asked.\n';
  return [
    file('book.md', 'book', bookNote(of)),
    file('first/series.md', 'series', seriesNote(of, day), words),
    file('first/rig.md', 'rig', rigNote(day, with_.map)),
    file('first/plan.md', 'plan', planNote(of)),
    file('first/articles/A0.md', 'article', articleNote('A0', of.baseline, 'baseline')),
    file('first/articles/A1.md', 'article', articleNote('A1', of.candidate, 'candidate')),
    file('first/oils/L1.md', 'oil', oilNote(of)),
    file('first/runs/S-01.md', 'run', runNote(of, day, with_.log), 'What was seen, heard and smelled.\n'),
  ];
}

/** Folder of a new book in which the schemas of its notes lie. */
export const schemaFolder = 'schema';

/** The line by which the language server for YAML finds the schema of a note, and an editor completes and explains its fields. */
const explainedBy = (path: string, kind: NoteKind): string =>
  `# yaml-language-server: $schema=${'../'.repeat(path.split('/').length - 1)}${schemaFolder}/${kind}.schema.json`;

/** Those that only some loggers have. */
const instrumentLines = (map: ProposedMap | null): string =>
  [
    ['airflow', '  - { id: vane-1, measures: airflow, what: fan outlet, range: [0 m/s, 20 m/s], accuracy: ± 0.1 m/s }'],
    [
      'level',
      '  - { id: rule-1, measures: level, what: rule in a side glass, range: [-200 mm, 100 mm], accuracy: ± 1 mm }',
    ],
  ]
    .filter(([is]) => map?.columns.some((column) => column.is === is) === true)
    .map(([, line]) => `${line!}\n`)
    .join('');

/** A text as a YAML scalar that is only ever a text. */
const quoted = (text: string): string => JSON.stringify(text);

const bookNote = ({ lab, question }: Beginning): string => `
name: ${quoted(`The book of ${lab}`)}
lab: ${quoted(lab)}
hook: ${quoted(question)}
contact: nobody@example.org   # where a reader sends a correction
licence: CC-BY-4.0            # what others may do with the figures
# shown-to: public            # every note is for the house until it says so
`;

const seriesNote = ({ question, fill, baseline, candidate }: Beginning, day: string): string => `
format: 1
id: first                     # the name of this folder
title: First series
summary: ${quoted(`On one rig: ${baseline}, and ${candidate} held against it.`)}
question: ${quoted(question)}
started: ${day}
conflicts: none declared      # who pays, who sells, who made the parts; never empty
baseline: { article: A0, fill: ${quoted(fill)}, oil: L1 }
reference:                    # two runs are compared at these, and only where both were there
  wheel-speed: 300 rpm        # a gear box writes output-speed
  sump: [40 °C, 60 °C]
  main-sump: 60 °C
guessed: [reference]
`;

const rigNote = (day: string, map: ProposedMap | null): string => `
id: R-1
name: Our bench
kind: axle_bench              # or gearbox_bench, vehicle_on_stands, vehicle_on_rollers, road
gear-kind: hypoid             # hypoid, spiral_bevel, helical, spur, worm
teeth: { pinion: 11, ring: 41 } # counted, never measured: every speed and loss hangs on them
ring: { diameter: 220 mm }    # how deep it dips is counted from its rim
offset: -30 mm                # pinion below the ring gear is negative
differential: open_two_outputs
boundary: [input flange, gears, bearings, seals, oil] # what the loss figure holds
drive: electric motor on the input flange
absorbers: none
states:                       # runs of two states are not compared unseen
  - { id: R1-a, from: ${day}, preload-touched: false, note: as bought }
instruments:                  # uncertainty begins here: from the data sheet or the certificate
  - id: torque-1
    measures: torque
    what: input flange
    range: [0 N·m, 50 N·m]
    accuracy: ± 0.1 % of range # no k: limits; or (k=2) where the certificate says so
    zero-policy: before-after
    # calibrated: 2026-02-01  and  next-due: 2027-02-01, of each of them
  - { id: speed-1, measures: speed, what: input shaft, range: [0 rpm, 6000 rpm], accuracy: ± 0.1 % of reading }
  - { id: probe-1, measures: temperature, what: thermocouples, range: [-40 °C, 200 °C], accuracy: ± 1 K }
${instrumentLines(map)}maps:
  logger:                     # which column of the logger's file holds what
${mapLines(map)
  .map((line) => `    ${line}`)
  .join('\n')}
guessed: [teeth, ring, offset, instruments${map === null ? ', maps' : ''}]
`;

const planNote = ({ fill }: Beginning): string => `
factors: [article]            # what differs on purpose; any other difference is a mismatch
repeat: refit                 # taken off and fitted again: only that is a repeat
order: random
seed: 1
baseline-rerun: at the start and at the end
steps: [100 rpm, 200 rpm, 300 rpm, 400 rpm]
hold: 120 s
steady: { window: 60 s }
temperatures: [40 °C, 60 °C]
limits: [80 °C, 90 °C, 95 °C]
sustained: 20 s
max-time: 150 min
cells:                        # dipmark check says what these can separate
  - { trial: spin, article: A0, oil: L1, fill: ${quoted(fill)}, wanted: 3 }
  - { trial: spin, article: A1, oil: L1, fill: ${quoted(fill)}, wanted: 3 }
guessed: [steps, temperatures]
`;

const articleNote = (id: string, name: string, role: 'baseline' | 'candidate'): string => `
id: ${id}
name: ${quoted(name)}
kind: cover                   # cover, bowl, insert, housing, assembly
role: ${role}
inside-shape: other           # domed, boxed, deep, ribbed, trough, shroud, none
material: steel
obtained: bought_retail       # or lent, gift, made_here, used: readers ask
samples: 1
condition: new
guessed: [kind, inside-shape, material, obtained, condition]
# level-table:                # poured and dipped, six rows or more: with it two articles can stand at one level
#   method: pour_and_dip
#   rows:
#     - { z: -120 mm, volume: 0.25 L }
`;

const oilNote = ({ oil }: Beginning): string => `
id: L1
name: ${quoted(oil)}
grade: ${quoted(oil)}
base: mineral                 # or synthetic, semi, unknown
viscosity: { at-40: 145 mm²/s, at-100: 14.5 mm²/s, source: typical } # from its data sheet
density-15: 895 kg/m³         # from its data sheet
specific-heat: 2000 J/(kg·K)
batch: unknown
hours-used: 0 h
guessed: [base, viscosity, density-15, batch, hours-used]
`;

const runNote = ({ fill }: Beginning, day: string, log: string): string => `
id: S-01
trial: spin                   # flow, spin, heat-up, cool-down
status: draft                 # accepted, once what stands below is true; a draft has a page and no figures
article: A0
oil: L1
rig-state: R1-a
refit: 1                      # 2 once it was taken off and fitted again
order: 1                      # first run of the series, second, …
started: ${day}T09:00:00+00:00
ended: ${day}T10:00:00+00:00
operators: [A]                # initials
# released-by: A              # who said that it may turn; the sheet says so where nobody did
fill: { basis: volume, volume: ${quoted(fill)}, temperature: 20 °C }
ambient: { place: "1 m upstream, shielded", start: 20 °C, end: 20 °C }
airflow: 0 m/s                # 0 m/s is still air
zeros: { torque-1: { before: 0.00 N·m, after: 0.00 N·m } } # the flange at rest, unloaded
log: { file: ${quoted(log)}, map: logger }
guessed: [started, ended, operators, fill, ambient, airflow, zeros]
`;
