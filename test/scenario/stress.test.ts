import { describe, expect, it } from 'vitest';
import { demoMade } from './demo.ts';

const { stress, compared } = demoMade().series.find(({ record }) => record.series.id === 'hill-bowl')!;
const claim = (id: string) => stress.claims.find((c) => c.claim === id)!;
const breaks = (id: string) =>
  claim(id)
    .rows.filter(({ word }) => word !== claim(id).word)
    .map(({ choice, word }) => `${JSON.stringify(choice)} ${word}`);

describe('the demo under every other choice', () => {
  it('starts from the words that stand on the page', () => {
    for (const { claim: id, word } of stress.claims) {
      console.log(
        `${id} ${word}, holds in ${String(claim(id).holds)} of ${String(claim(id).of)}: ${breaks(id).join('; ')}`,
      );
      expect(word, id).toBe(compared.claims.find((c) => c.claim === id)!.word);
    }
    expect(stress.claims).toHaveLength(compared.claims.length);
  });

  // Job of the demo: the rise of the deep bowl is five times its interval; the tray rests on one run, whose ambient is read as corrected; without one of two baseline heat-ups a time to limit says something else.
  it('keeps what is large, and breaks where one reading carries it', () => {
    // It rests on one run of the deep bowl: without that nothing can be told, and that is said.
    expect(breaks('CL-1')).toEqual(['{"kind":"without","run":"H-04"} cannot tell']);
    expect(claim('CL-1').of).toBeGreaterThan(30);
    expect(breaks('CL-5').join()).toContain('{"kind":"without","run":"H-09"} cannot tell');
    expect(breaks('CL-6').length).toBeGreaterThan(0);
  });

  it('counts every choice once', () => {
    for (const one of [...stress.claims, ...stress.steps]) {
      const names = one.rows.map(({ choice }) => JSON.stringify(choice));
      expect(new Set(names).size).toBe(names.length);
      expect(one.holds).toBe(one.rows.filter(({ word }) => word === one.word).length);
      expect(one.of).toBe(names.length);
    }
  });
});
