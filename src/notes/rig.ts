import type { Reading } from '../finding/finding.ts';
import { nearest } from '../finding/nearest.ts';
import { settledBy } from '../trial/break-in.ts';
import type { ColumnMap, Instrument, Rig, RigBearing, RigState } from '../trial/rig.ts';
import type { ValuesOf } from './fields.ts';
import type { Note } from './note.ts';
import type { Into } from './read-value.ts';
import { readRecord, tellAt } from './record.ts';
import { toColumns } from './rig-columns.ts';
import { rigKind } from './rig-fields.ts';
import { toInstrument } from './rig-instruments.ts';
import * as say from './texts-check.ts';

type RigValues = ValuesOf<(typeof rigKind)['fields']>;

export const readRig = (note: Note): Reading<Rig> =>
  readRecord(rigKind, note, (v, head, into): Rig => {
    twice('states', v.states, into);
    twice('instruments', v.instruments, into);
    const instruments = v.instruments.map((values, i) => toInstrument(values, `instruments.${i}`, into));
    if (v.differential === 'open_one_output') tellAt(into, 'differential', say.oneOutput());
    return {
      ...head,
      id: v.id,
      name: v.name,
      kind: v.kind,
      gearKind: v['gear-kind'],
      teethPinion: v.teeth.pinion,
      teethRing: v.teeth.ring,
      hubReduction: v.teeth['hub-reduction'],
      ringRadius_m: v.ring.diameter.value / 2,
      ringFace_m: v.ring.face?.value ?? null,
      toothHeight_m: v.ring['tooth-height']?.value ?? null,
      bearings: (v.bearings ?? []).map((b, i) => toBearing(b, `bearings.${i}`, into)),
      seals: (v.seals ?? []).map(({ at, shaft }) => ({ at, shaft_m: shaft.value })),
      offset_m: v.offset.value,
      rejectingArea_m2: v['rejecting-area']?.value ?? null,
      rollingRadius_m: v['rolling-radius']?.value ?? null,
      pinionFront: v['pinion-front'] && {
        ahead_m: v['pinion-front'].ahead.value,
        below_m: v['pinion-front'].below.value,
        raceRadius_m: v['pinion-front']['race-radius'].value,
      },
      tubeLip_z_m: v.heights?.['tube-lip']?.value ?? null,
      fillerLip_z_m: v.heights?.['filler-lip']?.value ?? null,
      floor_z_m: v.heights?.floor?.value ?? null,
      differential: v.differential,
      boundary: v.boundary,
      drive: v.drive,
      absorbers: v.absorbers,
      airflowDevice: v['airflow-device'],
      window: v.window && {
        usedOn: v.window['used-on'],
        material: v.window.material,
        maxSump_K: v.window['max-sump'].value,
      },
      states: v.states.map(toState),
      instruments,
      maps: [...v.maps].map(([id, map]) => toMap(id, map, instruments, into)),
    };
  });

function toState(s: RigValues['states'][number]): RigState {
  const written = s['break-in'];
  const breakIn = written && {
    settledWithin_ratio: written['settled-within'].value,
    loads: written.loads.map((load) => ({
      power_W: load.power.value,
      start_ratio: load.start.value,
      middle_ratio: load.middle.value,
      end_ratio: load.end.value,
    })),
  };
  return {
    id: s.id,
    from: s.from,
    gearsetHours: s['gearset-hours'] && s['gearset-hours'].value / 3600,
    preloadTouched: s['preload-touched'],
    breakIn,
    settled: settledBy(breakIn),
    note: s.note,
  };
}

type BearingValues = NonNullable<RigValues['bearings']>[number];

function toBearing(b: BearingValues, path: string, into: Into): RigBearing {
  if (b.outside.value <= b.bore.value) tellAt(into, `${path}.outside`, say.bearingTurnedRound());
  return {
    at: b.at,
    bore_m: b.bore.value,
    outside_m: b.outside.value,
    turning_Nm: b['turning-torque']?.value ?? null,
  };
}

/** One id, one thing: the second of two is told. */
function twice(path: string, list: readonly { readonly id: string }[], into: Into): void {
  for (const [i, { id }] of list.entries())
    if (list.findIndex((other) => other.id === id) < i) tellAt(into, `${path}.${i}.id`, say.idTwice(id));
}

type MapValues = RigValues['maps'] extends ReadonlyMap<string, infer M> ? M : never;

function toMap(id: string, v: MapValues, instruments: readonly Instrument[], into: Into): ColumnMap {
  const path = `maps.${id}`;
  const delimiter = delimiters[v.delimiter] ?? ',';
  const thousands = signs[v.thousands ?? 'none'] ?? v.thousands;
  if (v.decimal === delimiter)
    tellAt(into, v.decimal === ',' ? `${path}.delimiter` : `${path}.decimal`, say.signTwice(v.decimal));
  return {
    id,
    delimiter,
    decimal: v.decimal === ',' ? ',' : '.',
    thousands: thousands === 'none' ? null : thousands,
    header: v.header,
    unitsRow: v['units-row'],
    encoding: v.encoding,
    missing: v.missing ?? [''],
    clock: v.clock,
    columns: toColumns(
      v.columns,
      `${path}.columns`,
      (name, at) => {
        knownInstrument(name, at, instruments, into);
      },
      into,
    ),
  };
}

const delimiters: Readonly<Record<string, ColumnMap['delimiter']>> = {
  ',': ',',
  comma: ',',
  ';': ';',
  semicolon: ';',
  '\t': '\t',
  '\\t': '\t',
  tab: '\t',
};

const signs: Readonly<Record<string, string>> = { none: 'none', space: ' ', comma: ',', dot: '.' };

function knownInstrument(name: string, path: string, instruments: readonly Instrument[], into: Into): void {
  const known = instruments.map((i) => i.id);
  if (!known.includes(name)) tellAt(into, path, say.unknownName('instrument', name, nearest(name, known), known));
}
