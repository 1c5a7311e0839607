import type { Dimension, Quantity } from '../quantity/quantity.ts';
import { readAccuracy } from '../quantity/read.ts';
import type { Accuracy, Instrument } from '../trial/rig.ts';
import type { ValuesOf } from './fields.ts';
import type { Node } from './note.ts';
import { checked, type Into, quantityOf, wrong } from './read-value.ts';
import { tellAt } from './record.ts';
import type { instrumentKind } from './rig-fields.ts';
import * as say from './texts-check.ts';

/** What an instrument measures, and the difference of two such readings. */
export const dimensionOf: Readonly<Record<Instrument['measures'], { reading: Dimension; difference: Dimension }>> = {
  torque: { reading: 'torque', difference: 'torque' },
  speed: { reading: 'rotation', difference: 'rotation' },
  temperature: { reading: 'temperature', difference: 'temperature-difference' },
  airflow: { reading: 'speed', difference: 'speed' },
  level: { reading: 'length', difference: 'length' },
  mass: { reading: 'mass', difference: 'mass' },
  time: { reading: 'time', difference: 'time' },
  pressure: { reading: 'pressure', difference: 'pressure' },
  voltage: { reading: 'voltage', difference: 'voltage' },
};

const nothing: Accuracy = { asWritten: '', of: 'absolute', value: NaN, k: null };

export function toInstrument(v: ValuesOf<(typeof instrumentKind)['fields']>, path: string, into: Into): Instrument {
  const { reading, difference } = dimensionOf[v.measures];
  const range = v.range && pairOf(v.range, reading, `${path}.range`, into);
  const accuracy = toAccuracy(v.accuracy, reading, `${path}.accuracy`, into);
  if (accuracy.of === 'range' && v.range === null)
    tellAt(into, `${path}.accuracy`, say.rangeNeeded(accuracy.asWritten));
  const amount = (node: Node | null, name: string): Quantity | null =>
    node && quantityOf({ dimension: difference, like: '' }, node, `${path}.${name}`, into);
  return {
    id: v.id,
    measures: v.measures,
    what: v.what,
    range,
    accuracy,
    repeat: amount(v.repeat, 'repeat')?.value ?? null,
    calibratedOn: v.calibrated,
    nextDue: v['next-due'],
    checkedOn: v.checked,
    certificate: v.certificate,
    position: v.position,
    tip_z_m: new Map([...(v.tip ?? [])].map(([article, z]) => [article, z.value])),
    zero: amount(v.zero, 'zero')?.value ?? 0,
    zeroPolicy: v['zero-policy'] ?? 'none',
    shareGroup: v['share-group'] ?? v.id,
  };
}

function toAccuracy(node: Node, dimension: Dimension, path: string, into: Into): Accuracy {
  if (node.kind !== 'text') {
    tellAt(into, path, say.accuracyShape());
    return nothing;
  }
  const read = checked(readAccuracy(node.text, dimension), node, path, into);
  return read === wrong ? nothing : read;
}

/** `[low, high]`, rising. */
export function pairOf(node: Node, dimension: Dimension, path: string, into: Into): readonly [number, number] | null {
  const [low, high] = node.kind === 'list' ? node.items : [];
  if (node.kind !== 'list' || !low || !high || node.items.length !== 2) {
    tellAt(into, path, say.pairShape(path));
    return null;
  }
  const [a, b] = [low, high].map((item, i) => quantityOf({ dimension, like: '' }, item, `${path}.${i}`, into));
  if (!a || !b) return null;
  if (b.value > a.value) return [a.value, b.value];
  tellAt(into, `${path}.1`, say.notRising(path, b.asWritten, a.asWritten));
  return null;
}
