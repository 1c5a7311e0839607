import type { Article } from '../trial/article.ts';
import type { TrialKind } from '../trial/plan.ts';
import type { PlannedRun } from '../trial/plan-reach.ts';
import type { ColumnMap, Rig } from '../trial/rig.ts';
import type { RunCard } from '../trial/run-card.ts';
import type { SeriesRecord } from '../trial/series.ts';

type Logging = Pick<RunCard, 'rigState' | 'map' | 'zeros' | 'instruments' | 'ambientPlace' | 'airflow_m_s' | 'tip_z_m'>;

/** What of the rig is read, where, and in which state: as the last run of this kind had it, else as far as the rig sheet decides it. */
export function logging({ cell }: PlannedRun, record: SeriesRecord, article: Article): Logging {
  const { rig, series } = record;
  const map = mapFor(cell.trial, record);
  const named = (map ?? joined(rig.maps)).columns.flatMap(({ is, instrument }) => {
    const found = rig.instruments.find(({ id }) => id === instrument);
    return found === undefined ? [] : [{ is, instrument: found }];
  });
  const sump = named.find(({ is }) => is === 'sump')?.instrument;
  const torque = named.filter(({ instrument }) => instrument.measures === 'torque');
  return {
    rigState: [...rig.states].sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0)).at(-1)?.id ?? null,
    map: map?.id ?? null,
    zeros: needsTorque(cell.trial)
      ? unique(torque.flatMap(({ instrument: { id, zeroPolicy } }) => (zeroPolicy === 'before-after' ? [id] : [])))
      : [],
    instruments: unique(named.map(({ instrument }) => instrument.id)),
    ambientPlace: named.find(({ is }) => is === 'ambient')?.instrument.position ?? null,
    airflow_m_s: cell.trial === 'heat-up' ? series.reference.airflow_m_s : null,
    tip_z_m: sump?.tip_z_m.get(article.id) ?? sump?.tip_z_m.get('other') ?? null,
  };
}

const needsTorque = (trial: TrialKind): boolean => trial === 'spin' || trial === 'heat-up' || trial === 'check';

/** The map that the last run of this kind was logged by; without one, the only map that has the columns it takes. */
function mapFor(trial: TrialKind, { rig, runs }: SeriesRecord): ColumnMap | null {
  const last = runs
    .filter((run) => run.trial === trial && run.log !== null)
    .reduce<(typeof runs)[number] | null>((a, b) => (a === null || b.order > a.order ? b : a), null);
  const used = rig.maps.find(({ id }) => id === last?.log?.map);
  if (used !== undefined) return used;
  const fits = rig.maps.filter((map) =>
    trial === 'flow'
      ? map.columns.some(({ is }) => is === 'level')
      : !needsTorque(trial) || map.columns.some(({ is }) => is === 'torque-in'),
  );
  const [only] = fits.length > 0 ? fits : rig.maps;
  return fits.length === 1 || rig.maps.length === 1 ? (only ?? null) : null;
}

const joined = (maps: Rig['maps']): Pick<ColumnMap, 'columns'> => ({ columns: maps.flatMap(({ columns }) => columns) });
const unique = <T>(list: readonly T[]): T[] => [...new Set(list)];
