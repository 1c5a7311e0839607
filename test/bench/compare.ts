import { fileURLToPath } from 'node:url';
import { compareSeries } from '../../src/compare/series.ts';
import { stressTable } from '../../src/compare/stress.ts';
import { readFolder } from '../../src/host/disk/book.ts';
import { makeBook, type Remember } from '../../src/pipeline.ts';
import { wordsUnder } from '../../src/reader/stress/words.ts';
import type { Measure } from './book.ts';

const demo = fileURLToPath(new URL('../../demo-runs', import.meta.url));

/**
 * What trials and the stress table add to a build, the first time and again; and one switch of the reader's page, by the code
 * that the page runs, each choice alone and the slowest of them.
 */
export function compareBench(): readonly Measure[] {
  const made = makeBook({ files: readFolder(demo), audience: 'house' });
  const bare = total(made.series.map(({ record, derived }) => timed(() => compareSeries(record, derived))));
  const kept = new Map<string, unknown>();
  const remember: Remember = (told, make) => {
    const key = told();
    if (!kept.has(key)) kept.set(key, make());
    return kept.get(key) as ReturnType<typeof make>;
  };
  const both = (): number =>
    total(
      made.series.map(({ record, derived, compared, stress }) =>
        timed(() => {
          compareSeries(record, derived, { seed: compared.seed, remember });
          remember(
            () => JSON.stringify(stress.input),
            () => stressTable(stress.input),
          );
        }),
      ),
    );
  const [cold, warm] = [both(), both()];
  return [
    { name: 'trials and stress table, cold build', value: Number(((cold - bare) / 1000).toFixed(1)), unit: 's' },
    { name: 'trials and stress table, again', value: Number((Math.max(0, warm - bare) / 1000).toFixed(2)), unit: 's' },
    { name: 'a switch of the stress table, slowest', value: Math.round(slowest(made)), unit: 'ms' },
  ];
}

function slowest(made: ReturnType<typeof makeBook>): number {
  const times = made.pages.flatMap((page) =>
    page.sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) => {
        if (block.kind !== 'stress') return [];
        const choices = block.stress.choices.map(({ choice }) => choice);
        // Once round first, as a page that has been open for a moment.
        for (const choice of choices) wordsUnder(block.stress)([choice]);
        const under = wordsUnder(block.stress);
        return choices.map((choice) => timed(() => under([choice])));
      }),
    ),
  );
  return Math.max(...times);
}

function timed(work: () => unknown): number {
  const begun = performance.now();
  work();
  return performance.now() - begun;
}

const total = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
