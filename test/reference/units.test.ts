import { describe, expect, it } from 'vitest';
import { readQuantity } from '../../src/quantity/read.ts';
import { differenceToSI, fromSI, toSI, unitNamed, units, type Unit } from '../../src/quantity/units.ts';
import { writeConcise, writeMeasured, writeNumber, writeWithUS } from '../../src/quantity/write.ts';

const unit = (name: string): Unit => unitNamed(name)!;
const inUnits = (from: string, to: string): number => toSI(unit(from), 1) / toSI(unit(to), 1);
/** Agreement to the digits that a check states: relative, since the factors differ by fifteen powers of ten. */
const relative = (got: number, expected: number): number => Math.abs(got / expected - 1);

describe('units of the bench (NIST SP 811, 2008, Appendix B; exact definitions, recalled and recomputed)', () => {
  it.each([
    { id: 'unit-us_quart', from: 'US qt', to: 'L', printed: 0.946352946 },
    { id: 'unit-us_gallon', from: 'US gal', to: 'L', printed: 3.785411784 },
    { id: 'unit-imp_gallon', from: 'imp gal', to: 'L', printed: 4.54609 },
    { id: 'unit-us_pint', from: 'US pt', to: 'L', printed: 0.473176473 },
    { id: 'unit-hp_mechanical', from: 'hp (mechanical)', to: 'W', printed: 745.6998715822702 },
    { id: 'unit-lbf_ft', from: 'lbf·ft', to: 'N·m', printed: 1.3558179483314004 },
    { id: 'unit-lbf_in', from: 'lbf·in', to: 'N·m', printed: 0.1129848290276167 },
    { id: 'unit-inch', from: 'in', to: 'mm', printed: 25.4 },
    { id: 'unit-mile', from: 'mi', to: 'm', printed: 1609.344 },
    { id: 'unit-mph', from: 'mph', to: 'm/s', printed: 0.44704 },
    { id: 'unit-psi', from: 'psi', to: 'Pa', printed: 6894.757293168361 },
    { id: 'unit-bar', from: 'bar', to: 'Pa', printed: 100000 },
    { id: 'unit-cSt', from: 'cSt', to: 'm²/s', printed: 1e-6 },
    { id: 'unit-cP', from: 'cP', to: 'Pa·s', printed: 1e-3 },
    { id: 'unit-btu_it', from: 'Btu', to: 'J', printed: 1055.05585262 },
    { id: 'unit-lb', from: 'lb', to: 'kg', printed: 0.45359237 },
    { id: 'unit-rpm', from: 'rpm', to: 'rad/s', printed: 0.10471975511965977 },
    { id: 'units: metric horsepower', from: 'hp (metric)', to: 'W', printed: 735.49875 },
    { id: 'units: Btu(IT) per hour', from: 'Btu/h', to: 'W', printed: 0.29307107017222 },
    { id: 'units: mile per hour', from: 'mph', to: 'km/h', printed: 1.609344 },
    { id: 'units: psi', from: 'psi', to: 'kPa', printed: 6.894757293168361 },
    { id: 'units: degree Fahrenheit of difference', from: 'Δ°F', to: 'K', printed: 0.5555555555555556 },
    { id: 'pressure–viscosity coefficient', from: '1/GPa', to: '1/Pa', printed: 1e-9 },
    { id: 'gigapascal', from: 'GPa', to: 'MPa', printed: 1000 },
    { id: 'surface tension', from: 'dyn/cm', to: 'mN/m', printed: 1 },
    { id: 'film coefficient', from: 'Btu/(h·ft²·°F)', to: 'W/(m²·K)', printed: 5.678263341113488 },
    { id: 'consumption', from: 'L/100 km', to: 'mL/km', printed: 10 },
    { id: 'fuel-factors-epa, gasoline, of 8887', from: 'g/US gal', to: 'g/L', printed: 2347.697 / 8887, digits: 1e-7 },
    { id: 'fuel-factors-epa, diesel, of 10180', from: 'g/US gal', to: 'g/L', printed: 2689.2715 / 10180, digits: 1e-7 },
    { id: 'unit-mpg_us_const, a mile a US gallon', from: 'mi/US gal', to: 'km/L', printed: 100 / 235.21458333333334 },
    { id: 'card, a mile an imperial gallon', from: 'mi/imp gal', to: 'km/L', printed: 100 / 282.4809363, digits: 1e-9 },
    { id: 'mass a distance', from: 'g/mi', to: 'g/km', printed: 1 / 1.609344 },
    { id: 'fuel an energy', from: 'L/kWh', to: 'mL/kWh', printed: 1000 },
    { id: 'foot a second squared', from: 'ft/s²', to: 'm/s²', printed: 0.3048 },
    { id: 'horsepower, electric', from: 'hp (electric)', to: 'W', printed: 746 },
  ])('$id: 1 $from is $printed $to', ({ from, to, printed, digits = 1e-12 }) => {
    expect(relative(inUnits(from, to), printed)).toBeLessThan(digits);
  });

  it('unit-mpg_us_const: litres per 100 km times miles per US gallon is 235.214 583', () => {
    const litresPer100km = (1e5 / unit('mi').factor) * inUnits('US gal', 'L');
    expect(relative(litresPer100km, 235.21458333333334)).toBeLessThan(1e-12);
  });

  it.each([
    { f: 32, c: 0 },
    { f: 212, c: 100 },
    { f: 250, c: 121.11111111111 },
    { f: -40, c: -40 },
  ])('unit-degF: $f °F is $c °C', ({ f, c }) => {
    expect(Math.abs(fromSI(unit('°C'), toSI(unit('°F'), f)) - c)).toBeLessThan(1e-9);
  });

  it('unit-degF: a difference of 90 °F is 50 K, without the 32', () => {
    expect(differenceToSI(unit('Δ°F'), 90)).toBeCloseTo(50, 12);
    expect(differenceToSI(unit('°F'), 90)).toBeCloseTo(50, 12);
  });

  it('unit-power-torque: 250 lbf·ft at 2500 rpm is 88 738.077 W and 118.999 72 hp (hp = lbf·ft × rpm / 5252.11)', () => {
    const power_W = toSI(unit('lbf·ft'), 250) * toSI(unit('rpm'), 2500);
    expect(relative(power_W, 88738.077)).toBeLessThan(1e-6);
    expect(relative(fromSI(unit('hp (mechanical)'), power_W), 118.99972)).toBeLessThan(1e-6);
  });

  it('names a source and a UCUM code for every unit', () => {
    expect(units.filter((u) => u.source.length < 5 || u.ucum === '')).toEqual([]);
  });

  it('reads 100 lbf·ft as 135.581 794 8 N·m, to all digits printed in NIST SP 811', () => {
    const read = readQuantity('100 lbf·ft', 'torque');
    expect(read.ok && Math.abs(read.value.value - 135.5817948)).toBeLessThan(0.5e-7);
  });
});

describe('digits of an uncertainty (JCGM 100:2008, 7.2.2 and 7.2.6)', () => {
  it.each([
    { value: 10.05762, u: 0.027, printed: '10.058(27)', source: 'JCGM 100 7.2.6' },
    { value: 127.7321699, u: 0.07107141, printed: '127.732(71)', source: 'JCGM 100 H.2' },
    { value: 100.02147, u: 0.00035, printed: '100.02147(35)', source: 'JCGM 100 7.2.2' },
    { value: 50000838, u: 31.66, printed: '50000838(32)', source: 'JCGM 100 H.1' },
    { value: 0.0996, u: 0.00996, printed: '0.100(10)', source: 'same rule, carried over' },
    { value: -0.004, u: 0.3, printed: '0.00(30)', source: 'same rule, no minus zero' },
    { value: 91.25, u: 0.96, printed: '91.25(96)', source: 'same rule' },
    { value: 91.25, u: 9.96, printed: '91(10)', source: 'same rule, place taken again' },
  ])('round-u-2dig: $value with $u prints $printed ($source)', ({ value, u, printed }) => {
    expect(writeConcise({ value, u }).replace(/\u202f/g, '')).toBe(printed);
  });

  it('gives 20.00 ± 0.50 °C as 68.00 ± 0.90 °F: an uncertainty takes 1.8 without 32 (NIST SP 811, B.8)', () => {
    const text = writeWithUS({ value: 293.15, u: 0.5, k: 1, unit: '°C' });
    expect(text.replace(/\u202f/g, ' ')).toBe('20.00 ± 0.50 °C (68.00 ± 0.90 °F)');
  });

  it('states an expanded uncertainty of two digits: 0.65 °C at k = 2 is ± 1.3 °C (JCGM 100 7.2.3)', () => {
    const shown = writeMeasured({ value: 95.72, u: 0.65, k: 2, unit: '°C' });
    expect(shown).toMatchObject({ value: '95.7', plusMinus: '1.3', unit: '°C' });
  });
});

describe('half to even on the decimal digits (ISO 80000-1:2009, Annex B, rule A; examples from memory)', () => {
  it.each([
    { value: 12.25, decimals: 1, printed: '12.2' },
    { value: 12.35, decimals: 1, printed: '12.4' },
    { value: 1225, decimals: -1, printed: '1220' },
    { value: 1235, decimals: -1, printed: '1240' },
    { value: 12.223, decimals: 1, printed: '12.2' },
    { value: 12.251, decimals: 1, printed: '12.3' },
    { value: 12.275, decimals: 1, printed: '12.3' },
  ])('$value to $decimals decimals prints $printed', ({ value, decimals, printed }) => {
    expect(writeNumber(value, decimals)).toBe(printed);
  });
});
