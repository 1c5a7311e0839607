import { describe, expect, it } from 'vitest';
import { wordOf } from '../../../src/compare/verdict.ts';
import { endsOf, thresholdText } from '../../../src/report/claim-ends.ts';
import { changeSpans, claimsTitle, pairWords, ruleSpans, saysSpans } from '../../../src/report/claim-words.ts';
import { claimStory } from '../../../src/report/claims.ts';
import { claimsOf } from '../../../src/report/claims-view.ts';
import type { Span } from '../../../src/report/page.ts';
import { bookPages, seriesPages } from '../../../src/report/pages.ts';
import { siteFrame } from '../../../src/report/site-frame.ts';
import { viewOf } from '../../../src/report/view.ts';
import type { ClaimWord } from '../../../src/trial/claim.ts';
import type { ComparedSeries } from '../../../src/trial/compared.ts';
import { claim, clause, judgedClause, judgedClaims } from './fixture-claims.ts';
import { book, cellOf, input } from './fixture.ts';
import { note } from './fixture-notes.ts';
import { firstOf, joined, leadOf, marginOf, pagesOf, plainSpaces, rowsOf, sectionOf, wordsIn } from './page-at.ts';
import { textsOf } from './reading.ts';

const view = viewOf(input());
const { page } = pagesOf();
const claimsPage = page('claims/');

describe('the page of claims', () => {
  it('counts in its title what is shown and what is shown against, and the rest in its lead', () => {
    expect(claimsPage.title).toBe('One of four claims is shown; one is shown against');
    expect(leadOf(claimsPage)).toContain('Of the others, one is not shown and of one the runs cannot tell.');
    expect(leadOf(claimsPage)).toMatch(/One was put after the data and says so\.$/);
  });

  it.each([
    [['shown'], 'Its one claim: shown'],
    [['shown', 'shown'], 'All two claims are shown'],
    [['leaning', 'not shown'], 'None of two claims is shown'],
    [['shown against', 'shown against', 'leaning'], 'None of three claims is shown; two are shown against'],
  ] as const)('says of %j: %s', (words, title) => {
    const held = words.map((word) => ({ claim: claim('CL-1', []), judged: { ...judgedClaims[0]!, word } }));
    expect(claimsTitle(held)).toBe(title);
  });

  it('holds every claim with its computed word, what was found, what was asked, and who put it when', () => {
    const rows = rowsOf(claimsPage, 'claims_table');
    expect(rows.map(([sentence, word]) => [sentence, word])).toEqual([
      ['CL-1 Sentence of CL-1.', 'not shown'],
      ['CL-2 Sentence of CL-2.', 'shown (as one of a family: leaning)'],
      ['CL-3 Sentence of CL-3.', 'cannot tell'],
      ['– final rise above ambient, A1 less A0, 2.40 L', 'shown'],
      ['– pinion bearing above sump, A1 less A0, 2.40 L', 'cannot tell'],
      ['CL-4 Sentence of CL-4.', 'shown against'],
    ]);
    expect(rows[0]!.slice(2)).toEqual([
      '−1.5 K',
      expect.stringMatching(/^± /),
      '1 K lower',
      'the supplier, 1 May 2026',
    ]);
    expect(rows[2]!.at(-1)).toBe('the house, 1 June 2026, put after its data');
    expect(rows[4]!.slice(2)).toEqual(['—', '—', 'within 2 K', '']);
    // a share has no sign
    expect(rows[5]!.slice(2, 5)).toEqual(['13 %', expect.stringMatching(/^± /), '50 % or more']);
  });

  it('has a section for each claim under its own id, and links there from the table', () => {
    expect(claimsPage.sections.map(({ id }) => id)).toEqual(expect.arrayContaining(['CL-1', 'CL-2', 'CL-3', 'CL-4']));
    const table = firstOf(claimsPage, 'table')!.table;
    expect(table.rows[1]!.cells[0]![0]).toMatchObject({ kind: 'link', to: 'series/pan/claims/#CL-2' });
  });

  it('says when it was put, and which run was the first that it rests on', () => {
    expect(wordsIn(claimsPage, 'CL-1')).toContain(
      'Put by the supplier on 1 May 2026, before the first run that it rests on (H-01, 6 May 2026).',
    );
    expect(wordsIn(claimsPage, 'CL-3')).toMatch(
      /Put by the house on 1 June 2026: put after its data\. It was written down on or after the day of the first run/,
    );
  });

  it('gives each clause its figure, interval and runs, and the reason where it cannot be told', () => {
    expect(wordsIn(claimsPage, 'CL-2')).toMatch(/−28\.0 ± \d\.\d W, from −36\.0 W to −20\.0 W: shown\./);
    expect(wordsIn(claimsPage, 'CL-2')).toContain('S-02 against S-01.');
    expect(wordsIn(claimsPage, 'CL-3')).toContain('It says two things, and holds only where all of them do.');
    expect(wordsIn(claimsPage, 'CL-3')).toContain('No run gives it of A1.');
  });

  it('says what had to match and what the claim itself is about', () => {
    expect(marginOf(claimsPage, 'CL-1', 'Had to match.')).toBe(
      'Rig state, rotation, ambient within 3.0 K, airflow within 0.30 m/s, speed within 1.0 % and power out; not article, which the claim is about (same litres).',
    );
    expect(marginOf(claimsPage, 'CL-2', 'Had to match.')).toBe(
      'Rig state and rotation; not article, which the claim is about (same litres).',
    );
  });

  it('says what the runs could have separated, and how many would tell', () => {
    expect(wordsIn(claimsPage, 'CL-2')).toContain(
      'These runs could just have separated 8.0 W. If what was found is the truth, refits of each that would tell it from the threshold: 5 for a chance of 80 % and no thousand would do for a chance of 90 %.',
    );
  });

  it('gives the word of the family where it differs, and only there', () => {
    expect(wordsIn(claimsPage, 'CL-2')).toContain('leaning, when all claims that were put before their data share one');
    expect(wordsIn(claimsPage, 'CL-1')).not.toContain('Holm');
  });

  it('lets no loss stand without Reach and bearing rise', () => {
    const beside =
      /^Reach at 300 wheel rpm, A0 2\.40 L: 3 and A1 2\.40 L: 2\. Pinion bearing above sump, A0 2\.40 L: 6\.80/;
    expect(marginOf(claimsPage, 'CL-2', 'Beside the loss.')).toMatch(beside);
    expect(marginOf(claimsPage, 'CL-4', 'Beside the loss.')).toMatch(beside);
    expect(marginOf(claimsPage, 'all_claims', 'Beside the loss.')).toMatch(beside);
    expect(marginOf(claimsPage, 'CL-1', 'Beside the loss.')).toBeUndefined();
  });

  it('holds the words under the fields of the note, and not the fields', () => {
    const made = input();
    const claimsNote = {
      ...note('pan/claims.md', 'public', 'Agreed at the bench table.'),
      typed: new Map([['claims', 'TYPED']]),
    };
    const told = seriesPages({ ...made, record: { ...made.record, claimsNote } }).find((p) => p.kind === 'claims')!;
    expect(wordsIn(told, 'the_note')).toContain('Agreed at the bench table.');
    expect(textsOf(told)).not.toContain('TYPED');
  });
});

describe('an override', () => {
  const beside = (audience: 'house' | 'public') =>
    marginOf(
      seriesPages(input({ audience })).find(({ kind }) => kind === 'claims')!,
      'CL-2',
      'Another word.',
    );

  it('stands beside the computed word and does not take its place', () => {
    expect(beside('house')).toBe('KZQ would say leaning (2 June 2026): the belt was new. By the rule it is shown.');
    expect(rowsOf(claimsPage, 'claims_table')[1]![1]).toMatch(/^shown/);
  });

  it('is the house’s own to the public', () => {
    expect(beside('public')).toMatch(/^The house would say leaning/);
  });
});

/** The rule of the house for the five words; no source outside it. */
describe('the rule in words', () => {
  const says = (more: Parameters<typeof clause>[0]) => joined(ruleSpans(view, clause(more)));

  it.each([
    [
      { direction: 'lower', threshold: 5, thresholdTyped: '5 K' },
      'shown when the whole 95 % interval lies at −5 K or beyond, shown against when all of it lies short of −5 K, not shown when it holds 0, leaning otherwise.',
    ],
    [
      { direction: 'higher', threshold: 5, thresholdTyped: '5 K' },
      'shown when the whole 95 % interval lies at +5 K or beyond, shown against when all of it lies short of +5 K, not shown when it holds 0, leaning otherwise.',
    ],
    [
      { direction: 'lower', threshold: 0, thresholdTyped: null },
      'shown when the whole 95 % interval lies below 0, shown against when all of it lies above 0, not shown when it holds 0.',
    ],
    [
      { direction: 'within', threshold: 2, thresholdTyped: '2 K' },
      'shown when the whole 95 % interval lies inside ± 2 K, shown against when all of it lies outside, leaning when only the value lies inside, not shown otherwise.',
    ],
    [
      { quantity: 'makes-less-share', direction: 'at-least', threshold: 0.5, thresholdTyped: '50 %' },
      'shown when the whole 95 % interval lies at 50 % or above, shown against when all of it lies below 50 %, not shown when it holds 0, leaning otherwise.',
    ],
  ] as const)('%j', (more, words) => {
    expect(says(more)).toBe(words);
  });

  it('says of a time that it is longer, not higher, and keeps a threshold as it was typed', () => {
    const time = clause({
      quantity: 'limit-crossing',
      at: { limit_K: 368.15 },
      direction: 'higher',
      threshold: 420,
      thresholdTyped: '420 s',
    });
    expect(joined(saysSpans(view, time))).toBe(
      'Time to 95 °C of A1 shroud, 2.40 L, is longer than that of A0 pressed bowl, 2.40 L, by at least 420 s (7 min).',
    );
    expect(plainSpaces(thresholdText({ ...time, thresholdTyped: '7 min' }))).toBe('7 min');
  });

  it('names the oil of both where they differ in it', () => {
    const oiled = clause({ subject: { ...cellOf('A0'), oil: 'L2' }, threshold: 0, thresholdTyped: null });
    expect(joined(saysSpans(view, oiled))).toBe(
      'Final rise above ambient of A0 pressed bowl, 2.40 L of L2, is lower than that of A0 pressed bowl, 2.40 L of L1, by whatever it may be.',
    );
  });

  it('names what differs first and what both share behind it', () => {
    const tilted = (article: string) => ({ ...cellOf(article), tilt_ratio: 0.12 });
    expect(plainSpaces(pairWords(view, { subject: tilted('A1'), against: tilted('A0') }))).toBe(
      'A1 less A0, 2.40 L, 12 % nose up',
    );
    expect(
      plainSpaces(pairWords(view, { subject: cellOf('A0', 3.2e-3), against: { ...cellOf('A0'), oil: 'L2' } })),
    ).toBe('A0 3.20 L L1 less A0 2.40 L L2');
  });
});

describe('another threshold', () => {
  const intervals = [
    [-11.3, -7.7],
    [-3.3, 0.3],
    [2.4, 4.6],
    [-4.6, -2.4],
    [-1, 1.5],
    [0.6, 3.1],
  ] as const;
  const cases = (['lower', 'higher', 'within'] as const).flatMap((direction) =>
    intervals.map((interval) => ({ direction, interval })),
  );

  /** Each "word … number" of the sentence, with the side of the number on which it is to hold. */
  const promises = (spans: readonly Span[]) => {
    const text = spans.map((s) => (typeof s === 'string' ? s : `[${s.text}]`)).join('');
    return [...plainSpaces(text).matchAll(/\[([a-z ]+)\][^[]*?(over|under)? ?(\d+\.\d+) K( or (?:more|less))?/g)].map(
      ([, word, beyond, size, or]) => ({
        word: word as ClaimWord,
        edge: Number(size),
        up: beyond === 'over' || or === ' or more',
      }),
    );
  };

  it.each(cases)('$direction, $interval: the words promised are those of the rule', ({ direction, interval }) => {
    const spans = changeSpans(judgedClause(clause({ direction, threshold: 2, thresholdTyped: '2 K' }), interval));
    const value = (interval[0] + interval[1]) / 2;
    const at = (threshold: number): ClaimWord => wordOf({ direction, threshold }, value, interval);
    const found = promises(spans);
    if (found.length === 0) {
      expect(joined(spans)).toBe('The word would be shown against whatever the threshold.');
      for (const t of [0, 1, 9, 100]) expect(at(t)).toBe('shown against');
    }
    for (const { word, edge, up } of found) {
      expect(at(up ? edge + 0.01 : edge - 0.01), joined(spans)).toBe(word);
      expect(at(up ? edge - 0.01 : edge + 0.01), joined(spans)).not.toBe(word);
    }
  });

  it('is not spoken of where nothing was found', () => {
    expect(changeSpans(judgedClause(clause({}), null))).toEqual([]);
  });
});

describe('an interval beside its threshold', () => {
  const ends = (threshold: number, interval: readonly [number, number]) =>
    plainSpaces(endsOf({ quantity: 'final-rise', direction: 'higher', threshold }, interval).fromTo);

  it('has the digits of its half-width', () => {
    expect(ends(2, [3.123, 8.123])).toBe('3.1 K to 8.1 K');
  });

  it('has more of them where rounding would carry an end onto the threshold or over it', () => {
    expect(ends(5, [4.97, 9.97])).toBe('4.97 K to 9.97 K');
    expect(ends(5, [5.004, 10.004])).toBe('5.004 K to 10.004 K');
    expect(ends(2, [-0.02, 4.98])).toBe('−0.02 K to 4.98 K');
  });
});

describe('where claims are spoken of', () => {
  it('are the front page of the series, the line of words at the top, and the story on the home page', () => {
    expect(wordsIn(page(''), 'claims')).toContain('Sentence of CL-3: cannot tell (put after its data).');
    expect(siteFrame({ book, series: [input()] }).seriesNav.pan!.map(({ text }) => text)).toContain('Claims');
    const [home] = bookPages({ book, series: [input()], findings: [], audience: 'house' });
    expect(plainSpaces(textsOf(home!).replaceAll('\n', ''))).toContain(
      'Before the runs the supplier said: Sentence of CL-1. By its rule that is not shown. One of four claims is shown; one is shown against.',
    );
  });

  it('tells no story of a claim that was put after its data or cannot be told', () => {
    const after = (compared: ComparedSeries): ComparedSeries => ({
      ...compared,
      claims: compared.claims.map((c) => ({ ...c, late: c.claim !== 'CL-3', word: 'cannot tell' as const })),
    });
    expect(claimStory(viewOf(input({ compared: after })))).toBeNull();
  });

  it('are nowhere when there are none: no page, no link, no section', () => {
    const none = input({ claims: [] });
    expect(seriesPages(none).some(({ kind }) => kind === 'claims')).toBe(false);
    expect(siteFrame({ book, series: [none] }).seriesNav.pan!.map(({ text }) => text)).not.toContain('Claims');
    expect(
      pagesOf({ claims: [] })
        .page('')
        .sections.map(({ id }) => id),
    ).not.toContain('claims');
    expect(() => sectionOf(page(''), 'claims')).not.toThrow();
  });

  it('leave out for the public what is about an article that is held back, and everything when the note is', () => {
    const made = input({ audience: 'public' });
    const a1 = { ...made.record.articles.get('A1')!, shownTo: 'house' as const };
    const articles = new Map([...made.record.articles, ['A1', a1] as const]);
    expect(claimsOf(viewOf({ ...made, record: { ...made.record, articles } }))).toEqual([]);
    const claimsNote = note('pan/claims.md', 'house');
    expect(claimsOf(viewOf({ ...made, record: { ...made.record, claimsNote } }))).toEqual([]);
    expect(claimsOf(viewOf(made))).toHaveLength(4);
  });
});

describe('the picture of claims', () => {
  it('draws what was found with its own interval, and the threshold on the side that the claim names', () => {
    const chart = firstOf(claimsPage, 'chart')!.chart;
    expect(chart.data).toMatchObject({
      kind: 'claims',
      rows: [
        { label: 'CL-1', low: -3.3, high: 0.3, thresholds: [-1], word: 'not shown' },
        { label: 'CL-3', thresholds: [-4, 4], word: 'shown' },
      ],
    });
    expect(chart.table.rows).toHaveLength(2);
  });
});
