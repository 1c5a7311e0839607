import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import Ajv from 'ajv';
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { csvText } from '../../../src/outlets/csv.ts';
import { feed, type FeedEntry } from '../../../src/outlets/feed.ts';
import { ledgerSchema } from '../../../src/outlets/ledger-schema.ts';
import { escapedXml } from '../../../src/outlets/xml.ts';
import { demoMade } from '../../scenario/demo.ts';

const made = demoMade();
const file = (path: string): string => made.files.find((one) => one.path === path)!.text;
const json = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));

describe('the data package of a series', () => {
  const ids = ['hill-bowl', 'where-the-oil-stands'];
  const descriptor = (id: string) =>
    JSON.parse(file(`series/${id}/datapackage.json`)) as {
      resources: {
        name: string;
        path: string;
        bytes: number;
        hash: string;
        schema: { fields: { name: string; type: string }[]; primaryKey: string };
      }[];
    };

  it.each(ids)('%s is a tabular data package by the profile that Frictionless publishes (version 1)', (id) => {
    const ajv = new Ajv({ schemaId: 'id', meta: false, unknownFormats: 'ignore', allErrors: true });
    ajv.addMetaSchema(json('node_modules/ajv/lib/refs/json-schema-draft-04.json') as object);
    const valid = ajv.compile(json('test/reference/tables/frictionless-tabular-data-package.json') as object);
    valid(descriptor(id));
    expect(valid.errors ?? []).toEqual([]);
    const bare = { ...descriptor(id), resources: undefined };
    expect(valid(bare)).toBe(false);
  });

  it.each(ids)('%s has a ledger of the published JSON Schema, which takes none that is spoilt', (id) => {
    const stored = json('content/schema/ledger.schema.json');
    expect(stored).toEqual(ledgerSchema());
    const valid = new Ajv({ allErrors: true }).compile(stored as object);
    const whole = file(`series/${id}/ledger.json`);
    valid(JSON.parse(whole));
    expect(valid.errors ?? []).toEqual([]);
    const spoils: readonly (readonly [RegExp, string])[] = [
      [/"series":"[^"]+"/, '"series":7'],
      [/"method":"2",/, ''],
      [/"id":"[^"]+"/, '"id":"two words"'],
      [/"kind":"value"/, '"kind":"guess"'],
      [/"quantity":"[^"]+"/, '"quantity":"horse-power"'],
      [/"unit":"L"/, '"unit":"litre"'],
      [/"value":[-\d.]+/, '"value":"2.4"'],
      [/"interval":\[/, '"interval":[1,'],
      [/"coverage":0.95/, '"coverage":95'],
      [/"class":"[^"]+"/, '"class":"certain"'],
      [/"sha256":"[0-9a-f]/, '"sha256":"'],
      [/"bound":null/, '"bound":"about"'],
      [/"at":\{/, '"at":{"moon":"full",'],
      [/"notes":\[/, '"notes":[1,'],
    ];
    for (const [from, to] of spoils) {
      expect(whole).toMatch(from);
      expect([String(from), valid(JSON.parse(whole.replace(from, to).replace(/,([}\]])/, '$1')))]).toEqual([
        String(from),
        false,
      ]);
    }
  });

  it.each(ids)('%s sums what it names, and every row has its fields', (id) => {
    for (const resource of descriptor(id).resources) {
      const text = file(`series/${id}/${resource.path}`);
      expect(createHash('sha256').update(text).digest('hex')).toBe(resource.hash.replace('sha256:', ''));
      expect(Buffer.byteLength(text)).toBe(resource.bytes);
      const rows = readRows(text);
      const names = resource.schema.fields.map(({ name }) => name);
      expect(rows[0]).toEqual(names);
      for (const row of rows) expect(row, resource.name).toHaveLength(names.length);
      const key = names.indexOf(resource.schema.primaryKey);
      const keys = rows.slice(1).map((row) => row[key]);
      expect(new Set(keys).size).toBe(keys.length);
      for (const [i, { type, name }] of resource.schema.fields.entries())
        if (type === 'number')
          for (const row of rows.slice(1)) expect(Number.isFinite(Number(row[i])), `${name}: ${row[i]!}`).toBe(true);
    }
  });

  it('has every figure of the ledger with the same value', () => {
    const [heads = [], ...rows] = readRows(file('series/hill-bowl/data/figures.csv'));
    const [id, value] = ['id', 'value'].map((name) => heads.indexOf(name)) as [number, number];
    const byId = new Map(rows.map((row) => [row[id], row[value]]));
    const ledger = JSON.parse(file('series/hill-bowl/ledger.json')) as {
      figures: { id: string; value: number | null }[];
    };
    expect(byId.size).toBe(ledger.figures.length);
    for (const f of ledger.figures) expect(byId.get(f.id), f.id).toBe(f.value === null ? '' : String(f.value));
  });
});

describe('a table as text', () => {
  it('makes text harmless that a spreadsheet would run, and leaves numbers numbers', () => {
    const cells = ['=1+1', '+1', '-1', '@x', '\tx', '\rx', 'a "b", c', -1.5, 2e-7, null, NaN];
    expect(csvText(['a'], [cells])).toBe(`a\r\n'=1+1,'+1,'-1,'@x,'\tx,"'\rx","a ""b"", c",-1.5,2e-7,,\r\n`);
  });
});

describe('the feed', () => {
  const parser = new XMLParser({ ignoreAttributes: false, isArray: (name) => name === 'entry' || name === 'link' });
  const read = (text: string) =>
    parser.parse(text) as { feed: Record<string, unknown> & { entry?: Record<string, string>[] } };

  it('of the demo is well-formed and has what RFC 4287 asks of a feed and its entries (sections 4.1.1 and 4.1.2)', () => {
    const text = file('feed.xml');
    expect(XMLValidator.validate(text)).toBe(true);
    const { feed: top } = read(text);
    expect(top['@_xmlns']).toBe('http://www.w3.org/2005/Atom');
    for (const name of ['id', 'title', 'updated', 'author']) expect(top[name], name).toBeTruthy();
    const stamp = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}Z$/;
    expect(top['updated']).toMatch(stamp);
    const entries = top.entry!;
    for (const entry of entries) {
      for (const name of ['id', 'title', 'updated']) expect(entry[name], name).toBeTruthy();
      expect(entry['id']).toMatch(/^https:\/\/quillstone\.example\/series\//);
      expect(entry['updated']).toMatch(stamp);
      expect(entry['published']! <= entry['updated']!).toBe(true);
    }
    expect(new Set(entries.map((entry) => entry['id'])).size).toBe(entries.length);
  });

  it('carries every part, the correction and the objection; Part 4 anew on the day of the correction', () => {
    const entries = read(file('feed.xml')).feed.entry!;
    const of = (end: string) => entries.find(({ id }) => id!.endsWith(end))!;
    for (const n of [1, 2, 3, 4, 5, 6]) expect(of(`/parts/${String(n)}/`)).toBeDefined();
    expect(of('/amends/#COR-01')['updated']).toBe('2026-07-20T00:00:00Z');
    expect(of('/parts/4/')).toMatchObject({ published: '2026-06-23T00:00:00Z', updated: '2026-07-20T00:00:00Z' });
    expect(of('/parts/3/')['updated']).toBe('2026-05-05T00:00:00Z');
  });

  it('is valid with nothing in it, and holds hostile text as text', () => {
    const book = { ...made.book!, address: 'https://a.example', pathPrefix: '/tests/' };
    expect(XMLValidator.validate(feed(book, [])[0]!.text)).toBe(true);
    const entry: FeedEntry = {
      path: 'x/',
      title: '<b>&"\u0000',
      published: '2026-01-01',
      updated: '2026-01-01',
      summary: ']]>',
    };
    const [one] = feed(book, [entry]);
    expect(XMLValidator.validate(one!.text)).toBe(true);
    expect(one!.text).toContain('https://a.example/tests/x/');
    expect(escapedXml('a\u0001b\ud800')).toBe('ab');
    expect(feed({ ...book, address: null }, [entry])).toEqual([]);
  });
});

describe('what else goes out', () => {
  it('names the series as it is to be cited (Citation File Format 1.2.0, keys from memory)', () => {
    const cff = parse(file('series/hill-bowl/CITATION.cff')) as Record<string, unknown>;
    expect(cff).toMatchObject({
      'cff-version': '1.2.0',
      type: 'dataset',
      title: 'The Hill Bowl Series',
      authors: [{ name: 'Quillstone Axle Room' }],
      license: 'CC-BY-4.0',
      'date-released': '2026-08-11',
      url: 'https://quillstone.example/series/hill-bowl/',
    });
    expect(cff['message']).toBeTruthy();
  });

  it('lists the pages for machines that look for them, at the address of the book', () => {
    const text = file('sitemap.xml');
    expect(XMLValidator.validate(text)).toBe(true);
    const places = [...text.matchAll(/<loc>([^<]+)<\/loc>/g)].map(([, place]) => place!);
    expect(places).toContain('https://quillstone.example/series/hill-bowl/parts/4/');
    const paths = new Set(made.pages.map(({ path }) => `https://quillstone.example/${path}`));
    for (const place of places) expect(paths.has(place), place).toBe(true);
  });

  it('keeps in the ledger what a correction put out of use', () => {
    const { superseded } = JSON.parse(file('series/hill-bowl/ledger.json')) as {
      superseded: { id: string; value: number; correction: string; until: string }[];
    };
    const rise = superseded.find(({ id }) => id === 'H-09/final-rise')!;
    expect(rise).toMatchObject({ correction: 'COR-01', until: '2026-07-20' });
    expect(Math.abs(rise.value - 79.82)).toBeLessThan(0.1);
  });
});

/** RFC 4180, read by another way than it was written. */
function readRows(text: string): string[][] {
  const rows: string[][] = [[]];
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/g;
  for (const [, quotedText, bare, end] of text.matchAll(cell)) {
    if (end === '' && quotedText === undefined && bare === '') break;
    rows.at(-1)!.push(quotedText?.replaceAll('""', '"') ?? bare!);
    if (end === '\r\n') rows.push([]);
  }
  return rows.filter((row) => row.length > 0);
}
