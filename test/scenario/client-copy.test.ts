import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { filesBelow } from '../../src/host/disk/book.ts';
import { literalColours } from '../../src/host/pictures/colours.ts';
import { browserPrinter } from '../../src/host/paper/browser.ts';
import { drawingsOf } from '../../src/host/paper/drawings.ts';
import { nodesOf } from '../../src/host/paper/nodes.ts';
import { typstPrinter } from '../../src/host/paper/typst.ts';
import type { Figure } from '../../src/ledger/figure.ts';
import { foundIn } from '../../src/one-series.ts';
import { readHead } from '../../src/pipeline.ts';
import { cautions } from '../../src/report/cautions.ts';
import { paperOf } from '../../src/report/copy.ts';
import type { SeriesInput } from '../../src/report/input.ts';
import { seriesPages } from '../../src/report/pages.ts';
import { viewOf } from '../../src/report/view.ts';
import { demoFiles } from './demo.ts';
import { openedBytes, readPdf, type ReadPdf } from './pdf-text.ts';

// CR-01 of the demo, as `dipmark print CR-01` makes it. The PDF is read by a general-purpose reader (pdf.js).
let found: SeriesInput;
let pdf: Uint8Array;
let again: Uint8Array;
let letter: Uint8Array;
let read: ReadPdf;
let text: string;

beforeAll(async () => {
  const files = demoFiles();
  const { book } = readHead(files);
  const made = foundIn({
    ...{ files, media: null, book: book!, folder: 'hill-bowl', folders: ['hill-bowl'], audience: 'house' },
    asOf: '2026-07-10',
  });
  found = made.found!;
  const colours = await literalColours();
  const print = async (sheet: 'A4' | 'letter'): Promise<Uint8Array> => {
    const { paper, told } = paperOf(found, found.record.reports[0]!);
    expect(told).toBeNull();
    return (await typstPrinter())!.print(nodesOf(paper, await drawingsOf(paper, colours)), { sheet, colours });
  };
  [pdf, again, letter] = [await print('A4'), await print('A4'), await print('letter')];
  read = await readPdf(pdf);
  text = read.pages.join('\n');
});

describe('the client copy of the demo', () => {
  it('is the same bytes when it is printed again', () => {
    expect(Buffer.compare(pdf, again)).toBe(0);
  });

  it('has its number, its issue and page x of y on every page', () => {
    const all = read.pages.length;
    expect(all).toBeGreaterThan(25);
    for (const [i, page] of read.pages.entries()) {
      expect(page).toContain(`CR-01, issue 1`);
      expect(page).toMatch(new RegExp(`page\\s*${String(i + 1)}\\s*of\\s*${String(all)}(?!\\d)`));
    }
  });

  // elements of a report after ISO/IEC 17025:2017, 7.8.2, in our own order and words
  it('has its chapters in order, in the outline and on the pages', () => {
    const chapters = [
      ...['Summary', 'What was tested', 'Method and deviations', 'Results', 'Standing', 'Where the doubt comes from'],
      ...['Cautions', 'What was not tested', 'Amendments', 'Raw files', 'Signatures'],
    ];
    const told = read.outline.map((title) => title.replace(/^[\d.]+\s+/, ''));
    expect(told.filter((title) => chapters.includes(title))).toEqual(chapters);
    const body = read.pages.slice(2).join('\n');
    const places = chapters.map((title, i) => body.search(new RegExp(`^${String(i + 1)}\\s+${title}$`, 'm')));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  it('says on its first page that it is not accredited, and at its end who signs by hand', () => {
    expect(read.pages[0]).toContain('It is not an');
    expect(read.pages[0]).toContain('All data in it are invented');
    expect(read.pages.at(-1)).toMatch(/head of the axle room[^]*signature[^]*test engineer[^]*signature/i);
    expect(read.pages.at(-1)).toContain('CR-01, issue 1 ends here.');
  });

  it('is tagged, in a language, with the words for each picture; its only day is that of the note', () => {
    expect(read.tagged).toBe(true);
    expect(read.language).toBe('en');
    expect(read.alternatives.length).toBeGreaterThanOrEqual(20);
    expect(read.alternatives.every((words) => words.length > 20)).toBe(true);
    expect(openedBytes(pdf)).toContain('<pdfuaid:part>1</pdfuaid:part>');
    expect([...openedBytes(pdf).matchAll(/D:(\d{8})/g)].map(([, day]) => day)).toEqual(['20260710', '20260710']);
    expect(read.links.filter((to) => to.startsWith('inside')).length).toBeGreaterThan(50);
  });

  it('has every face in it, each one of our own', () => {
    const opened = openedBytes(pdf);
    const faces = [...opened.matchAll(/\/FontName\s*\/([\w+-]+)/g)].map(([, name]) => name!);
    expect(faces.length).toBeGreaterThan(3);
    for (const face of faces) expect(face).toMatch(/^[A-Z]{6}\+(?:SourceSans3|SourceSerif4|NewCMMath|DejaVuSansMono)/);
    const described = [...opened.matchAll(/\/Type\s*\/FontDescriptor/g)].length;
    expect([...opened.matchAll(/\/FontFile[23]?\s/g)]).toHaveLength(described);
  });

  it('comes on a sheet of Letter as well, with the same words', async () => {
    const onLetter = await readPdf(letter);
    expect(openedBytes(letter)).toMatch(/\/MediaBox\s*\[0 0 612 792\]/);
    const numbers = (pages: readonly string[]): string[] => pages.join(' ').match(/[\d.]+ ± [\d.]+/g) ?? [];
    expect(numbers(onLetter.pages).sort()).toEqual(numbers(read.pages).sort());
  });
});

const browser = browserPrinter('chromium');
describe.skipIf(browser === null)('the client copy set by an installed browser', () => {
  it('has the same numbers, names nothing else, counts its pages, and is the same bytes again', async () => {
    const colours = await literalColours();
    const { paper } = paperOf(found, found.record.reports[0]!);
    const nodes = nodesOf(paper, await drawingsOf(paper, colours));
    const set = await browser!.print(nodes, { sheet: 'A4', colours });
    expect(Buffer.compare(set, await browser!.print(nodes, { sheet: 'A4', colours }))).toBe(0);
    const by = await readPdf(set);
    const numbers = (words: string): string[] =>
      words.match(/[\d.]+\s*±\s*[\d.]+/g)?.map((one) => one.replaceAll(/\s/g, '')) ?? [];
    expect(numbers(by.pages.join(' ')).sort()).toEqual(numbers(text).sort());
    expect(by.pages.join('\n')).not.toMatch(/\bP1w?\b|deep[\s_-]*bowl/i);
    expect(by.tagged).toBe(true);
    for (const [i, page] of by.pages.entries())
      expect(page).toMatch(new RegExp(`page\\s*${String(i + 1)}\\s*of\\s*${String(by.pages.length)}(?!\\d)`));
  });
});

describe('what the client copy keeps back', () => {
  it('is nowhere: no word, name of a picture, outline, metadata, link, attachment or hidden stream', () => {
    expect(read.attachments).toBe(0);
    const seen = [text, ...read.alternatives, ...read.outline, read.metadata, ...read.links].join('\n');
    expect(seen).toContain('Article B');
    for (const name of [/\bP1w?\b/i, /deep[\s_-]*bowl/i, /window copy of P1/i]) {
      expect(seen).not.toMatch(name);
      // as a line breaks it, and as it is drawn letter by letter
      expect(seen.replaceAll(/[\u00ad\n]/g, '')).not.toMatch(name);
    }
    for (const name of [/\(P1w?\)/, /deep[\s_-]*bowl/i, /P1w?\.(?:md|jpg|png|csv)/])
      expect(openedBytes(pdf)).not.toMatch(name);
  });

  it('are two runs, counted and not named, and every figure that rests on them', () => {
    expect(text).toMatch(/Two runs withheld at the client’s request\./);
    expect(text).not.toMatch(/\b(?:H-10|S-30)\b/);
    const [, left = '0'] = /(\d+) figures? that would tell them/.exec(text) ?? [];
    const rests = found.ledger.figures.filter(({ inputs }) =>
      inputs.some(({ file }) => /\/(?:H-10|S-30)\./.test(file)),
    );
    expect(Number(left)).toBeGreaterThan(0);
    expect(Number(left)).toBeLessThanOrEqual(rests.length);
    expect(text.replaceAll(/\s+/g, ' ')).toContain(
      'Not told here, since the word rests on a run that is withheld: CL-3',
    );
  });

  it('is no other article: P3 and P5 are not in its scope', () => {
    expect(text).not.toMatch(/\bP[35]\b/);
  });
});

describe('every number with a unit in the client copy', () => {
  const tokens = (words: string) =>
    [...words.matchAll(numberWithUnit)].map(([, value, pm, unit]) => ({ value: value!, pm: pm ?? null, unit: unit! }));

  it('that has its interval is a figure of the ledger, digit for digit', () => {
    const pairs = tokens(text).filter(({ pm }) => pm !== null);
    expect(pairs.length).toBeGreaterThan(200);
    expect(pairs.filter((pair) => !isPair(found.ledger.figures, pair))).toEqual([]);
  });

  it('would be missed if a digit of it were another', () => {
    const pairs = tokens(text).filter(({ pm }) => pm !== null);
    const bent = pairs.map(({ value, ...rest }) => ({
      ...rest,
      value: value.replace(/\d(?=\D*$)/, (d) => String((Number(d) + 5) % 10)),
    }));
    const held = bent.filter((pair) => isPair(found.ledger.figures, pair));
    expect(held.length / bent.length).toBeLessThan(0.1);
  });

  it('that stands alone is in the ledger, in its workings, in a note as typed, or on a page of the site of that day', () => {
    const notes = filesBelow('demo-runs')
      .filter(({ path }) => path.endsWith('.md'))
      .map(({ path }) => readFileSync(join('demo-runs', path), 'utf8'))
      .join('\n');
    const typed = new Set([...notes.matchAll(/-?\d+(?:\.\d+)?/g)].map(([number]) => Math.abs(Number(number))));
    const pages = JSON.stringify([seriesPages(found, viewOf(found)), cautions]);
    const shown = new Set(tokens(pages).map(({ value, unit }) => `${plain(value)} ${unit}`));
    const alone = tokens(text).filter(({ pm }) => pm === null);
    expect(alone.length).toBeGreaterThan(500);
    const strangers = alone.filter(
      ({ value, unit }) =>
        !isFigure(found.ledger.figures, value, unit) &&
        !typed.has(Number(plain(value))) &&
        !shown.has(`${plain(value)} ${unit}`),
    );
    expect(strangers).toEqual([]);
  });
});

/** Units as printed → as the ledger has them (UCUM). */
const units: Readonly<Record<string, readonly string[]>> = {
  ...{ W: ['W'], kW: ['kW'], K: ['K'], '°C': ['Cel'], min: ['s'], s: ['s'], h: ['h'], mm: ['mm'], L: ['L'], g: ['g'] },
  ...{ 'mm²/s': ['mm2/s'], 'kJ/K': ['kJ/K'], 'W/K': ['W/K'], '%': ['%', '1'], rpm: ['{rev}/min'], 'm/s': ['m/s'] },
  ...{ 'N·m': ['N.m'], 'kg/m³': ['kg/m3'], 'km/h': ['km/h'] },
};
const unitWords = Object.keys(units)
  .sort((a, b) => b.length - a.length)
  .join('|');
const numberWithUnit = new RegExp(
  `(?<![\\p{L}\\p{N}.])([−+]?\\d+(?:\\.\\d+)?)(?:\\s*±\\s*(\\d+(?:\\.\\d+)?))?[\\s\\u00a0\\u202f]*(${unitWords})(?![\\p{L}\\p{N}/])`,
  'gu',
);
const scaleOf = (printed: string, ledger: string): number =>
  printed === 'min' ? 1 / 60 : printed === '%' && ledger === '1' ? 100 : 1;
const plain = (number: string): string => number.replace(/[−+]/, '');
const decimals = (number: string): number => (number.split('.')[1] ?? '').length;
/** Signs aside: words such as "lower by" carry them. */
const reads = (value: number | null, printed: string): boolean =>
  value !== null && Math.abs(value).toFixed(decimals(printed)) === plain(printed);
const half = ([low, high]: Figure['interval']): number | null =>
  low === null || high === null ? null : (high - low) / 2;

const ofUnit = (figures: readonly Figure[], unit: string) =>
  figures
    .filter((figure) => units[unit]!.includes(figure.unit))
    .map((figure) => ({ ...figure, scale: scaleOf(unit, figure.unit) }));
const times = (value: number | null, scale: number): number | null => (value === null ? null : value * scale);

const isPair = (figures: readonly Figure[], pair: { value: string; pm: string | null; unit: string }): boolean =>
  ofUnit(figures, pair.unit).some(
    ({ value, interval, scale }) =>
      reads(times(value, scale), pair.value) && pair.pm !== null && reads(times(half(interval), scale), pair.pm),
  );

const isFigure = (figures: readonly Figure[], printed: string, unit: string): boolean =>
  ofUnit(figures, unit).some(({ value, interval, scale }) =>
    [value, ...interval, half(interval)].some((number) => reads(times(number, scale), printed)),
  );
