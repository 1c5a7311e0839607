import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { captionsText, cueText, type Noted } from '../../../src/trial/cue.ts';
import { readCue } from '../../../src/trial/read-cue.ts';

const line =
  'run F-01 step 1 rpm 60 up | observer A | reach 1 side 1 wall 0 bubble 0 tube 0 view 3 | level -57 swing 3 | words: single drops at the pocket';

const noted: Noted = {
  step: { outputSpeed_rad_s: 2 * Math.PI, direction: 'up' },
  observer: 'A',
  pass: 'first',
  blind: [],
  grades: { reach: 1, side: 1, wall: 0, bubble: 0, tube: 0 },
  view: 3,
  level_z_m: -0.057,
  swing_m: 0.003,
  foam_m: null,
  detach_rad: null,
  words: 'single drops at the pocket',
};

/** What is told of a cue: kind, and the text it points at. */
const troubles = (text: string): string[] =>
  readCue(text).troubles.map((t) =>
    `${t.what} ${t.name} "${text.slice(t.offset, t.offset + t.length)}"`.replace('  ', ' '),
  );

describe('a cue', () => {
  it('is written in the form of the folder format, from SI', () => {
    expect(cueText(noted, { run: 'F-01', step: 1 })).toBe(line);
  });

  it('is read into SI: 60 rpm is one turn a second, heights are in mm', () => {
    const read = readCue(line);
    expect(read.troubles).toEqual([]);
    expect(read.noted).toEqual({ ...noted, step: { ...noted.step, outputSpeed_rad_s: 60 * (Math.PI / 30) } });
  });

  it('may leave out step, measures and words, and says pass and blinding', () => {
    const read = readCue(
      'run K7 rpm 120 down | observer B pass joint blind fill oil | reach ng side 1 wall 0 bubble 0 tube 0 view 2',
    );
    expect(read.run?.text).toBe('K7');
    expect(read.noted).toMatchObject({
      pass: 'joint',
      blind: ['fill', 'oil'],
      words: null,
      level_z_m: null,
      foam_m: null,
    });
    expect(read.noted?.step.direction).toBe('down');
    expect(read.noted?.grades.reach).toBe('ng');
  });

  it('with View 0 or 1 has every grade ng, and says so when one was written', () => {
    const seen = readCue(line.replace('view 3', 'view 1'));
    expect(seen.noted?.grades).toEqual({ reach: 'ng', side: 'ng', wall: 'ng', bubble: 'ng', tube: 'ng' });
    expect(seen.unseen).toBe(true);
    const blind = readCue('run F-01 rpm 60 up | observer A | reach ng side ng wall ng bubble ng tube ng view 0');
    expect(blind.unseen).toBe(false);
  });

  it('is read over several lines, with a true minus, and with bars in its words', () => {
    const read = readCue(line.replace(' | level -57', '\n| level \u221257').replace('single', 'a | b\nsingle'));
    expect(read.noted).toMatchObject({ level_z_m: -0.057, words: 'a | b single drops at the pocket' });
  });

  it.each([
    ['reach 1', 'reach 5', 'grade reach "5"'],
    ['reach 1', 'reach 2-3', 'grade reach "2-3"'],
    ['reach 1', 'reach 1.5', 'grade reach "1.5"'],
    ['view 3', 'view 4', 'grade view "4"'],
    ['view 3', 'view ng', 'grade view "ng"'],
    ['reach 1', 'reech 1', 'unknown "reech"'],
    ['side 1 ', '', 'missing side "3"'],
    ['side 1', 'side', 'no-value side "side"'],
    ['side 1', 'side 1 side 2', 'twice side "side"'],
    ['level -57', 'level -57 mm', 'unknown "mm"'],
    ['level -57', 'level -5,7', 'number level "-5,7"'],
    ['level -57', 'level -5700', 'outside level "-5700"'],
    ['rpm 60 up', 'rpm 60', 'word rpm "60"'],
    ['rpm 60 up', 'rpm 60 upp', 'word rpm "upp"'],
    ['rpm 60 up', 'rpm sixty up', 'number rpm "sixty"'],
    ['step 1', 'step one', 'number step "one"'],
    ['observer A', 'observer A pass second', 'word pass "second"'],
    ['observer A', 'observer A blind shape', 'word blind "shape"'],
    ['run F-01', 'the lamp', 'no-run "the"'],
  ])('with %s written as %s has one trouble: %s', (was, is, told) => {
    expect(line).toContain(was);
    expect(troubles(line.replace(was, () => is))).toEqual([told]);
  });

  it('with nothing in it is told as that, and names the known word that is nearest', () => {
    expect(readCue('').troubles).toHaveLength(1);
    expect(readCue(line.replace('bubble', 'buble')).troubles[0]?.near).toBe('bubble');
  });
});

const grade = fc.constantFrom(0, 1, 2, 3, 4, 'ng') as fc.Arbitrary<Noted['grades']['reach']>;
const words = fc
  .string({ unit: 'grapheme', maxLength: 60 })
  .map((text) => text.replace(/\s+/g, ' ').trim())
  .map((text) => (text === '' ? null : text));
const anyNoted: fc.Arbitrary<Noted> = fc.record({
  step: fc.record({
    outputSpeed_rad_s: fc.integer({ min: 1, max: 20000 }).map((rpm) => rpm * (Math.PI / 30)),
    direction: fc.constantFrom('up', 'down'),
  }),
  observer: fc.stringMatching(/^[A-Z]{1,3}( [A-Z]{1,3})?$/),
  pass: fc.constantFrom('first', 'joint'),
  blind: fc.subarray(['article', 'fill', 'oil'] as const),
  grades: fc.record({ reach: grade, side: grade, wall: grade, bubble: grade, tube: grade }),
  view: fc.constantFrom(2, 3),
  level_z_m: fc.option(fc.integer({ min: -2000, max: 2000 }).map((mm) => mm * 1e-3)),
  swing_m: fc.option(fc.integer({ min: 0, max: 1000 }).map((mm) => mm * 1e-3)),
  foam_m: fc.option(fc.integer({ min: 0, max: 1000 }).map((mm) => mm * 1e-3)),
  detach_rad: fc.option(fc.integer({ min: 0, max: 360 }).map((deg) => deg * (Math.PI / 180))),
  words,
});

describe('what is written as a cue', () => {
  it('is read back as the same observation, whatever its words are', () => {
    fc.assert(
      fc.property(anyNoted, (observed) => {
        const read = readCue(cueText(observed, { run: 'K7' }));
        expect(read.troubles).toEqual([]);
        const { step, ...rest } = read.noted!;
        const { step: was, ...all } = observed;
        expect(step.direction).toBe(was.direction);
        expect(step.outputSpeed_rad_s).toBeCloseTo(was.outputSpeed_rad_s, 9);
        // a level of 0 below the centreline is 0
        expect(rest).toEqual({ ...all, level_z_m: all.level_z_m === 0 ? 0 : all.level_z_m });
      }),
      { seed: 20260730, numRuns: 300 },
    );
  });

  it('holds neither an arrow nor an empty line, so that it stays one cue in its file', () => {
    const text = cueText({ ...noted, words: 'drops --> pocket\n\nand <b>film</b> & mist' }, { run: 'F-01' });
    expect(text).not.toMatch(/-->|\n/);
    expect(readCue(text).noted?.words).toBe('drops --> pocket and <b>film</b> & mist');
  });

  it('stands in a file in order of time', () => {
    const cues = [
      { from_s: 46, to_s: 56, text: 'second' },
      { from_s: 36, to_s: 46.5, text: 'first' },
    ];
    expect(captionsText(cues)).toBe(
      'WEBVTT\n\n00:00:36.000 --> 00:00:46.500\nfirst\n\n00:00:46.000 --> 00:00:56.000\nsecond\n',
    );
  });
});
