import type { Finding } from '../finding/finding.ts';
import type { Change, Correction, Objection } from '../trial/amendment.ts';
import type { Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import type { AmendmentNote } from './amendment.ts';
import { namesOf, stranger } from './check-series.ts';
import { foundAt, type Gathered, withEffect } from './gather.ts';
import * as say from './texts-amendment.ts';

/** Corrections in the order they were published, objections in the order they came. */
export function parted(
  { records }: Gathered<AmendmentNote>,
  taken: readonly string[],
): {
  readonly corrections: readonly Correction[];
  readonly objections: readonly Objection[];
} {
  const names = new Set(taken.map((name) => name.toLowerCase()));
  const all = [...records.values()].filter(({ id }) => !names.has(id.toLowerCase()));
  const by = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
  return {
    corrections: all
      .filter((one) => one.note === 'correction')
      .sort((a, b) => by(a.publishedOn, b.publishedOn) || by(a.id, b.id)),
    objections: all
      .filter((one) => one.note === 'objection')
      .sort((a, b) => by(a.received, b.received) || by(a.id, b.id)),
  };
}

/** A correction that names what the series does not have is left out whole: half of one would be a third version. */
export const standingCorrections = (corrections: readonly Correction[], runs: Gathered<Run>): readonly Correction[] =>
  corrections.filter(({ changes }) =>
    changes.every((change) => change.run === null || (runs.records.has(change.run) && hasField(change, runs))),
  );

const hasField = (change: Change, runs: Gathered<Run>): boolean =>
  change.kind !== 'field' || runs.records.get(change.run)?.typed.has(change.field) === true;

export function checkAmendments(
  amendments: Gathered<AmendmentNote>,
  around: {
    readonly runs: Gathered<Run>;
    readonly rig: Rig | null;
    readonly folder: string;
    readonly taken: readonly string[];
  },
): Finding[] {
  const { runs, rig } = around;
  const about = { series: around.folder };
  const instruments = rig?.instruments.map(({ id }) => id) ?? [];
  const twice = [...amendments.records.values()].flatMap((one) => {
    const same = around.taken.find((name) => name.toLowerCase() === one.id.toLowerCase());
    return same === undefined ? [] : [foundAt(one, 'id', say.idTaken(one.id, same))];
  });
  const named = [...amendments.records.values()].flatMap((one) =>
    one.note === 'objection'
      ? []
      : one.changes.flatMap((change, i): Finding[] => {
          const path = `changes.${i}`;
          const run = change.run === null ? [] : stranger(one, `${path}.run`, 'run', change.run, namesOf(runs));
          const instrument =
            change.kind !== 'channel' || change.instrument === null || rig === null
              ? []
              : stranger(one, `${path}.instrument`, 'instrument', change.instrument, instruments);
          const field =
            change.kind !== 'field' || !runs.records.has(change.run) || hasField(change, runs)
              ? []
              : [foundAt(one, `${path}.field`, say.fieldNotThere(change.run, change.field))];
          return [...run, ...instrument, ...field];
        }),
  );
  return withEffect([...amendments.findings, ...twice, ...named], say.amendmentLeftOut, about);
}
