import { describe, expect, it } from 'vitest';
import { publicPart } from '../../src/audience.ts';
import { readNotes } from '../../src/notes/book.ts';
import { asFiles, type Files, goodBook } from './notes/good-book.ts';

const O1 = 'hill-bowl/oils/O1.md';
const sample = (id: string, batch: string, run: string) =>
  `  - { id: ${id}, point: syringe, batch: ${batch}, after-run: ${run}, taken-on: 2026-04-01, results: [] }\n`;
const book = (samples: string, S07: string): Files => ({
  ...Object.fromEntries(
    Object.entries(goodBook).map(([path, text]) => [
      path,
      /(articles|oils)\//.test(path) ? text.replace('---\n', '---\nshown-to: public\n') : text,
    ]),
  ),
  [O1]: goodBook[O1]!.replace('id: O1\n', 'id: O1\nshown-to: public\n').replace(
    'hours-used: 0 h\n',
    `hours-used: 0 h\nsamples:\n${samples}`,
  ),
  'hill-bowl/runs/S-07.md': S07,
});
const open = goodBook['hill-bowl/runs/S-07.md']!;
const held = open.replace('shown-to: public', 'shown-to: house');
const shown = (files: Files) => {
  const one = readNotes(asFiles(files)).series[0]!;
  return publicPart({ ...one, logs: new Map() }, one.findings)!;
};
const both = sample('first-bottle', 'B-0400', 'S-07') + sample('second-bottle', 'B-0400', 'S-08');
const openS08 = (files: Files): Files => ({
  ...files,
  'hill-bowl/runs/S-08.md': files['hill-bowl/runs/S-08.md']!.toString().replace('shown-to: house', 'shown-to: public'),
});

describe('samples in a public build', () => {
  it('are shown with the run that they were drawn after', () => {
    const part = shown(openS08(book(both, open)));
    expect(part.record.oils.get('O1')!.samples.map(({ id }) => id)).toContain('first-bottle');
    expect(part.findings.filter(({ code }) => code === 'sample-without-unused').length).toBeGreaterThan(0);
  });

  it('go with a run that is held back, also as they were typed and in what was found of them', () => {
    const part = shown(openS08(book(both, held)));
    const oil = part.record.oils.get('O1')!;
    expect(oil.samples.map(({ id }) => id)).not.toContain('first-bottle');
    expect(JSON.stringify([...oil.typed, ...oil.places, part.findings, part.stops])).not.toMatch(/first-bottle|S-07/);
    expect(oil.typed.get('batch')).toBe('B-0311');
  });

  it('leave nothing behind where none of them is shown', () => {
    const oil = shown(book(sample('first-bottle', 'B-0311', 'S-07'), held)).record.oils.get('O1')!;
    expect([...oil.typed.keys()].filter((path) => path.startsWith('samples'))).toEqual([]);
  });
});
