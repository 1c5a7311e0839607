import { density_kg_m3, housingStore_J_K, lawOf, oilLaws, oilStore_J_K, settled, type SetUp } from './law.ts';
import { hillGear, spinPower_W, spinTorque_Nm } from './law.ts';
import { levelAt_mm, levelTable } from './levels.ts';
import { still } from './random.ts';
import { limits_C } from './run.ts';
import { hillSpin } from './timeline.ts';
import { heatUp } from './trials.ts';
import { hillLoad } from './verdicts.ts';

/** A cell as it would be with the fill to the gram, no refit effect, 21 °C and 4.0 m/s. */
export function cellTruth(cell: { article: string; oil: string; fill_L: number }) {
  const setUp = nominal(cell);
  const ambient_C = new Float64Array(4501).fill(21);
  const around = { ambient_C, air_m_s: 4, tilt_pct: 0, wander: still };
  const start = { sump_C: 21, skin_C: 21, race_C: 21 };
  const { crossings } = heatUp({ setUp, around }, { length_s: 9000, load: hillLoad, start, limits_C, hubs_Nm: [0, 0] });
  const end = settled(setUp, hillLoad, { air_m_s: 4, ambient_C: 21 });
  return {
    ...{ article: cell.article, fill_L: cell.fill_L, oil: cell.oil, level_mm: setUp.level_mm },
    immersion_mm: setUp.gear.ringRadius_mm + setUp.level_mm,
    spin60_W: hillSpin.steps_rpm.map((wheel_rpm) => spinPower_W(setUp, { wheel_rpm, temp_C: 60 })),
    spin290_Nm: spinTorque_Nm(setUp, { wheel_rpm: 290, temp_C: 60 }),
    crossings_s: limits_C.map((limit) => crossings.get(limit) ?? null),
    ...{ final_C: end.temp_C, rise_K: end.rise_K, heat_W: end.heat_W, shed_W_K: end.heat_W / end.rise_K },
    store_kJ_K: (oilStore_J_K(setUp) + housingStore_J_K(setUp)) / 1000,
  };
}

export function nominal({ article, oil, fill_L }: { article: string; oil: string; fill_L: number }): SetUp {
  const liquid = oilLaws[oil]!;
  return {
    ...{ gear: hillGear, article: lawOf(article), oil: liquid, refit_Nm: 0 },
    level_mm: levelAt_mm(levelTable(article), fill_L),
    oilMass_kg: (fill_L * density_kg_m3(liquid, 20)) / 1000,
  };
}
