import type { Claim, ClaimWord } from '../trial/claim.ts';
import type { Effect, JudgedClaim, JudgedClause } from '../trial/compared.ts';
import type { Figure } from '../ledger/figure.ts';
import { figureId } from '../ledger/ids.ts';
import { figureNamed } from './cite.ts';
import type { SeriesInput } from './input.ts';
import type { View } from './view.ts';

/** A claim as it was put, with what the runs say of it. */
export interface HeldClaim {
  readonly claim: Claim;
  readonly judged: JudgedClaim;
}

/** In the order of `claims.md`; a claim about an article or an oil that is held back is held back with it. */
export function claimsAmong({ record, compared, audience }: SeriesInput): readonly HeldClaim[] {
  const shown = (note: { readonly shownTo: string } | undefined): boolean =>
    note !== undefined && (audience === 'house' || note.shownTo === 'public');
  if (record.claimsNote !== null && !shown(record.claimsNote)) return [];
  return record.claims.flatMap((claim): HeldClaim[] => {
    const judged = compared.claims.find((each) => each.claim === claim.id);
    const seen = claim.clauses.every(({ subject, against }) =>
      [subject, against].every(
        ({ article, oil }) => shown(record.articles.get(article)) && shown(record.oils.get(oil)),
      ),
    );
    return judged !== undefined && seen ? [{ claim, judged }] : [];
  });
}

export const claimsOf = (view: View): readonly HeldClaim[] => claimsAmong(view.input);

export const claimsPath = (view: View): string => `${view.base}claims/`;
export const claimPath = (view: View, { claim }: HeldClaim): string => `${claimsPath(view)}#${claim.id}`;

/** The figure that a clause is judged by: a difference of two cells, or the share of one. */
export const clauseFigure = (view: View, clause: JudgedClause['clause']): Figure | undefined =>
  figureNamed(view, nameOf(clause));

/** The comparison behind it; a share is of a difference in final rise. */
export const clauseEffect = (view: View, clause: JudgedClause['clause']): Effect | undefined => {
  const quantity = clause.quantity === 'makes-less-share' ? 'final-rise' : clause.quantity;
  return view.effectOf.get(figureId({ ...nameOf(clause), quantity }, view.naming));
};

const nameOf = ({ subject, against, quantity, at }: JudgedClause['clause']) => ({
  subject: { cell: subject, against },
  quantity,
  at,
});

export const withWord = (held: readonly HeldClaim[], word: ClaimWord): number =>
  held.filter(({ judged }) => judged.word === word).length;

/** The earliest run that a claim rests on, among those that its reader may see. */
export function firstRun(view: View, { judged }: HeldClaim): View['runs'][number] | undefined {
  const rests = new Set(judged.clauses.flatMap(({ runs }) => runs));
  return view.runs
    .filter(({ id }) => rests.has(id))
    .reduce<View['runs'][number] | undefined>((a, b) => (a === undefined || b.started < a.started ? b : a), undefined);
}
