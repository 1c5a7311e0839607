import type { Claim, Clause } from '../../../src/trial/claim.ts';
import type { JudgedClaim, JudgedClause, Split } from '../../../src/trial/compared.ts';
import { celsius, rpm } from './fixture-notes.ts';
import { cellOf, of } from './fixture-results.ts';

/** Hand-made claims, one of each word that matters here, and the two parts of one difference. */

const place = { file: 'pan/claims.md', line: 3, column: 5, length: 4, lineText: '' };

export const clause = (more: Partial<Clause>): Clause => ({
  quantity: 'final-rise',
  at: {},
  subject: cellOf('A1'),
  against: cellOf('A0'),
  direction: 'lower',
  threshold: 1,
  thresholdTyped: '1 K',
  place,
  ...more,
});

export const judgedClause = (
  of_: Clause,
  interval: readonly [number, number] | null,
  more: Partial<JudgedClause> = {},
): JudgedClause => ({
  clause: of_,
  estimate: interval === null ? null : of((interval[0] + interval[1]) / 2, (interval[1] - interval[0]) / 4),
  interval,
  trials: null,
  word: 'leaning',
  inFamily: null,
  why: [],
  runs: ['H-02', 'H-01'],
  smallest: interval === null ? null : (interval[1] - interval[0]) / 2,
  needed: [],
  ...more,
});

export const claim = (id: string, clauses: readonly Clause[], more: Partial<Claim> = {}): Claim => ({
  id,
  sentence: `Sentence of ${id}.`,
  by: null,
  made: '2026-05-01',
  clauses,
  override: null,
  place,
  ...more,
});

const spin = clause({
  quantity: 'spin-power',
  at: { outputSpeed_rad_s: rpm(300), sump_K: celsius(60) },
  threshold: 15,
  thresholdTyped: '15 W',
});
const within = clause({ direction: 'within', threshold: 4, thresholdTyped: '4 K' });
const bearing = clause({ quantity: 'bearing-rise', direction: 'within', threshold: 2, thresholdTyped: '2 K' });
const share = clause({ quantity: 'makes-less-share', direction: 'at-least', threshold: 0.5, thresholdTyped: '50 %' });

export const claims: readonly Claim[] = [
  claim('CL-1', [clause({})], { by: 'supplier' }),
  claim('CL-2', [spin], {
    override: { word: 'leaning', by: 'KZQ', on: '2026-06-02', why: 'the belt was new.' },
  }),
  claim('CL-3', [within, bearing], { made: '2026-06-01' }),
  claim('CL-4', [share]),
];

const says = (id: string, word: JudgedClaim['word'], late: boolean, ...clauses: JudgedClause[]): JudgedClaim => ({
  claim: id,
  clauses,
  word,
  indicative: [],
  late,
});

export const judgedClaims: readonly JudgedClaim[] = [
  says('CL-1', 'not shown', false, judgedClause(clause({}), [-3.3, 0.3], { word: 'not shown' })),
  says(
    'CL-2',
    'shown',
    false,
    judgedClause(spin, [-36, -20], {
      word: 'shown',
      inFamily: 'leaning',
      runs: ['S-02', 'S-01', 'S-99'],
      needed: [
        { chance: 0.8, refits: 5 },
        { chance: 0.9, refits: null },
      ],
    }),
  ),
  says(
    'CL-3',
    'cannot tell',
    true,
    judgedClause(within, [-3.3, 0.3], { word: 'shown' }),
    judgedClause(bearing, null, { word: 'cannot tell', why: ['no run gives it of A1'], runs: [] }),
  ),
  says('CL-4', 'shown against', false, judgedClause(share, [0.02, 0.24], { word: 'shown against' })),
];

export const split = (more: Partial<Split> = {}): Split => ({
  cell: cellOf('A1'),
  against: cellOf('A0'),
  byHeatMade: of(-0.2, 0.4),
  byShed: of(-1.3, 0.8),
  trials: null,
  cover: null,
  coverUntold: null,
  share: of(0.13, 0.05),
  runs: ['H-02', 'H-01'],
  notes: [],
  ...more,
});
