import type { Dimension } from '../quantity/quantity.ts';
import type { BreakIn } from './break-in.ts';
import type { NoteHead } from './note.ts';

/** Names of what a logger column holds. */
export const channelKinds = [
  'pinion-speed',
  'output-speed',
  'torque-in',
  'torque-out-left',
  'torque-out-right',
  'sump',
  'skin',
  'pinion-bearing',
  'ambient',
  'airflow',
  'level',
  'event',
] as const;
export type ChannelKind = (typeof channelKinds)[number];
export type ReadingKind = Exclude<ChannelKind, 'event'>;

/** The shaft that a bearing or a seal sits on, and so its speed. */
export const shaftKinds = ['pinion', 'ring', 'wheel'] as const;
export type ShaftKind = (typeof shaftKinds)[number];

/** A tapered roller bearing inside the loss figure. */
export interface RigBearing {
  readonly at: ShaftKind;
  readonly bore_m: number;
  readonly outside_m: number;
  /** What its preload alone asks to turn it; null when not measured. */
  readonly turning_Nm: number | null;
}

/** A lip seal inside the loss figure. */
export interface RigSeal {
  readonly at: ShaftKind;
  readonly shaft_m: number;
}

/** What a channel measures. */
export const channelDimension: Readonly<Record<ReadingKind, Dimension>> = {
  'pinion-speed': 'rotation',
  'output-speed': 'rotation',
  'torque-in': 'torque',
  'torque-out-left': 'torque',
  'torque-out-right': 'torque',
  sump: 'temperature',
  skin: 'temperature',
  'pinion-bearing': 'temperature',
  ambient: 'temperature',
  airflow: 'speed',
  level: 'length',
};

export interface Instrument {
  readonly id: string;
  readonly measures:
    'torque' | 'speed' | 'temperature' | 'airflow' | 'level' | 'mass' | 'time' | 'pressure' | 'voltage';
  readonly what: string;
  /** SI of what it measures; null when not stated. */
  readonly range: readonly [number, number] | null;
  readonly accuracy: Accuracy;
  /** Standard deviation of repeat, SI; null when not stated. */
  readonly repeat: number | null;
  readonly calibratedOn: string | null;
  readonly nextDue: string | null;
  readonly checkedOn: string | null;
  readonly certificate: string | null;
  readonly position: string | null;
  /** Height of the probe's tip above the axle centreline by article id, m; `other` for the rest. Empty when it does not apply. */
  readonly tip_z_m: ReadonlyMap<string, number>;
  /** Constant zero kept in the rig sheet, subtracted from every reading; SI. */
  readonly zero: number;
  readonly zeroPolicy: 'before-after' | 'kept' | 'none';
  /** Instruments of one share group share one calibration error. */
  readonly shareGroup: string;
}

/** Standard uncertainty = value / k, or value / √3 when k is null (limits: rectangular). */
export interface Accuracy {
  readonly asWritten: string;
  readonly of: 'absolute' | 'reading' | 'range';
  /** SI when absolute, otherwise a fraction. */
  readonly value: number;
  readonly k: number | null;
}

export interface ColumnMap {
  readonly id: string;
  readonly delimiter: ',' | ';' | '\t';
  readonly decimal: '.' | ',';
  readonly thousands: string | null;
  /** Physical line of the header, from 1. */
  readonly header: number;
  /** Physical line of a units row, or null. */
  readonly unitsRow: number | null;
  readonly encoding: string | null;
  readonly missing: readonly string[];
  readonly clock: { readonly column: string; readonly unit: 's' | 'min' | 'h:mm:ss' };
  readonly columns: readonly Column[];
}

export interface Column {
  readonly header: string;
  readonly is: ChannelKind;
  /** Name in the units table; null for events. */
  readonly unit: string | null;
  readonly sign: 1 | -1;
  readonly instrument: string | null;
  /** SI. */
  readonly plausible: readonly [number, number] | null;
  /** SI per second. */
  readonly maxStep: number | null;
  /** Longest time the reading may stand still while others move, s. */
  readonly stuck_s: number | null;
}

export interface RigState {
  readonly id: string;
  readonly from: string;
  readonly gearsetHours: number | null;
  readonly preloadTouched: boolean;
  /** Null when none is recorded. */
  readonly breakIn: BreakIn | null;
  /** Whether every load of the break-in had settled by its own criterion; null when none is recorded. */
  readonly settled: boolean | null;
  readonly note: string;
}

/** `rig.md`. Heights z are metres above the axle (shaft) centreline, negative below. */
export interface Rig extends NoteHead {
  readonly id: string;
  readonly name: string;
  readonly kind: 'axle_bench' | 'vehicle_on_rollers' | 'vehicle_on_stands' | 'road' | 'gearbox_bench';
  readonly gearKind: string;
  readonly teethPinion: number;
  readonly teethRing: number;
  readonly hubReduction: number;
  readonly ringRadius_m: number;
  readonly ringFace_m: number | null;
  /** Whole depth of the ring's teeth; without it the oil in the tooth gaps is not estimated. */
  readonly toothHeight_m: number | null;
  /** Empty where the sheet names none. */
  readonly bearings: readonly RigBearing[];
  readonly seals: readonly RigSeal[];
  readonly offset_m: number;
  /** Outside surface of the whole axle that gives off heat. */
  readonly rejectingArea_m2: number | null;
  readonly rollingRadius_m: number | null;
  readonly pinionFront: { readonly ahead_m: number; readonly below_m: number; readonly raceRadius_m: number } | null;
  readonly tubeLip_z_m: number | null;
  readonly fillerLip_z_m: number | null;
  readonly floor_z_m: number | null;
  readonly differential: string;
  readonly boundary: readonly string[];
  readonly drive: string;
  readonly absorbers: string;
  readonly airflowDevice: string | null;
  readonly window: { readonly usedOn: readonly string[]; readonly material: string; readonly maxSump_K: number } | null;
  readonly states: readonly RigState[];
  readonly instruments: readonly Instrument[];
  readonly maps: readonly ColumnMap[];
}
