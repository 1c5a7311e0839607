import type { Finding } from '../finding/finding.ts';
import { today, type Relation } from './relation.ts';
import * as texts from './texts.ts';

/** Every check of these relations that this build does not keep, as a finding against the file of the book. */
export const offChecks = (relations: readonly Relation[], file: string): Finding[] =>
  relations.flatMap((relation) =>
    today(relation)
      .filter(({ agrees }) => !agrees)
      .map(({ source, printed, got, unit }) =>
        texts.relationOff({
          ...{ file, source, printed, unit, title: relation.title },
          got: got === null ? 'no answer' : got.toPrecision(8),
        }),
      ),
  );
