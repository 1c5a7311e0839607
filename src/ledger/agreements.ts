import { exact } from '../quantity/estimate.ts';
import type { Agreement } from '../trial/compared.ts';
import type { Given } from '../trial/derived.ts';
import { gradeKinds, type GradeKind } from '../trial/flow.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { SeriesRecord } from '../trial/series.ts';
import type { SheetFigure } from './oils.ts';

/** How far observers agree, a figure a kind of grade and pair of observers. */
export function agreementFigures(record: SeriesRecord, agreements: readonly Agreement[]): SheetFigure[] {
  const graded = record.runs.filter((run) => run.observations.length > 0);
  const files = [
    ...new Set(graded.flatMap((run) => [run.file, ...run.observations.map(({ place }) => place.file)])),
  ].sort();
  return agreements.flatMap((agreement): SheetFigure[] => {
    const at = { grade: agreement.grade, observers: nameOf(record, agreement) };
    const shared = {
      subject: { series: record.series.id },
      file: record.series.file,
      files,
      at,
      method: 'flow/agreement',
    };
    const shares = (['equal', 'withinOne'] as const).map((which): SheetFigure => ({
      ...shared,
      quantity: which === 'equal' ? 'grades-equal' : 'grades-within-one',
      estimate: exact(agreement[which] / agreement.n),
      relation: 'share-of-pairs',
      given: [count('pairs that agree', agreement[which]), count('pairs of grades', agreement.n)],
    }));
    return [
      ...(agreement.n === 0 ? [] : shares),
      ...(agreement.kappa === null
        ? []
        : [
            {
              ...shared,
              quantity: 'kappa' as const,
              estimate: agreement.kappa,
              relation: 'weighted-kappa',
              given: [count('pairs of grades', agreement.n)],
              notes: [
                'the interval takes pairs as independent; steps of one run are not, so that it is rather too narrow',
              ],
            },
          ]),
    ];
  });
}

/** Initials belong to the house: a figure says "1-2" for the first and the second of the observers' names in order. */
export function nameOf(record: SeriesRecord, { observers }: Pick<Agreement, 'observers'>): string {
  const all = observersOf(record);
  return observers.map((name) => String(all.indexOf(name) + 1)).join('-');
}

/** Everybody who graded on their own, in order of their names. */
export const observersOf = (record: SeriesRecord): readonly string[] =>
  [
    ...new Set(record.runs.flatMap((run) => run.observations.filter((o) => o.pass === 'first').map((o) => o.observer))),
  ].sort();

/**
 * Why grades of a kind may not be used: two observers do not agree well enough by the rule of the series. Null: they may.
 * A pair of which nothing can be said, such as a guest's one step, speaks neither for nor against the others.
 */
export function notUsable(agreements: readonly Agreement[], quantity: QuantityName): string | null {
  if (!isGrade(quantity)) return null;
  const own = agreements.filter(({ grade }) => grade === quantity);
  if (own.length === 0) return 'one observer alone: no step was graded by two on their own';
  const telling = own.filter(({ kappa, n, withinOne }) => kappa !== null || withinOne < n);
  const failed = (telling.length === 0 ? own : telling).find(({ usable }) => !usable);
  return failed === undefined ? null : `not usable: ${failed.why}`;
}

export const isGrade = (quantity: QuantityName): quantity is GradeKind =>
  (gradeKinds as readonly string[]).includes(quantity);

const count = (name: string, value: number): Given => ({
  symbol: 'n',
  name,
  value,
  u: null,
  unit: '1',
  from: { kind: 'constant', text: 'counted' },
});
