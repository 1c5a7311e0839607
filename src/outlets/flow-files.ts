import { observersOf } from '../ledger/agreements.ts';
import type { SeriesInput } from '../report/input.ts';
import { clipAddresses } from '../report/media-address.ts';
import { captionsOf } from './captions.ts';
import { chaptersOf } from './chapters.ts';
import type { TextFile } from './files.ts';

/** Captions and chapters of every clip of a series, beside the address of the clip, whether the clip itself is there or not. */
export function flowFiles({
  record,
  derived,
  audience,
}: Pick<SeriesInput, 'record' | 'derived' | 'audience'>): TextFile[] {
  const observers = observersOf(record);
  const observerAs = (name: string): string => (audience === 'house' ? name : publicName(name, observers));
  return record.runs.flatMap((run) => {
    const addresses = clipAddresses(record.series.id, run);
    const flow = derived.get(run.id)?.flow ?? null;
    return run.clips.flatMap((clip, i): TextFile[] => [
      { path: addresses[i]!.captions, text: captionsOf({ run, clip, flow, observerAs }) },
      { path: addresses[i]!.chapters, text: chaptersOf({ run: run.id, clip, flow }) },
    ]);
  });
}

/** Initials are for the house. Whoever only looked again jointly is nobody of the first and the second. */
function publicName(name: string, observers: readonly string[]): string {
  const place = observers.indexOf(name);
  return place < 0 ? 'joint' : String(place + 1);
}
