import type { ClipData } from './clip-data.ts';

/** A stretch of the clip over which the same observations stand. */
export interface Moment {
  readonly from_s: number;
  readonly to_s: number;
  readonly texts: readonly string[];
}

/** Stretches of a clip with what was said of each; cues of several observers may overlap. Silent stretches are left out. */
export function said(cues: ClipData['cues']): readonly Moment[] {
  const bounds = [...new Set(cues.flatMap(({ from_s, to_s }) => [from_s, to_s]))].sort((a, b) => a - b);
  return bounds.slice(1).flatMap((to_s, i): Moment[] => {
    const from_s = bounds[i]!;
    const here = cues.filter((cue) => cue.from_s <= from_s && to_s <= cue.to_s);
    return here.length === 0 ? [] : [{ from_s, to_s, texts: here.map(({ text }) => text) }];
  });
}

export const saidAt = <T extends Moment>(moments: readonly T[], clip_s: number): T | null =>
  moments.find(({ from_s, to_s }) => from_s <= clip_s && clip_s < to_s) ?? null;
