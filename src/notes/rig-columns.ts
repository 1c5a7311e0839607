import type { Dimension, Quantity } from '../quantity/quantity.ts';
import { unitNamed } from '../quantity/units.ts';
import { channelDimension, type ChannelKind, type Column } from '../trial/rig.ts';
import type { Node } from './note.ts';
import { type Into, quantityOf } from './read-value.ts';
import { tellAt } from './record.ts';
import { pairOf } from './rig-instruments.ts';
import * as say from './texts-check.ts';

/** The physical kind of what a column holds; null for words. */
const dimensionOf = (kind: ChannelKind): Dimension | null => (kind === 'event' ? null : channelDimension[kind]);

interface ColumnValues {
  readonly is: ChannelKind;
  readonly unit: string | null;
  readonly instrument: string | null;
  readonly sign: '1' | '-1';
  readonly plausible: Node | null;
  readonly 'max-step': Node | null;
  readonly stuck: Quantity | null;
}

/** `known` tells an instrument that the rig sheet does not list. */
export function toColumns(
  columns: ReadonlyMap<string, ColumnValues>,
  path: string,
  known: (instrument: string, path: string) => void,
  into: Into,
): Column[] {
  const taken = new Map<ChannelKind, string>();
  return [...columns].map(([header, v]) => {
    const at = `${path}.${header}`;
    const other = taken.get(v.is);
    if (other !== undefined) tellAt(into, `${at}.is`, say.channelTwice(v.is, other));
    else taken.set(v.is, header);
    const dimension = dimensionOf(v.is);
    if (dimension && v.instrument === null) tellAt(into, at, say.instrumentMissing(header));
    if (v.instrument !== null) known(v.instrument, `${at}.instrument`);
    return {
      header,
      is: v.is,
      unit: dimension && unitOf(v.unit, dimension, at, header, into),
      sign: v.sign === '-1' ? -1 : 1,
      instrument: v.instrument,
      plausible: dimension && v.plausible && pairOf(v.plausible, dimension, `${at}.plausible`, into),
      maxStep: dimension && v['max-step'] && maxStep(v['max-step'], dimension, `${at}.max-step`, into),
      stuck_s: v.stuck?.value ?? null,
    };
  });
}

function unitOf(name: string | null, dimension: Dimension, path: string, header: string, into: Into): string | null {
  const unit = name === null ? null : unitNamed(name, dimension);
  if (unit) return unit.name;
  tellAt(
    into,
    name === null ? path : `${path}.unit`,
    name === null ? say.columnUnitMissing(header, dimension) : say.columnUnit(header, name, dimension),
  );
  return null;
}

/** A change a second: `2 K/s`, `5 N·m/s`, `30 rpm/s`. */
function maxStep(node: Node, dimension: Dimension, path: string, into: Into): number | null {
  const typed = node.kind === 'text' ? /^(.*\S)\s*\/\s*s$/.exec(node.text)?.[1] : undefined;
  if (node.kind !== 'text' || typed === undefined) {
    tellAt(into, path, say.stepShape());
    return null;
  }
  const difference = dimension === 'temperature' ? 'temperature-difference' : dimension;
  return quantityOf({ dimension: difference, like: '' }, { ...node, text: typed }, path, into)?.value ?? null;
}
