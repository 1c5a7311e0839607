import { combine, standardUncertainty } from '../quantity/estimate.ts';
import { density_kg_m3 } from '../physics/density.ts';
import { filmChange } from '../physics/film-ratio.ts';
import { alphaByViscosity_1_Pa } from '../physics/pressure-viscosity.ts';
import { outsideRange } from '../physics/relation.ts';
import { logLogLine, viscosityAt_m2_s, viscosityRelation } from '../physics/viscosity.ts';
import type { CellFigure, Effect } from '../trial/compared.ts';
import type { FilmRatio } from '../trial/consequences.ts';
import type { Oil } from '../trial/oil.ts';
import { cellKey } from './group.ts';

/** Of a line contact, beside those of a point in the relation: what the shape of the contact leaves open. */
const lineExponents = { viscosity: 0.7, alpha: 0.54 } as const;

/**
 * Films of an article against those of the baseline, each at its own running temperature and in the same oil. The exponents
 * of a line contact instead of a point stand for what the contact leaves open; pressure–viscosity, roughness and load are
 * common to both and nearly cancel. How far the metal is above the sump is taken as equal.
 */
export function filmRatios(of: {
  readonly effects: readonly Effect[];
  readonly cells: readonly CellFigure[];
  readonly oils: ReadonlyMap<string, Oil>;
}): FilmRatio[] {
  const finals = new Map(
    of.cells.filter((c) => c.quantity === 'final-temperature').map((c) => [cellKey(c.cell), c.estimate]),
  );
  return of.effects.flatMap((effect): FilmRatio[] => {
    const { cell, against, quantity, runs, againstRuns } = effect;
    if (quantity !== 'final-temperature' || cell.oil !== against.oil) return [];
    const oil = of.oils.get(cell.oil);
    const [own, base] = [finals.get(cellKey(cell)), finals.get(cellKey(against))];
    if (oil === undefined || own == null || base == null) return [];
    const ratio = filmAt(oil, own.value, base.value);
    const [hotter, baseHotter] = [filmAt(oil, own.value + 1, base.value), filmAt(oil, own.value, base.value + 1)];
    if (ratio === null || hotter === null || baseHotter === null) return [];
    const doubt = combine(0, [
      { of: own, sensitivity: hotter.point - ratio.point },
      { of: base, sensitivity: baseHotter.point - ratio.point },
    ]);
    const half = 2 * Math.hypot(standardUncertainty(doubt), (ratio.line - ratio.point) / Math.sqrt(3));
    return [
      {
        ...{ cell, against, low: ratio.point - half, high: ratio.point + half },
        perKelvin: hotter.point / ratio.point - 1,
        outside: [own, base].flatMap(({ value }) =>
          outsideRange(viscosityRelation, { nu40_m2_s: oil.nu40_m2_s, nu100_m2_s: oil.nu100_m2_s, oil_K: value }),
        ),
        runs: [...new Set([...runs, ...againstRuns])],
      },
    ];
  });
}

/** Film over film for a point and for a line; null where the oil has no viscosity there. */
function filmAt(oil: Oil, own_K: number, base_K: number): { readonly point: number; readonly line: number } | null {
  const [own, base] = [own_K, base_K].map((oil_K) => stateAt(oil, oil_K));
  if (own == null || base == null) return null;
  const viscosity_ratio = own.viscosity_Pa_s / base.viscosity_Pa_s;
  const alpha_ratio = own.alpha_1_Pa / base.alpha_1_Pa;
  const point = filmChange({
    ...{ viscosity1_Pa_s: base.viscosity_Pa_s, viscosity2_Pa_s: own.viscosity_Pa_s },
    ...{ alpha1_1_Pa: base.alpha_1_Pa, alpha2_1_Pa: own.alpha_1_Pa },
  });
  return point === null
    ? null
    : { point, line: viscosity_ratio ** lineExponents.viscosity * alpha_ratio ** lineExponents.alpha };
}

function stateAt(oil: Oil, oil_K: number): { readonly viscosity_Pa_s: number; readonly alpha_1_Pa: number } | null {
  const line = logLogLine(oil);
  const nu_m2_s = line === null ? null : viscosityAt_m2_s({ line, oil_K });
  if (nu_m2_s === null || !(nu_m2_s > 0)) return null;
  const viscosity_Pa_s = nu_m2_s * density_kg_m3({ ...oil, oil_K });
  const alpha_1_Pa = alphaByViscosity_1_Pa({ viscosity_Pa_s });
  return alpha_1_Pa === null ? null : { viscosity_Pa_s, alpha_1_Pa };
}
