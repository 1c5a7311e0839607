import { describe, expect, it } from 'vitest';
import { readNotes } from '../../../src/notes/book.ts';
import { noteKinds } from '../../../src/notes/json-schema.ts';
import { noteExamples } from '../../../src/report/guide-examples.ts';
import { guidePage } from '../../../src/report/guide.ts';
import { plain } from '../../../src/report/spans.ts';

const noteOf = (yaml: string): string => `---\n${yaml}\n---\nAs seen.\n`;
const example = (kind: string): string => noteExamples.find((note) => note.kind === kind)!.yaml;

describe('the guide', () => {
  it('shows notes that make a book without an error, as they stand', () => {
    const files = {
      ...Object.fromEntries(noteExamples.map(({ file, yaml }) => [file, noteOf(yaml)])),
      'pan-depth/articles/A0.md': noteOf(
        example('article').replace('id: A1', 'id: A0').replace('role: candidate', 'role: baseline'),
      ),
      'pan-depth/runs/S-01.csv': 't_s;n_in;tq_in;T_sump\n0;1118,2;2,1;60,0\n',
    };
    const { findings, series } = readNotes(
      Object.entries(files).map(([path, text]) => ({ path, bytes: new TextEncoder().encode(text), sha256: path })),
    );
    const all = [...findings, ...series.flatMap((s) => s.findings)];
    expect(all.filter(({ level }) => level !== 'notice')).toEqual([]);
    expect(series.flatMap(({ runs }) => runs.map(({ id }) => id))).toEqual(['S-01']);
  });

  it('explains every field that a note can have', () => {
    const tables = guidePage().sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'fold' ? block.blocks : [])),
    );
    for (const [name, kind] of Object.entries(noteKinds)) {
      const [table] = tables.flatMap((b) => (b.kind === 'table' && b.table.id === `fields-${name}` ? [b.table] : []));
      const fields = table?.rows.map(({ cells }) => plain(cells[0] ?? [])) ?? [];
      expect(fields, name).toEqual(expect.arrayContaining(Object.keys(kind.fields)));
    }
    expect(JSON.stringify(tables)).toContain('fill.mass-in');
  });
});
