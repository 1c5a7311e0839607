import { exact, type Estimate } from '../quantity/estimate.ts';
import { density_kg_m3 } from '../physics/density.ts';
import { logLogLine, viscosityAt_m2_s } from '../physics/viscosity.ts';
import { reportedIndex, viscosityIndex } from '../physics/viscosity-index.ts';
import type { At, Given } from '../trial/derived.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { Oil } from '../trial/oil.ts';
import type { SeriesRecord } from '../trial/series.ts';
import type { FigureSubject } from './ids.ts';

/** A number worked out from data of a sheet, without a run. */
export interface SheetFigure {
  readonly subject: FigureSubject;
  readonly file: string;
  readonly quantity: QuantityName;
  readonly at: At;
  readonly estimate: Estimate;
  readonly relation: string;
  readonly given: readonly Given[];
}

/** Viscosity at the reference temperatures of the series and 100 °C, density there, and the viscosity index. */
export function oilFigures(record: SeriesRecord): SheetFigure[] {
  const temperatures = [...new Set([...record.series.reference.sump_K, 373.15])];
  return [...record.oils.values()].flatMap((oil): SheetFigure[] => {
    const line = logLogLine(oil);
    const given = [
      dataGiven(oil, 'viscosity.at-40', 'ν40', oil.nu40_m2_s),
      dataGiven(oil, 'viscosity.at-100', 'ν100', oil.nu100_m2_s),
    ];
    const shared = { subject: { oil: oil.id }, file: oil.file, given };
    const index = viscosityIndex(oil);
    return [
      ...temperatures.flatMap((sump_K): SheetFigure[] => {
        const nu = line === null ? null : viscosityAt_m2_s({ line, oil_K: sump_K });
        return [
          ...(nu === null
            ? []
            : [
                {
                  ...shared,
                  quantity: 'viscosity' as const,
                  at: { sump_K },
                  estimate: exact(nu),
                  relation: 'viscosity-log-log',
                },
              ]),
          {
            ...shared,
            quantity: 'density' as const,
            at: { sump_K },
            estimate: exact(density_kg_m3({ ...oil, oil_K: sump_K })),
            relation: 'density-linear',
          },
        ];
      }),
      ...(index === null
        ? []
        : [
            {
              ...shared,
              quantity: 'viscosity-index' as const,
              at: {},
              estimate: exact(reportedIndex(index)),
              relation: 'viscosity-index',
            },
          ]),
    ];
  });
}

const dataGiven = (oil: Oil, path: string, symbol: string, nu_m2_s: number): Given => ({
  symbol,
  name: 'kinematic viscosity of the oil sheet',
  value: nu_m2_s * 1e6,
  u: null,
  unit: 'mm²/s',
  from: {
    kind: 'note',
    place: oil.places.get(path) ?? { file: oil.file, line: 1, column: 1 },
    typed: oil.typed.get(path) ?? '',
  },
});
