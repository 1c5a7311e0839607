import { describe, expect, it } from 'vitest';
import { editsBetween, nearest } from '../../../src/finding/nearest.ts';

describe('the nearest known word', () => {
  const fields = ['fill', 'ambient', 'airflow', 'article', 'rig-state', 'started', 'ended', 'operators'];

  it.each([
    ['fil', 'fill'],
    ['flil', 'fill'],
    ['airfolw', 'airflow'],
    ['Artikel', 'article'],
    ['rig_state', 'rig-state'],
    ['operator', 'operators'],
    ['stated', 'started'],
  ])('of "%s" is "%s"', (word, known) => {
    expect(nearest(word, fields)).toBe(known);
  });

  it('is not offered when nothing is near, when two are equally near, or when a word is too short to tell', () => {
    expect(nearest('colour', fields)).toBeNull();
    expect(nearest('P5', ['P1', 'P2'])).toBeNull();
    expect(nearest('cat', ['bat', 'hat'])).toBeNull();
    expect(nearest('fill', [])).toBeNull();
  });

  it('is the word itself when only capitals differ', () => {
    expect(nearest('kw', ['W', 'kW'])).toBe('kW');
  });

  // Damerau 1964: one insertion, deletion, replacement or swap of neighbours is one error.
  it.each([
    ['ab', 'ba', 1],
    ['abc', 'ab', 1],
    ['abc', 'axc', 1],
    ['kitten', 'sitting', 3],
    ['', 'abc', 3],
  ])('from "%s" to "%s" is %i', (a, b, edits) => {
    expect(editsBetween(a, b)).toBe(edits);
  });
});
