import { describe, expect, it } from 'vitest';
import { runCards } from '../../../src/compare/run-cards.ts';
import type { Plan } from '../../../src/trial/plan.ts';
import type { RunCard } from '../../../src/trial/run-card.ts';
import { planned, type PlannedRecord } from './planned.ts';
import { cell, derived, record } from './runs.ts';

const cardsOf = (cells: readonly string[], of: Partial<PlannedRecord> = {}, more: Partial<Plan> = {}): RunCard[] =>
  runCards({ record: { ...planned(cells, more), ...of }, runs: new Map() });
const cardOf = (text: string, of: Partial<PlannedRecord> = {}, more: Partial<Plan> = {}): RunCard =>
  cardsOf([text], of, more)[0]!;

describe('the fill of a card', () => {
  // O1: 900 kg/m³ at 15 °C and 0.00073 a kelvin unless its note says; at 20 °C 5 K more.
  it('is a mass: the litres at 20 °C times the density there, with the tolerance of the series', () => {
    const { density15_kg_m3, expansion_1_K } = record.oils.get('O1')!;
    const there = density15_kg_m3 * (1 - 5 * expansion_1_K);
    const card = cardOf('spin P0 2.40 O1');
    expect(card.mass_kg).toBeCloseTo(2.4e-3 * there, 9);
    expect(card.massTolerance_kg).toBeCloseTo(record.series.tolerance.fill_m3 * there, 9);
  });

  it('stands at the level that the article’s own table gives', () => {
    // Between 1.95 L at −65 mm and 2.45 L at −52 mm, by hand: −65 + 0.45/0.50 · 13.
    expect(cardOf('spin P0 2.40 O1').level_z_m).toBeCloseTo(-0.0533, 9);
    expect(cardOf('spin P3 2.40 O1').level_z_m).toBeNull();
    expect(cardOf('spin P0 9.00 O1').level_z_m).toBeNull();
  });

  it('waits as the last run of the series waited, and says nothing before the first', () => {
    expect(cardOf('spin P0 2.40 O1').wait_s).toBeNull();
    expect(cardOf('spin P0 2.40 O1', { runs: record.runs }).wait_s).toBe(1200);
  });
});

describe('what turns', () => {
  const speeds = (card: RunCard): string[] =>
    card.steps.map(({ output_rad_s, direction }) => `${((output_rad_s * 30) / Math.PI).toFixed(0)} ${direction}`);

  it('goes up in a spin trial, and up and down again behind a window', () => {
    expect(speeds(cardOf('spin P0 2.40 O1'))).toEqual(['60 up', '120 up', '200 up', '290 up']);
    expect(speeds(cardOf('flow P0w 2.40 O1'))).toEqual([
      ...['60 up', '120 up', '200 up', '290 up'],
      ...['290 down', '200 down', '120 down', '60 down'],
    ]);
    expect(cardOf('cool-down P0 2.40 O1').steps).toEqual([]);
  });

  it('has the pinion and the road speed beside each: teeth 9 and 41, rolling radius 338 mm, by hand', () => {
    const [first] = cardOf('spin P0 2.40 O1').steps;
    expect((first!.pinion_rad_s * 30) / Math.PI).toBeCloseTo((60 * 41) / 9, 9);
    expect(first!.road_m_s).toBeCloseTo(2 * Math.PI * 0.338, 9);
    const bench = { ...record.rig, rollingRadius_m: null };
    expect(cardOf('spin P0 2.40 O1', { rig: bench }).steps[0]!.road_m_s).toBeNull();
  });

  it('carries the load of the plan in a heat-up only', () => {
    expect(cardOf('heat-up P0 2.40 O1').load).toMatchObject({ powerOut_W: 22e3 });
    expect(cardOf('heat-up P0 2.40 O1', {}, { load: null }).load).toBeNull();
    expect(cardOf('spin P0 2.40 O1').load).toBeNull();
  });
});

describe('what a card asks to be looked at', () => {
  it('is the zero of each torque instrument that has one before and after; none where nothing is driven', () => {
    expect(cardOf('spin P0 2.40 O1').zeros).toEqual(['torque-low']);
    expect(cardOf('cool-down P0 2.40 O1').zeros).toEqual([]);
  });

  it('is the tip of the sump probe in this article', () => {
    expect(cardOf('spin P1 2.40 O1').tip_z_m).toBeCloseTo(-0.112, 9);
    expect(cardOf('spin P0 2.40 O1').tip_z_m).toBeCloseTo(-0.076, 9);
  });

  it('is every cap that the notes set: window and article', () => {
    const caps = (card: RunCard) => card.caps.map(({ what, limit_K }) => [what, Math.round(limit_K - 273.15)]);
    expect(caps(cardOf('flow P0w 2.40 O1'))).toEqual([['window, polycarbonate', 60]]);
    expect(caps(cardOf('spin P1 2.40 O1'))).toEqual([['article P1', 115]]);
    expect(caps(cardOf('spin P0 2.40 O1'))).toEqual([]);
  });

  it('is the newest state of the rig, and the only column map that has what the trial reads', () => {
    const states = [
      { ...record.rig.states[0]!, id: 'Q1-b', from: '2026-04-01' },
      { ...record.rig.states[0]!, id: 'Q1-a' },
    ];
    const card = cardOf('spin P0 2.40 O1', { rig: { ...record.rig, states } });
    expect([card.rigState, card.map]).toEqual(['Q1-b', 'bench-low']);
  });
});

describe('a series that has begun', () => {
  const base = planned(['spin P0 2.40 O1 x3', 'spin P1 2.40 O1 x2']);
  const [run] = record.runs;
  const begun: PlannedRecord = {
    ...base,
    runs: [
      { ...run!, id: 'S-01', article: 'P0', order: 4, refit: 2 },
      { ...run!, id: 'S-02', article: 'P1', order: 7, refit: 1 },
    ],
  };
  const done = derived({ run: 'S-01', cell: cell({ article: 'P0' }) });
  const cards = (leftOut: string | null) =>
    runCards({ record: begun, runs: new Map([['S-01', { ...done, leftOut }]]) });

  it('has a card less to run for each run that counts, and as many as before for one that does not', () => {
    const open = (leftOut: string | null) => cards(leftOut).filter((card) => !card.done).length;
    expect([open(null), open('draft')]).toEqual([4, 5]);
  });

  it('counts order and refit on from its runs, article by article', () => {
    const open = cards(null).filter((card) => !card.done);
    expect(open.map(({ order }) => order)).toEqual([8, 9, 10, 11]);
    const refits = (article: string) => open.filter((one) => one.cell.article === article).map(({ refit }) => refit);
    expect(refits('P0')).toEqual([3, 4]);
    expect(refits('P1')).toEqual([2, 3]);
    expect(cards(null).find((card) => card.done)).toMatchObject({ order: null, refit: null, time: 1 });
  });

  it('leaves the fitting open where a repeat is no refit', () => {
    expect(cardsOf(['spin P1 2.40 O1'], {}, { repeatUnit: 'refill' }).map(({ refit }) => refit)).toEqual([null]);
  });

  it('leaves a cool-down in the fitting of the heat-up before it', () => {
    const pair = cardsOf(['heat-up P1 2.40 O1', 'cool-down P1 2.40 O1']);
    expect(pair.map(({ cell: { trial }, refit }) => [trial, refit])).toEqual([
      ['heat-up', 1],
      ['cool-down', 1],
    ]);
  });
});
