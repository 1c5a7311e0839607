import { describe, expect, it } from 'vitest';
import { readLog } from '../../../src/logs/log.ts';
import { expectHazard } from './hazard.ts';
import { column, foundIn, plainMap, read, sheet, steadyRows } from './sheets.ts';

describe('a log is refused at its place', () => {
  it('when the clock has no reading in a row', () => {
    const rows = steadyRows(20).with(4, ',104.5,40.4');
    expectHazard({ id: 'clock', title: '', content: sheet(rows), finds: ['error clock-missing 6:1'] });
  });

  it('when its columns are parted by another sign than the map declares', () => {
    const content = sheet(steadyRows(20)).replaceAll(',', ';');
    expectHazard({
      id: 'delimiter',
      title: '',
      content,
      finds: ['error delimiter-differs 1:1'],
      says: /semicolon, not by comma/,
    });
  });

  it('when it is larger than a log can be, before a byte is looked at', () => {
    // A view of that length over one small buffer would need the memory; only its length is asked for.
    const bytes = Object.create(Uint8Array.prototype, {
      length: { value: 2 ** 31 },
      byteLength: { value: 2 ** 31 },
    }) as Uint8Array;
    expect(foundIn(readLog({ file: 'a.csv', bytes, sha256: '', map: plainMap }))).toEqual(['error log-too-large 1:1']);
  });
});

describe('a log is read, and what cannot be checked is said', () => {
  it('when its units row holds a word that is no unit', () => {
    const content = sheet(['s,rpm,warmth', ...steadyRows(20)]);
    expectHazard({
      id: 'unit',
      title: '',
      content,
      map: { ...plainMap, unitsRow: 2 },
      finds: ['warning unit-unread 2:7'],
    });
  });
});

describe('a log in which everything is wrong', () => {
  it('lists twenty and counts the rest', () => {
    const rows = steadyRows(40).map((row, i) => row.replace(/,[\d.]+$/, `,open${i}`));
    const found = read(sheet(rows)).findings;
    expect(found.length).toBe(21);
    const last = found.at(-1)!;
    expect(last.code).toBe('more-findings');
    expect(last.says).toContain('20 more');
  });

  it('tells one mistake once, and how many cells it spoils', () => {
    const commas = steadyRows(40).map((row) => row.replace(/,([\d.]+)$/, ',"7,25"'));
    const found = read(sheet(commas)).findings;
    expect(found.map(({ code }) => code)).toEqual(['decimal-mixed']);
    expect(found[0]?.says).toContain('39 more cells are like it');
    expect(found[0]?.write).toContain('decimal: ","');
  });

  it('refuses torque and speed of opposite signs where nothing is driven', () => {
    const map = { ...plainMap, columns: [column('n', 'pinion-speed', 'rpm'), column('T', 'torque-in', 'N·m')] };
    const rows = Array.from({ length: 40 }, (_, i) => `${i},${1300 + (i % 7)},-1.${i % 10}5`);
    const [finding] = read(sheet(rows), map).findings;
    // 1303 rpm · 1.50 N·m · π/30
    expect(finding).toMatchObject({ code: 'power-back', level: 'error' });
    expect(finding?.says).toContain('−205 W');
    expect(foundIn(read(sheet(rows.map((row) => row.replace('-', ''))), map))).toEqual([]);
  });
});
