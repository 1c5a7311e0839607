import { mean, standardUncertainty, type Estimate } from '../quantity/estimate.ts';
import { overallRatio } from '../physics/speeds.ts';
import type { CellFigure, ComparedSeries, Effect } from '../trial/compared.ts';
import type { Cell, DerivedRun } from '../trial/derived.ts';
import { quantityKinds } from '../trial/figures.ts';
import { ownAxle, referenceCase } from '../compare/own-axle.ts';
import type { AxleAnswer, AxleData, LoadedCell, Spread, SpunCell, SpunPoint } from '../trial/own-axle.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { namingOf } from './build.ts';
import { figureId, sameCell, type FigureName, type Naming } from './ids.ts';
import type { Ledger } from './ledger.ts';

interface From {
  readonly record: SeriesRecord;
  readonly runs: ReadonlyMap<string, DerivedRun>;
  readonly compared: ComparedSeries;
  readonly ledger: Ledger;
}

/** What the page of a reader's own axle carries, and its answer for the series' own case; null where nothing was spun level. */
export function ownAxleOf(from: From): { readonly data: AxleData; readonly reference: AxleAnswer } | null {
  const data = axleData(from);
  return data === null ? null : { data, reference: ownAxle(data, referenceCase(data)) };
}

function axleData(from: From): AxleData | null {
  const { record, compared } = from;
  const { series, rig, plan } = record;
  const level = compared.cells.filter(
    ({ cell, estimate }) => cell.tilt_ratio === 0 && cell.campaign === undefined && estimate !== null,
  );
  const spun = spunCells(from, level);
  // A gear box drives no wheel: there is no road speed to bring it to.
  if (spun.length === 0 || rig.kind === 'gearbox_bench') return null;
  const ids = new Set(spun.map(({ article }) => article));
  const { ambient_K, airflow_m_s } = series.reference;
  const load = plan?.load ?? null;
  const stated = load !== null && ambient_K !== null && airflow_m_s !== null;
  return {
    baseline: series.baseline,
    articles: [...record.articles.values()]
      .filter(({ id }) => ids.has(id))
      .map(({ id, name, maxSump_K }) => ({ id, name, maxSump_K })),
    oils: [...record.oils.values()]
      .filter(({ id }) => spun.some(({ oil }) => oil === id))
      .map(({ id, name, nu40_m2_s, nu100_m2_s, maxSump_K }) => ({ id, name, nu40_m2_s, nu100_m2_s, maxSump_K })),
    ratio: overallRatio(rig),
    radius_m: rig.rollingRadius_m,
    sump_K: series.reference.mainSump_K,
    wheel_rad_s: load?.outputSpeed_rad_s ?? series.reference.outputSpeed_rad_s,
    load: stated ? { speed_rad_s: load.outputSpeed_rad_s, power_W: load.powerOut_W, ambient_K, airflow_m_s } : null,
    tolerance: {
      fill_m3: series.tolerance.fill_m3,
      airflow_m_s: series.tolerance.airflow_m_s,
      ambient_K: series.tolerance.ambient_K,
      speed_ratio: series.tolerance.outputSpeed_ratio,
    },
    drive: series.duty?.drive ?? 'electric',
    driveEfficiency: series.duty?.driveEfficiency ?? 1,
    spun,
    loaded: stated ? loadedCells(from, level) : [],
  };
}

function spunCells(from: From, level: readonly CellFigure[]): SpunCell[] {
  const naming = namingOf(from.record);
  const points = level.flatMap((c): { cell: Cell; point: SpunPoint }[] => {
    const { cell, quantity, at } = c;
    const { outputSpeed_rad_s: speed_rad_s, sump_K } = at;
    if (quantity !== 'spin-power' || speed_rad_s === undefined || typeof sump_K !== 'number') return [];
    const power = published(from.ledger, { subject: { cell }, quantity, at }, naming);
    if (power === null) return [];
    const effect = againstBaseline(from, c);
    const less = effect && published(from.ledger, { subject: effect, quantity, at }, naming);
    const indicative = effect !== undefined && effect.indicative.length > 0;
    return [{ cell, point: { speed_rad_s, sump_K, power, less: less ?? null, indicative } }];
  });
  return byCell(points).map(({ cell, list }) => ({
    ...{ article: cell.article, oil: cell.oil, fill_m3: cell.fill_m3 },
    points: list.map(({ point }) => point),
  }));
}

/** The same litres of the same oil in the baseline article. */
const againstBaseline = ({ record, compared }: From, { cell, quantity, at }: CellFigure): Effect | undefined =>
  compared.effects.find(
    (e) =>
      e.quantity === quantity &&
      e.at.outputSpeed_rad_s === at.outputSpeed_rad_s &&
      e.at.sump_K === at.sump_K &&
      sameCell(e.cell, cell) &&
      sameCell(e.against, { ...cell, article: record.series.baseline.article }),
  );

function loadedCells(from: From, level: readonly CellFigure[]): LoadedCell[] {
  const naming = namingOf(from.record);
  return level.flatMap((c): LoadedCell[] => {
    const { cell, quantity, at } = c;
    const final = published(from.ledger, { subject: { cell }, quantity, at }, naming);
    if (quantity !== 'final-temperature' || final === null) return [];
    return [
      {
        ...{ article: cell.article, oil: cell.oil, fill_m3: cell.fill_m3 },
        ...{ final, moves: movesOf(from, level, c) },
      },
    ];
  });
}

/** What the runs of a cell measured of their own answer to load, speed and ambient: means over its runs. */
function movesOf({ runs }: From, level: readonly CellFigure[], { cell, runs: ids }: CellFigure): LoadedCell['moves'] {
  const loaded = ids.flatMap((id) => runs.get(id) ?? []);
  const spun = [...runs.values()].filter((d) => d.trial === 'spin' && d.leftOut === null && sameCell(d.cell, cell));
  const found = (quantity: CellFigure['quantity'], sump?: 'own'): Estimate | null =>
    level.find((c) => c.quantity === quantity && c.at.sump_K === sump && sameCell(c.cell, cell))?.estimate ?? null;
  const [made, shed, spin] = [found('heat-made'), found('shed'), found('spin-power', 'own')];
  const slope = meanOf(loaded.flatMap((d) => d.heatSlope_W_K ?? []));
  const exponent = meanOf(spun.flatMap((d) => d.spinExponent ?? []));
  if (made === null || shed === null || slope === null || spin === null || exponent === null) return null;
  const u = standardUncertainty;
  return {
    ...{ made_W: made.value, spin_W: spin.value, exponent: exponent.value },
    ...{ shed_W_K: shed.value, slope_W_K: slope.value },
    u: { made_W: u(made), spin_W: u(spin), exponent: u(exponent), shed_W_K: u(shed), slope_W_K: u(slope) },
  };
}

const meanOf = (list: readonly Estimate[]): Estimate | null => (list.length === 0 ? null : mean(list));

/** A figure as published, back in SI with half of its interval. */
function published(ledger: Ledger, name: FigureName, naming: Naming): Spread | null {
  const figure = ledger.byId.get(figureId(name, naming));
  if (figure === undefined || figure.value === null) return null;
  const [low, high] = figure.interval;
  if (low === null || high === null) return null;
  const { factor, zero } = quantityKinds[name.quantity];
  return {
    value: figure.value * factor + (figure.kind === 'difference' ? 0 : zero),
    half: ((high - low) / 2) * factor,
  };
}

function byCell<T extends { readonly cell: Cell }>(items: readonly T[]): { cell: Cell; list: T[] }[] {
  const groups: { cell: Cell; list: T[] }[] = [];
  for (const item of items) {
    const group = groups.find(({ cell }) => sameCell(cell, item.cell));
    if (group) group.list.push(item);
    else groups.push({ cell: item.cell, list: [item] });
  }
  return groups;
}
