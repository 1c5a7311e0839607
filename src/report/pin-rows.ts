import type { Part } from '../trial/part.ts';
import type { Pins } from '../trial/part.ts';
import { sumOfWords } from '../notes/pins.ts';
import { claimsOf } from './claims-view.ts';
import { inputsSum, textOfFigure } from './parts-view.ts';
import type { View } from './view.ts';

/** What a part shows on its day: each figure and each word once, in the order of its words. */
export function pinsOf(view: View, part: Part & { readonly published: string }): Omit<Pins, 'file'> {
  const named = (scheme: string): string[] => [
    ...new Set(part.refs.filter((ref) => ref.scheme === scheme).map(({ target }) => target)),
  ];
  return {
    published: part.published,
    method: view.input.ledger.methodVersion,
    words: sumOfWords(part.body),
    figures: new Map(
      named('figure').flatMap((id) => {
        const figure = view.figureById.get(id);
        if (figure === undefined) return [];
        const { value, unit, interval } = figure;
        const pin = { figure: id, shown: textOfFigure(figure), value, low: interval[0], high: interval[1], unit };
        return [[id, { ...pin, inputs: inputsSum(figure) }] as const];
      }),
    ),
    claims: new Map(
      named('claim').flatMap((id) => {
        const held = claimsOf(view).find(({ claim }) => claim.id === id);
        return held === undefined ? [] : [[id, held.judged.word] as const];
      }),
    ),
  };
}
