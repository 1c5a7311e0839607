import { describe, expect, it } from 'vitest';
import { currentMethod, methodVersions } from '../../src/trial/method.ts';
import { textsOf } from '../unit/report/reading.ts';
import { houseBook, loudOf, smallDemo, spoilt, textOf, withText } from './small.ts';

const note = 'hill-bowl/series.md';
const under = (version: string) => houseBook(spoilt(note, 'shown-to: public', `method: ${version}\nshown-to: public`));
const ledgerOf = (made: ReturnType<typeof houseBook>) => made.ledgers.find(({ series }) => series === 'hill-bowl')!;

describe('versions of the method', () => {
  const now = houseBook(smallDemo());
  const old = under('1');

  it('an older one builds its own table again, new figures stand beside it and not over it', () => {
    expect(ledgerOf(now).methodVersion).toBe(currentMethod);
    expect(ledgerOf(old).methodVersion).toBe('1');
    const ids = ledgerOf(now).figures.filter(({ quantity, kind }) => quantity === 'spin-power' && kind === 'value');
    const apart = ids.map(({ id, value }) => Math.abs(value! - ledgerOf(old).byId.get(id)!.value!));
    expect(apart.some((by) => by > 1e-6)).toBe(true);
    // a window is held within a thousandth of its step, and torque grows at most in proportion to speed
    for (const by of apart) expect(by).toBeLessThan(0.5);
  });

  it('leaves alone what it does not touch', () => {
    const same = ['fill-volume', 'static-level', 'immersion', 'viscosity-index'];
    for (const figure of ledgerOf(now).figures.filter(({ quantity }) => same.includes(quantity)))
      expect(ledgerOf(old).byId.get(figure.id)!.value, figure.id).toBe(figure.value);
  });

  it('says in its working whether torque was brought to the step', () => {
    const stepped = (made: typeof now) =>
      ledgerOf(made)
        .workings.get('S-01/spin-power@290rpm,60Cel')!
        .steps.some(({ says }) => says === 'Brought to the step');
    expect([stepped(now), stepped(old)]).toEqual([true, false]);
  });

  it('is one of those that the method page tells of', () => {
    const page = textsOf(now.pages.find(({ path }) => path === 'method/')!);
    for (const { version, what } of methodVersions) expect(page).toContain(`Version ${version}\n${what}`);
    const [told] = loudOf(under('7')).filter(({ place }) => place.file === note);
    expect(told).toMatchObject({ code: 'word-unknown' });
  });

  it('is the reason where a part was pinned under another one', () => {
    const part = `---\nid: 1-first\nnumber: 1\ntitle: First\nsummary: One figure.\nstatus: out\npublished: 2027-01-01\nshown-to: public\n---\nIt takes [spin power](figure:S-01/spin-power@290rpm,60Cel).\n`;
    const pins = `part\t1-first\t2027-01-01\t1\nwords\t0\nfigure\tS-01/spin-power@290rpm,60Cel\t1.0 W\t1\t0\t2\tW\n`;
    const files = withText('hill-bowl/parts/1-first.pins', pins, withText('hill-bowl/parts/1-first.md', part));
    const page = textsOf(houseBook(files).pages.find(({ path }) => path === 'series/hill-bowl/parts/1/')!);
    expect(page).toContain('method: version 1 then, 2 now.');
    expect(textOf(note)).not.toContain('method:');
  });
});
