import { articleSpan, cellDetail } from './cite.ts';
import type { FlowSheet } from './flow-steps.ts';
import { pairsOf } from './pairs.ts';
import type { Page, Span } from './page.ts';
import { runLink } from './run-parts.ts';
import { capital, counts, fold, link, prose, row, section, tableBlock } from './spans.ts';
import type { View } from './view.ts';

/** Which flow trials stand side by side, on which basis, and why others do not. */
export function sideBySidePage(view: View): Page {
  const { pairs, apart } = pairsOf(view);
  return {
    kind: 'side-by-side',
    path: `${view.base}side-by-side/`,
    title: 'Side by side',
    description: `Flow trials of ${view.series.title} that may stand side by side, and why others may not.`,
    whereabouts: [link(view.base, view.series.title), ' · side by side'],
    lead: [
      pairs.length === 0
        ? 'No two flow trials were run at one tilt with one oil, and with the same litres or the same level.'
        : `${capital(counts(pairs.length, 'pair'))} of flow trials ${pairs.length === 1 ? 'stands' : 'stand'} side by side, step by step: one oil, one tilt, and the same litres or the same level.`,
    ],
    banners: [],
    series: view.series.id,
    sections: [
      pairs.length === 0
        ? null
        : section(
            'pairs',
            null,
            [
              tableBlock(
                'pairs-table',
                ['wide run', 'wide beside', 'side by side at the'],
                pairs.map(({ left, right, basis, path }) =>
                  row(nameSpans(view, left), nameSpans(view, right), link(path, basis)),
                ),
              ),
            ],
            [
              {
                name: 'Two ways to be fair.',
                text: [
                  'At the same litres a roomier bowl stands lower; at the same level it holds more. Each pair says which it is.',
                ],
              },
            ],
          ),
      apart.length === 0
        ? null
        : section('not-side-by-side', 'Not side by side', [
            prose('What differs besides the article would be read as its doing.'),
            fold(
              `${capital(counts(apart.length, 'pair'))}, and why`,
              tableBlock(
                'apart-table',
                ['wide run', 'wide and', 'wide why not'],
                apart.map(({ left, right, reasons }) =>
                  row(nameSpans(view, left), nameSpans(view, right), reasons.join('; ')),
                ),
              ),
            ),
          ]),
    ].filter((s) => s !== null),
  };
}

const nameSpans = (view: View, { run, derived }: FlowSheet): Span[] => [
  articleSpan(view, run.article, run.article),
  `, ${cellDetail(derived.cell)}, `,
  runLink(view, run.id),
];
