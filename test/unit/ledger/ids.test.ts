import { describe, expect, it } from 'vitest';
import { conditionsOf, figureId, workingPath, type Naming } from '../../../src/ledger/ids.ts';
import type { Cell } from '../../../src/trial/derived.ts';

const naming: Naming = { reference: { fill_m3: 2.4e-3, oil: 'O1' }, speed: 'wheel-speed' };
const speed = { outputSpeed_rad_s: (290 * Math.PI) / 30, sump_K: 333.15 } as const;
const cell = (article: string, fill_L = 2.4, oil = 'O1', tilt_ratio = 0): Cell => ({
  article,
  oil,
  fill_m3: fill_L * 1e-3,
  tilt_ratio,
});

describe('the name of a figure', () => {
  // Forms as the plan of the house spells them.
  it('of a run is run, quantity and conditions', () => {
    expect(figureId({ subject: { run: 'S-07' }, quantity: 'spin-power', at: speed }, naming)).toBe(
      'S-07/spin-power@290rpm,60Cel',
    );
    expect(figureId({ subject: { run: 'H-03' }, quantity: 'limit-crossing', at: { limit_K: 368.15 } }, naming)).toBe(
      'H-03/limit-crossing@95Cel',
    );
  });

  it('of hours in a band names both its ends, and the charge it is of; of a change in an oil its sample', () => {
    const dose = (from_C: number, charge?: string): string =>
      figureId(
        {
          subject: { oil: 'O1' },
          quantity: 'thermal-dose',
          at: { band_K: [from_C + 273.15, from_C + 283.15], ...(charge === undefined ? {} : { charge }) },
        },
        naming,
      );
    expect(dose(55)).toBe('O1/thermal-dose@55to65Cel');
    expect(dose(-15, 'P0-1')).toBe('O1/thermal-dose@-15to-5Cel,P0-1');
    expect(figureId({ subject: { oil: 'O1' }, quantity: 'iron-change', at: { sample: 'O1-used' } }, naming)).toBe(
      'O1/iron-change@O1-used',
    );
    expect(conditionsOf({ band_K: [328.15, 338.15] }, null, naming)).toEqual({ band: '55 to 65 Cel' });
  });

  it('of a difference names both articles, and fill, oil and tilt only where they differ from the reference', () => {
    const of = (a: Cell, b: Cell): string =>
      figureId({ subject: { cell: a, against: b }, quantity: 'spin-power', at: speed }, naming);
    expect(of(cell('P4'), cell('P0'))).toBe('P4~P0/spin-power@290rpm,60Cel');
    expect(of(cell('P1', 3.59), cell('P0'))).toBe('P1~P0/spin-power@290rpm,60Cel,3.59L~2.40L');
    expect(of(cell('P4', 2.4, 'O2'), cell('P0', 2.4, 'O2'))).toBe('P4~P0/spin-power@290rpm,60Cel,O2~O2');
    expect(of(cell('P0', 2.4, 'O1', 0.12), cell('P0'))).toBe('P0~P0/spin-power@290rpm,60Cel,12pct~0pct');
  });

  it('leads to one working page a subject and quantity, one anchor a condition', () => {
    expect(workingPath({ id: 'P4~P0/spin-power@290rpm,60Cel' }, 'hill-bowl')).toEqual({
      page: 'series/hill-bowl/workings/P4~P0/spin-power/',
      anchor: '290rpm,60Cel',
    });
    expect(workingPath({ id: 'H-01/shed' }, 'hill-bowl').anchor).toBe('value');
  });

  it('is told with its conditions as people write them, an output shaft on a box', () => {
    expect(conditionsOf(speed, null, naming)).toEqual({ 'wheel-speed': '290 rpm', sump: '60 Cel' });
    expect(conditionsOf(speed, cell('P0', 2.4, 'O1', 0.12), { ...naming, speed: 'output-speed' })).toEqual({
      'output-speed': '290 rpm',
      sump: '60 Cel',
      tilt: '12 %',
    });
  });
});
