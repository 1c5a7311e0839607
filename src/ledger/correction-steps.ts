import type { CellFigure } from '../trial/compared.ts';
import type { Step } from '../trial/derived.ts';
import { quantityKinds, shownDifference } from '../trial/figures.ts';

/** How the runs of a cell were brought to the reference ambient, line by line. */
export const correctionSteps = ({ corrections = [], quantity }: CellFigure): Step[] =>
  corrections.flatMap(({ run, from_K, ambient_K, stated, slope_W_K, answer, by }): Step[] => [
    {
      says: `Ambient that ${run} felt, less the ${stated ? 'reference ambient of the series' : 'mean ambient of the loaded runs'}`,
      formula: 'ΔT_a = T_a − T_a,ref',
      value: from_K - ambient_K,
      unit: 'K',
    },
    { says: `Slope of heat made that ${run} measured`, formula: 's = dQ/dT', value: slope_W_K, unit: 'W/K' },
    { says: 'Kelvin of final temperature for one of ambient', formula: 'K/(K − s)', value: answer, unit: '1' },
    {
      says: `Added to ${run}`,
      formula: formulas[quantity] ?? '',
      value: shownDifference(quantity, by),
      unit: quantityKinds[quantity].unit === '°C' ? 'K' : quantityKinds[quantity].unit,
    },
  ]);

const formulas: Readonly<Partial<Record<CellFigure['quantity'], string>>> = {
  'final-rise': 'ΔT_a·[1 − K/(K − s)]',
  'final-temperature': '−ΔT_a·K/(K − s)',
  'heat-made': '−s·ΔT_a·K/(K − s)',
};
