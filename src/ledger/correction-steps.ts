import type { CellFigure } from '../trial/compared.ts';
import { writeNumber } from '../quantity/write.ts';
import type { Step, ToLoad } from '../trial/derived.ts';
import { quantityKinds, shownDifference } from '../trial/figures.ts';

/** How the runs of a cell were brought to load, speed and ambient of the series and to its first campaign, line by line in that order. */
export const correctionSteps = (of: Pick<CellFigure, 'corrections' | 'moved' | 'quantity'>): Step[] => [
  ...runSteps(of),
  ...(of.moved ?? []).map(({ campaign, by }): Step => ({
    says: `Added to the runs of ${campaign}: the baseline before it, less the baseline in it`,
    formula: 'ȳ₁ − ȳ₂',
    value: shownDifference(of.quantity, by),
    unit: quantityKinds[of.quantity].unit === '°C' ? 'K' : quantityKinds[of.quantity].unit,
  })),
];

const runSteps = ({ corrections = [], quantity }: Pick<CellFigure, 'corrections' | 'quantity'>): Step[] =>
  corrections.flatMap(({ run, from_K, ambient_K, stated, slope_W_K, answer, by, toLoad }): Step[] => [
    ...(toLoad === null ? [] : loadSteps(run, toLoad)),
    {
      says: `Ambient of the last half hour of ${run}, less the ${stated ? 'reference ambient of the series' : 'mean ambient of the loaded runs'}`,
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

const loadSteps = (run: string, of: ToLoad): Step[] => [
  {
    says: `Spin power of the cell of ${run} at its own temperature; the rest of its heat is mesh loss`,
    formula: 'S',
    value: of.spin_W,
    unit: 'W',
  },
  {
    says: `Load of the plan over that of ${run}: heat added at its own temperature`,
    formula: '(Q − S)·(M_ref/M − 1)',
    value: of.byLoad_W,
    unit: 'W',
  },
  {
    says: `Speed of the plan over that of ${run}: heat added at its own temperature`,
    formula: `(Q − S)·(M_ref/M)·(ω_ref/ω − 1) + S·[(ω_ref/ω)^p − 1], p = ${writeNumber(of.exponent, 2)}`,
    value: of.bySpeed_W,
    unit: 'W',
  },
];

const formulas: Readonly<Partial<Record<CellFigure['quantity'], string>>> = {
  'final-rise': 'ΔQ/(K − s) + ΔT_a·[1 − K/(K − s)]',
  'final-temperature': 'ΔQ/(K − s) − ΔT_a·K/(K − s)',
  'heat-made': '(ΔQ − s·ΔT_a)·K/(K − s)',
};
