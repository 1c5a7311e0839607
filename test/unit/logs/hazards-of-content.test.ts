import { describe, expect, it } from 'vitest';
import type { ColumnMap } from '../../../src/trial/rig.ts';
import { expectHazard, type Hazard } from './hazard.ts';
import { column, plainMap, read, sheet, steadyRows, withColumn } from './sheets.ts';

// Each row is a hazard of metrology practice and the behaviour that practice asks for: common practice, no source.
const latin = (text: string): Uint8Array => Uint8Array.from(Array.from(text, (c) => c.charCodeAt(0)));
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const good = sheet(steadyRows(6));
const swapRow = (at: number, row: string, count = 6): string =>
  sheet(steadyRows(count).map((r, i) => (i === at ? row : r)));
const ofDay: ColumnMap = { ...plainMap, clock: { column: 't', unit: 'h:mm:ss' } };
const withAmbient: ColumnMap = { ...plainMap, columns: [...plainMap.columns, column('A', 'ambient', '°C')] };
const ambientSheet = (ambient: number): string =>
  ['t,n,T,A', ...steadyRows(6).map((row, i) => `${row},${ambient + i / 100}`)].join('\n') + '\n';
const power: ColumnMap = {
  ...plainMap,
  columns: [
    column('n', 'pinion-speed', 'rpm'),
    column('q', 'torque-in', 'N·m'),
    column('w', 'output-speed', 'rpm'),
    column('l', 'torque-out-left', 'N·m'),
  ],
};
const powerSheet = (torque: number): string =>
  ['t,n,q,w,l', ...[0, 1, 2, 3].map((t) => `${t},1321,${torque + t / 10},290,700.${t}`)].join('\n') + '\n';
const stuck = withColumn(1, { stuck_s: 5 });

const hazards: readonly Hazard[] = [
  {
    id: '14',
    title: 'a last row without line end is used',
    content: good.slice(0, -1),
    finds: [],
    record: /the last line has no line end/u,
  },
  {
    id: '14',
    title: 'a last row that is cut is dropped and quoted',
    content: `${good}6,10`,
    finds: ['warning last-row-cut 8:1'],
    says: /"6,10"/u,
  },
  {
    id: '15',
    title: 'zero bytes at the end are refused',
    content: bytesOf(`${good}\0\0\0\0`),
    finds: ['error nul-bytes 8:1'],
    says: /ends in zero bytes/u,
  },
  {
    id: '15',
    title: 'a control code among the readings is refused',
    content: swapRow(2, '2,10\u00011.5,40'),
    finds: ['error control-byte 4:5'],
  },
  {
    id: '16',
    title: 'a spreadsheet under the wrong name is refused',
    content: latin('PK\x03\x04rest'),
    finds: ['error not-text 1:1'],
    says: /spreadsheet or a zip archive/u,
  },
  {
    id: '16',
    title: 'a PDF under the wrong name is refused',
    content: latin('%PDF-1.7 rest'),
    finds: ['error not-text 1:1'],
    says: /a PDF/u,
  },
  { id: '17', title: 'an empty file is refused', content: '', finds: ['error log-too-short 1:1'] },
  {
    id: '17',
    title: 'a header alone is refused',
    content: 't,n,T\n',
    finds: ['error log-too-short 1:1'],
    says: /0 usable rows/u,
  },
  {
    id: '17',
    title: 'one row is refused',
    content: 't,n,T\n0,1,40\n',
    finds: ['error log-too-short 1:1'],
    says: /1 usable row\./u,
  },
  {
    id: '18',
    title: 'words for no reading are missing readings, counted',
    content: sheet([...steadyRows(4), '4,NaN,OL', '5,101,#DIV/0!', '6,N/A,40', '7,---,Inf', '8,103,40']),
    finds: [],
    record: /missing: 1 × "NaN" in column 2 "n"/u,
  },
  {
    id: '18',
    title: 'a word that nobody declared is refused',
    content: swapRow(2, '2,broken,40'),
    finds: ['error cell-unknown 4:3'],
  },
  {
    id: '18',
    title: 'an empty cell never becomes 0',
    content: swapRow(2, '2,,40'),
    finds: [],
    record: /pinion-speed .*1 single reading missing/u,
  },
  {
    id: '19',
    title: 'a declared sentinel is a missing reading with a warning',
    content: swapRow(2, '2,101,-999'),
    map: { ...plainMap, missing: ['-999'] },
    finds: ['warning channel-gap 4:7'],
    says: /declared as missing/u,
  },
  {
    id: '19',
    title: 'a reading at a declared range end is a missing reading',
    content: swapRow(2, '2,101,150'),
    map: withColumn(1, { plausible: [233.15, 423.15] }),
    finds: ['warning channel-gap 4:7'],
  },
  {
    id: '19',
    title: 'a sentinel that no axle can read is a missing reading',
    content: swapRow(2, '2,101,9999'),
    finds: ['warning channel-gap 4:7'],
    says: /9999 °C is beyond/u,
  },
  {
    id: '19',
    title: 'an extreme that is repeated more than three times is warned of',
    content: sheet(steadyRows(40).map((r, i) => (i > 9 && i < 14 ? `${i},327.67,40.${i}` : r))),
    finds: ['warning channel-saturated 12:4'],
  },
  {
    id: '20',
    title: 'a frozen channel is left out from first to last line',
    content: sheet(steadyRows(30).map((r, i) => (i > 9 && i < 20 ? `${i},${100 + i},41.5` : r))),
    map: stuck,
    finds: ['warning channel-stuck 12:8'],
    says: /for 9 s \(lines 12 to 21\) while pinion-speed changes/u,
  },
  {
    id: '20',
    title: 'a channel that stands while nothing else moves is not stuck',
    content: sheet(Array.from({ length: 30 }, (_, i) => `${i},100,41.5`)),
    map: stuck,
    finds: [],
  },
  {
    id: '21',
    title: 'a row repeated byte for byte is used once',
    content: sheet([...steadyRows(3), ...steadyRows(1, 2), ...steadyRows(3, 3)]),
    finds: [],
    record: /1 repeated row used once/u,
  },
  {
    id: '21',
    title: 'a block repeated after a pause of the logger is used once, with a warning',
    content: sheet([...steadyRows(8), ...steadyRows(4, 4), ...steadyRows(6, 38)]),
    finds: ['warning rows-repeated 10:1'],
    says: /Lines 10 to 13 repeat lines 6 to 9, with a pause of 31 s/u,
  },
  {
    id: '21',
    title: 'a clock set back is refused with both lines',
    content: swapRow(3, '1,101,40'),
    finds: ['error clock-not-rising 5:1'],
    says: /"1" in line 5 after "2" in line 4/u,
  },
  {
    id: '21',
    title: 'one midnight is passed',
    content: 't,n,T\n23:59:58,1,40\n23:59:59,2,41\n0:00:00,3,40\n0:00:01,4,41\n',
    map: ofDay,
    finds: [],
    record: /passes midnight at line 4/u,
  },
  {
    id: '21',
    title: 'an hour put back is refused',
    content: 't,n,T\n2:59:58,1,40\n2:59:59,2,41\n2:00:00,3,40\n',
    map: ofDay,
    finds: ['error clock-not-rising 4:1'],
  },
  {
    id: '22',
    title: 'a date in the clock is refused',
    content: 't,n,T\n03/04/25 10:00:00,1,40\n',
    finds: ['error clock-date 2:1'],
  },
  {
    id: '22',
    title: 'a day number of a spreadsheet is refused',
    content: sheet([0, 1, 2, 3].map((i) => `${46000.5 + i / 86400},${i},40`)),
    finds: ['error clock-serial 2:1'],
  },
  {
    id: '22',
    title: 'a time of day where seconds are declared is refused',
    content: swapRow(0, '10:00:00,1,40'),
    finds: ['error clock-form 2:1'],
  },
  {
    id: '23',
    title: 'missing rows are listed',
    content: sheet([...steadyRows(20), ...steadyRows(20, 50)]),
    finds: ['warning time-gap 22:1'],
    says: /31 s before line 22/u,
  },
  {
    id: '23',
    title: 'a rate that changes is said once',
    content: sheet([...steadyRows(20), ...steadyRows(20).map((_, i) => `${20 + 5 * i},${100 + i},${40 + i / 10}`)]),
    finds: ['warning rate-changed 23:1'],
  },
  {
    id: '24',
    title: 'a units row that contradicts the map is refused',
    content: good.replace('\n', '\ns,rpm,degF\n'),
    finds: ['error unit-contradicted 2:7'],
    says: /"degF"; the map says "°C"/u,
  },
  {
    id: '24',
    title: 'a map without a unit is refused',
    content: good,
    map: withColumn(1, { unit: null }),
    finds: ['error unit-missing 1:1'],
  },
  {
    id: '24',
    title: '°F labelled °C shows at the air round the bench',
    content: ambientSheet(69.8),
    map: withAmbient,
    finds: ['warning unit-contradicted 2:12'],
    says: /69\.8 °C to 69\.85 °C/u,
  },
  {
    id: '24',
    title: 'more power out than in is refused with the two suspects',
    content: powerSheet(100),
    map: power,
    finds: ['error power-gained 2:8'],
  },
  { id: '24', title: 'power lost on the way is as it should be', content: powerSheet(165), map: power, finds: [] },
  {
    id: '24',
    title: 'a torque that turns over for a few rows is left out',
    content:
      [
        't,n,q,w,l',
        ...Array.from(
          { length: 20 },
          (_, t) => `${t},132${t % 3},${t > 9 && t < 13 ? -165 : 165}.${t % 4},290,700.${t}`,
        ),
      ].join('\n') + '\n',
    map: power,
    finds: ['warning torque-sign 12:9'],
    says: /for 3 s \(lines 12 to 14\)/u,
  },
  {
    id: '25',
    title: 'air warmer than the sump all through is warned of as a swap',
    content: ambientSheet(45),
    map: withAmbient,
    finds: ['warning ambient-above-sump 2:12'],
  },
  {
    id: 'number syntax',
    title: 'hexadecimal and D exponents are refused',
    content: swapRow(2, '2,0x1F,1.5D+01'),
    finds: ['error number-notation 4:3', 'error number-notation 4:8'],
  },
  {
    id: 'number syntax',
    title: 'a formula is text, never evaluated',
    content: swapRow(2, '2,=1+1,40'),
    finds: ['error cell-unknown 4:3'],
  },
];

describe('hazards of content', () => {
  it.each(hazards)('$id: $title', expectHazard);

  it('stand in the table from 14 to 25', () => {
    const numbers = new Set(hazards.map((hazard) => Number(hazard.id)));
    const wanted = Array.from({ length: 12 }, (_, at) => 14 + at);
    expect(wanted.filter((id) => !numbers.has(id))).toEqual([]);
  });

  it('are listed up to twenty a file, then counted', () => {
    const reading = read(sheet(Array.from({ length: 50 }, (_, i) => `${i},odd${i},40`)));
    expect(reading.findings).toHaveLength(21);
    expect(reading.findings.at(-1)?.says).toBe('30 more findings in this file.');
  });
});
