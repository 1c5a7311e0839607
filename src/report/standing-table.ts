import { cellName } from '../ledger/ids.ts';
import { conditionsOf } from '../ledger/ids.ts';
import type { Standing } from '../trial/compared.ts';
import { cellSpans, cited, inCelsius, quantityWords } from './cite.ts';
import type { Block, Span } from './page.ts';
import { capital, fold, row, tableBlock } from './spans.ts';
import { bearingSpans, isLoss, reachHead, reachSpans } from './supply.ts';
import { effectFigure, shownRows } from './standing-words.ts';
import { groupBy, type View } from './view.ts';

/** The further conditions of one quantity, a fold a temperature: rows are cells, columns are speeds or limits. */
export function otherConditions(view: View, standings: readonly Standing[], id: string): Block[] {
  const groups = groupBy(standings, ({ at }) => conditionsOf(at, null, view.naming).sump ?? '');
  return [...groups]
    .sort(([a], [b]) => sumpOrder(a) - sumpOrder(b))
    .map(([sump, list], i) => compact(view, sump, list, `${id}-more-${String(i + 1)}`));
}

function compact(view: View, sump: string, standings: readonly Standing[], id: string): Block {
  const columns = [...standings].sort((a, b) => columnOrder(a) - columnOrder(b));
  const [first] = columns as [Standing, ...Standing[]];
  const loss = isLoss(first.quantity);
  const cells = new Map(columns.flatMap((s) => shownRows(view, s)).map((r) => [cellName(r.cell), r]));
  return fold(
    `${capital(quantityWords(first.quantity))}${sump === '' ? '' : sump === 'own' ? ' at each one’s own temperature' : `, sump ${inCelsius(sump)}`}: the other conditions`,
    tableBlock(
      id,
      [
        'wide article and fill',
        ...columns.map((s) => `number ${headOf(view, s)}`),
        ...(loss ? [`number ${reachHead(view)}`, 'number pinion bearing above sump'] : []),
      ],
      [...cells].map(([name, example]) => {
        const cells = row(
          cellSpans(view, example.cell),
          ...columns.map((standing): Span[] => {
            const own = shownRows(view, standing).find(({ cell }) => cellName(cell) === name);
            const figure = own?.effect ? effectFigure(view, own.effect) : undefined;
            if (figure === undefined) return [own?.baseline === true ? `0 ${own.letters}` : '—'];
            return [cited(view, figure), ` ${own?.letters ?? ''}`];
          }),
          ...(loss ? [reachSpans(view, example.cell), bearingSpans(view, example)] : []),
        );
        return example.baseline ? { ...cells, role: 'baseline' as const } : cells;
      }),
      'Less the baseline, ± half a 95 % interval, and the group: rows that share a letter in a column are not separated.',
    ),
  );
}

function headOf(view: View, { at }: Standing): string {
  const conditions = conditionsOf(at, null, view.naming);
  const speed = conditions['wheel-speed'] ?? conditions['output-speed'];
  return speed?.replace(' rpm', ` ${view.speed}`) ?? inCelsius(conditions.limit ?? 'difference');
}

const columnOrder = ({ at }: Standing): number => at.outputSpeed_rad_s ?? at.limit_K ?? 0;
const sumpOrder = (sump: string): number => (sump === 'own' ? 1e9 : Number.parseFloat(sump) || 0);
