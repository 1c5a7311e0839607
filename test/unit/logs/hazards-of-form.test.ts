import { describe, expect, it } from 'vitest';
import type { ColumnMap } from '../../../src/trial/rig.ts';
import { expectHazard, type Hazard } from './hazard.ts';
import { plainMap, sheet, steadyRows, withColumn } from './sheets.ts';

// Each row is a hazard of metrology practice and the behaviour that practice asks for: common practice, no source.
const utf16 = (text: string, mark: boolean): Uint8Array =>
  Uint8Array.from([
    ...(mark ? [0xff, 0xfe] : []),
    ...Array.from(text).flatMap((c) => [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8]),
  ]);
const latin = (text: string): Uint8Array => Uint8Array.from(Array.from(text, (c) => c.charCodeAt(0)));
const good = sheet(steadyRows(6));
const european: ColumnMap = { ...plainMap, delimiter: ';', decimal: ',' };
const swapRow = (at: number, row: string, count = 6): string =>
  sheet(steadyRows(count).map((r, i) => (i === at ? row : r)));

const hazards: readonly Hazard[] = [
  {
    id: '1',
    title: 'a byte order mark before the header is dropped',
    content: `\uFEFF${good}`,
    finds: [],
    record: /1 byte order mark dropped/u,
  },
  {
    id: '2',
    title: 'UTF-16 with its mark is decoded',
    content: utf16(good, true),
    finds: [],
    record: /decoded from utf-16le/u,
  },
  {
    id: '2',
    title: 'UTF-16 without a mark is decoded with a warning',
    content: utf16(good, false),
    finds: ['warning utf16-unmarked 1:1'],
  },
  {
    id: '2',
    title: 'UTF-16 that the map declares is decoded',
    content: utf16(good, false),
    map: { ...plainMap, encoding: 'utf-16le' },
    finds: [],
  },
  {
    id: '3',
    title: 'a degree sign of an old code page is refused at its offset',
    content: latin('t,n,T,\xB0\n0,1,40,1\n1,2,41,1\n'),
    finds: ['error encoding-wrong 1:7'],
    says: /offset 6/u,
  },
  {
    id: '3',
    title: 'a declared code page is decoded',
    content: latin('t,n,T,\xB0\n0,1,40,1\n1,2,41,1\n'),
    map: { ...plainMap, encoding: 'windows-1252' },
    finds: [],
    record: /decoded from windows-1252/u,
  },
  {
    id: '3',
    title: 'an encoding that nobody knows is refused',
    content: good,
    map: { ...plainMap, encoding: 'utf-9' },
    finds: ['error encoding-unknown 1:1'],
  },
  {
    id: '4',
    title: 'declared decimal commas with semicolons are read',
    content: 't;n;T\n0;1,5;40,1\n1;1,6;40,2\n',
    map: european,
    finds: [],
    record: /semicolon between cells and "," as decimal mark/u,
  },
  {
    id: '4',
    title: 'one point among decimal commas is refused',
    content: 't;n;T\n0;1,5;40,1\n1;1.6;40,2\n',
    map: european,
    finds: ['error decimal-mixed 3:3'],
  },
  {
    id: '5',
    title: 'decimal commas with commas between cells are refused with both counts',
    content: 't,n,T\n0,1,5,40,1\n',
    finds: ['error decimal-comma 2:1'],
    says: /5 cells; the header has 3/u,
  },
  {
    id: '6',
    title: 'grouped digits are refused unless declared',
    content: swapRow(2, '2,"1,234.5",40.2'),
    finds: ['error thousands-undeclared 4:3'],
  },
  {
    id: '6',
    title: 'grouped digits are read when declared',
    content: swapRow(2, '2,"1,234.5",40.2'),
    map: { ...plainMap, thousands: ',' },
    finds: [],
  },
  {
    id: '6',
    title: 'a comma before three digits is refused with both readings named',
    content: swapRow(2, '2,"1,234",40.2'),
    finds: ['error number-ambiguous 4:3'],
  },
  {
    id: '7',
    title: 'a true minus and a no-break space are taken for what they are',
    content: swapRow(2, '2,\u00a0101.5,\u22121.5'),
    finds: [],
    record: /odd spaces taken off 1 number; 1 minus sign U\+2212 read as -/u,
  },
  {
    id: '7',
    title: 'full-width digits are refused',
    content: swapRow(2, '2,101.5,\uff14\uff10'),
    finds: ['error digits-unknown 4:9'],
  },
  {
    id: '7',
    title: 'either sign for micro in a header is one sign',
    content: good.replace('T', '\u00b5T'),
    map: withColumn(1, { header: '\u03bcT' }),
    finds: [],
    record: /differ in odd signs only/u,
  },
  {
    id: '8',
    title: 'preamble lines and a units row are found',
    content: `Logger 4\nrun 7\n${good.replace('\n', '\ns,rpm,degC\n')}`,
    finds: [],
    record: /header found in line 3, declared in line 1; units row found in line 4/u,
  },
  {
    id: '8',
    title: 'no header anywhere is refused with the first lines',
    content: 'a;b\n1;2\n3;4\n',
    finds: ['error header-not-found 1:1'],
    says: /"a;b", "1;2", "3;4"/u,
  },
  {
    id: '8',
    title: 'a declared units row that holds readings is refused',
    content: good,
    map: { ...plainMap, unitsRow: 2 },
    finds: ['error units-row-wrong 2:1', 'error units-row-wrong 2:3', 'error units-row-wrong 2:9'],
  },
  {
    id: '9',
    title: 'a header again in mid-file parts the log into segments',
    content: sheet([...steadyRows(3), 't,n,T', ...steadyRows(3, 3)]),
    finds: ['warning header-repeated 5:1'],
    record: /2 segments/u,
  },
  {
    id: '9',
    title: 'a second header with other columns is refused',
    content: sheet([...steadyRows(3), 't,T,n', ...steadyRows(3, 3)]),
    finds: ['error header-changed 5:1'],
  },
  {
    id: '10',
    title: 'two columns of one name are refused',
    content: 't,n,T,n\n0,1,40,2\n1,2,41,3\n',
    finds: ['error column-twice 1:7'],
    says: /Columns 2 and 4/u,
  },
  {
    id: '10',
    title: 'a column without a name is refused',
    content: 't,n,,T\n0,1,2,40\n1,2,3,41\n',
    finds: ['error column-unnamed 1:5'],
    says: /Column 3 has no name; the one before it is column 2 "n"/u,
  },
  {
    id: '11',
    title: 'a row with a cell too few is refused with both counts',
    content: swapRow(2, '2,101.5'),
    finds: ['error row-ragged 4:1'],
    says: /2 cells; the header has 3/u,
  },
  {
    id: '11',
    title: 'a row with a cell too many is refused',
    content: swapRow(2, '2,101.5,40.2,x'),
    finds: ['error row-ragged 4:1'],
  },
  {
    id: '11',
    title: 'one empty cell at the end of every row is no column',
    content: sheet(steadyRows(6).map((r) => `${r},`)),
    finds: [],
    record: /each row ends in one empty cell/u,
  },
  {
    id: '11',
    title: 'an empty cell at the end of some rows is refused',
    content: swapRow(2, '2,101.5,40.2,'),
    finds: ['error row-ragged 4:1'],
  },
  {
    id: '12',
    title: 'a quote that does not close is refused where it opens',
    content: swapRow(2, '2,"101.5,40.2'),
    finds: ['error quote-open 4:3'],
  },
  {
    id: '12',
    title: 'text after a closing quote is refused',
    content: swapRow(2, '2,"101"5,40.2'),
    finds: ['error quote-misplaced 4:3'],
  },
  {
    id: '13',
    title: 'lines that end in CR are lines',
    content: sheet(steadyRows(6), '\r'),
    finds: [],
    record: /line ends: 7 CR/u,
  },
  {
    id: '13',
    title: 'doubled line ends are passed over',
    content: sheet(steadyRows(6), '\r\n\r\n'),
    finds: [],
    record: /7 blank lines passed over/u,
  },
];

describe('hazards of form', () => {
  it.each(hazards)('$id: $title', expectHazard);

  it('stand in the table from 1 to 13', () => {
    const numbers = new Set(hazards.map((hazard) => Number(hazard.id)));
    const wanted = Array.from({ length: 13 }, (_, at) => 1 + at);
    expect(wanted.filter((id) => !numbers.has(id))).toEqual([]);
  });
});
