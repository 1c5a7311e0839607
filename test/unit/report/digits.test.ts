import { describe, expect, it } from 'vitest';
import type { Figure } from '../../../src/ledger/figure.ts';
import { figureWords } from '../../../src/report/cite.ts';
import {
  exactText,
  givenText,
  numberText,
  plusMinusOf,
  rangeText,
  valueOf,
  wholeOf,
} from '../../../src/report/digits.ts';

const figure = (of: Partial<Figure>): Figure => ({
  id: 'H-01/heat-made',
  kind: 'value',
  quantity: 'heat-made',
  subject: { run: 'H-01' },
  at: {},
  value: 991,
  unit: 'W',
  bound: null,
  interval: [942, 1040],
  coverage: 0.95,
  k: 2,
  dof: null,
  class: 'measured',
  inputs: [],
  relation: '',
  method: '',
  notes: [],
  ...of,
});
const spaced = (text: string): string => text.replace(/[\u00a0\u202f\u2009]/g, ' ');

describe('digits of a figure', () => {
  it('writes half of the interval behind ± and the value to the same place', () => {
    expect(spaced(wholeOf(figure({})))).toBe('991 ± 49 W');
    expect(spaced(valueOf(figure({ value: 990.6 })))).toBe('991 W');
    expect(plusMinusOf(figure({}))).toBe('± 49');
  });

  it('speaks of times in minutes: 2862 s ± 120 s is 47.7 min ± 2.0 min', () => {
    const time = figure({ quantity: 'limit-crossing', unit: 's', value: 2862, interval: [2742, 2982] });
    expect(spaced(wholeOf(time))).toBe('47.7 ± 2.0 min');
  });

  it('keeps a limit that was not reached as a bound', () => {
    const bound = figure({
      quantity: 'limit-crossing',
      unit: 's',
      value: null,
      bound: 'above',
      interval: [9000, null],
      k: null,
    });
    expect(spaced(wholeOf(bound))).toBe('> 150 min');
    expect(plusMinusOf(bound)).toBe('bound');
  });

  it('gives a difference its sign, and none when it rounds to nothing', () => {
    const by = (value: number) =>
      spaced(wholeOf(figure({ kind: 'difference', value, interval: [value - 9, value + 9] })));
    expect(by(22)).toBe('+22.0 ± 9.0 W');
    expect(by(-28)).toBe('−28.0 ± 9.0 W');
    expect(by(0.01)).toBe('0.0 ± 9.0 W');
  });

  it('puts the US unit in brackets, a difference of temperatures without its zero (10 K is 18 °F of difference, NIST SP 811)', () => {
    const hot = figure({ quantity: 'final-temperature', unit: 'Cel', value: 100, interval: [99, 101] });
    expect(spaced(wholeOf(hot, true))).toBe('100.0 ± 1.0 °C (212.0 ± 1.8 °F)');
    const cooler = figure({
      quantity: 'final-temperature',
      unit: 'K',
      kind: 'difference',
      value: -10,
      interval: [-11, -9],
    });
    expect(spaced(wholeOf(cooler, true))).toBe('−10.0 ± 1.0 K (−18.0 ± 1.8 Δ°F)');
  });

  it('writes a band from end to end, with its class and without a mark in its middle', () => {
    const band = (interval: [number, number]) =>
      figure({ quantity: 'jet-power', value: null, interval, k: null, class: 'model estimate' });
    expect(spaced(wholeOf(band([3.21, 18.4])))).toBe('3 to 18 W (model estimate)');
    expect(spaced(wholeOf(band([0.321, 1.84])))).toBe('0.3 to 1.8 W (model estimate)');
    expect(plusMinusOf(band([3.21, 18.4]))).toBe('band');
    // 1 hp (mechanical) is 745.7 W (NIST SP 811, B.8)
    expect(spaced(wholeOf(band([745.7, 1491.4]), true))).toBe(
      '750 to 1490 W (1.0 to 2.0 hp (mechanical)) (model estimate)',
    );
  });

  it('writes a grade as a whole number, and a kappa that ends at 1 from end to end', () => {
    const grade = figure({ quantity: 'reach', unit: '1', value: 3, interval: [null, null], k: null });
    expect(wholeOf(grade)).toBe('3');
    expect(plusMinusOf(grade)).toBe('—');
    const kappa = figure({ quantity: 'kappa', unit: '1', value: 0.93, interval: [0.81, 1] });
    expect(spaced(wholeOf(kappa))).toBe('0.93 (0.81 to 1.00)');
    expect(plusMinusOf(kappa)).toBe('0.81 to 1.00');
    const even = figure({ quantity: 'kappa', unit: '1', value: 0.7, interval: [0.5, 0.9] });
    expect(spaced(wholeOf(even))).toBe('0.70 ± 0.20');
  });

  it('speaks of the camera clock and of settling in seconds, and of shares of a count to a tenth of a percent', () => {
    const clock = figure({ quantity: 'camera-ahead', unit: 's', value: 7.4, interval: [6.2, 8.6] });
    expect(spaced(wholeOf(clock))).toBe('7.4 ± 1.2 s');
    const share = (value: number) =>
      spaced(wholeOf(figure({ quantity: 'grades-equal', unit: '%', value, interval: [null, null] })));
    expect(share((34 / 36) * 100)).toBe('94.4 %');
    expect(share(100)).toBe('100 %');
  });

  it('names a figure of the flow trial in words', () => {
    const words = (quantity: Figure['quantity'], at: Figure['at']) => figureWords({ quantity, at });
    expect(words('reach', { 'wheel-speed': '290 rpm' })).toBe('Reach at 290 wheel rpm');
    expect(words('running-level', { 'wheel-speed': '290 rpm', direction: 'down' })).toBe(
      'running level at 290 wheel rpm, way down',
    );
    expect(words('kappa', { grade: 'side', observers: '1-2' })).toBe(
      'quadratic-weighted kappa, Side fall, observers 1 and 2',
    );
    expect(words('jet-power', { 'wheel-speed': '290 rpm' })).toBe(
      'power in the oil thrown by the ring gear at 290 wheel rpm',
    );
  });

  it('prints a dash for what could not be formed, never a word of the machine', () => {
    expect(numberText(NaN, 2)).toBe('—');
    expect(exactText(Infinity)).toBe('—');
    expect(givenText(NaN, 0.1, 'K')).toContain('—');
    expect(plusMinusOf(figure({ interval: [null, null] }))).toBe('—');
  });

  it('shows exact numbers without zeros that say nothing', () => {
    expect(exactText(2.4)).toBe('2.4');
    expect(exactText(150)).toBe('150');
    expect(exactText(0.000123456)).toBe('0.0001235');
    expect(spaced(exactText(93451))).toBe('93 451');
    expect(spaced(rangeText(233.15, 473.15, '°C'))).toBe('from −40 °C to 200 °C');
  });
});
