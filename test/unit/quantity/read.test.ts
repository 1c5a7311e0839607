import { describe, expect, it } from 'vitest';
import type { Dimension, Quantity, Trouble } from '../../../src/quantity/quantity.ts';
import { readAccuracy, readNumber, readQuantity, readRate } from '../../../src/quantity/read.ts';

const read = (text: string, dimension: Dimension | readonly Dimension[], field?: string): Quantity => {
  const result = readQuantity(text, dimension, field === undefined ? {} : { field });
  if (!result.ok) throw new Error(result.trouble.says);
  return result.value;
};
const trouble = (text: string, dimension: Dimension | readonly Dimension[], field?: string): Trouble => {
  const result = readQuantity(text, dimension, field === undefined ? {} : { field });
  if (result.ok) throw new Error(`"${text}" was read as ${result.value.value}`);
  return result.trouble;
};
const underlined = (text: string, t: Trouble): string => text.slice(t.offset, t.offset + t.length);

describe('quantities as people write them', () => {
  it.each([
    ['2.40 L', 'volume', 0.0024, 'L'],
    ['2,4 L', 'volume', 0.0024, 'L'],
    ['0,075 L', 'volume', 0.000075, 'L'],
    ['0.9l', 'volume', 0.0009, 'L'],
    ['900 ml', 'volume', 0.0009, 'mL'],
    ['.5 L', 'volume', 0.0005, 'L'],
    ['3 US qt', 'volume', 2.839058838e-3, 'US qt'],
    ['5 U.S. pt', 'volume', 2.365882365e-3, 'US pt'],
    ['2 imp gal', 'volume', 9.09218e-3, 'imp gal'],
    ['½ US qt', 'volume', 0.473176473e-3, 'US qt'],
    ['12\u202f000 mL', 'volume', 0.012, 'mL'],
    ['12 000 mL', 'volume', 0.012, 'mL'],
    ['12,000.5 mL', 'volume', 0.0120005, 'mL'],
    ['12.000,5 mL', 'volume', 0.0120005, 'mL'],
    ['1,234,567 mL', 'volume', 1.234567, 'mL'],
    ['5 7/16 in', 'length', 0.1381125, 'in'],
    ['5-7/16 in', 'length', 0.1381125, 'in'],
    ['5½"', 'length', 0.1397, 'in'],
    ['5 ft 7 in', 'length', 1.7018, 'ft'],
    ['\u221253 mm', 'length', -0.053, 'mm'],
    ['\u201353 mm', 'length', -0.053, 'mm'],
    ['- 53\u00a0mm', 'length', -0.053, 'mm'],
    ['3 \u00b5m', 'length', 3e-6, 'µm'],
    ['3 \u03bcm', 'length', 3e-6, 'µm'],
    ['203 °F', 'temperature', 368.15, '°F'],
    ['240F', 'temperature', 388.705555555556, '°F'],
    ['60 C', 'temperature', 333.15, '°C'],
    ['60 degC', 'temperature', 333.15, '°C'],
    ['60 º C', 'temperature', 333.15, '°C'],
    ['300 K', 'temperature', 300, 'K'],
    ['5 K', 'temperature-difference', 5, 'K'],
    ['9 Δ°F', 'temperature-difference', 5, 'Δ°F'],
    ['0.5 °C/min', 'temperature-rate', 0.5 / 60, 'K/min'],
    ['290 rev/min', 'rotation', 30.3687289847013, 'rpm'],
    ['290 min\u207b\u00b9', 'rotation', 30.3687289847013, 'rpm'],
    ['170 mm2/s', 'kinematic-viscosity', 170e-6, 'mm²/s'],
    ['170 mm^2/s', 'kinematic-viscosity', 170e-6, 'mm²/s'],
    ['170 cSt', 'kinematic-viscosity', 170e-6, 'cSt'],
    ['0.9 g/cm3', 'density', 900, 'g/cm³'],
    ['0.0007 1/K', 'expansion', 0.0007, '1/K'],
    ['7e-4 1/K', 'expansion', 0.0007, '1/K'],
    ['2000 J/(kg K)', 'specific-heat', 2000, 'J/(kg·K)'],
    ['4.14 kJ/K', 'heat-capacity', 4140, 'kJ/K'],
    ['21 kWh/100 km', 'energy-per-distance', 756, 'kWh/100 km'],
    ['+12 %', 'ratio', 0.12, '%'],
    ['-60°', 'angle', -Math.PI / 3, '°'],
    ['5 PS', 'power', 3677.49375, 'hp (metric)'],
    ['150 min', 'time', 9000, 'min'],
    ['1 h 30 min', 'time', 5400, 'h'],
    ['1h 30min 15s', 'time', 5415, 'h'],
  ] as const)('"%s" as %s', (text, dimension, si, unit) => {
    const quantity = read(text, dimension);
    expect(quantity.value).toBeCloseTo(si, 12);
    expect(quantity).toMatchObject({ asWritten: text, unit });
  });

  it.each([
    'lbf·ft',
    'lbf⋅ft',
    'lbf-ft',
    'lbf*ft',
    'lbf ft',
    'ft·lbf',
    'lb-ft',
    'lb.ft',
    'ft-lb',
    'ft lb',
    'ft-lbs',
    'lb‑ft',
  ])('30 %s is one torque', (spelling) => {
    expect(read(`30 ${spelling}`, 'torque')).toMatchObject({ unit: 'lbf·ft', value: 40.67453844994201 });
  });

  it('keeps the text as typed and the step of its last digit', () => {
    expect(read(' 0.021 N·m ', 'torque')).toMatchObject({ asWritten: '0.021 N·m', step: 0.001 });
    expect(read('5 7/16 in', 'length').step).toBeCloseTo(0.0254 / 16, 12);
  });

  it('makes the same number of 2152 g and 2.152 kg', () => {
    expect(read('2152 g', 'mass').value).toBe(read('2.152 kg', 'mass').value);
  });

  it('takes the first of several kinds that the unit belongs to', () => {
    expect(read('2152 g', ['volume', 'mass'])).toMatchObject({ value: 2.152, unit: 'g' });
  });
});

describe('how far a value may be off', () => {
  it.each([
    ['2.40 L ± 0.02 L (k=2)', 'volume', 0.00002, 2],
    ['2.40 L +/- 20 mL', 'volume', 0.00002, null],
    ['95 °C ± 0.3 K', 'temperature', 0.3, null],
    ['95 °C ± 0.3 °C (k = 2)', 'temperature', 0.3, 2],
    ['203 °F ± 1.8 °F', 'temperature', 1, null],
    ['170 mm²/s ± 0.6 % (k=2)', 'kinematic-viscosity', 1.02e-6, 2],
    ['2000 J/(kg·K) ± 40 J/(kg·K)', 'specific-heat', 40, null],
    ['5 hp (metric) ± 1 hp (metric) (k=2)', 'power', 735.49875, 2],
    ['12 % ± 0.5 %', 'ratio', 0.005, null],
  ] as const)('"%s"', (text, dimension, value, k) => {
    const { plusMinus } = read(text, dimension);
    expect(plusMinus?.value).toBeCloseTo(value, 12);
    expect(plusMinus?.k).toBe(k);
  });

  it.each([
    ['2.40 L ± 0.02', 'plus-minus-unclear', '0.02'],
    ['2.40 L ± 0 L', 'plus-minus-unclear', '0 L'],
    ['2.40 L ± -0.02 L', 'plus-minus-unclear', '-0.02 L'],
    ['2.40 L ± 0.02 L (k=0)', 'plus-minus-unclear', '0.02 L'],
    ['2.40 L ± 0.02 L (95 %)', 'plus-minus-unclear', '0.02 L'],
    ['2.40 ± 0.02 L', 'unit-missing', '2.40'],
    ['2.40 L ± 3 mm', 'unit-of-other-kind', 'mm'],
    ['2.40 L ±', 'number-missing', ''],
  ] as const)('"%s" is refused as %s', (text, code, place) => {
    const t = trouble(text, 'volume');
    expect(t.code).toBe(code);
    expect(underlined(text, t)).toBe(place);
  });
});

describe('what has two readings is refused with both named', () => {
  it.each([
    ['1,234 L', 'volume', 'number-ambiguous', '1,234', ['1.234 L', '1234 L']],
    ['5 pt', 'volume', 'unit-ambiguous', 'pt', ['5 US pt', '5 imp pt']],
    ['3 qt', 'volume', 'unit-ambiguous', 'qt', ['3 US qt', '3 imp qt']],
    ['25 mpg', 'distance-per-fuel', 'unit-ambiguous', 'mpg', ['25 mi/US gal', '25 mi/imp gal']],
    [
      '25 miles per gallon',
      'distance-per-fuel',
      'unit-ambiguous',
      'miles per gallon',
      ['25 mi/US gal', '25 mi/imp gal'],
    ],
    ['2 gal', 'volume', 'unit-ambiguous', 'gal', ['2 US gal', '2 imp gal']],
    ['8 oz', 'volume', 'unit-ambiguous', 'oz', ['8 US fl oz', '8 imp fl oz']],
    ['5 hp', 'power', 'unit-ambiguous', 'hp', ['5 hp (mechanical)', '5 hp (metric)', '5 hp (electric)']],
    ['5 HP', 'power', 'unit-ambiguous', 'HP', ['5 hp (mechanical)', '5 hp (metric)']],
    ['203 degrees', 'temperature', 'unit-ambiguous', 'degrees', ['203 °C', '203 °F']],
    ['203°', 'temperature', 'unit-ambiguous', '°', ['203 °C', '203 °F']],
    ['78', 'temperature', 'unit-missing', '78', ['78 °C', '78 °F']],
    ['2.1', 'volume', 'unit-missing', '2.1', ['2.1 L', '2.1 US qt']],
    ['0.12', 'ratio', 'unit-missing', '0.12', ['0.12 %', 'a hundred times']],
    ['1:30', 'time', 'number-is-clock', '1:30', ['1 h 30 min']],
    ['010', 'rotation', 'number-leading-zero', '010', ['10 without the zero']],
    ['03/04/25', 'time', 'number-is-date', '03/04/25', ['2025-04-03']],
    ['2-3 L', 'volume', 'number-range', '2-3', ['±']],
    ['5 °C', 'temperature-difference', 'difference-in-degrees', '°C', ['5 K']],
    ['5 °F', 'temperature-difference', 'difference-in-degrees', '°F', ['5 Δ°F']],
    ['5 Δ°F', 'temperature', 'temperature-as-difference', 'Δ°F', ['5 °C', '5 °F']],
  ] as const)('"%s" as %s: %s', (text, dimension, code, place, written) => {
    const t = trouble(text, dimension);
    expect(t.code).toBe(code);
    expect(underlined(text, t)).toBe(place);
    for (const reading of written) expect(t.write).toContain(reading);
  });

  it('names the field in what to write', () => {
    const t = trouble('2.1', 'volume', 'fill');
    expect(t.says).toBe('"fill" is a volume and has no unit.');
    expect(t.write).toContain('fill: 2.1 L  or  fill: 2.1 US qt');
  });
});

describe('what cannot be read is refused', () => {
  it.each([
    ['', 'volume', 'number-missing', ''],
    ['fill to plug', 'volume', 'number-missing', 'fill to plug'],
    ['~2 L', 'volume', 'number-missing', '~2 L'],
    ['3 6 L', 'volume', 'number-unclear', '3 6'],
    ['1,23,456 L', 'volume', 'number-unclear', '1,23,456'],
    ['85/90', 'kinematic-viscosity', 'number-unclear', '85/90'],
    ['5 17/16 in', 'length', 'number-unclear', '5 17/16'],
    ['2. L', 'volume', 'number-unclear', '2'],
    ["1'234 L", 'volume', 'number-unclear', "1'234"],
    ['1e400 L', 'volume', 'number-not-finite', '1e400'],
    ['Infinity', 'volume', 'number-not-finite', 'Infinity'],
    ['nan L', 'volume', 'number-not-finite', 'nan'],
    ['1e-400 L', 'volume', 'number-unclear', '1e-400'],
    ['2.4 L L', 'volume', 'unit-unknown', 'L L'],
    ['290 rpm wh', 'rotation', 'unit-unknown', 'rpm wh'],
    ['2.4 N·m', 'volume', 'unit-of-other-kind', 'N·m'],
    ['5 m', 'time', 'unit-of-other-kind', 'm'],
    ['1 h 90 min', 'time', 'parts-unclear', '1 h 90 min'],
    ['1.5 h 30 min', 'time', 'parts-unclear', '1.5 h 30 min'],
    ['-300 °C', 'temperature', 'below-absolute-zero', '-300 °C'],
    ['-1 K', 'temperature', 'below-absolute-zero', '-1 K'],
  ] as const)('"%s" as %s: %s', (text, dimension, code, place) => {
    const t = trouble(text, dimension);
    expect(t.code).toBe(code);
    expect(underlined(text, t)).toBe(place);
  });

  it('names the nearest known unit, and none when it is not sure', () => {
    expect(trouble('22 KW', 'power').write).toContain('22 kW');
    expect(trouble('2.4 litrs', 'volume').write).toContain('2.4 L');
    expect(trouble('2.4 buckets', 'volume').write).toContain('2.4 L  or  2.4 US qt');
  });
});

describe('plain numbers, rates and accuracies', () => {
  it.each([
    ['41', 41],
    ['4,556', null],
    ['3.5', 3.5],
    ['3,5', 3.5],
    ['-4', -4],
    ['12 teeth', null],
    ['0x10', null],
    ['', null],
  ])('the plain number "%s"', (text, value) => {
    const result = readNumber(text);
    expect(result.ok ? result.value : null).toBe(value);
  });

  it('says what is too much after a plain number, and what a rate lacks', () => {
    const [teeth, rate] = [readNumber('12 teeth'), readRate('5 N·m', 'torque')];
    expect(teeth.ok ? null : teeth.trouble).toMatchObject({ code: 'number-has-more', offset: 3, length: 5 });
    expect(rate.ok ? null : rate.trouble).toMatchObject({ code: 'rate-without-time', offset: 0, length: 5 });
  });

  it.each([
    ['2 K/s', 'temperature', 2],
    ['120 K/min', 'temperature', 2],
    ['60 rpm/s', 'rotation', 2 * Math.PI],
    ['60 N·m / min', 'torque', 1],
    ['5 N·m', 'torque', null],
    ['5/s', 'torque', null],
  ] as const)('the rate "%s" of %s', (text, dimension, value) => {
    const result = readRate(text, dimension);
    if (value === null) expect(result.ok).toBe(false);
    else expect(result.ok && result.value.value).toBeCloseTo(value, 12);
  });

  it.each([
    ['± 0.05 % of range', 'torque', { of: 'range', value: 0.0005, k: null }],
    ['± 0.1 % FS', 'torque', { of: 'range', value: 0.001, k: null }],
    ['± 0.5 % of reading (k=2)', 'torque', { of: 'reading', value: 0.005, k: 2 }],
    ['± 0.3 N·m', 'torque', { of: 'absolute', value: 0.3, k: null }],
    ['0.3 K (k=2)', 'temperature', { of: 'absolute', value: 0.3, k: 2 }],
    ['± 0.5 °C', 'temperature', { of: 'absolute', value: 0.5, k: null }],
    ['± 2 g', 'mass', { of: 'absolute', value: 0.002, k: null }],
  ] as const)('the accuracy "%s" of %s', (text, dimension, expected) => {
    const result = readAccuracy(text, dimension);
    expect(result.ok && result.value).toEqual({ asWritten: text, ...expected });
  });

  it.each([
    ['± 0.5 %', 'torque', 'accuracy-of-what'],
    ['± 0.3', 'torque', 'unit-missing'],
    ['± 0.3 K', 'torque', 'unit-of-other-kind'],
    ['± 0 N·m', 'torque', 'plus-minus-unclear'],
    ['± 0.3 N·m (95 %)', 'torque', 'plus-minus-unclear'],
    ['± 0.3 N·m of range', 'torque', 'unit-of-other-kind'],
    ['good', 'torque', 'number-missing'],
  ] as const)('the accuracy "%s" of %s is refused: %s', (text, dimension, code) => {
    const result = readAccuracy(text, dimension);
    expect(result.ok ? 'read' : result.trouble.code).toBe(code);
  });
});
