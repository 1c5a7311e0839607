/** A loaded run and the cool-down after it, as the guide shows them. Both are read by a test as they stand. */
export const heatUpNote = {
  file: 'pan-depth/runs/H-01.md',
  yaml: `id: H-01
trial: heat-up
status: accepted
article: A1
oil: L1
rig-state: M1-a
refit: 1
order: 6
started: 2026-05-08T08:30:00+02:00
ended: 2026-05-08T11:00:00+02:00
operators: [K]
released-by: K
released-on: 2026-05-08T08:20:00+02:00
fill:
  { basis: volume, mass-in: 1607 g, temperature: 20.5 °C, wait: 20 min,
    level-left: -70 mm, level-right: -70 mm }
ambient: { place: "shielded, 1 m upstream", start: 20.4 °C, end: 21.6 °C }
airflow: 4.0 m/s           # at the mouth of the fan; 0 m/s is still air
zeros: { torque-in: { before: 0.021 N·m, after: 0.035 N·m } }
log: { file: H-01.csv, map: bench }`,
};

export const coolDownNote = {
  file: 'pan-depth/runs/K-01.md',
  yaml: `id: K-01
trial: cool-down
status: accepted
article: A1
oil: L1
rig-state: M1-a
refit: 1
order: 7
started: 2026-05-08T11:00:00+02:00
ended: 2026-05-08T12:00:00+02:00
operators: [K]
released-by: K
released-on: 2026-05-08T08:20:00+02:00
fill:
  { basis: volume, mass-in: 1607 g, temperature: 20.5 °C, wait: 20 min,
    level-left: -70 mm, level-right: -70 mm }
ambient: { place: "shielded, 1 m upstream", start: 21.6 °C, end: 21.7 °C }
airflow: 4.0 m/s
from-run: H-01             # the heat-up that it follows
gear-state: still          # or slow-roll
log: { file: K-01.csv, map: bench }`,
};
