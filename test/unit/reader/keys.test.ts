import { describe, expect, it } from 'vitest';
import { press, printedKeys } from '../../../src/reader/grading/keys.ts';
import { isUnseen, standing } from '../../../src/reader/grading/marks.ts';
import { marksAt, progress, type Sitting } from '../../../src/reader/grading/sitting.ts';
import { sat, typed } from './grading.ts';

const here = (sitting: Sitting) => marksAt(sitting, sitting.items[sitting.at]!);
const whole = ['3', '3', '2', '1', '0', '4'];

describe('grades by key', () => {
  it('go row by row: View first, then the five', () => {
    const done = typed(sat(), ...whole);
    expect(here(done).view).toBe(3);
    expect(here(done).grades).toEqual({ reach: 3, side: 2, wall: 1, bubble: 0, tube: 4 });
    expect(progress(done)).toEqual({ whole: 1, of: 4 });
  });

  it('say not gradable by n, which View does not know', () => {
    const done = typed(sat(), 'n', '2', 'n', 'N');
    expect(here(done)).toMatchObject({ view: 2, grades: { reach: 'ng', side: 'ng', wall: null } });
  });

  it('have no 4 for View, and no 5 at all', () => {
    expect(here(typed(sat(), '4')).view).toBeNull();
    expect(typed(sat(), '4').row).toBe('view');
    expect(press(sat(), '5', 'row')).toBeNull();
  });

  it('go to the row above or below by the arrows, and stay at the ends', () => {
    expect(typed(sat(), 'ArrowDown', 'ArrowDown').row).toBe('side');
    expect(typed(sat(), 'ArrowUp').row).toBe('view');
    expect(typed(sat(), ...whole, 'ArrowDown').row).toBe('tube');
  });

  it.each(['0', '1'])('are all ng with View %s, whatever was given, and only View is left to go to', (view) => {
    const low = typed(sat(), ...whole, 'ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowUp', view);
    expect(isUnseen(here(low))).toBe(true);
    expect(standing(here(low), 'reach')).toBe('ng');
    expect(typed(low, 'ArrowDown').row).toBe('view');
    expect(progress(low).whole).toBe(1);
  });

  it('come back when View goes up again', () => {
    const back = typed(sat(), ...whole, ...Array<string>(5).fill('ArrowUp'), '0', '2');
    expect(standing(here(back), 'tube')).toBe(4);
  });

  it('go to the next step by Enter, to the one before by b, each beginning at View', () => {
    const next = typed(sat(), '3', '1', 'Enter');
    expect([next.at, next.row]).toEqual([1, 'view']);
    expect(typed(next, 'b').at).toBe(0);
    expect(typed(sat(), 'b').at).toBe(0);
    expect(typed(sat(), ...Array<string>(9).fill('Enter')).at).toBe(3);
  });
});

describe('keys besides', () => {
  it.each([
    ['r', 'again'],
    [' ', 'pause'],
    ['s', 'slow'],
    ['w', 'words'],
    ['f', 'write'],
  ])('"%s" is for %s and changes no grade', (key, then) => {
    const sitting = sat();
    expect(press(sitting, key, 'row')).toEqual({ sitting, then });
  });

  it('are signs in a line of words, where only Enter and Escape end it', () => {
    for (const key of ['3', 'n', 'r', ' ', 'ArrowUp']) expect(press(sat(), key, 'words'), key).toBeNull();
    for (const key of ['Enter', 'Escape']) expect(press(sat(), key, 'words')?.sitting.at, key).toBe(0);
  });

  it('that work a button or the player are left to it', () => {
    expect(press(sat(), 'Enter', 'button')).toBeNull();
    expect(press(sat(), ' ', 'player')).toBeNull();
    expect(press(sat(), 'ArrowUp', 'player')).toBeNull();
    expect(press(sat(), 'r', 'player')?.then).toBe('again');
  });

  it('that mean nothing here are left to the browser', () => {
    for (const key of ['Tab', 'F5', 'x', 'Home']) expect(press(sat(), key, 'row'), key).toBeNull();
  });

  it('are printed, each one that does something', () => {
    const printed = printedKeys.map(([key]) => key).join(' ');
    for (const key of ['n', 'r', 's', 'w', 'f', 'b', 'Enter', 'Space', '↑', '↓']) expect(printed).toContain(key);
  });
});
