import type { Figure } from '../ledger/figure.ts';
import { rpm } from '../ledger/ids.ts';
import { cited, inCelsius } from './cite.ts';
import type { Block, Span } from './page.ts';
import { row, tableBlock } from './spans.ts';
import { celsius } from './traces.ts';
import { groupBy, type View } from './view.ts';

/** The spin power that a sheet leads with: at the reference speed and the main temperature. */
export function mainPower(view: View, powers: readonly Figure[]): Figure | undefined {
  const { outputSpeed_rad_s, mainSump_K } = view.series.reference;
  const wanted = Number(rpm(outputSpeed_rad_s));
  const atSpeed = powers.filter(({ at }) => speedOf(at) === wanted);
  return (
    atSpeed.find(({ at }) => at.sump === `${String(Math.round(celsius(mainSump_K) * 10) / 10)} Cel`) ??
    atSpeed[0] ??
    powers[0]
  );
}

/** "290 rpm" → 290 */
export function speedOf(at: Figure['at']): number | null {
  const text = at['wheel-speed'] ?? at['output-speed'];
  return text === undefined ? null : Number.parseFloat(text);
}

/** Rows are speeds, columns temperatures. */
export function steppedTable(
  view: View,
  figures: readonly Figure[],
  id: string,
  caption: string,
  written: typeof cited = cited,
): Block[] {
  if (figures.length === 0) return [];
  const temperatures = [...groupBy(figures, ({ at }) => at.sump ?? '').keys()];
  const speeds = [...groupBy(figures, ({ at }) => String(speedOf(at)))];
  return [
    tableBlock(
      id,
      [`number ${view.speed}`, ...temperatures.map((sump) => `number ${headOf(sump)}`)],
      speeds.map(([speed, list]) =>
        row(
          speed,
          ...temperatures.map((sump): Span[] => list.filter(({ at }) => at.sump === sump).map((f) => written(view, f))),
        ),
      ),
      caption,
    ),
  ];
}

export const headOf = (sump: string): string => (sump === 'own' ? 'own temperature' : inCelsius(sump));
