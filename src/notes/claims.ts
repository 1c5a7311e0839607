import type { Finding, Reading } from '../finding/finding.ts';
import type { Quantity } from '../quantity/quantity.ts';
import type { Claim, ClaimQuantity, Clause } from '../trial/claim.ts';
import type { NoteHead } from '../trial/note.ts';
import type { Question } from '../trial/part.ts';
import { bannedInClaims, tellWord } from './banned-words.ts';
import { claimLeftOut, claimsKind, conditionsOf, overrideLeftOut, thresholds } from './claim-fields.ts';
import type { ValuesOf } from './fields.ts';
import { kept } from './flow.ts';
import { placeOf } from './gather.ts';
import { type Node, type Note, nodeAt } from './note.ts';
import { leftOut } from './read.ts';
import { toQuestion } from './questions.ts';
import { type Into, quantityOf } from './read-value.ts';
import { readRecord, tellAt } from './record.ts';
import { neededFor } from './texts-check.ts';
import * as say from './texts-claims.ts';
import { both } from './texts-fields.ts';
import { questionLeftOut, questionTwice } from './texts-parts.ts';

type ClaimValues = NonNullable<ValuesOf<typeof claimsKind.fields>['claims'][number]>;
type ClauseValues = NonNullable<ClaimValues['clauses']>[number];

/** A claim as its note says it; cells, speeds and limits are looked up when the series is read. `path` is its place in the note. */
export interface ClaimNote extends Omit<Claim, 'clauses'> {
  readonly path: string;
  readonly clauses: readonly ClauseNote[];
}

export interface ClauseNote extends Pick<Clause, 'quantity' | 'direction' | 'threshold' | 'thresholdTyped' | 'place'> {
  readonly path: string;
  readonly of: ClauseValues['of'];
  readonly against: ClauseValues['against'];
  readonly speed: Quantity | null;
  readonly sump: Quantity | 'own' | null;
  readonly limit: Quantity | null;
}

export interface ClaimsNote extends NoteHead {
  readonly questions: readonly Question[];
  readonly claims: readonly ClaimNote[];
}

/** `claims.md`: a claim in which something is wrong is left out alone. */
export function readClaims(note: Note): Reading<ClaimsNote> {
  const read = readRecord(claimsKind, note, (v, head, into): ClaimsNote => {
    const claims = kept(v.claims, 'claims', claimLeftOut, into, (one, path) => toClaim(one, path, { head, into }));
    const questions = kept(
      v.questions,
      'questions',
      questionLeftOut,
      into,
      (one, path, before: readonly Question[]) => {
        if (before.some(({ id }) => id === one.id)) tellAt(into, `${path}.id`, questionTwice(one.id));
        return toQuestion(one, path, { head, into });
      },
    );
    return { ...head, claims, questions };
  });
  return { ...read, findings: ofClaims(read.findings, note) };
}

interface InNote {
  readonly head: NoteHead;
  readonly into: Into;
}

function toClaim(v: ClaimValues, path: string, note: InNote): ClaimNote {
  const { head, into } = note;
  const by = v.by?.trim() ?? '';
  const house = /^(?:(?:the )?house)?$/i.test(by);
  if (v.sentence.trim() === '') tellAt(into, `${path}.sentence`, say.emptyWords('sentence'));
  else if (house) tellWord(`${path}.sentence`, into, { rows: bannedInClaims, told: say.claimWord });
  return {
    id: v.id,
    sentence: v.sentence,
    by: house ? null : by,
    made: v.made,
    clauses: clausesOf(v, path, note),
    override: overrideOf(v, path, into),
    path,
    place: placeOf(head, path),
  };
}

/** The fields of the claim itself are its one clause where it has no list of them. */
function clausesOf(v: ClaimValues, path: string, note: InNote): ClauseNote[] {
  const own = (['quantity', 'direction', 'against', 'by-at-least', 'at'] as const).find((name) => v[name] !== null);
  if (v.clauses !== null) {
    if (own !== undefined) tellAt(note.into, `${path}.${own}`, both(`${path}.${own}`, 'clauses'));
    return v.clauses.map((clause, i) => toClause(clause, `${path}.clauses.${i}`, note));
  }
  const { of, quantity, direction } = v;
  const clauseLess = 'a claim without clauses';
  if (quantity === null) tellAt(note.into, path, neededFor('quantity', clauseLess, 'quantity: final-rise'));
  else if (direction === null) tellAt(note.into, path, neededFor('direction', clauseLess, 'direction: lower'));
  if (of === null || quantity === null || direction === null) return [];
  return [toClause({ ...v, of, quantity, direction }, path, note)];
}

function toClause(v: ClauseValues, path: string, { head, into }: InNote): ClauseNote {
  const { quantity, direction } = v;
  if ((direction === 'at-least') !== (quantity === 'makes-less-share')) {
    const told = direction === 'at-least' ? say.directionOfOther(quantity) : say.directionOfShare(direction);
    tellAt(into, `${path}.direction`, told);
  }
  const threshold = thresholdOf(v, path, into);
  tellConditions(v, path, into);
  return {
    ...{ path, quantity, direction, of: v.of, against: v.against, place: placeOf(head, path) },
    threshold: threshold?.value ?? 0,
    thresholdTyped: threshold?.asWritten ?? null,
    speed: v.at?.['wheel-speed'] ?? v.at?.['output-speed'] ?? null,
    // the one word of this field is read as no quantity
    sump: v.at?.sump ?? (head.typed.get(`${path}.at.sump`) === 'own' ? 'own' : null),
    limit: v.at?.limit ?? null,
  };
}

/** In the unit of the quantity; null where any difference will do, or where it was told why not. */
function thresholdOf(v: ClauseValues, path: string, into: Into): Quantity | null {
  const kind = thresholds[v.quantity];
  const typed: Node | null = v['by-at-least'];
  if (typed !== null) return quantityOf(kind, typed, `${path}.by-at-least`, into);
  if (v.direction === 'within' || v.direction === 'at-least')
    tellAt(
      into,
      `${path}.direction`,
      neededFor('by-at-least', `direction: ${v.direction}`, `by-at-least: ${kind.like}`),
    );
  return null;
}

/** What the quantity needs is there, and nothing that it does not have: a condition that nobody reads would mislead. */
function tellConditions({ quantity, at }: ClauseValues, path: string, into: Into): void {
  const needs = conditionsOf[quantity] ?? [];
  const stands = (name: string): boolean => nodeAt(into.note.front, `${path}.at.${name}`) !== undefined;
  const missing = (name: string, like: string): void => {
    tellAt(into, at === null ? `${path}.quantity` : `${path}.at`, neededFor(name, quantity, `at: { ${like} }`));
  };
  const speeds = ['wheel-speed', 'output-speed'].filter(stands);
  const example = 'wheel-speed: 290 rpm, sump: 60 °C';
  if (needs.includes('speed') && speeds.length === 0) missing('wheel-speed', example);
  else if (needs.includes('sump') && !stands('sump')) missing('sump', example);
  if (needs.includes('limit') && !stands('limit')) missing('limit', 'limit: 95 °C');
  if (needs.includes('speed') && speeds.length === 2)
    tellAt(into, `${path}.at.output-speed`, both(`${path}.at.output-speed`, 'wheel-speed'));
  const unread: readonly (readonly [field: string, has: ClaimQuantity])[] = [
    ...(needs.includes('speed') ? [] : speeds.map((name) => [name, 'spin-power'] as const)),
    ...(needs.includes('sump') || !stands('sump') ? [] : [['sump', 'spin-power'] as const]),
    ...(needs.includes('limit') || !stands('limit') ? [] : [['limit', 'limit-crossing'] as const]),
  ];
  const [first] = unread;
  if (first) tellAt(into, `${path}.at.${first[0]}`, say.conditionOfOther(first[0], quantity, first[1]));
}

function overrideOf({ override }: ClaimValues, path: string, into: Into): Claim['override'] {
  if (override === null) return null;
  const from = into.findings.length;
  if (override.why.trim() === '') tellAt(into, `${path}.override.why`, say.emptyWords('why'));
  return leftOut(into, from, overrideLeftOut) ? null : override;
}

/** Says of each finding which claim it stands in, by the place where the claims begin. */
function ofClaims(findings: readonly Finding[], note: Note): Finding[] {
  const list = nodeAt(note.front, 'claims');
  const items = list?.kind === 'list' ? list.items : [];
  const starts = items.map(({ span }) => span.offset);
  return findings.map((f) => {
    const offset = (note.starts[f.place.line - 1] ?? 0) + f.place.column - 1;
    const at = starts.findLastIndex((start) => start <= offset);
    if (list !== undefined && offset >= list.span.offset + list.span.length) return f;
    const id = items[at] && nodeAt(items[at], 'id');
    if (at < 0) return f;
    return { ...f, about: { ...f.about, claim: id?.kind === 'text' ? id.text : '' } };
  });
}
