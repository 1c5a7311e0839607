import { describe, expect, it } from 'vitest';
import { addressOf, nameOf, takenIn } from '../../../src/reader/stress/state.ts';
import type { Choice } from '../../../src/trial/stress.ts';

const choices: readonly Choice[] = [
  { kind: 'sump', sump_K: 'own' },
  { kind: 'sump', sump_K: 313.15 },
  { kind: 'limit', limit_K: 353.15 },
  { kind: 'fill', basis: 'same level' },
  { kind: 'drift', over: 'none' },
  { kind: 'ambient', times: 0.5 },
  { kind: 'causes', times: 1.4 },
  { kind: 'without', run: 'S-07' },
  { kind: 'put-back', run: 'S-07' },
];

describe('choices in the address', () => {
  it('each has a name of its own', () => {
    expect(new Set(choices.map(nameOf)).size).toBe(choices.length);
  });
  it('come back as they were written, one or all of them', () => {
    for (const choice of choices) expect(takenIn(addressOf([choice]), choices)).toEqual([choice]);
    expect(takenIn(addressOf(choices), choices)).toEqual(choices);
    expect(takenIn(addressOf([]), choices)).toEqual([]);
  });
  it('pass over what this page does not know, and what is no address of choices', () => {
    expect(takenIn('#with=without:X-99,drift:none', choices)).toEqual([{ kind: 'drift', over: 'none' }]);
    expect(takenIn('#claims', choices)).toEqual([]);
    expect(takenIn('', choices)).toEqual([]);
  });
  it('keep a run whose name has a sign in it', () => {
    const odd: Choice = { kind: 'without', run: 'S 7&a=b' };
    expect(takenIn(addressOf([odd]), [odd])).toEqual([odd]);
  });
});
