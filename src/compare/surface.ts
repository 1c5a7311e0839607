import { bareSurfaceBand, bareSurfaceRelation, castingSpread, type Limits } from '../physics/bare-surface.ts';
import { outsideRange } from '../physics/relation.ts';
import type { CellFigure } from '../trial/compared.ts';
import type { SurfaceShed } from '../trial/consequences.ts';
import type { Series } from '../trial/book.ts';
import type { Rig } from '../trial/rig.ts';
import type { Areas } from './cover-share.ts';
import { cellKey } from './group.ts';
import * as texts from './texts-surface.ts';

/** From shiny machined metal to paint and cast black; no note says which (from memory). */
const emissivity: Limits = { low: 0.1, high: 0.95 };
/** Across the air a housing is no less than its ring gear, and rarely half as large again (common practice, no source). */
const housingOverGear: Limits = { low: 1, high: 1.5 };
const pressure_Pa = 101_325;

/**
 * What the bare surface of the whole axle, and that of the article alone, would shed by published laws, in W/K, for each cell
 * with a final temperature. The metal outside is taken as warm as the sump: a kelvin of rise is what both are a quotient by.
 */
export function surfaceSheds(of: {
  readonly cells: readonly CellFigure[];
  readonly series: Pick<Series, 'reference' | 'tolerance'>;
  readonly rig: Pick<Rig, 'ringRadius_m'>;
  readonly areas: Areas;
}): SurfaceShed[] {
  const { reference, tolerance } = of.series;
  const shed = new Map(of.cells.filter((c) => c.quantity === 'shed').map((c) => [cellKey(c.cell), c.estimate]));
  const rise = new Map(of.cells.filter((c) => c.quantity === 'final-rise').map((c) => [cellKey(c.cell), c.estimate]));
  return of.cells.flatMap((c): SurfaceShed[] => {
    const { cell, quantity, estimate, runs } = c;
    const [measured, above] = [shed.get(cellKey(cell)), rise.get(cellKey(cell))];
    if (quantity !== 'final-temperature' || estimate === null || measured == null || above == null) return [];
    const own_m2 = of.areas.article_m2(cell.article);
    const missing = [
      ...(own_m2 === null ? [texts.noArticleArea(cell.article)] : []),
      ...(of.areas.axle_m2 === null ? [texts.noAxleArea] : []),
      ...(reference.airflow_m_s === null ? [texts.noAir] : []),
    ];
    if (own_m2 === null || of.areas.axle_m2 === null || reference.airflow_m_s === null)
      return [{ cell, whole: null, own: null, share: null, untold: missing.join(', '), outside: [], runs }];
    const air_m_s = {
      low: Math.max(0, reference.airflow_m_s - tolerance.airflow_m_s),
      high: reference.airflow_m_s + tolerance.airflow_m_s,
    };
    const at = { surface_K: estimate.value, ambient_K: estimate.value - above.value, air_m_s };
    const own = conductance(own_m2, of.rig.ringRadius_m, at);
    return [
      {
        ...{ cell, own, runs, untold: null },
        whole: conductance(of.areas.axle_m2, of.rig.ringRadius_m, at),
        share: own && { low: own.low / measured.value, high: own.high / measured.value },
        outside: outsideRange(bareSurfaceRelation, {
          ...{ ...at, area_m2: own_m2, diameter_m: 2 * of.rig.ringRadius_m, pressure_Pa, spread: castingSpread },
          ...{ air_m_s: reference.airflow_m_s, emissivity: emissivity.high },
        }),
      },
    ];
  });
}

/** The band over both ends of the size across the air. */
function conductance(
  area_m2: number,
  gearRadius_m: number,
  at: { readonly surface_K: number; readonly ambient_K: number; readonly air_m_s: Limits },
): Limits | null {
  const bands = [housingOverGear.low, housingOverGear.high].map((times) =>
    bareSurfaceBand({ ...at, area_m2, diameter_m: 2 * gearRadius_m * times, pressure_Pa, emissivity }),
  );
  const [a, b] = bands;
  if (a == null || b == null) return null;
  return { low: Math.min(a.low_W_K, b.low_W_K), high: Math.max(a.high_W_K, b.high_W_K) };
}
