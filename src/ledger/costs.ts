import type { ComparedSeries } from '../trial/compared.ts';
import type { Series } from '../trial/book.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { writeNumber } from '../quantity/write.ts';
import { filesOfRuns } from './files.ts';
import type { SheetFigure } from './oils.ts';

/** What differences in spin power come to over the duty of the series: from the battery or the socket, or as fuel. */
export const costFigures = (record: SeriesRecord, compared: ComparedSeries): SheetFigure[] =>
  compared.costs.flatMap((cost): SheetFigure[] => {
    const { duty } = record.series;
    if (cost.energy === null || duty === null) return [];
    const shared = {
      subject: { cell: cost.cell, against: cost.against },
      file: record.series.file,
      files: [record.series.file, ...filesOfRuns(record, cost.runs)],
      at: { sump_K: cost.sump_K },
      method: 'compare/cost',
      given: [],
      notes: [`duty: ${dutyWords(duty)}`, 'spun without load, and taken as the same under load', ...cost.outside],
    };
    const relation = cost.drive === 'electric' ? 'electric-per-distance' : 'energy-per-distance';
    return [
      { ...shared, quantity: 'energy-cost', estimate: cost.energy, relation },
      ...(cost.fuel === null
        ? []
        : [{ ...shared, quantity: 'fuel-cost' as const, estimate: cost.fuel, relation: 'fuel-per-distance' }]),
    ];
  });

/** "30 % of the time at 15 km/h, 70 % at 50 km/h" */
export const dutyWords = ({ mix }: NonNullable<Series['duty']>): string =>
  mix
    .map(
      ({ share, speed_m_s }, i) =>
        `${writeNumber(share * 100, 0)} %${i === 0 ? ' of the time' : ''} at ${writeNumber(speed_m_s * 3.6, 0)} km/h`,
    )
    .join(', ');
