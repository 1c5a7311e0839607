import type { Finding } from '../finding/finding.ts';
import { hasSettled, lastMove_ratio } from '../trial/break-in.ts';
import type { Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import * as say from './texts-state.ts';

/** A state of the rig that had not settled, and yet has runs: they may have gained by being later. One finding a state. */
export function breakInFindings(rig: Rig, runs: readonly Run[], series: string): Finding[] {
  return rig.states.flatMap((state, i): Finding[] => {
    const { breakIn, settled } = state;
    const used = runs.filter((run) => run.rigState === state.id && run.status !== 'draft').length;
    if (breakIn === null || settled !== false || used === 0) return [];
    const moved = breakIn.loads
      .filter((load) => !hasSettled(load, breakIn))
      .reduce((a, b) => (Math.abs(lastMove_ratio(b)) > Math.abs(lastMove_ratio(a)) ? b : a));
    return [
      {
        ...say.notSettled({ state: state.id, runs: used, load: moved, within_ratio: breakIn.settledWithin_ratio }),
        place: rig.places.get(`states.${i}.break-in`) ?? { file: rig.file, line: 1, column: 1 },
        about: { series },
      },
    ];
  });
}
