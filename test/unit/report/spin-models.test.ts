import { describe, expect, it } from 'vitest';
import type { DerivedRun, Result } from '../../../src/trial/derived.ts';
import type { QuantityName } from '../../../src/trial/figures.ts';
import type { Variation } from './fixture.ts';
import { estimate } from '../../../src/quantity/estimate.ts';
import { firstOf, headsOf, joined, marginOf, pagesOf, rowsOf, sectionOf, wordsIn } from './page-at.ts';

const rpm = (n: number): number => (n * Math.PI) / 30;
const sump_K = 333.15;
const shared = { bound: null, class: 'model estimate', relation: '', method: '', given: [], steps: [] } as const;

const band = (speed: number, low: number, high: number, notes: readonly string[] = []): Result => ({
  ...shared,
  quantity: 'loss-estimate',
  at: { outputSpeed_rad_s: rpm(speed), sump_K },
  estimate: null,
  band: { low, high },
  notes,
});
const exponent = (quantity: QuantityName, value: number, u: number): Result => ({
  ...shared,
  class: 'derived from measurement',
  quantity,
  at: {},
  estimate: estimate(value, [{ cause: 'repeat', u }]),
  notes: [],
});
const window = (quantity: QuantityName, value: number, notes: readonly string[] = []): Result => ({
  ...exponent(quantity, value, value / 100),
  at: { outputSpeed_rad_s: rpm(300), sump_K },
  notes,
});
const whole = { of: 'whole', condition: 1.04, speed: 'speed-exponent', viscosity: 'viscosity-exponent' } as const;
const above = {
  of: 'above a constant',
  condition: 19.2,
  speed: 'speed-exponent-above',
  viscosity: 'viscosity-exponent-above',
} as const;

const withRun = (results: readonly Result[], more: Partial<DerivedRun> = {}): Variation => ({
  derived: (all) => all.map((d) => (d.run === 'S-01' ? { ...d, results: [...d.results, ...results], ...more } : d)),
});
const sheet = (...of: Parameters<typeof withRun>) => pagesOf(withRun(...of)).page('runs/S-01/');
const chartOf = (page: ReturnType<typeof sheet>) => {
  const chart = firstOf(page, 'chart')!.chart;
  if (chart.data.kind !== 'speed') throw new Error('not the chart of speeds');
  return { ...chart, data: chart.data };
};

describe('what models let one expect, on the sheet of a spin run', () => {
  const left = 'of churning alone: bearings and seals left out, because pan/rig.md does not name them';
  const page = sheet([band(300, 80, 400, [left]), band(120, 20, 90, [left])]);

  it('lies behind the measured curve as a band, in order of speed, and the caption says what it is', () => {
    const { data, caption, alternative } = chartOf(page);
    expect(data.band!.points.map(({ x, low, high }) => [x, low, high])).toEqual([
      [120, 20, 90],
      [300, 80, 400],
    ]);
    expect(joined(caption)).toContain('no measurement and no prediction');
    expect(alternative).toContain('what models let one expect at 60');
  });

  it('is a table of bands without a value, and names what is left out', () => {
    expect(rowsOf(page, 'loss-estimate')).toEqual([
      ['120', '20 to 90 W'],
      ['300', '80 to 400 W'],
    ]);
    expect(marginOf(page, 'models-of-loss', 'Left out.')).toBe(`${left.replace(/^o/, 'O')}.`);
    expect(wordsIn(page, 'models-of-loss')).toContain('unverified');
  });

  it('is no band of one speed, and none without estimates: the page says which field to write', () => {
    expect(chartOf(sheet([band(300, 80, 400)])).data.band).toBeUndefined();
    const why =
      'No estimate by models of loss stands behind it: the rig sheet does not say ring.face. Write it in rig.md.';
    const bare = sheet([], { noLossEstimate: why });
    expect(chartOf(bare).data.band).toBeUndefined();
    expect(wordsIn(bare, 'models-of-loss')).toContain(why);
    const held = { ...withRun([], { noLossEstimate: why }), audience: 'public', rig: { shownTo: 'house' } } as const;
    const closed = pagesOf(held).page('runs/S-01/');
    expect(closed.sections.map(({ id }) => id)).not.toContain('models-of-loss');
  });
});

describe('exponents beside the literature', () => {
  const page = sheet([exponent('speed-exponent', 1.7, 0.02), exponent('viscosity-exponent', 0.4, 0.02)], {
    exponents: [whole, above],
  });

  it('say inside, outside or not told, with the range and the condition number', () => {
    expect(headsOf(page, 'exponents')).toEqual([
      'exponent of',
      'fitted',
      'condition number',
      'four regimes (grade V1)',
      'four laws together, unverified (grade U)',
    ]);
    expect(rowsOf(page, 'exponents').map(([of, , condition, one, all]) => [of, condition, one, all])).toEqual([
      ['speed, whole spin power', '1.0', '1.59 to 1.8: inside', '1 to 3.3: inside'],
      ['viscosity, whole spin power', '1.0', '0 to 0.21: outside', '−0.3 to 2: inside'],
      ['speed, above a constant torque', '19', '1.59 to 1.8: not told', '1 to 3.3: not told'],
      ['viscosity, above a constant torque', '19', '0 to 0.21: not told', '−0.3 to 2: not told'],
    ]);
    expect(rowsOf(page, 'exponents').map(([, fitted]) => fitted!.startsWith('not told'))).toEqual([
      false,
      false,
      true,
      true,
    ]);
  });

  it('name their sources', () => {
    const list = sectionOf(page, 'models-of-loss').margin.find(({ name }) => name === 'Exponents.')!.list!;
    expect(joined(list.flat())).toContain('Velex 2011');
    expect(joined(list.flat())).toContain('ISO/TR 14179-2');
  });
});

describe('the oil a spin run ran in', () => {
  it('has viscosity and Reynolds number, and the range that was left', () => {
    const page = sheet([
      window('viscosity', 1.8e-6, ['kinematic viscosity is below the range: the simple form holds above 2 mm²/s.']),
      window('reynolds', 2300),
    ]);
    expect(rowsOf(page, 'viscosity')[0]![1]).toContain('1.8');
    expect(rowsOf(page, 'reynolds')[0]![1]).toContain('2300');
    expect(marginOf(page, 'oil-in-the-windows', 'Range.')).toContain('below the range');
  });

  it('says which field is missing where there is no Reynolds number', () => {
    expect(wordsIn(sheet([window('viscosity', 60e-6)]), 'oil-in-the-windows')).toContain('ring.face');
  });
});

it('a run of which none of it can be formed has no such section', () => {
  const ids = sheet([]).sections.map(({ id }) => id);
  expect(ids).not.toContain('models-of-loss');
  expect(ids).not.toContain('oil-in-the-windows');
});
