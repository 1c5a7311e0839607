import { estimate, exact, type Cause, type Estimate, type Part } from '../quantity/estimate.ts';
import type { PlusMinus } from '../quantity/quantity.ts';
import { density_kg_m3, densityRelation } from '../physics/density.ts';
import { outsideRange } from '../physics/relation.ts';
import { logLogLine, viscosityAt_m2_s, viscosityRelation } from '../physics/viscosity.ts';
import { reportedIndex, viscosityIndex } from '../physics/viscosity-index.ts';
import type { ByTrials } from '../trial/compared.ts';
import type { At, Given } from '../trial/derived.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { Oil } from '../trial/oil.ts';
import type { SeriesRecord } from '../trial/series.ts';
import type { FigureSubject } from './ids.ts';

/** A number worked out from data of a sheet, without a run. */
export interface SheetFigure {
  readonly subject: FigureSubject;
  readonly file: string;
  /** Everything it rests on, where that is more than its own file. */
  readonly files?: readonly string[];
  readonly method?: string;
  readonly notes?: readonly string[];
  readonly quantity: QuantityName;
  readonly at: At;
  /** Null where it is only a band. */
  readonly estimate: Estimate | null;
  readonly band?: { readonly low: number; readonly high: number };
  readonly relation: string;
  readonly given: readonly Given[];
  readonly causes?: readonly Cause[];
  /** Where trials were run through a relation that is not linear. */
  readonly trials?: ByTrials | null;
}

/** Viscosity at the reference temperatures of the series and 100 °C, density there, and the viscosity index. */
export function oilFigures(record: SeriesRecord): SheetFigure[] {
  const temperatures = [...new Set([...record.series.reference.sump_K, 373.15])];
  return [...record.oils.values()].flatMap((oil): SheetFigure[] => {
    const given = [dataGiven(oil, 40), dataGiven(oil, 100)];
    const shared = { subject: { oil: oil.id }, file: oil.file, given, causes: causesOf(oil) };
    const viscosities = temperatures.flatMap((sump_K): SheetFigure[] => {
      const nu = viscosityWith(oil, (o) => lineAt(o, sump_K));
      return nu === null
        ? []
        : [
            {
              ...{ ...shared, quantity: 'viscosity', at: { sump_K }, estimate: nu, relation: 'viscosity-log-log' },
              notes: outsideRange(viscosityRelation, { ...viscositiesOf(oil), oil_K: sump_K }),
            },
          ];
    });
    const densities = temperatures.map((sump_K): SheetFigure => ({
      ...shared,
      quantity: 'density',
      at: { sump_K },
      estimate: exact(density_kg_m3({ ...oil, oil_K: sump_K })),
      relation: 'density-linear',
      notes: outsideRange(densityRelation, {
        ...{ density15_kg_m3: oil.density15_kg_m3, expansion_1_K: oil.expansion_1_K, oil_K: sump_K },
      }),
    }));
    const index = viscosityWith(oil, (o) => viscosityIndex(o));
    return [
      ...viscosities,
      ...densities,
      ...(index === null
        ? []
        : [
            {
              ...shared,
              quantity: 'viscosity-index' as const,
              at: {},
              estimate: { ...index, value: reportedIndex(index.value) },
              relation: 'viscosity-index',
            },
          ]),
    ];
  });
}

const viscositiesOf = ({ nu40_m2_s, nu100_m2_s }: Oil) => ({ nu40_m2_s, nu100_m2_s });

const lineAt = (oil: Oil, oil_K: number): number | null => {
  const line = logLogLine(oil);
  return line === null ? null : viscosityAt_m2_s({ line, oil_K });
};

/** A figure of an oil with what the stated ± of its two viscosities does to it; without a ± the note claims none. */
function viscosityWith(oil: Oil, of: (oil: Oil) => number | null): Estimate | null {
  const value = of(oil);
  if (value === null) return null;
  const parts = ([40, 100] as const).flatMap((at): Part[] => {
    const u = uncertaintyAt(oil, at);
    const key = at === 40 ? 'nu40_m2_s' : 'nu100_m2_s';
    const moved = u === 0 ? value : of({ ...oil, [key]: oil[key] + u });
    return u === 0 || moved === null ? [] : [{ cause: causeId(oil, at), u: moved - value }];
  });
  return estimate(value, parts);
}

const uncertaintyAt = (oil: Oil, at: 40 | 100): number => standard(at === 40 ? oil.nu40PlusMinus : oil.nu100PlusMinus);

const standard = (stated: PlusMinus | undefined): number =>
  stated === undefined ? 0 : stated.value / (stated.k ?? Math.sqrt(3));

const causeId = (oil: Oil, at: 40 | 100): string => `viscosity:${oil.id}:${at}`;

const causesOf = (oil: Oil): Cause[] =>
  ([40, 100] as const)
    .filter((at) => uncertaintyAt(oil, at) > 0)
    .map((at) => ({
      id: causeId(oil, at),
      name: `viscosity of ${oil.id} at ${at} °C`,
      kind: 'offset',
      distribution: (at === 40 ? oil.nu40PlusMinus : oil.nu100PlusMinus)?.k == null ? 'rectangular' : 'normal',
      dof: Infinity,
      scope: 'series',
    }));

const dataGiven = (oil: Oil, at: 40 | 100): Given => {
  const path = `viscosity.at-${at}`;
  const u = uncertaintyAt(oil, at);
  return {
    symbol: `ν${at}`,
    name: 'kinematic viscosity of the oil sheet',
    value: (at === 40 ? oil.nu40_m2_s : oil.nu100_m2_s) * 1e6,
    u: u === 0 ? null : u * 1e6,
    unit: 'mm²/s',
    from: {
      kind: 'note',
      place: oil.places.get(path) ?? { file: oil.file, line: 1, column: 1 },
      typed: oil.typed.get(path) ?? '',
    },
  };
};
