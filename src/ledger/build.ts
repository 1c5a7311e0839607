import { writeNumber } from '../quantity/write.ts';
import { effectiveDof, standardUncertainty, type Cause, type CauseTable, type Estimate } from '../quantity/estimate.ts';
import { coverageFactor } from '../statistics/student.ts';
import type { ByTrials, CellFigure, ComparedSeries, Effect } from '../trial/compared.ts';
import type { DerivedRun, Given, Result } from '../trial/derived.ts';
import { quantityKinds, shown, shownDifference, withinNature, type QuantityName } from '../trial/figures.ts';
import type { SeriesRecord } from '../trial/series.ts';
import type { Figure } from './figure.ts';
import { conditionsOf, figureId, subjectOf, type FigureName, type Naming } from './ids.ts';
import { budgetOf } from './budget.ts';
import type { Ledger, Working } from './ledger.ts';
import { isGrade, notUsable } from './agreements.ts';
import { correctionSteps } from './correction-steps.ts';
import { byTrialsNote, effectNotes } from './effect-notes.ts';
import type { SheetFigure } from './oils.ts';
import { sheetFigures } from './sheets.ts';

/**
 * The only home of numbers: every result of a run, every figure of a cell and every effect becomes a figure with its id,
 * interval, inputs and working, in the canonical unit of its quantity. Figures are sorted by id.
 */
export function buildLedger(input: {
  record: SeriesRecord;
  runs: ReadonlyMap<string, DerivedRun>;
  compared: ComparedSeries;
  /** SHA-256 of every file of the book, by path. */
  sums: ReadonlyMap<string, string>;
  /** False when the rig sheet is held back: then no figure of it stands in the ledger. */
  rigShown: boolean;
}): Ledger {
  const { record, runs, compared, rigShown } = input;
  const naming = namingOf(record);
  const sheets = sheetFigures({ record, runs, compared, naming, rigShown });
  const causes: CauseTable = new Map(
    [...compared.causes, ...sheets.flatMap((s) => s.causes ?? [])].map((c): [string, Cause] => [c.id, c]),
  );
  const make = maker({ ...input, naming, causes });
  const made = [
    ...[...runs.values()].flatMap((run) =>
      // Its working lays the geometry of the rig sheet open.
      run.results.filter((r) => rigShown || r.quantity !== 'loss-estimate').map((r) => make.ofRun(run, r)),
    ),
    ...compared.cells.map(make.ofCell),
    ...compared.effects.map(make.ofEffect),
    ...sheets.map(make.ofSheet),
  ];
  const byId = new Map<string, Figure>();
  const workings = new Map<string, Working>();
  for (const { figure, working } of [...made].sort((a, b) => (a.figure.id < b.figure.id ? -1 : 1))) {
    // A condition that a plan names twice, such as 60 °C and 140 °F, is one condition.
    if (byId.has(figure.id)) continue;
    byId.set(figure.id, figure);
    workings.set(figure.id, working);
  }
  return { series: record.series.id, methodVersion: record.series.method, figures: [...byId.values()], byId, workings };
}

export const namingOf = (record: SeriesRecord): Naming => ({
  reference: { fill_m3: record.series.baseline.fill_m3, oil: record.series.baseline.oil },
  speed: record.rig.kind === 'gearbox_bench' ? 'output-speed' : 'wheel-speed',
});

interface Made {
  readonly figure: Figure;
  readonly working: Working;
}

function maker(input: {
  record: SeriesRecord;
  runs: ReadonlyMap<string, DerivedRun>;
  compared: ComparedSeries;
  sums: ReadonlyMap<string, string>;
  naming: Naming;
  causes: CauseTable;
}) {
  const { record, runs, compared, sums, naming, causes } = input;
  const coverage = record.series.coverage;
  const file = (path: string) => ({ file: path, sha256: sums.get(path) ?? '' });
  const filesOf = (ids: readonly string[]) =>
    [
      ...new Set(
        ids.flatMap((id) => {
          const run = record.runs.find((r) => r.id === id);
          return run === undefined ? [] : [run.file, ...(record.logs.has(id) ? [record.logs.get(id)!.file] : [])];
        }),
      ),
    ].map(file);

  /** Captions that a grade was written in. */
  const gradedIn = (run: DerivedRun, quantity: QuantityName) =>
    isGrade(quantity)
      ? [...new Set(run.flow?.steps.flatMap((s) => s.observations.map((o) => o.place.file)))]
          .filter((path) => !path.endsWith('.md'))
          .map(file)
      : [];

  /** Value, interval and budget of an estimate in the unit it is shown in. Where no cause is known there is no interval. */
  const numbers = (quantity: QuantityName, e: Estimate, isDifference: boolean, trials: ByTrials | null) => {
    const toShown = isDifference ? shownDifference : shown;
    const u_SI = standardUncertainty(e);
    const dof = effectiveDof(e, causes);
    const k = coverageFactor(coverage, dof);
    const value = toShown(quantity, e.value);
    const u = shownDifference(quantity, u_SI);
    const ends = (of: readonly [number, number]) =>
      withinNature(quantity, [toShown(quantity, of[0]), toShown(quantity, of[1])]);
    const linear = withinNature(quantity, [value - k * u, value + k * u]);
    const published = trials === null || trials.agrees ? linear : ends(trials.interval);
    const known = Number.isFinite(k * u) && (e.parts.length > 0 || byDefinition.has(quantity));
    return {
      value,
      interval: known ? published : ([null, null] as const),
      k: known ? (trials === null || trials.agrees ? k : (published[1] - published[0]) / 2 / u) : null,
      dof: known && Number.isFinite(dof) ? dof : null,
      u: known ? u : null,
      budget: budgetOf(quantity, e, causes),
      trials:
        trials === null || compared.seed === null
          ? null
          : {
              ...trials,
              interval: ends(trials.interval),
              u: trials.u === null ? null : shownDifference(quantity, trials.u),
              linear,
              seed: compared.seed,
            },
    };
  };

  const build = (name: FigureName, e: Estimate | null, rest: RestOf): Made => {
    const { quantity, subject, at } = name;
    const cell = 'cell' in subject ? subject.cell : null;
    const isDifference = ('cell' in subject && subject.against !== undefined) || at.sample !== undefined;
    const n = e === null ? null : numbers(quantity, e, isDifference, rest.trials ?? null);
    const edge = rest.bound === null ? null : shown(quantity, rest.bound.at);
    const id = figureId(name, naming);
    const figure: Figure = {
      id,
      kind: isDifference ? 'difference' : 'value',
      quantity,
      subject: subjectOf(subject),
      at: conditionsOf(at, cell, naming),
      value: n?.value ?? null,
      unit: quantity === 'final-temperature' && isDifference ? 'K' : quantityKinds[quantity].ucum,
      bound: rest.bound?.side ?? null,
      interval:
        n?.interval ?? bandOf(quantity, rest.band) ?? (rest.bound?.side === 'above' ? [edge, null] : [null, edge]),
      coverage,
      k: n?.k ?? null,
      dof: n?.dof ?? null,
      class: rest.class,
      ...(rest.separated === undefined ? {} : { separated: rest.separated }),
      inputs: rest.inputs,
      relation: rest.relation,
      method: rest.method,
      notes: n?.trials?.agrees === false ? [...rest.notes, byTrialsNote] : rest.notes,
    };
    return {
      figure,
      working: {
        ...{ figure: id, given: rest.given, steps: rest.steps },
        ...{ budget: n?.budget ?? [], trials: n?.trials ?? null, u: n?.u ?? null },
      },
    };
  };

  const named = (given: Given): Given =>
    given.from.kind !== 'result'
      ? given
      : {
          ...given,
          from: {
            kind: 'figure',
            id: figureId(
              { subject: { run: given.from.run }, quantity: given.from.quantity, at: given.from.at },
              naming,
            ),
          },
        };

  /** The figures a mean or a difference is made of, as what is given. */
  const fromFigure = (symbol: string, says: string, name: FigureName, e: Estimate | null): Given => {
    const kind = quantityKinds[name.quantity];
    return {
      symbol,
      name: says,
      value: e === null ? NaN : shown(name.quantity, e.value),
      u: e === null ? null : shownDifference(name.quantity, standardUncertainty(e)),
      unit: kind.unit,
      from: { kind: 'figure', id: figureId(name, naming) },
    };
  };
  const runResult = (id: string, quantity: QuantityName, at: Result['at']): Estimate | null =>
    runs.get(id)?.results.find((r) => r.quantity === quantity && sameAt(r.at, at))?.estimate ?? null;

  return {
    ofRun: (run: DerivedRun, r: Result): Made =>
      build({ subject: { run: run.run }, quantity: r.quantity, at: r.at }, r.estimate, {
        bound: r.bound,
        ...(r.band === undefined ? {} : { band: r.band }),
        class: r.class,
        inputs: [
          ...filesOf([run.run]),
          ...gradedIn(run, r.quantity),
          ...(r.quantity === 'loss-estimate' ? [file(record.rig.file)] : []),
        ],
        relation: r.relation,
        method: r.method,
        notes: withNote(r.notes, notUsable(compared.agreements, r.quantity)),
        given: r.given.map(named),
        steps: r.steps,
      }),
    ofCell: (c: CellFigure): Made =>
      build({ subject: { cell: c.cell }, quantity: c.quantity, at: c.at }, c.estimate, {
        bound: c.bound,
        class: 'derived from measurement',
        inputs: filesOf([...c.runs, ...(c.moved ?? []).flatMap(({ runs: by }) => by)]),
        relation: 'mean-of-refits',
        method: 'compare/cell-mean',
        notes: c.notes,
        given: c.runs.map((id, i) =>
          fromFigure(
            `y${i + 1}`,
            `run ${id}`,
            { subject: { run: id }, quantity: c.quantity, at: c.at },
            runResult(id, c.quantity, c.at),
          ),
        ),
        steps: correctionSteps(c),
      }),
    ofEffect: (e: Effect): Made =>
      build({ subject: { cell: e.cell, against: e.against }, quantity: e.quantity, at: e.at }, e.estimate, {
        bound: null,
        class: 'derived from measurement',
        separated: e.separated,
        trials: e.trials,
        inputs: filesOf([...e.runs, ...e.againstRuns, ...(e.moved ?? []).flatMap(({ runs: by }) => by)]),
        relation: 'difference',
        method: 'compare/effect-against-baseline',
        notes: effectNotes(e),
        given: [],
        steps: [
          ...correctionSteps({ quantity: e.quantity, ...(e.moved === undefined ? {} : { moved: e.moved }) }),
          {
            says: 'Half-width of the simultaneous interval against the baseline that decides whether it is separated',
            formula: `d·u, d = ${writeNumber((e.simultaneous[1] - e.simultaneous[0]) / 2 / standardUncertainty(e.estimate), 2)} (Dunnett)`,
            value: shownDifference(e.quantity, (e.simultaneous[1] - e.simultaneous[0]) / 2),
            unit: quantityKinds[e.quantity].unit,
          },
        ],
      }),
    ofSheet: (o: SheetFigure): Made =>
      build({ subject: o.subject, quantity: o.quantity, at: o.at }, o.estimate, {
        bound: null,
        trials: o.trials ?? null,
        ...(o.band === undefined ? { class: 'derived from measurement' } : { band: o.band, class: 'model estimate' }),
        inputs: (o.files ?? [o.file]).map(file),
        relation: o.relation,
        method: o.method ?? 'sheet/data',
        notes: o.notes ?? [],
        given: o.given,
        steps: [],
      }),
  };
}

const bandOf = (quantity: QuantityName, band: Result['band']) =>
  band === undefined ? null : ([shown(quantity, band.low), shown(quantity, band.high)] as const);

const withNote = (notes: readonly string[], note: string | null): readonly string[] =>
  note === null ? notes : [...notes, note];

/** Counted or chosen, not measured: exact without a cause. */
const byDefinition: ReadonlySet<QuantityName> = new Set(['gear-ratio', 'ring-speed', 'pinion-speed']);

interface RestOf {
  readonly bound: Result['bound'];
  readonly band?: NonNullable<Result['band']>;
  readonly class: Figure['class'];
  readonly separated?: boolean;
  readonly trials?: ByTrials | null;
  readonly inputs: Figure['inputs'];
  readonly relation: string;
  readonly method: string;
  readonly notes: readonly string[];
  readonly given: readonly Given[];
  readonly steps: Working['steps'];
}

const sameAt = (a: Result['at'], b: Result['at']): boolean =>
  a.outputSpeed_rad_s === b.outputSpeed_rad_s &&
  a.sump_K === b.sump_K &&
  a.limit_K === b.limit_K &&
  a.basis === b.basis &&
  a.band_K?.[0] === b.band_K?.[0] &&
  a.direction === b.direction;
