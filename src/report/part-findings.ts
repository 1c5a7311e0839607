import type { Finding } from '../finding/finding.ts';
import type { SeriesInput } from './input.ts';
import { movedIn } from './part.ts';
import { refFindings } from './part-refs.ts';
import { isOut, partsOf } from './parts-view.ts';
import { plain } from './spans.ts';
import * as say from './texts-parts.ts';
import { viewOf } from './view.ts';

/** What is wrong in the words of parts, once the figures stand; the house is told, the public build only asks whether it may. */
export function partFindings(input: SeriesInput): Finding[] {
  if (input.audience === 'public' || input.record.parts.length === 0) return [];
  const view = viewOf(input);
  const about = { series: view.series.id };
  return partsOf(view).flatMap((part) => [
    ...refFindings(view, part).map((finding) => ({ ...finding, about })),
    ...(isOut(part)
      ? movedIn(view, part).flatMap(({ what, id, then, now, untold }): Finding[] => {
          const ref = part.refs.find(({ target }) => target === id);
          return untold && ref !== undefined
            ? [
                {
                  ...say.movedUntold(part, what, then, now === null ? 'not told' : plain([now])),
                  place: ref.place,
                  about,
                },
              ]
            : [];
        })
      : []),
  ]);
}
