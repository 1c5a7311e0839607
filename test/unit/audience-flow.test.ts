import { describe, expect, it } from 'vitest';
import { publicPart, type Shown } from '../../src/audience.ts';
import { readNotes } from '../../src/notes/book.ts';
import { F01, goodMedia, spoilFlow, vtt } from './notes/flow-book.ts';
import { asFiles, type Files } from './notes/good-book.ts';

/** The flow book with articles and oils for the public; F-01 as given. */
const open = (files: Files): Files =>
  Object.fromEntries(
    Object.entries(files).map(([path, text]) => [
      path,
      /(articles|oils)\//.test(path) && typeof text === 'string'
        ? text.replace('---\n', '---\nshown-to: public\n')
        : text,
    ]),
  );

function shown(files: Files): Shown {
  const one = readNotes(asFiles(open(files)), goodMedia).series[0]!;
  return publicPart({ ...one, logs: new Map() }, one.findings)!;
}

const judged = spoilFlow(vtt, 'words: single drops', 'words: fine drops');
const hidden = (files: Files): Files => spoilFlow(F01, 'shown-to: public\n', '', files);

describe('the public part of a flow trial', () => {
  it('keeps what is found in the captions of a run that is shown', () => {
    expect(shown(judged).findings.map((f) => [f.code, f.place.file])).toContainEqual(['word-not-plain', vtt]);
  });

  it('has neither observations, stills and clips of a hidden run nor what was found in its captions', () => {
    const part = shown(hidden(judged));
    expect(part.record.runs.map(({ id }) => id)).toEqual(['S-07']);
    expect(JSON.stringify([part.findings, part.stops])).not.toMatch(/F-01|K7|drops/);
  });

  it('is stopped by a spoilt cue of a run that is shown, and not by one of a hidden run', () => {
    const spoilt = spoilFlow(vtt, 'reach 2', 'reach 5');
    expect(shown(spoilt).findings.map((f) => `${f.level} ${f.code}`)).toContain('error grade-off-scale');
    const part = shown(hidden(spoilt));
    expect([...part.findings, ...part.stops].filter(({ code }) => code === 'grade-off-scale')).toEqual([]);
  });

  it('does not pass on what is said of a shown run when that names a hidden one', () => {
    const twice = hidden(spoilFlow(F01, 'order: 1\n', 'order: 19\n'));
    const house = readNotes(asFiles(open(twice)), goodMedia).series[0]!.findings;
    expect(house.map((f) => `${f.code} ${f.place.file}`)).toContain('order-twice hill-bowl/runs/S-07.md');
    expect(house.find((f) => f.code === 'order-twice')?.says).toContain('F-01');
    expect(shown(twice).findings.map((f) => f.code)).not.toContain('order-twice');
  });

  it('is stopped by a captions file that is named after who observed, since its name would stand in the ledger', () => {
    const named = (head: string): Files => {
      const { [vtt]: content, ...rest } = spoilFlow(F01, 'captions: F-01.vtt', 'captions: K7-A.vtt');
      const files = { ...rest, [vtt.replace('F-01.vtt', 'K7-A.vtt')]: content! };
      return head === 'house' ? hidden(files) : files;
    };
    const told = (part: Shown) =>
      [...part.findings, ...part.stops].filter(({ code }) => code === 'captions-name-tells').map(({ level }) => level);
    expect(told(shown(named('public')))).toEqual(['error']);
    expect(told(shown(named('house')))).toEqual([]);
  });
});
