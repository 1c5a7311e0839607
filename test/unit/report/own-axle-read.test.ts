import { describe, expect, it } from 'vitest';
import { readAsked, type AxleField, type AxleTyped } from '../../../src/report/own-axle-read.ts';
import { typedAddress, typedFrom } from '../../../src/report/own-axle-words.ts';

const typed = (of: Partial<AxleTyped> = {}): AxleTyped => ({
  ...{ ratio: '4.10', tyre: '338 mm', speed: '290 rpm', load: '22 kW', ambient: '21 °C', airflow: '4 m/s' },
  ...{ fill: '2.40 L', oil: 'O1', nu40: '102 mm²/s', nu100: '15 mm²/s', sump: '60 °C', drive: 'electric' },
  ...{ efficiency: '86 %', ...of },
});
const asked = (of: Partial<AxleTyped>) => {
  const read = readAsked(typed(of));
  if (!read.ok) throw new Error([...read.wrong].join('; '));
  return read.asked;
};
const wrong = (field: AxleField, text: string): string => {
  const read = readAsked(typed({ [field]: text }));
  return read.ok ? 'taken' : `${[...read.wrong.keys()].join()}: ${read.wrong.get(field) ?? ''}`;
};

describe('what a reader types of an own axle', () => {
  it('is taken in any unit: mile per hour by the tyre, Fahrenheit, quarts, torque of both wheels', () => {
    // 1 mile is 1609.344 m, 1 US quart 0.946352946 L (NIST SP 811)
    expect(asked({ speed: '60 mph', tyre: '0.3 m' }).wheel_rad_s).toBeCloseTo((60 * 1609.344) / 3600 / 0.3, 9);
    expect(asked({ sump: '140 °F' }).sump_K).toBeCloseTo(333.15, 9);
    expect(asked({ fill: '2.5 US qt' }).fill_m3).toBeCloseTo(2.5 * 0.946352946e-3, 12);
    expect(asked({ load: '720 N·m' }).power_W).toBeCloseTo((720 * 290 * Math.PI) / 30, 6);
    expect(asked({ load: '531 lbf·ft' }).power_W).toBeCloseTo((531 * 1.3558179483 * 290 * Math.PI) / 30, 3);
  });

  it('may name teeth, or the marking of a tyre', () => {
    expect(asked({ ratio: '41:11' }).ratio).toBeCloseTo(41 / 11, 12);
    // d/2 + a·w = 17·12.7 mm + 0.7·265 mm, rolling on 0.97 of it
    expect(asked({ tyre: '265/70R17' }).radius_m).toBeCloseTo(0.97 * (0.2159 + 0.1855), 9);
  });

  it('may leave out the tyre as long as the speed is that of the wheel', () => {
    expect(asked({ tyre: '' }).radius_m).toBeNull();
    expect(readAsked(typed({ tyre: '', speed: '50 km/h' }))).toMatchObject({ ok: false });
  });

  it('of another oil is its two viscosities', () => {
    expect(asked({ oil: 'other', nu40: '102 cSt' }).oil).toEqual({ nu40_m2_s: 102e-6, nu100_m2_s: 15e-6 });
  });

  it.each<[AxleField, string, RegExp]>([
    ['ratio', 'four', /^ratio: .*3\.73/],
    ['ratio', '0', /^ratio: A ratio is above zero/],
    ['load', '30 hp', /^load: .*hp/],
    ['fill', '2.5 qt', /^fill: .*qt/],
    ['speed', '50', /^speed: /],
    ['sump', '60', /^sump: /],
    ['tyre', '0 mm', /^tyre: .*not above zero/],
    ['efficiency', '120 %', /^efficiency: .*more than 100/],
    ['ambient', '300 apples', /^ambient: .*apples/],
  ])('is not taken for %s “%s”, with one sentence beside that field', (field, text, says) => {
    expect(wrong(field, text)).toMatch(says);
  });

  it('goes through the address and back, and only what was changed stands in it', () => {
    const own = typed({ ratio: '41:11', speed: '33 mph', fill: '2,8 L', oil: 'other' });
    const address = typedAddress(own, typed());
    expect(address).not.toContain('ambient');
    expect(typedFrom(address, typed())).toEqual(own);
    expect(typedFrom('#nothing=of&it', typed())).toEqual(typed());
  });
});
