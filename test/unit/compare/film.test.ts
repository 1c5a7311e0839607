import { describe, expect, it } from 'vitest';
import { filmRatios } from '../../../src/compare/film.ts';
import { estimate } from '../../../src/quantity/estimate.ts';
import type { CellFigure, Effect } from '../../../src/trial/compared.ts';
import { cell, record } from './runs.ts';

const oil = { ...record.oils.get('O1')!, nu40_m2_s: 102e-6, nu100_m2_s: 15e-6, rho15_kg_m3: 870 };
const oils = new Map([['O1', oil]]);
const [own, base] = [cell({ article: 'P1' }), cell({ article: 'P0' })];
const finalOf = (of: typeof own, celsius: number, u = 0, cause = 'calibration:tc-sump'): CellFigure =>
  ({
    cell: of,
    quantity: 'final-temperature',
    estimate: estimate(celsius + 273.15, u === 0 ? [] : [{ cause, u }]),
  }) as unknown as CellFigure;
const effect = { cell: own, against: base, quantity: 'final-temperature', runs: ['H-02'], againstRuns: ['H-01'] };
const ratios = (cells: readonly CellFigure[], of = effect) =>
  filmRatios({ effects: [of as unknown as Effect], cells, oils });

describe('film of an article against that of the baseline', () => {
  // film-lambda-vs-T of the physics card: 0.17913745 µm at 120 °C and 0.31091776 µm at 90 °C, reference oil
  it('is that of the published contact at both temperatures, within its band', () => {
    const [film] = ratios([finalOf(own, 120), finalOf(base, 90)]);
    const wanted = 0.17913745 / 0.31091776;
    expect(film!.low).toBeLessThan(wanted);
    expect(film!.high).toBeGreaterThan(wanted);
    expect((film!.low + film!.high) / 2).toBeCloseTo(wanted, 2);
  });

  it('is thicker for the cooler of two, by some two percent a kelvin', () => {
    const [film] = ratios([finalOf(own, 95), finalOf(base, 105)]);
    expect(film!.low).toBeGreaterThan(1.1);
    expect(film!.perKelvin).toBeLessThan(-0.01);
    expect(film!.perKelvin).toBeGreaterThan(-0.03);
  });

  it('does not doubt what both temperatures share, and does what they do not', () => {
    const width = (causes: readonly [string, string]) => {
      const [film] = ratios([finalOf(own, 100, 0.5, causes[0]), finalOf(base, 100, 0.5, causes[1])]);
      return film!.high - film!.low;
    };
    expect(width(['calibration:tc-sump', 'calibration:tc-sump'])).toBeLessThan(1e-3);
    expect(width(['fit:H-01', 'fit:H-02'])).toBeGreaterThan(0.02);
  });

  it('is not told between two oils, nor where a temperature or the oil is not known', () => {
    const both = [finalOf(own, 95), finalOf(base, 105)];
    expect(ratios(both, { ...effect, against: { ...base, oil: 'O2' } })).toEqual([]);
    expect(ratios([finalOf(own, 95)])).toEqual([]);
    expect(filmRatios({ effects: [effect as unknown as Effect], cells: both, oils: new Map() })).toEqual([]);
  });
});
