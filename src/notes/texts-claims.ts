import type { ClaimQuantity } from '../trial/claim.ts';
import type { Told } from './note.ts';

/** What is said of claims: what does not fit together in one, and what does not fit the series. */
const told =
  (level: Told['level']) =>
  (code: string, says: string, why: string, write: string): Told => ({ code, level, says, why, write });
const error = told('error');
const notice = told('notice');

export const claimsLeftOut = 'The series is read without its claims.';

export const directionOfOther = (quantity: ClaimQuantity): Told =>
  error(
    'claim-direction',
    `The direction is at-least, and the quantity is ${quantity}.`,
    'Only a share is at least something; other quantities are lower, higher or within, against another cell.',
    'Write  direction: lower  or  direction: higher, with by-at-least for the smallest difference that matters.',
  );

export const directionOfShare = (direction: string): Told =>
  error(
    'claim-direction',
    `The direction is ${direction}, and the quantity is makes-less-share.`,
    'A share already speaks of two cells; it is at least something.',
    'Write  direction: at-least  and  by-at-least: 50 %  with the share that is meant.',
  );

export const conditionOfOther = (field: string, quantity: ClaimQuantity, has: ClaimQuantity): Told =>
  error(
    'claim-condition',
    `"${field}" stands under a claim about ${quantity}.`,
    `${quantity} is not given for each ${field.replace('-', ' ')}, so the claim would be judged at another one unseen.`,
    `Take "${field}" out, or write  quantity: ${has}  where that is meant.`,
  );

export const emptyWords = (field: 'sentence' | 'why'): Told =>
  error(
    'text-empty',
    `"${field}" is empty.`,
    field === 'sentence'
      ? 'The verdict stands under the sentence that was put.'
      : 'A word without its reason is an opinion.',
    field === 'sentence'
      ? 'Write  sentence: "P1 settles at least 5 K lower than P0."  as it was put.'
      : 'Write  why: "the fan was changed between the two"  with the reason.',
  );

/** `conditions`: what is listed, as "steps" or "limits", and where. */
export const notListed = (typed: string, what: string, where: string, near: string | null): Told =>
  error(
    'claim-condition-unplanned',
    `${typed} is not one of ${what}.`,
    'There is no figure there that could decide.',
    near === null ? `Write one of ${what}, or add it to ${where}.` : `Write ${near}, or add ${typed} to ${where}.`,
  );

export const sameCells = (): Told =>
  error(
    'claim-same-cells',
    'The claim holds a cell against itself.',
    '"of" and "against" have the same article, fill, oil and tilt; without "against" the baseline of the series is meant.',
    'Write  against: { article: P0, fill: 2.40 L }  with what it is to be held against, or look at "of".',
  );

export const idTaken = (id: string, other: string): Told =>
  error(
    'id-twice',
    `"${id}" is not the only id here that is spelled ${other}.`,
    'An id names one thing in a series: article, oil, run or claim; case alone does not tell two apart.',
    'Give this claim another id.',
  );

export const claimWord = (found: {
  readonly word: string;
  readonly banned: { readonly why: string; readonly write: string };
}): Told => notice('word-not-plain', `"${found.word}" stands in this claim.`, found.banned.why, found.banned.write);
