import { describe, expect, it } from 'vitest';
import { readNotes } from '../../../src/notes/book.ts';
import { noteKinds } from '../../../src/notes/json-schema.ts';
import { noteExamples } from '../../../src/report/guide-examples.ts';
import { flowCaptions, flowNote } from '../../../src/report/guide-flow.ts';
import { coolDownNote, heatUpNote } from '../../../src/report/guide-heat.ts';
import { guideChapters } from '../../../src/report/guide-pages.ts';
import { guidePage } from '../../../src/report/guide.ts';
import type { Block } from '../../../src/report/page.ts';
import { plain } from '../../../src/report/spans.ts';

const noteOf = (yaml: string): string => `---\n${yaml}\n---\nAs seen.\n`;
const example = (kind: string): string => noteExamples.find((note) => note.kind === kind)!.yaml;
const blocksOf = ({ sections }: ReturnType<typeof guidePage>): Block[] =>
  sections.flatMap(({ blocks }) => blocks.flatMap((block) => [block, ...(block.kind === 'fold' ? block.blocks : [])]));

describe('the guide', () => {
  it('is a first page that leads to ten, and each of them to the next', () => {
    const chapters = guideChapters();
    expect(chapters).toHaveLength(10);
    const to = (page: unknown): string[] =>
      [...JSON.stringify(page).matchAll(/"to":"(guide\/[a-z-]+\/)"/g)].map(([, path]) => path!);
    expect(to(guidePage())).toEqual(chapters.map(({ path }) => path));
    for (const [at, page] of chapters.slice(0, -1).entries()) expect(to(page).at(-1)).toBe(chapters[at + 1]!.path);
  });

  it('shows notes that make a book without an error, as they stand', () => {
    const files = {
      ...Object.fromEntries(noteExamples.map(({ file, yaml }) => [file, noteOf(yaml)])),
      'pan-depth/articles/A0.md': noteOf(
        example('article').replace('id: A1', 'id: A0').replace('role: candidate', 'role: baseline'),
      ),
      'pan-depth/runs/S-01.csv': 't_s;n_in;tq_in;T_sump\n0;1118,2;2,1;60,0\n',
      [flowNote.file]: noteOf(flowNote.yaml),
      [flowCaptions.file]: flowCaptions.text,
      ...Object.fromEntries([heatUpNote, coolDownNote].map(({ file, yaml }) => [file, noteOf(yaml)])),
      'pan-depth/runs/H-01.csv': 't_s;n_in;tq_in;T_sump\n0;1118,2;2,1;20,0\n',
      'pan-depth/runs/K-01.csv': 't_s;n_in;tq_in;T_sump\n0;0;0,0;80,0\n',
      'pan-depth/runs/F-01.csv': 't_s;n_in;T_sump;z;what\n0;0;40,0;-70;\n12;0;40,0;-70;sync\n',
    };
    // an eight by eight PNG, as its first bytes say
    const head = new Uint8Array([
      ...[0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52, 0, 0, 0, 8, 0, 0, 0, 8],
      ...[8, 2, 0, 0, 0, 0x4b, 0x6d, 0x29, 0xdc],
    ]);
    const { findings, series } = readNotes(
      Object.entries(files).map(([path, text]) => ({ path, bytes: new TextEncoder().encode(text), sha256: path })),
      [{ path: 'pan-depth/pictures/F-01-200.png', size: 900, head, sha256: null }],
    );
    const all = [...findings, ...series.flatMap((s) => s.findings)];
    expect(all.filter(({ level }) => level !== 'notice')).toEqual([]);
    expect(series.flatMap(({ runs }) => runs.map(({ id }) => id))).toEqual(['F-01', 'H-01', 'K-01', 'S-01']);
    const flow = series[0]!.runs.find(({ id }) => id === 'F-01')!;
    expect(flow.observations.map(({ observer, pass }) => `${observer} ${pass}`)).toEqual([
      ...['R first', 'R first', 'R first', 'K first', 'K first', 'K+R joint'],
    ]);
    expect(flow.stills).toHaveLength(1);
    expect(flow.settle).toHaveLength(2);
  });

  it('explains every field that a note can have', () => {
    const tables = guideChapters().flatMap(blocksOf);
    for (const [name, kind] of Object.entries(noteKinds)) {
      const [table] = tables.flatMap((b) => (b.kind === 'table' && b.table.id === `fields-${name}` ? [b.table] : []));
      const fields = table?.rows.map(({ cells }) => plain(cells[0] ?? [])) ?? [];
      expect(fields, name).toEqual(expect.arrayContaining(Object.keys(kind.fields)));
    }
    expect(JSON.stringify(tables)).toContain('fill.mass-in');
  });
});
