import type { Finding } from '../finding/finding.ts';
import type { Observation } from '../trial/flow.ts';
import type { Run } from '../trial/run.ts';
import { partAt } from './parts.ts';
import { captionsNameTells } from './texts-captions.ts';

/**
 * Captions files whose name says who observed, as K7-A.vtt does: the name of an input stands in the ledger and on sheets,
 * where initials do not. The run's id and the clip's code at its beginning are no initials.
 */
export function namesThatTell(run: Run, observations: readonly Observation[]): Finding[] {
  const people = [...observations.map(({ observer }) => observer), ...run.operators, run.releasedBy ?? ''];
  const letters = new Set(people.flatMap(wordsOf));
  return run.clips.flatMap((clip) => {
    if (clip.captions === null) return [];
    const name = clip.captions.replace(/\.[^.]*$/, '').toLowerCase();
    const own = [run.id, clip.code ?? ''].map((id) => id.toLowerCase()).find((id) => id !== '' && name.startsWith(id));
    const rest = wordsOf(name.slice(own?.length ?? 0));
    return rest.some((word) => letters.has(word)) ? [partAt(run, clip, 'captions', captionsNameTells(run.id))] : [];
  });
}

const wordsOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}_]+/gu) ?? [];
