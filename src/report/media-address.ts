import type { Run } from '../trial/run.ts';

/** Addresses below the site's root of a clip and of the text files beside it. */
export interface ClipAddresses {
  readonly clip: string;
  readonly captions: string;
  readonly chapters: string;
}

/**
 * Addresses of the clips of a run, in their order. A clip goes by its code, so that graders learn nothing from its address,
 * or by its run; further clips of that name are counted.
 */
export function clipAddresses(series: string, run: Pick<Run, 'id' | 'clips'>): readonly ClipAddresses[] {
  const used = new Map<string, number>();
  return run.clips.map(({ code, file }) => {
    const name = plain(code ?? run.id);
    const count = (used.get(name) ?? 0) + 1;
    used.set(name, count);
    const address = `series/${series}/clips/${name}${count === 1 ? '' : `-${String(count)}`}`;
    return { clip: address + endingOf(file), captions: `${address}.vtt`, chapters: `${address}.chapters.txt` };
  });
}

/** Address of a still, without size and ending. */
export const stillAddress = (series: string, file: string): string =>
  `series/${series}/stills/${plain(file.replace(/\.[^.]*$/, ''))}`;

/** One part of an address, whatever was typed. */
const plain = (name: string): string => name.replaceAll(/[/\\]|^\.+/g, '-');

const endingOf = (file: string): string => (/\.[a-z0-9]+$/i.exec(file)?.[0] ?? '').toLowerCase();
