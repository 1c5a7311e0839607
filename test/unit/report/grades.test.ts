import { describe, expect, it } from 'vitest';
import { siteFrame } from '../../../src/report/site-frame.ts';
import { scales } from '../../../src/trial/grade-anchors.ts';
import { gradeKinds } from '../../../src/trial/flow.ts';
import { book, input } from './fixture.ts';
import { leadOf, marginOf, pagesOf, rowsOf, sectionOf, wordsIn } from './page-at.ts';

const { page } = pagesOf();
const grades = page('grades/');

describe('the grades of a series', () => {
  it('say first on which kinds the observers agree well enough, and by which rule', () => {
    expect(grades.title).toBe(
      'Observers agree well enough on Reach, Side fall, Bubble and Tube run, and not on Wall hit',
    );
    expect(leadOf(grades)).toContain(
      'at least 90 % lie within one and kappa is at least 0.6: the rule of this series.',
    );
    expect(pagesOf({ unusable: [] }).page('grades/').title).toBe('Observers agree well enough on every kind of grade');
    expect(pagesOf({ unusable: gradeKinds }).page('grades/').title).toBe(
      'Observers agree well enough on no kind of grade',
    );
  });

  it('say of a kind on which all gave one and the same grade that it cannot be told, and not that they differ', () => {
    const alike = (kinds: readonly string[]) =>
      pagesOf({
        agreements: input({ unusable: ['wall'] }).compared.agreements.map((each) =>
          kinds.includes(each.grade)
            ? { ...each, equal: each.n, withinOne: each.n, kappa: null, usable: false, differ: [] }
            : each,
        ),
      }).page('grades/').title;
    expect(alike(['tube'])).toBe(
      'Observers agree well enough on Reach, Side fall and Bubble, and not on Wall hit; on Tube run it cannot be told',
    );
    expect(alike(['wall'])).toBe(
      'Observers agree well enough on Reach, Side fall, Bubble and Tube run; on Wall hit it cannot be told',
    );
    expect(alike(gradeKinds)).toBe('How far observers agree cannot be told on any kind of grade');
    expect(alike(gradeKinds.filter((kind) => kind !== 'wall'))).toBe(
      'Observers agree well enough on no kind of grade; on Reach, Side fall, Bubble and Tube run it cannot be told',
    );
  });

  it('stand article by step, up and then down, with the first grades beside what stands', () => {
    expect(rowsOf(grades, 'reach-up')).toEqual([
      ['A0w, 2.40 L', 'F-02', '1 · KZQ 1 XZQ 1', '3 joint · KZQ 2 XZQ 3'],
      ['A1w, 2.40 L', 'F-03', '0 · KZQ 0 XZQ 0', '2 · KZQ 2 XZQ 2'],
      ['A1w, 3.59 L', 'F-04', '—', '3 · KZQ 3 XZQ 3'],
      ['A1w, 2.40 L, 12 % nose up', 'F-01', '—', '1 · KZQ 1 XZQ 1'],
    ]);
    expect(rowsOf(grades, 'reach-down').map((cells) => cells.at(-1))).toEqual([
      '1 or ng open · KZQ 1 XZQ ng',
      '0 or 1 open · KZQ 0 XZQ 1',
      '—',
      '—',
    ]);
  });

  it('begin with Reach, and label a kind that may not be used in its heading', () => {
    const headings = grades.sections.map(({ heading }) => heading ?? '');
    expect(headings.slice(0, 5)).toEqual([
      'Reach: oil carried over to the pinion pocket',
      'Side fall: oil that leaves the gear at its sides before the top',
      'Wall hit: oil that strikes the wall or the roof (not usable)',
      'Bubble: air in the oil, by the grid behind it',
      'Tube run: oil past the lip of the axle tube',
    ]);
    expect(marginOf(grades, 'grid-wall', 'Not to lean on.')).toBe(
      'Not usable: kappa 0.42 is under the 0.60 of the series.',
    );
  });

  it('print the anchors once, and the gate of View', () => {
    const rows = rowsOf(grades, 'scale-table');
    expect(rows).toHaveLength(5);
    expect(rows[3]).toEqual(['3', ...gradeKinds.map((kind) => scales[kind].anchors[3])]);
    expect(wordsIn(grades, 'scale')).toContain('With View 0 or 1 every grade of that step is ng');
  });

  it('tell agreement kind by kind: pairs, shares, kappa and what leaving a run out does to it', () => {
    // 5 of 7 is 71.4 %; 0.87 ± 1.96 · 0.09 would pass 1, where kappa ends
    expect(rowsOf(grades, 'agreement-table')[0]).toEqual([
      ...['Reach', '7', '71.4 %', '100 %', '0.87', '0.69 to 1.00', 'yes'],
    ]);
    expect(rowsOf(grades, 'agreement-table')[2]!.at(-1)).toBe('no');
    const words = wordsIn(grades, 'agreement');
    expect(words).toContain('Usable: kappa 0.87 and 100 % within one grade; the series asks for 0.60 and 90 %.');
    expect(words).toContain('With one run left out, kappa lies between 0.81 and 0.90.');
    expect(words).toContain('One step is left out: not both could grade it.');
    expect(words).toContain('Not usable: kappa 0.42 is under the 0.60 of the series.');
  });

  it('list where the observers differ, with run, step, clip and time, and what a joint look made of it', () => {
    expect(rowsOf(grades, 'differ-reach-1-2')).toEqual([
      ['F-02', '300 rpm up', '2', '3', '3', 'F-02.webm', '00:02:56.000'],
      ['F-03', '150 rpm down', '0', '1', 'open', 'F-03.webm', '00:04:56.000'],
    ]);
    expect(JSON.stringify(sectionOf(grades, 'differ'))).toContain('series/pan/runs/F-02/');
    expect(marginOf(grades, 'differ', 'For a joint look.')).toBe(
      'One of them has not been looked at again. First grades are kept.',
    );
  });

  it('call observers by number for the public, in grid, pairs and list', () => {
    const open = pagesOf({ audience: 'public' }).page('grades/');
    expect(rowsOf(open, 'reach-up')[0]).toEqual(['A0w, 2.40 L', 'F-02', '1 · 1, 1', '3 joint · 2, 3']);
    expect(wordsIn(open, 'grid-reach')).toContain('in the order observer 1, observer 2');
    expect(wordsIn(open, 'agreement')).toContain('First grades of observer 1 and observer 2 alone');
    expect(JSON.stringify(open)).not.toMatch(/KZQ|XZQ/);
  });
});

describe('one observer alone', () => {
  const alone = pagesOf({
    runs: (all) => all.map((run) => ({ ...run, observations: run.observations.filter((o) => o.observer === 'KZQ') })),
    derived: (all) =>
      all.map((d) =>
        d.flow === null
          ? d
          : {
              ...d,
              flow: {
                ...d.flow,
                steps: d.flow.steps.map((step) => ({
                  ...step,
                  observations: step.observations.filter((o) => o.observer === 'KZQ'),
                  grades: {
                    ...step.grades!,
                    reach: {
                      stands: 2 as const,
                      how: 'one observer' as const,
                      first: [{ observer: 'KZQ', grade: 2 as const }],
                    },
                  },
                })),
              },
            },
      ),
    agreements: [],
  });

  it('is said in title, heading and cell', () => {
    const sheet = alone.page('grades/');
    expect(sheet.title).toBe('Grades that no second observer checked');
    expect(sectionOf(sheet, 'grid-reach').heading).toContain('(one observer alone)');
    expect(rowsOf(sheet, 'reach-up')[0]!.at(-1)).toContain('alone · KZQ 2');
    expect(wordsIn(sheet, 'agreement')).toContain('No step was graded by two observers on their own');
  });
});

describe('the line of words at the top', () => {
  const words = (variation: Parameters<typeof input>[0]) =>
    siteFrame({ book, series: [input(variation)] }).seriesNav.pan!.map(({ text }) => text);

  it('leads to grades, side by side and grading where there is something to see', () => {
    expect(words({})).toEqual(expect.arrayContaining(['Grades', 'Side by side', 'Grading']));
    expect(words({ audience: 'public' })).toEqual(expect.arrayContaining(['Grades', 'Side by side']));
  });

  it('leads the public to no grading, and nobody to it without a coded clip', () => {
    expect(words({ audience: 'public' })).not.toContain('Grading');
    expect(words({ media: new Map() })).not.toContain('Grading');
  });

  it('leads to none of them in a series without flow trials', () => {
    expect(words({ derived: (all) => all.filter(({ trial }) => trial !== 'flow') })).toEqual(
      expect.not.arrayContaining(['Grades', 'Side by side', 'Grading']),
    );
  });
});
