import { flattened, readTyre, rollingRadiusByMarking_m } from '../physics/tyre.ts';
import type { Dimension, Quantity } from '../quantity/quantity.ts';
import { readNumber, readQuantity } from '../quantity/read.ts';
import { unitNamed } from '../quantity/units.ts';
import { drives, type Drive } from '../trial/book.ts';
import type { AxleAsked } from '../trial/own-axle.ts';

/** Fields of the page of a reader's own axle, in their order. */
export const axleFields = [
  'ratio',
  'tyre',
  'speed',
  'load',
  'ambient',
  'airflow',
  'fill',
  'oil',
  'nu40',
  'nu100',
  'sump',
  'drive',
  'efficiency',
] as const;
export type AxleField = (typeof axleFields)[number];
export type AxleTyped = Readonly<Record<AxleField, string>>;

/** Stands in the list of oils for one that is not of the series. */
export const otherOil = 'other';

export type AxleRead =
  | { readonly ok: true; readonly asked: AxleAsked }
  | { readonly ok: false; readonly wrong: ReadonlyMap<AxleField, string> };

/** Fields that ask for what only loaded runs answer. */
export const loadedFields: readonly AxleField[] = ['load', 'ambient', 'airflow'];

/** What was typed, in any unit that the notes take; one sentence beside each field that will not do. */
export function readAsked(typed: AxleTyped, loaded = true): AxleRead {
  const wrong = new Map<AxleField, string>();
  const refuse = (field: AxleField, says: string): number => {
    wrong.set(field, says);
    return NaN;
  };
  const read = (field: AxleField, dimension: Dimension | readonly Dimension[], least = 0): Quantity | null => {
    const found = readQuantity(typed[field], dimension, { field: field === 'speed' ? 'wheel-speed' : field });
    if (!found.ok) {
      refuse(field, [found.trouble.says, found.trouble.why, found.trouble.write].filter((s) => s !== '').join(' '));
      return null;
    }
    if (found.value.value > least) return found.value;
    refuse(field, `“${typed[field]}” is not above ${least === 0 ? 'zero' : 'what it may be'}.`);
    return null;
  };
  const or = (q: Quantity | null): number => q?.value ?? NaN;
  const radius_m = radiusOf(typed.tyre, read, refuse);
  const wheel_rad_s = wheelOf(read('speed', ['rotation', 'speed']), radius_m, refuse);
  const load = loaded ? read('load', ['power', 'torque']) : null;
  const asked: AxleAsked = {
    ratio: ratioOf(typed.ratio, refuse),
    radius_m,
    wheel_rad_s,
    power_W: isOf(load, 'torque') ? or(load) * wheel_rad_s : or(load),
    ambient_K: loaded ? or(read('ambient', 'temperature')) : NaN,
    airflow_m_s: loaded ? or(read('airflow', 'speed', -Number.MIN_VALUE)) : NaN,
    fill_m3: or(read('fill', 'volume')),
    oil:
      typed.oil === otherOil
        ? {
            nu40_m2_s: or(read('nu40', 'kinematic-viscosity')),
            nu100_m2_s: or(read('nu100', 'kinematic-viscosity')),
          }
        : typed.oil,
    sump_K: or(read('sump', 'temperature')),
    drive: driveOf(typed.drive),
    driveEfficiency: typed.drive === 'electric' ? efficiencyOf(read('efficiency', 'ratio'), typed, refuse) : 1,
  };
  return wrong.size > 0 ? { ok: false, wrong } : { ok: true, asked };
}

type Read = (field: AxleField, dimension: Dimension | readonly Dimension[]) => Quantity | null;
type Refuse = (field: AxleField, says: string) => number;

/** Two kinds are read from one field; the unit that was typed tells them apart. */
const isOf = (q: Quantity | null, dimension: 'torque' | 'speed'): boolean =>
  q !== null && unitNamed(q.unit, dimension) !== null;

/** Turns of the pinion for one of the wheel: "3.73", or teeth of ring and pinion "41:11". */
function ratioOf(text: string, refuse: Refuse): number {
  const teeth = /^\s*(\d{1,3})\s*[:/]\s*(\d{1,3})\s*$/.exec(text);
  const found = teeth ? { ok: true as const, value: Number(teeth[1]) / Number(teeth[2]) } : readNumber(text);
  if (!found.ok) return refuse('ratio', `${found.trouble.says} Write 3.73, or the teeth 41:11.`);
  return Number.isFinite(found.value) && found.value > 0
    ? found.value
    : refuse('ratio', 'A ratio is above zero. Write 3.73, or the teeth 41:11.');
}

/** A rolling radius, or a marking; nothing where no tyre is given. */
function radiusOf(text: string, read: Read, refuse: Refuse): number | null {
  if (text.trim() === '') return null;
  const tyre = readTyre(text);
  if (tyre === null) return read('tyre', 'length')?.value ?? NaN;
  return rollingRadiusByMarking_m({ ...tyre, flattening: flattened }) ?? refuse('tyre', 'No tyre has this marking.');
}

function wheelOf(speed: Quantity | null, radius_m: number | null, refuse: Refuse): number {
  if (speed === null) return NaN;
  if (!isOf(speed, 'speed')) return speed.value;
  if (radius_m === null) return refuse('speed', 'A road speed needs the tyre. Write it, or the wheel speed in rpm.');
  return speed.value / radius_m;
}

const driveOf = (text: string): Drive => drives.find((each) => each === text) ?? 'electric';

const efficiencyOf = (q: Quantity | null, typed: AxleTyped, refuse: Refuse): number => {
  if (q === null) return NaN;
  return q.value <= 1 ? q.value : refuse('efficiency', `“${typed.efficiency}” is more than 100 %.`);
};
