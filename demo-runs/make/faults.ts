import type { RunPlan } from './order.ts';
import { runningLevel_mm, type SetUp } from './law.ts';
import type { Stream } from './random.ts';
import { type Channel, interval_s, lineOf, type Recording } from './recording.ts';
import { fanReturn_K } from './verdicts.ts';

/** A planted fault as the truth file tells it: lines count from 1 as a text editor does. */
export interface Fault {
  readonly fault: string;
  readonly run: string;
  readonly file: string;
  readonly line: number;
  readonly lastLine: number;
  readonly channel: string;
  readonly treatment: string;
}

interface Spoilt {
  readonly recording: Recording;
  readonly faults: readonly Fault[];
}

type Spoil = (given: { run: RunPlan; recording: Recording; setUp: SetUp; from: Stream }) => Spoilt;

/** One kind a run; the camera clock stands in the note of F-06 and needs no spoiling here. */
const spoilt: Readonly<Record<string, Spoil>> = {
  'S-05': dropOut,
  'S-14': signFlip,
  'S-17': fahrenheit,
  'S-25': twice,
  'H-11': looseSkin,
  'H-07': swapped,
  'H-02': stuckAir,
  'H-09': warmAmbient,
};
export const cameraClockRun = 'F-06';
export const cameraClock_s = 7.4;

export function plantFaults(given: Parameters<Spoil>[0]): Spoilt {
  if (given.run.id === cameraClockRun) return cameraClock(given);
  const spoil = spoilt[given.run.id] ?? (/^P2w?$/.test(given.run.article) ? aboveLevel : null);
  return spoil?.(given) ?? { recording: given.recording, faults: [] };
}

function dropOut({ run, recording }: Parameters<Spoil>[0]): Spoilt {
  const first = stepStart(recording, 390, 1) + 31;
  const sump = recording.values.T_sump.map((v, row) => (row >= first && row < first + 6 ? NaN : v));
  return one(run, with_(recording, { T_sump: sump }), {
    ...{ fault: 'drop-out', channel: 'sump', rows: [first, first + 5] },
    treatment: 'readings missing there',
  });
}

function signFlip({ run, recording }: Parameters<Spoil>[0]): Spoilt {
  const first = stepStart(recording, 290, 1) + 40;
  const torque = recording.values.tq_in.map((v, row) => (row >= first && row < first + 3 ? -v : v));
  return one(run, with_(recording, { tq_in: torque }), {
    ...{ fault: 'sign flip', channel: 'torque-in', rows: [first, first + 2] },
    treatment: 'those readings not used',
  });
}

function fahrenheit({ run, recording }: Parameters<Spoil>[0]): Spoilt {
  const turned = (['T_sump', 'T_skin', 'T_pb', 'T_amb'] as const).map((c) => [
    c,
    recording.values[c].map((v) => v * 1.8 + 32),
  ]);
  return one(run, with_(recording, Object.fromEntries(turned) as Partial<Record<Channel, Float64Array>>), {
    ...{ fault: 'degrees Fahrenheit under a map in degrees Celsius', channel: 'sump', rows: [0, recording.rows - 1] },
    treatment: 'run left out until a person decides',
  });
}

/** The logger paused and wrote its buffer again. */
function twice({ run, recording }: Parameters<Spoil>[0]): Spoilt {
  const first = stepStart(recording, 200, 2) + 20;
  const again = 12;
  const end = first + again;
  const written = [
    ...recording.written.slice(0, end),
    ...recording.written.slice(first, end),
    ...recording.written.slice(end),
  ];
  return one(
    run,
    { ...recording, written },
    {
      ...{ fault: 'duplicate block', channel: 'all', rows: [end, end + again - 1] },
      treatment: 'dropped once',
    },
  );
}

function looseSkin({ run, recording, from }: Parameters<Spoil>[0]): Spoilt {
  const first = (70 * 60) / interval_s;
  const skin = recording.values.T_skin.map((v, row) => (row >= first ? v - 9 + from.normal(0.6) : v));
  return one(run, with_(recording, { T_skin: skin }), {
    ...{ fault: 'loose probe', channel: 'skin', rows: [first, recording.rows - 1] },
    treatment: 'skin not used from there',
  });
}

function swapped({ run, recording: r }: Parameters<Spoil>[0]): Spoilt {
  return one(run, with_(r, { tq_out_l: r.values.tq_out_r, tq_out_r: r.values.tq_out_l }), {
    ...{ fault: 'left and right swapped', channel: 'torque-out-left', rows: [0, r.rows - 1] },
    treatment: 'figures kept, labelled "swap?"',
  });
}

function stuckAir({ run, recording }: Parameters<Spoil>[0]): Spoilt {
  const first = (104 * 60) / interval_s;
  const held = recording.values.u_air[first]!;
  const air = recording.values.u_air.map((v, row) => (row >= first ? held : v));
  return one(run, with_(recording, { u_air: air }), {
    ...{ fault: 'stuck', channel: 'airflow', rows: [first, recording.rows - 1] },
    treatment: 'airflow from the readings before',
  });
}

/** The ambient probe hung in the fan's return. */
function warmAmbient({ run, recording }: Parameters<Spoil>[0]): Spoilt {
  const ambient = recording.values.T_amb.map((v) => v + fanReturn_K);
  return one(run, with_(recording, { T_amb: ambient }), {
    ...{ fault: 'ambient probe in the fan return', channel: 'ambient', rows: [0, recording.rows - 1] },
    treatment: 'a notice at a cold start, no more; told by correction C-01',
  });
}

function cameraClock({ run, recording }: Parameters<Spoil>[0]): Spoilt {
  const row = [...recording.events].find(([, text]) => text === 'sync')![0];
  return one(run, recording, {
    ...{ fault: `camera clock +${cameraClock_s} s`, channel: 'event', rows: [row, row] },
    treatment: `found from the sync event; cues and steps are moved by ${cameraClock_s} s`,
  });
}

/** Mist instead of oil: the tip stands out of the running level of the tray article at the highest step. */
function aboveLevel({ run, recording, setUp, from }: Parameters<Spoil>[0]): Spoilt {
  const tip_mm = -76;
  const dry = (row: number): boolean => {
    const rpm = recording.values.n_out_l[row]!;
    return rpm > 400 && runningLevel_mm(setUp, rpm) < tip_mm;
  };
  const sump = recording.values.T_sump.map((v, row) => (dry(row) ? v + 2 + from.normal(0.3) : v));
  const stretches: [number, number][] = [];
  for (let row = 0; row < recording.rows; row++)
    if (dry(row)) {
      const open = stretches.at(-1);
      if (open && open[1] >= row - 3) open[1] = row;
      else stretches.push([row, row]);
    }
  const faults = stretches.map((rows) =>
    faultOf(run, {
      ...{ fault: 'probe above running level', channel: 'sump', rows },
      treatment: 'the 520 rpm step is not given at a sump temperature',
    }),
  );
  return { recording: with_(recording, { T_sump: sump }), faults };
}

interface Told {
  readonly fault: string;
  readonly channel: string;
  readonly rows: readonly [number, number];
  readonly treatment: string;
}

const one = (run: RunPlan, recording: Recording, told: Told): Spoilt => ({ recording, faults: [faultOf(run, told)] });

const faultOf = (run: RunPlan, { rows, ...told }: Told): Fault => ({
  ...{ fault: told.fault, run: run.id, file: `hill-bowl/runs/${run.id}.csv` },
  ...{ line: lineOf(rows[0]), lastLine: lineOf(rows[1]), channel: told.channel, treatment: told.treatment },
});

const with_ = (recording: Recording, changed: Partial<Record<Channel, Float64Array>>): Recording => ({
  ...recording,
  values: { ...recording.values, ...changed },
});

/** Row where the hold of a step begins, at the first, second or third temperature. */
const stepStart = (recording: Recording, rpm: number, occurrence: number): number =>
  [...recording.events].filter(([, text]) => text === `step ${rpm}`).map(([row]) => row)[occurrence]!;
