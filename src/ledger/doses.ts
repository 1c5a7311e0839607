import { combine, standardUncertainty, type Estimate } from '../quantity/estimate.ts';
import type { At, DerivedRun, Result } from '../trial/derived.ts';
import { quantityKinds, shown, shownDifference } from '../trial/figures.ts';
import type { Run } from '../trial/run.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { filesOfRuns } from './files.ts';
import { figureId, type Naming } from './ids.ts';
import type { SheetFigure } from './oils.ts';

/** One charge of an oil: what went in at one refit of one article, and the runs that it saw, in their order. */
export interface Charge {
  readonly id: string;
  readonly article: string;
  readonly refit: number;
  readonly runs: readonly Run[];
}

const quantity = 'thermal-dose';

/** The charges of an oil in a series, as far as notes let tell: runs of one article and refit share one. In order of the runs. */
export function chargesOf(runs: readonly Run[], oil: string): Charge[] {
  const charges = new Map<string, Run[]>();
  const own = runs.filter((run) => run.oil === oil).sort((a, b) => a.order - b.order);
  for (const run of own) {
    const id = `${run.article}-${run.refit}`;
    charges.set(id, [...(charges.get(id) ?? []), run]);
  }
  return [...charges].map(([id, list]) => ({ id, article: list[0]!.article, refit: list[0]!.refit, runs: list }));
}

export const hasDose = (run: DerivedRun | undefined): boolean => run?.results.some(isDose) === true;

/** Hours by band of each oil over all its runs, and of each charge that saw more than one run: of one run they are its own. */
export function doseFigures(
  record: SeriesRecord,
  runs: ReadonlyMap<string, DerivedRun>,
  naming: Naming,
): SheetFigure[] {
  return [...record.oils.values()].flatMap((oil): SheetFigure[] => {
    const logged = record.runs.filter((run) => run.oil === oil.id && hasDose(runs.get(run.id)));
    const charges = chargesOf(logged, oil.id);
    const all = [
      { over: logged, at: {}, notes: [sumsOver(logged.length, charges.length)] },
      ...charges
        .filter((charge) => charge.runs.length > 1)
        .map((charge) => ({ over: charge.runs, at: { charge: charge.id }, notes: [] })),
    ];
    return all.flatMap(({ over, at, notes }) =>
      bandsOf(over, runs).map((band): SheetFigure => {
        const found = over.flatMap((run) => resultsAt(runs.get(run.id), band).map((result) => ({ run, result })));
        return {
          subject: { oil: oil.id },
          file: oil.file,
          files: [
            oil.file,
            ...filesOfRuns(
              record,
              found.map(({ run }) => run.id),
            ),
          ],
          ...{ quantity, at: { ...band, ...at }, estimate: sumOf(found.map(({ result }) => result.estimate!)) },
          ...{ relation: quantity, method: 'dose/sum-over-runs', notes: [...notes, ...notesOf(found)] },
          given: found.map(({ run, result }, i) => ({
            symbol: `t${i + 1}`,
            name: `run ${run.id}`,
            value: shown(quantity, result.estimate!.value),
            u: shownDifference(quantity, standardUncertainty(result.estimate!)) || null,
            unit: quantityKinds[quantity].unit,
            from: { kind: 'figure', id: figureId({ subject: { run: run.id }, quantity, at: result.at }, naming) },
          })),
        };
      }),
    );
  });
}

/** What one number per band hides unless it is said. */
const sumsOver = (runs: number, charges: number): string =>
  charges === 1
    ? `sums over ${runs} ${runs === 1 ? 'run' : 'runs'} of one charge`
    : `sums over ${runs} runs of ${charges} charges, one for each refit of an article: no drop of the oil saw all of it`;

const isDose = (result: Result): boolean => result.quantity === quantity && result.estimate !== null;

const resultsAt = (run: DerivedRun | undefined, { band_K }: At): Result[] =>
  run?.results.filter((result) => isDose(result) && sameBand(result.at.band_K, band_K)) ?? [];

const sameBand = (a: At['band_K'], b: At['band_K']): boolean =>
  a === undefined || b === undefined ? a === b : Math.abs(a[0] - b[0]) < 1;

/** None for the whole, then every band that one of the runs entered, coldest first. */
function bandsOf(over: readonly Run[], runs: ReadonlyMap<string, DerivedRun>): At[] {
  const entered = over
    .flatMap((run) => runs.get(run.id)?.results.filter(isDose) ?? [])
    .flatMap((result) => result.at.band_K ?? []);
  const edges = [...new Set(entered.filter((_, i) => i % 2 === 0).map((edge) => Math.round(edge * 100)))];
  if (over.length === 0) return [];
  return [{}, ...edges.sort((a, b) => a - b).map((edge): At => ({ band_K: [edge / 100, (edge + 1000) / 100] }))];
}

/** Runs of one probe err alike, so that their doubts add up. */
const sumOf = (list: readonly Estimate[]): Estimate =>
  combine(
    list.reduce((sum, { value }) => sum + value, 0),
    list.map((of) => ({ of, sensitivity: 1 })),
  );

/** Notes of the runs, each once: those of some runs only say of which. */
function notesOf(found: readonly { readonly run: Run; readonly result: Result }[]): string[] {
  const notes = [...new Set(found.flatMap(({ result }) => result.notes))];
  return notes.map((note) => {
    const of = found.filter(({ result }) => result.notes.includes(note));
    return of.length === found.length ? note : `in ${of.map(({ run }) => run.id).join(', ')}: ${note}`;
  });
}
