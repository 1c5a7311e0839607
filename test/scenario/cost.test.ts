import { describe, expect, it } from 'vitest';
import { textsOf } from '../unit/report/reading.ts';
import { demoMade } from './demo.ts';
import { houseBook, loudOf, spoilt } from './small.ts';

const made = demoMade();
const ledger = made.ledgers.find(({ series }) => series === 'hill-bowl')!;

describe('the duty of the demo', () => {
  it('gives each article its energy along the road, and says that nobody would notice', () => {
    const figure = ledger.byId.get('P1~P0/energy-cost@60Cel')!;
    expect(figure.unit).toBe('kW.h/(100.km)');
    expect(figure.value!).toBeLessThan(0);
    expect(figure.value!).toBeGreaterThan(-0.3);
    const standing = made.pages.find(({ path }) => path === 'series/hill-bowl/standing/')!;
    const text = textsOf({ ...standing, sections: standing.sections.filter(({ id }) => id === 'cost-o1') });
    expect(text).toContain('too small to notice');
    expect(text).toContain('4 % of 62 kWh/100 km');
  });

  // The planted difference of the deep bowl at the same litres, 33 W at 290 rpm and 60 °C, by the wheel and the drive alone
  it('lies where the planted watts of its main speed put it', () => {
    const at290 = ledger.byId.get('P1~P0/spin-power@290rpm,60Cel')!.value!;
    const kmh = ((290 * Math.PI) / 30) * 0.338 * 3.6;
    const alone = (at290 / 0.86 / 1000 / kmh) * 100;
    expect(ledger.byId.get('P1~P0/energy-cost@60Cel')!.value! / alone).toBeGreaterThan(0.5);
    expect(ledger.byId.get('P1~P0/energy-cost@60Cel')!.value! / alone).toBeLessThan(1.5);
  });
});

describe('a duty that does not add up', () => {
  it.each([
    { was: 'share: 30 %', is: 'share: 40 %', code: 'duty-shares' },
    { was: '  drive-efficiency: 86 %\n', is: '', code: 'duty-efficiency' },
  ])('is one finding at its place: $code', ({ was, is, code }) => {
    const found = loudOf(houseBook(spoilt('hill-bowl/series.md', was, is))).filter((f) => f.code.startsWith('duty-'));
    expect(found.map((f) => [f.code, f.place.file])).toEqual([[code, 'hill-bowl/series.md']]);
    expect(found[0]!.place.line).toBeGreaterThan(10);
  });
});
