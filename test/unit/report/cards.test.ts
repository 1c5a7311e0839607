import { describe, expect, it } from 'vitest';
import { printedCards } from '../../../src/report/cards.ts';
import type { Page } from '../../../src/report/page.ts';
import type { PlanCell, TrialKind } from '../../../src/trial/plan.ts';
import { input } from './fixture.ts';
import { headsOf, joined, marginOf, pagesOf, rowsOf, wordsIn } from './page-at.ts';
import { blocksOf, spansOf, textsOf } from './reading.ts';

const cell = (trial: TrialKind, article: string, more: Partial<PlanCell> = {}): PlanCell => ({
  ...{ trial, article, oil: 'L1', fill_m3: 2.4e-3, tilt_ratio: 0, wanted: 3 },
  ...more,
});
const cells = [
  cell('spin', 'A0'),
  cell('spin', 'A1', { tilt_ratio: 0.12 }),
  cell('heat-up', 'A1'),
  cell('flow', 'A1w'),
  cell('cool-down', 'A1'),
];
const { pages, at, page } = pagesOf({ plan: { cells } });
const cards = pages.filter(({ kind, path }) => kind === 'card' && !path.endsWith('/all/'));
const cardOf = (trial: TrialKind): Page => {
  const found = cards.find(({ whereabouts }) => joined(whereabouts).includes(` · ${trial} · `));
  if (found === undefined) throw new Error(`no card of a ${trial} run`);
  return found;
};
const factsOf = (of: Page): Record<string, string> =>
  Object.fromEntries(
    blocksOf(of).flatMap((block) => (block.kind === 'facts' ? block.rows.map((r) => [r.name, joined(r.value)]) : [])),
  );
const blanksOf = (of: Page): string[] =>
  spansOf(of).flatMap((span) => (typeof span !== 'string' && span.kind === 'blank' ? [span.text] : []));

describe('a run card', () => {
  it('says what to mount, to pour in, to wait for and to expect', () => {
    // 897 kg/m³ at 15 °C, 0.0007 a kelvin: 893.86 kg/m³ at 20 °C; 2.40 L weigh 2145.3 g, 0.05 L 44.7 g. By hand.
    // 2.40 L lies between 2.00 L at −80 mm and 2.50 L at −65 mm: −68 mm.
    expect(factsOf(cards.find(({ title }) => title.startsWith('A0 '))!)).toMatchObject({
      Article: 'A0 pressed bowl',
      Oil: 'L1 mineral 80W-90',
      'Pour in': '2145 g ± 45 g, which is 2.40 L at 20 °C',
      'Then wait': '20 min',
      'Static level to expect': '−68.0 mm ± 3 mm; farther off, look for why',
    });
  });

  it('gives the level before the axle is tilted where it will be', () => {
    const tilted = factsOf(cards.find(({ title }) => title.includes('nose up'))!);
    expect(tilted).toMatchObject({
      'Static level to expect before it is tilted': expect.stringContaining('−68.0 mm') as string,
    });
    expect(tilted).toHaveProperty('Tilt');
  });

  it('of a cool-down pours nothing in: it follows its heat-up, and asks which', () => {
    expect(factsOf(cardOf('cool-down'))).not.toHaveProperty('Pour in');
    expect(blanksOf(cardOf('cool-down'))).toContain('heat-up it follows');
  });

  it('of a heat-up carries load, airflow and limits; a spin card its steps at each temperature', () => {
    expect(factsOf(cardOf('heat-up'))).toMatchObject({
      Load: '22.0 kW out at 300 rpm of the wheels (36.2 km/h), pinion 1118 rpm',
      Airflow: '4.0 m/s',
    });
    expect(headsOf(cardOf('heat-up'), 'limits')).toEqual(['limit', '80 °C', '95 °C']);
    expect(headsOf(cardOf('spin'), 'steps').slice(-2)).toEqual(['N·m at 40 °C', 'N·m at 60 °C']);
    expect(rowsOf(cardOf('spin'), 'steps').map(([speed]) => speed)).toEqual(['150', '300']);
  });

  it('behind a window goes up and down again, and names the cap of the pane', () => {
    expect(rowsOf(cardOf('flow'), 'steps').map(([way, speed]) => `${speed} ${way}`)).toEqual([
      ...['150 up', '300 up', '300 down', '150 down'],
    ]);
    expect(factsOf(cardOf('flow'))['Sump stays under']).toBe('60 °C (window, polycarbonate)');
  });

  it('carries the cautions of its stage, and no others', () => {
    const codes = (of: Page): string[] => of.sections.flatMap(({ margin }) => margin.flatMap(({ code }) => code ?? []));
    expect(codes(cardOf('heat-up'))).toContain('caution-cool-down');
    expect(codes(cardOf('spin'))).not.toContain('caution-cool-down');
    expect(codes(cardOf('spin')).length).toBeGreaterThan(4);
  });

  it('leaves room for who releases it, and says for the ear what belongs in each blank', () => {
    for (const card of cards) {
      expect(blanksOf(card)).toContain('who released it');
      expect(blanksOf(card).every((text) => text.trim() !== '')).toBe(true);
    }
  });

  it('names nobody: initials of operators and of who released a run stand on no card', () => {
    for (const card of cards) expect(textsOf(card)).not.toMatch(/KZQ|RZQ|XZQ/);
  });

  it('ends with the note to write', () => {
    const [block] = blocksOf(cardOf('spin')).filter(({ kind }) => kind === 'code');
    expect(block).toMatchObject({
      language: 'yaml',
      text: expect.stringMatching(/^---\nid:\ntrial: spin\n/) as string,
    });
  });
});

describe('the cards of a series', () => {
  it('are those that the plan still wants, in its order, one page each and all on one', () => {
    const list = rowsOf(page('cards/'), 'pan-cards').map(([position]) => Number(position));
    expect(list).toEqual([...list].sort((a, b) => a - b));
    expect(cards).toHaveLength(list.length);
    expect(page('cards/all/').sections.filter(({ id }) => id.endsWith('-set-up'))).toHaveLength(list.length);
    expect(wordsIn(page('cards/'), 'cards')).toContain('from seed 7; the baseline at start and end');
  });

  it('are linked from the plan sheet, which counts them', () => {
    expect(marginOf(page('plan/'), 'grid', 'Run cards.')).toMatch(/cards to print, one a run that is still wanted\.$/);
  });

  it('are for the house: no byte of them is public', () => {
    const shown = pagesOf({ audience: 'public', plan: { cells } });
    expect(shown.pages.filter(({ kind }) => kind === 'card' || kind === 'cards')).toEqual([]);
    expect(shown.pages.map(textsOf).join('')).not.toContain('cards to print');
  });

  it('are none where the plan is run as it was written; every one of them can still be had', () => {
    const done = input({ plan: { cells: [cell('spin', 'A1', { wanted: 1 })] } });
    expect(printedCards([done], { all: false })).toEqual([]);
    const all = printedCards([done], { all: true });
    expect(all.map(({ kind }) => kind)).toEqual(['cards', 'cards', 'card']);
    expect(joined(all.flatMap(({ whereabouts }) => whereabouts))).toContain('run already');
    expect(pagesOf({ plan: { cells: [cell('spin', 'A1', { wanted: 1 })] } }).at('cards/')).toBeUndefined();
    expect(at('cards/')).toBeDefined();
  });
});
