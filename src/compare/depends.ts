import type { Series } from '../trial/book.ts';
import type { Depends, Effect } from '../trial/compared.ts';
import { atKey } from './group.ts';

/**
 * Where what an article comes to against the baseline hangs on a choice of the author: the limit, common or own
 * temperature, same litres or same level, spin power or final rise. Told when the options separate both ways, or when one
 * separates and another does not.
 */
export function dependsOn({ effects, series }: { effects: readonly Effect[]; series: Series }): Depends[] {
  const against = effects.filter(
    ({ cell, against: base }) =>
      base.article === series.baseline.article &&
      cell.article !== base.article &&
      cell.oil === base.oil &&
      cell.tilt_ratio === base.tilt_ratio &&
      Math.abs(base.fill_m3 - series.baseline.fill_m3) <= series.tolerance.fill_m3,
  );
  const subjects = groups(
    against,
    (e) => `${e.cell.article}|${e.cell.oil}|${e.cell.tilt_ratio}|${e.cell.campaign ?? ''}`,
  );
  return subjects.flatMap((own) => choicesOf(own, series).flatMap(told));
}

interface Choice {
  readonly choice: Depends['choice'];
  readonly options: readonly Effect[];
}

function choicesOf(own: readonly Effect[], series: Series): Choice[] {
  const atSpeed = ({ at }: Effect): boolean =>
    at.outputSpeed_rad_s === undefined ||
    Math.abs(at.outputSpeed_rad_s / series.reference.outputSpeed_rad_s - 1) <= series.tolerance.outputSpeed_ratio;
  const main = ({ at }: Effect): boolean =>
    typeof at.sump_K === 'number' && Math.abs(at.sump_K - series.reference.mainSump_K) < 0.01;
  const spin = own.filter((e) => e.quantity === 'spin-power' && atSpeed(e));
  const rise = own.filter((e) => e.quantity === 'final-rise');
  const byFill = (list: readonly Effect[]): (readonly Effect[])[] => groups(list, (e) => e.cell.fill_m3.toFixed(6));
  const common = spin.filter(main);
  const ownTemperature = spin.filter(({ at }) => at.sump_K === 'own');
  return [
    ...byFill(own.filter((e) => e.quantity === 'limit-crossing')).map((options): Choice => ({
      choice: 'limit',
      options,
    })),
    ...byFill([...common, ...ownTemperature]).map((options): Choice => ({ choice: 'temperature', options })),
    // One quantity under one condition, at every fill it was run with.
    ...groups([...common, ...rise], (e) => `${e.quantity}|${atKey(e.at)}`).map((options): Choice => ({
      choice: 'fill',
      options,
    })),
    ...byFill([...common, ...rise]).map((options): Choice => ({ choice: 'quantity', options })),
  ];
}

/** A choice with one option is none. */
function told({ choice, options }: Choice): Depends[] {
  const [first] = options;
  if (first === undefined || options.length < 2) return [];
  const apart = options.filter(({ separated }) => separated);
  const turns = apart.some(({ estimate }) => estimate.value > 0) && apart.some(({ estimate }) => estimate.value < 0);
  if (!turns && (apart.length === 0 || apart.length === options.length)) return [];
  const { article, oil, tilt_ratio } = first.cell;
  return [{ article, oil, tilt_ratio, choice, kind: turns ? 'turns' : 'in one only', options }];
}

/** In the order of first appearance. */
function groups<T>(list: readonly T[], key: (item: T) => string): T[][] {
  const found = new Map<string, T[]>();
  for (const item of list) found.set(key(item), [...(found.get(key(item)) ?? []), item]);
  return [...found.values()];
}
