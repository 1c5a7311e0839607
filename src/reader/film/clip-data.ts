import type { ClipView } from '../../report/page.ts';

/** What the page says of a clip, in its `clip-data`. */
export type ClipData = Pick<ClipView, 'pieces' | 'steps' | 'cues'> & { readonly captionsLabel: string };

/** Null for what is no such data: the clip then plays as it is. */
export function readClipData(json: string): ClipData | null {
  try {
    const data = JSON.parse(json) as Partial<ClipData> | null;
    if (data === null || typeof data !== 'object') return null;
    const { pieces, steps, cues, captionsLabel } = data;
    if (!Array.isArray(pieces) || !Array.isArray(steps) || !Array.isArray(cues)) return null;
    return { pieces, steps, cues, captionsLabel: typeof captionsLabel === 'string' ? captionsLabel : '' };
  } catch {
    return null;
  }
}
