import { describe, expect, it } from 'vitest';
import { readNotes } from '../../../src/notes/book.ts';
import { asFiles, goodBook } from './good-book.ts';
import { outcome, placed, spoil } from './spoilt.ts';

const S07 = 'hill-bowl/runs/S-07.md';
const rig = 'hill-bowl/rig.md';

describe('a good book', () => {
  const { notes, loud } = outcome(goodBook);
  const [series] = notes.series;

  it('gives no findings above notice', () => {
    expect(loud).toEqual([]);
    expect(notes.series.map((s) => s.series.id)).toEqual(['hill-bowl']);
  });

  it('becomes records by id, in the order of their files', () => {
    expect([...(series?.articles.keys() ?? [])]).toEqual(['P0', 'P0w', 'P1']);
    expect([...(series?.oils.keys() ?? [])]).toEqual(['O1']);
    expect(series?.runs.map((run) => run.id)).toEqual(['S-07', 'S-08']);
    expect(series?.plan?.cells).toHaveLength(2);
    expect(notes.book?.lab).toBe('Quillstone Axle Room');
  });

  it('reads the same whatever the order of the files', () => {
    expect(readNotes(asFiles(goodBook).reverse())).toEqual(notes);
  });

  it('reads the same with CRLF line ends and byte order marks, and the places stay', () => {
    const crlf = Object.fromEntries(
      Object.entries(goodBook).map(([path, text]) => [path, `\uFEFF${text.replaceAll('\n', '\r\n')}`]),
    );
    expect(readNotes(asFiles(crlf)).series).toEqual(notes.series);
  });

  it('lends the level table of one article to those that name it', () => {
    expect(series?.articles.get('P1')?.levelTable).toEqual(series?.articles.get('P0')?.levelTable);
  });
});

describe('what becomes of the rest when one note is spoilt', () => {
  it('a spoilt run is left out alone, and its finding says so', () => {
    const { loud, runs, notes } = outcome(spoil(S07, 'article: P1', 'article: Q9'));
    expect(runs).toEqual(['S-08']);
    expect(loud[0]?.effect).toBe('This run is left out of the series.');
    expect(loud[0]?.about).toEqual({ series: 'hill-bowl', run: 'S-07' });
    expect(notes.series[0]?.findings).toContain(loud[0]);
  });

  it('a spoilt article takes along the runs that need it, and those of articles with its level table, in one finding', () => {
    const { loud, runs } = outcome(spoil('hill-bowl/articles/P0.md', 'material: steel', 'material: stel'));
    expect(placed(loud)).toEqual(['word-unknown P0.md:7:11']);
    expect(loud[0]?.effect).toBe('The runs with this article are left out: S-07 and S-08.');
    expect(runs).toEqual([]);
  });

  it('a spoilt article that one run needs leaves the other', () => {
    const { loud, runs } = outcome(spoil('hill-bowl/articles/P1.md', 'samples: 1', 'samples: none'));
    expect(loud.map((f) => f.effect)).toEqual(['The run with this article is left out: S-07.']);
    expect(runs).toEqual(['S-08']);
  });

  it('a spoilt oil takes along its runs', () => {
    const { loud, runs } = outcome(spoil('hill-bowl/oils/O1.md', 'batch: B-0311\n', ''));
    expect(loud.map((f) => f.effect)).toEqual(['The runs with this oil are left out: S-07 and S-08.']);
    expect(runs).toEqual([]);
  });

  it('a spoilt rig sheet leaves out the series, and the other findings are still told', () => {
    const { [rig]: text = '', ...rest } = spoil(S07, 'article: P1', 'article: Q9');
    const { loud, notes } = outcome({ ...rest, [rig]: String(text).replace('kind: axle_bench', 'kind: bench') });
    expect(notes.series).toEqual([]);
    expect(placed(loud)).toEqual(['word-unknown rig.md:4:7', 'article-unknown S-07.md:6:10']);
    expect(loud[0]?.effect).toBe('This series is left out of the book.');
  });

  it('a missing rig sheet leaves out the series', () => {
    const rest = Object.fromEntries(Object.entries(goodBook).filter(([path]) => path !== rig));
    const { loud, notes } = outcome(rest);
    expect(placed(loud)).toEqual(['rig-missing rig.md:1:1']);
    expect(notes.series).toEqual([]);
  });

  it('a spoilt plan leaves the series without a plan', () => {
    const { notes } = outcome(spoil('hill-bowl/plan.md', 'order: random', 'order: rando'));
    expect(notes.series[0]?.plan).toBeNull();
    expect(notes.series[0]?.runs).toHaveLength(2);
  });

  it('a spoilt book.md leaves a book under stand-in words with what could be read', () => {
    const { notes, loud } = outcome(spoil('book.md', 'contact: corr', 'contcat: corr'));
    expect(placed(loud)).toEqual(['field-unknown book.md:5:1']);
    expect(notes.book?.name).toBe('The Quillstone book');
    expect(notes.book?.contact).toBe('');
    expect(notes.series).toHaveLength(1);
  });

  it('an unreadable book.md leaves a stand-in that only the house sees', () => {
    const { notes } = outcome(spoil('book.md', '---', '---js'));
    expect(notes.book?.shownTo).toBe('house');
    expect(notes.series).toHaveLength(1);
  });

  it('a folder without book.md is no book, and says so', () => {
    const rest = Object.fromEntries(Object.entries(goodBook).filter(([path]) => path !== 'book.md'));
    const { notes, loud } = outcome(rest);
    expect(notes.book).toBeNull();
    expect(placed(loud)).toEqual(['book-missing book.md:1:1']);
  });
});

describe('what two notes say together', () => {
  it('two logs with the same bytes are told once, with both runs named', () => {
    const { loud, runs } = outcome({
      ...goodBook,
      'hill-bowl/runs/S-08.csv': goodBook['hill-bowl/runs/S-07.csv'] ?? '',
    });
    expect(placed(loud)).toEqual(['log-twice S-08.md:17:14']);
    expect(loud[0]?.says).toContain('S-07 and S-08');
    expect(runs).toEqual([]);
  });

  it('an id of an article is not an id of a run, not even in another case', () => {
    const text = goodBook[S07]?.replace('id: S-07', 'id: p0') ?? '';
    const { loud } = outcome({
      ...goodBook,
      'hill-bowl/runs/p0.md': text.replace('S-07.csv', 'p0.csv'),
      'hill-bowl/runs/p0.csv': 'x',
    });
    expect(placed(loud)).toEqual(['id-twice p0.md:2:5']);
  });

  it('a series under the id of another is told so', () => {
    const other = Object.fromEntries(
      Object.entries(goodBook).map(([path, text]) => [path.replace('hill-bowl/', 'older/'), text]),
    );
    const { loud, notes } = outcome({ ...other, ...goodBook });
    expect(placed(loud)).toEqual(['series-id-twice series.md:3:5']);
    expect(loud[0]?.write).toContain('id: older');
    expect(notes.series.map((s) => s.series.id)).toEqual(['hill-bowl']);
  });

  it('a cool-down after a spin run is refused', () => {
    const { loud } = outcome(spoil(S07, 'trial: spin', 'trial: cool-down\ngear-state: still\nfrom-run: S-08'));
    expect(placed(loud)).toEqual(['from-run-kind S-07.md:5:11']);
  });

  it('a run before its series and its rig state is worth knowing and stays', () => {
    const { loud, runs, notes } = outcome(spoil(S07, 'started: 2026-03-17', 'started: 2026-02-17'));
    expect(loud).toEqual([]);
    expect(runs).toEqual(['S-07', 'S-08']);
    expect(notes.series[0]?.findings.map((f) => f.code)).toEqual(
      expect.arrayContaining(['run-before-series', 'run-before-state']),
    );
  });

  it('an article without level table is told once when a fill needs it', () => {
    const bare = goodBook['hill-bowl/articles/P1.md']?.replace('level-table-of: P0\n', '') ?? '';
    const files = { ...goodBook, 'hill-bowl/articles/P1.md': bare };
    expect(outcome(files).loud).toEqual([]);
    const unread = goodBook[S07]?.replace(', level-left: -52 mm, level-right: -52 mm', '') ?? '';
    const { loud, runs } = outcome({ ...files, [S07]: unread });
    expect(loud.map((f) => `${f.level} ${f.code}`)).toEqual(['warning level-table-missing']);
    expect(runs).toEqual(['S-07', 'S-08']);
  });

  it('a window copy without a cap in the rig sheet is warned of', () => {
    const { loud } = outcome(spoil(rig, 'window: { used-on: [P0w], material: polycarbonate, max-sump: 60 °C }\n', ''));
    expect(loud.map((f) => `${f.level} ${f.code}`)).toEqual(['warning window-cap-missing']);
  });

  it('a note in a folder that nobody reads is named', () => {
    const { notes, loud } = outcome({ ...goodBook, 'hill-bowl/run/S-09.md': 'x' });
    expect(loud).toEqual([]);
    const quiet = notes.series[0]?.findings.filter((f) => f.code === 'note-not-read') ?? [];
    expect(quiet.map((f) => f.place.file)).toEqual(['hill-bowl/run/S-09.md']);
  });

  it('a note under another ending and a logger file that no run names are told, each at its file', () => {
    const { notes } = outcome({
      ...goodBook,
      'hill-bowl/runs/S-09.md.txt': goodBook[S07] ?? '',
      'hill-bowl/runs/S-10.csv': 't_s\n',
    });
    const told = notes.series[0]?.findings.filter((f) => /^(note-ending|log-not-named)$/.test(f.code)) ?? [];
    expect(told.map((f) => `${f.level} ${f.code} ${f.place.file}`)).toEqual([
      'warning note-ending hill-bowl/runs/S-09.md.txt',
      'notice log-not-named hill-bowl/runs/S-10.csv',
    ]);
    expect(told[0]?.write).toContain('S-09.md');
  });

  it('two runs cannot have one place in the order of the series', () => {
    const { loud, runs } = outcome(spoil(S07, 'order: 19', 'order: 20'));
    expect(loud.map((f) => `${f.level} ${f.code} ${f.place.file}`)).toEqual([
      'warning order-twice hill-bowl/runs/S-08.md',
    ]);
    expect(runs).toEqual(['S-07', 'S-08']);
  });

  it('what an instrument could well have is told once, by the id of the instrument', () => {
    const { notes } = outcome(spoil(rig, '    calibrated: 2026-01-12\n    next-due: 2027-01-12\n', ''));
    const told = notes.series[0]?.findings.filter((f) => f.says.includes('calibrated')) ?? [];
    expect(told.map((f) => f.says)).toEqual(['"calibrated" and "next-due" are not stated for torque-low.']);
  });

  it('a draft needs no log, no zeros and no end', () => {
    const text = (goodBook[S07] ?? '')
      .replace('status: accepted', 'status: draft')
      .replace(/^(ended|zeros|log): .*\n/gm, '');
    const { loud, notes } = outcome({ ...goodBook, [S07]: text });
    expect(loud).toEqual([]);
    expect(notes.series[0]?.runs[0]?.log).toBeNull();
  });
});
