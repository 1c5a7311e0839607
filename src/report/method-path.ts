import { chapters } from '../physics/all.ts';

const chapterOf: ReadonlyMap<string, string> = new Map(
  chapters.flatMap(({ id, relations }) => relations.map((relation) => [relation.id, id] as const)),
);

/** Where a relation stands, or a rule of reduction. */
export const relationPath = (id: string): string => {
  const chapter = chapterOf.get(id);
  return `${chapter === undefined ? 'method/' : chapterPath(chapter)}#${id}`;
};

export const chapterPath = (id: string): string => `method/${id}/`;
