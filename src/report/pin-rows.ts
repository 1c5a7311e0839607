import type { Part } from '../trial/part.ts';
import type { Pins } from '../trial/part.ts';
import { sumOfWords } from '../notes/pins.ts';
import { claimsOf } from './claims-view.ts';
import { sumOfFile, textOfFigure } from './parts-view.ts';
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
        const [low, high] = interval;
        return [[id, { figure: id, shown: textOfFigure(figure), value, low, high, unit }] as const];
      }),
    ),
    inputs: new Map(
      named('figure')
        .flatMap((id) => view.figureById.get(id)?.inputs ?? [])
        .map(({ file, sha256 }) => [file, sumOfFile(sha256)] as const)
        .sort(([a], [b]) => (a < b ? -1 : 1)),
    ),
    claims: new Map(
      named('claim').flatMap((id) => {
        const held = claimsOf(view).find(({ claim }) => claim.id === id);
        return held === undefined ? [] : [[id, held.judged.word] as const];
      }),
    ),
  };
}
