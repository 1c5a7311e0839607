import { describe, expect, it } from 'vitest';
import { outcome, placed, spoil } from './spoilt.ts';

const path = 'hill-bowl/claims.md';
const idsOf = (notes: ReturnType<typeof outcome>['notes']): string[] => notes.series[0]!.claims.map((c) => c.id);

interface Row {
  readonly title: string;
  readonly was: string;
  readonly is: string;
  readonly finds: string;
  /** Stands in what is said, why, or what to write. */
  readonly says: string;
  /** The claim that is left out. */
  readonly out: string;
}

const first = 'of: { article: P1, fill: 3.59 L, oil: O1 }';
const spin = 'at: { wheel-speed: 290 rpm, sump: 60 °C }';
const share = 'quantity: makes-less-share, direction: at-least, by-at-least: 50 %';
const bearing = 'quantity: bearing-rise, direction: within, by-at-least: 2 K';

const rows: readonly Row[] = [
  {
    title: 'an article nobody knows',
    was: first,
    is: 'of: { article: P11, fill: 3.59 L, oil: O1 }',
    finds: 'article-unknown claims.md:7:20',
    says: 'Did you mean "P1"?',
    out: 'CL-1',
  },
  {
    title: 'an oil nobody knows',
    was: 'against: { article: P0, fill: 2.40 L, oil: O1 }',
    is: 'against: { article: P0, fill: 2.40 L, oil: O7 }',
    finds: 'oil-unknown claims.md:8:48',
    says: 'Known here: O1.',
    out: 'CL-1',
  },
  {
    title: 'a misspelt quantity',
    was: 'quantity: final-rise',
    is: 'quantity: final-rize',
    finds: 'word-unknown claims.md:9:15',
    says: 'Did you mean  quantity: final-rise ?',
    out: 'CL-1',
  },
  {
    title: 'a quantity that no claim is about',
    was: 'quantity: final-rise',
    is: 'quantity: durability',
    finds: 'word-unknown claims.md:9:15',
    says: 'spin-power · heat-made',
    out: 'CL-1',
  },
  {
    title: 'a direction that is a verdict',
    was: 'direction: lower\n    by',
    is: 'direction: better\n    by',
    finds: 'word-unknown claims.md:10:16',
    says: 'lower · higher · within · at-least',
    out: 'CL-1',
  },
  {
    title: 'a quantity that is at least something and no share',
    was: 'direction: lower\n    by',
    is: 'direction: at-least\n    by',
    finds: 'claim-direction claims.md:10:16',
    says: 'Only a share is at least something',
    out: 'CL-1',
  },
  {
    title: 'a share that is lower than nothing said',
    was: share,
    is: share.replace('at-least,', 'lower,'),
    finds: 'claim-direction claims.md:24:85',
    says: 'Write  direction: at-least',
    out: 'CL-3',
  },
  {
    title: 'a share without its size',
    was: share,
    is: share.replace(', by-at-least: 50 %', ''),
    finds: 'field-missing claims.md:24:85',
    says: 'by-at-least: 50 %',
    out: 'CL-3',
  },
  {
    title: 'within nothing said',
    was: bearing,
    is: bearing.replace(', by-at-least: 2 K', ''),
    finds: 'field-missing claims.md:25:93',
    says: 'It is needed for direction: within.',
    out: 'CL-3',
  },
  {
    title: 'a smallest difference of another kind',
    was: 'by-at-least: 5 K',
    is: 'by-at-least: 5 W',
    finds: 'unit-of-other-kind claims.md:11:20',
    says: 'temperature difference',
    out: 'CL-1',
  },
  {
    title: 'a smallest difference as a temperature',
    was: 'by-at-least: 5 K',
    is: 'by-at-least: 5 °C',
    finds: 'difference-in-degrees claims.md:11:20',
    says: '5 K',
    out: 'CL-1',
  },
  {
    title: 'a smallest difference without unit',
    was: 'by-at-least: 7 min',
    is: 'by-at-least: 7',
    finds: 'unit-missing claims.md:34:18',
    says: 'by-at-least: 7 s',
    out: 'CL-4',
  },
  {
    title: 'a smallest difference below nought',
    was: 'by-at-least: 5 K',
    is: 'by-at-least: -5 K',
    finds: 'value-impossible claims.md:11:18',
    says: 'between 0 K and 300 K',
    out: 'CL-1',
  },
  {
    title: 'spin power at no speed and no temperature',
    was: `\n    ${spin}`,
    is: '',
    finds: 'field-missing claims.md:16:15',
    says: 'Write  at: { wheel-speed: 290 rpm, sump: 60 °C }.',
    out: 'CL-2',
  },
  {
    title: 'spin power at no temperature',
    was: spin,
    is: 'at: { wheel-speed: 290 rpm }',
    finds: 'field-missing claims.md:18:9',
    says: '"sump" is missing.',
    out: 'CL-2',
  },
  {
    title: 'spin power at two speeds',
    was: spin,
    is: 'at: { wheel-speed: 290 rpm, output-speed: 290 rpm, sump: 60 °C }',
    finds: 'field-one-too-many claims.md:18:47',
    says: 'Keep one',
    out: 'CL-2',
  },
  {
    title: 'a time to no limit',
    was: '\n    at: { limit: 95 °C }',
    is: '',
    finds: 'field-missing claims.md:32:15',
    says: 'at: { limit: 95 °C }',
    out: 'CL-4',
  },
  {
    title: 'a final rise at a speed',
    was: 'by-at-least: 5 K',
    is: 'by-at-least: 5 K\n    at: { wheel-speed: 290 rpm }',
    finds: 'claim-condition claims.md:12:24',
    says: 'Take "wheel-speed" out, or write  quantity: spin-power',
    out: 'CL-1',
  },
  {
    title: 'a spin power to a limit',
    was: spin,
    is: 'at: { wheel-speed: 290 rpm, sump: 60 °C, limit: 95 °C }',
    finds: 'claim-condition claims.md:18:53',
    says: 'quantity: limit-crossing',
    out: 'CL-2',
  },
  {
    title: 'a speed that is no step of the plan',
    was: spin,
    is: 'at: { wheel-speed: 300 rpm, sump: 60 °C }',
    finds: 'claim-condition-unplanned claims.md:18:24',
    says: 'Write 290 rpm, or add 300 rpm to steps in plan.md.',
    out: 'CL-2',
  },
  {
    title: 'a sump temperature that is no reference',
    was: spin,
    is: 'at: { wheel-speed: 290 rpm, sump: 65 °C }',
    finds: 'claim-condition-unplanned claims.md:18:39',
    says: '65 °C is not one of the reference sump temperatures.',
    out: 'CL-2',
  },
  {
    title: 'a limit that the plan does not time',
    was: 'limit: 95 °C',
    is: 'limit: 96 °C',
    finds: 'claim-condition-unplanned claims.md:35:18',
    says: 'limits in plan.md',
    out: 'CL-4',
  },
  {
    title: 'an id that stands twice',
    was: 'id: CL-2',
    is: 'id: cl-1',
    finds: 'id-twice claims.md:12:9',
    says: 'spelled CL-1',
    out: 'CL-2',
  },
  {
    title: 'the id of a run',
    was: 'id: CL-2',
    is: 'id: S-07',
    finds: 'id-twice claims.md:12:9',
    says: 'article, oil, run or claim',
    out: 'CL-2',
  },
  {
    title: 'clauses beside a cell of its own',
    was: '    clauses:\n',
    is: '    of: { article: P1, fill: 3.59 L }\n    clauses:\n',
    finds: 'field-one-too-many claims.md:24:5',
    says: 'Keep one of "of" and "clauses".',
    out: 'CL-3',
  },
  {
    title: 'clauses beside a quantity of its own',
    was: '    clauses:\n',
    is: '    quantity: shed\n    clauses:\n',
    finds: 'field-one-too-many claims.md:23:15',
    says: 'Keep one of "clauses" and "quantity".',
    out: 'CL-3',
  },
  {
    title: 'neither a cell nor clauses',
    was: `    ${first}\n`,
    is: '',
    finds: 'field-missing claims.md:3:5',
    says: '"of" or "clauses" is missing',
    out: 'CL-1',
  },
  {
    title: 'no quantity',
    was: '    quantity: final-rise\n',
    is: '',
    finds: 'field-missing claims.md:3:5',
    says: 'quantity: final-rise',
    out: 'CL-1',
  },
  {
    title: 'no direction',
    was: '    direction: lower\n    by',
    is: '    by',
    finds: 'field-missing claims.md:3:5',
    says: 'direction: lower',
    out: 'CL-1',
  },
  {
    title: 'a cell held against itself',
    was: 'against: { article: P0, fill: 2.40 L, oil: O1 }',
    is: 'against: { article: P1, fill: 3.57 L, oil: O1 }',
    finds: 'claim-same-cells claims.md:8:14',
    says: 'against itself',
    out: 'CL-1',
  },
  {
    title: 'the baseline held against what is assumed',
    was: 'of: { article: P1, fill: 3.59 L }\n    quantity: spin',
    is: 'of: { article: P0, fill: 2.40 L }\n    quantity: spin',
    finds: 'claim-same-cells claims.md:15:9',
    says: 'without "against" the baseline of the series is meant',
    out: 'CL-2',
  },
  {
    title: 'a fill without unit',
    was: first,
    is: 'of: { article: P1, fill: 3.59, oil: O1 }',
    finds: 'unit-missing claims.md:7:30',
    says: 'fill: 3.59 L',
    out: 'CL-1',
  },
  {
    title: 'a day with two readings',
    was: 'made: 2026-03-19',
    is: 'made: 03/04/26',
    finds: 'date-unclear claims.md:14:11',
    says: 'more than one order',
    out: 'CL-2',
  },
  {
    title: 'no day',
    was: '    made: 2026-03-19\n',
    is: '',
    finds: 'field-missing claims.md:12:5',
    says: '"made" is missing for CL-2.',
    out: 'CL-2',
  },
  {
    title: 'an empty sentence',
    was: 'sentence: P1 takes longer to 95 °C.',
    is: 'sentence: ""',
    finds: 'text-empty claims.md:28:15',
    says: 'as it was put',
    out: 'CL-4',
  },
  {
    title: 'a field nobody reads',
    was: 'direction: lower\n    by',
    is: 'directoin: lower\n    by',
    finds: 'field-unknown claims.md:10:5',
    says: 'Did you mean "direction"?',
    out: 'CL-1',
  },
];

describe('a claim with one thing spoilt is left out alone, and told at its place', () => {
  it.each(rows)('for $title', ({ was, is, finds, says, out }) => {
    const { notes, loud, runs } = outcome(spoil(path, was, is));
    expect(placed(loud)).toEqual([finds]);
    const [told] = loud;
    expect([told?.says, told?.why, told?.write].join(' ')).toContain(says);
    expect(told).toMatchObject({ level: 'error', effect: 'This claim is left out; the others stand.' });
    expect(told?.about?.series).toBe('hill-bowl');
    expect(told?.about?.claim).toBeDefined();
    expect(idsOf(notes)).toEqual(['CL-1', 'CL-2', 'CL-3', 'CL-4'].filter((id) => id !== out));
    expect(runs).toEqual(['S-07', 'S-08']);
  });
});

describe('an override', () => {
  it.each([
    ['without its reason', ', why: "one bowl only"', '', 'field-missing claims.md:26:15', 'why'],
    ['with an empty reason', '"one bowl only"', '""', 'text-empty claims.md:26:60', 'with the reason'],
    ['with a word of its own', 'word: leaning', 'word: likely', 'word-unknown claims.md:26:23', 'leaning'],
  ])('%s is left out alone; the claim stands with its computed word', (_, was, is, finds, write) => {
    const { notes, loud } = outcome(spoil(path, was, is));
    expect(placed(loud)).toEqual([finds]);
    expect(loud[0]?.write).toContain(write);
    expect(loud[0]?.effect).toContain('The override is left out');
    expect(notes.series[0]!.claims.map((c) => [c.id, c.override])).toContainEqual(['CL-3', null]);
  });
});

describe('words that promise more than runs can show', () => {
  const word = (files: Parameters<typeof outcome>[0]) =>
    outcome(files).notes.series[0]!.findings.filter((f) => f.code === 'word-not-plain');

  it('are a notice in a claim of the house', () => {
    const [told, ...more] = word(spoil(path, 'P1 spins with less than P0.', 'P1 proves the best bowl.'));
    expect(more).toEqual([]);
    expect(told).toMatchObject({ level: 'notice', says: '"proves" stands in this claim.', about: { claim: 'CL-2' } });
    expect(placed([told!])).toEqual(['word-not-plain claims.md:13:18']);
  });

  it('are left as they were put in a claim of somebody else, and so are causes and comparisons of the house', () => {
    expect(word(spoil(path, 'settles at least 5 K lower than P0.', 'is the best and safe.'))).toEqual([]);
    expect(word(spoil(path, 'P1 spins with less than P0.', 'P1 is better because it sheds more.'))).toEqual([]);
  });
});
