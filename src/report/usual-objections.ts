import { spaced } from './article.ts';
import { articleSpan, litresWords } from './cite.ts';
import { quantityText } from './digits.ts';
import type { Page, Section, Span } from './page.ts';
import { runLink } from './run-parts.ts';
import { capital, counts, countWord, link, listed, prose, section, strong } from './spans.ts';
import { derivedOf, type View } from './view.ts';

/** What is held against every series of this kind, answered from the runs of this one or called not tested. */
export function usualObjectionsPage(view: View): Page {
  const rows = objections.map((one) => ({ ...one, answer: one.answer(view) }));
  const open = rows.filter(({ answer }) => answer === null).length;
  return {
    kind: 'usual-objections',
    path: `${view.base}usual-objections/`,
    title:
      open === 0
        ? 'What is always asked has an answer here'
        : `Of ${counts(rows.length, 'usual objection')} ${open === 1 ? 'one is' : `${countWord(open)} are`} not tested`,
    description: `The usual objections, answered from the runs of ${view.series.title} or called not tested.`,
    whereabouts: [link(view.base, view.series.title), ' · usual objections'],
    lead: [
      'What is held against every series of this kind. Each answer is made from the notes and the runs by the build; where nothing was run it says so.',
    ],
    banners: [],
    series: view.series.id,
    sections: rows.map(({ id, asks, otherwise, answer }): Section => ({
      ...section(id, asks, [answer === null ? prose(strong('Not tested. '), ...otherwise(view)) : prose(...answer)]),
      inIndex: `${capital(id.replaceAll('-', ' '))}${answer === null ? ': not tested' : ''}`,
    })),
  };
}

interface Usual {
  readonly id: string;
  readonly asks: string;
  /** Null where nothing was run that answers. */
  readonly answer: (view: View) => readonly Span[] | null;
  readonly otherwise: (view: View) => readonly Span[];
}

const to = (view: View, path: string, text: string): Span => link(`${view.base}${path}`, text);
const distinct = <T>(list: readonly T[]): T[] => [...new Set(list)];
const counting = (view: View) =>
  view.runs.flatMap((run) => {
    const derived = derivedOf(view, run.id);
    return derived === undefined || derived.leftOut !== null ? [] : [{ run, derived }];
  });
const runList = (view: View, ids: readonly string[]): Span[] => {
  const first = ids.slice(0, 6);
  return [
    ...listed(
      first.map((id) => [runLink(view, id)]),
      ', ',
    ),
    ...(ids.length > first.length ? [` and ${countWord(ids.length - first.length)} more`] : []),
  ];
};

const objections: readonly Usual[] = [
  {
    id: 'fairness',
    asks: 'How did the articles come here, and how many of each?',
    answer: (view) => [
      ...listed(
        [...view.articles.values()]
          .filter(({ role }) => role !== 'window_copy')
          .map((article): Span[] => [
            articleSpan(view, article.id, article.id),
            ` ${spaced(article.obtained)}, ${counts(article.samples, 'sample')}`,
          ]),
      ),
      `. Conflicts of interest: ${view.series.conflicts}. A maker’s reply stands as it came under `,
      to(view, 'amends/', 'amends'),
      ' where there is one.',
    ],
    otherwise: () => [],
  },
  {
    id: 'litres-or-shape',
    asks: 'Is it the shape, or only the litres that go in with it?',
    answer: (view) => {
      const fills = new Map<string, Set<string>>();
      for (const { derived } of counting(view)) {
        const { article, fill_m3 } = derived.cell;
        fills.set(article, (fills.get(article) ?? new Set()).add(litresWords({ fill_m3 })));
      }
      const several = [...fills].filter(([id, of]) => of.size > 1 && view.articles.has(id));
      return several.length === 0
        ? null
        : [
            ...listed(
              several.map(([id, of]): Span[] => [articleSpan(view, id, id), ` at ${[...of].sort().join(' and ')}`]),
            ),
            ' were run, so that same litres and same level stand apart in the ',
            to(view, 'standing/', 'standing'),
            '.',
          ];
    },
    otherwise: () => [
      'Every article was run at one fill, so what the litres do cannot be parted from what the shape does.',
    ],
  },
  {
    id: 'no-load',
    asks: 'It was watched without load and cold. Why should it look like that on the road?',
    answer: (view) => {
      const heat = counting(view).filter(({ run }) => run.trial === 'heat-up');
      return heat.length === 0
        ? null
        : [
            'The pictures alone do not say so. Under load there are ',
            to(view, 'runs/', counts(heat.length, 'heat-up')),
            ', and each flow sheet states its Reynolds number beside that of the loaded run it stands for.',
          ];
    },
    otherwise: () => ['No loaded run stands beside the flow trials.'],
  },
  {
    id: 'airflow',
    asks: 'What about the wind under a moving vehicle?',
    answer: (view) => {
      const { airflow_m_s: within } = view.series.tolerance;
      const airs = counting(view)
        .filter(({ run }) => run.trial === 'heat-up')
        .flatMap(({ derived }) => derived.conditions.airflow_m_s ?? [])
        .sort((a, b) => a - b);
      const apart = airs.filter((v, i) => i === 0 || v - airs[i - 1]! > within);
      return apart.length < 2
        ? null
        : [
            'Loaded runs at ',
            ...listed(apart.map((v) => [quantityText(v, 'm/s', 1)])),
            ' stand under ',
            to(view, 'runs/', 'runs'),
            '.',
          ];
    },
    otherwise: (view) =>
      view.series.reference.airflow_m_s === null
        ? ['Airflow was not stated.']
        : [
            `Every loaded run had ${quantityText(view.series.reference.airflow_m_s, 'm/s', 1)}, as the series sets it; airflow was not swept.`,
          ],
  },
  {
    id: 'hill-and-trailer',
    asks: 'And on a hill, or behind a trailer?',
    answer: (view) => {
      const tilted = counting(view).filter(({ derived }) => derived.cell.tilt_ratio !== 0);
      return tilted.length === 0
        ? null
        : [
            'Tilted: ',
            ...runList(
              view,
              tilted.map(({ run }) => run.id),
            ),
            '. Towing was not run.',
          ];
    },
    otherwise: () => ['The axle stood level in every run, and nothing was towed.'],
  },
  {
    id: 'window-copy',
    asks: 'Is the copy with the window the same inside as the article?',
    answer: (view) => {
      const copies = [...view.articles.values()].filter(({ role }) => role === 'window_copy');
      return copies.length === 0
        ? null
        : [
            ...listed(
              copies.map((copy): Span[] => [
                articleSpan(view, copy.id, copy.id),
                copy.differences.length === 0 ? ' (no difference written down)' : `: ${copy.differences.join('; ')}`,
              ]),
              '; ',
            ),
            '. No heat and no loss is told from a copy.',
          ];
    },
    otherwise: () => ['No copy with a window was used.'],
  },
  {
    id: 'other-oil',
    asks: 'That is not the oil that the maker asks for.',
    answer: (view) => {
      const oils = distinct(counting(view).map(({ derived }) => derived.cell.oil)).filter((id) => view.oils.has(id));
      return oils.length < 2
        ? null
        : [
            ...listed(oils.map((id): Span[] => [to(view, `oils/${id}/`, `${id} ${view.oils.get(id)!.name}`)])),
            ' were run. What the maker of an axle asks for is in its own data.',
          ];
    },
    otherwise: () => ['One oil was run. What the maker of an axle asks for is in its own data.'],
  },
  {
    id: 'break-in',
    asks: 'Was the gearset run in, and was it the same one throughout?',
    answer: (view) => {
      const used = distinct(counting(view).map(({ run }) => run.rigState));
      const recorded = view.rig.states.filter(({ id, breakIn }) => used.includes(id) && breakIn !== null);
      return recorded.length === 0 || !view.rigShown
        ? null
        : [
            `Runs were made in ${counts(used.length, 'rig state')}; break-in is recorded of ${counts(recorded.length, 'state')} on the `,
            to(view, 'rig/', 'rig sheet'),
            '.',
          ];
    },
    otherwise: () => ['Break-in was not recorded, or its sheet is not shown.'],
  },
  {
    id: 'where-the-probe-sits',
    asks: 'Where exactly does the sump probe sit?',
    answer: (view) => {
      const known = view.rig.instruments.some(({ tip_z_m }) => tip_z_m.size > 0);
      return known && view.rigShown
        ? [
            'The height of its tip in each article stands on the ',
            to(view, 'rig/', 'rig sheet'),
            '; a step whose running level fell below it is left out and says so.',
          ]
        : null;
    },
    otherwise: () => ['The height of the probe’s tip was not written down, or its sheet is not shown.'],
  },
  {
    id: 'one-more-repeat',
    asks: 'Would it come out the same if it were done once more?',
    answer: (view) => {
      const cells = view.input.compared.cells.filter(
        ({ quantity, runs }) => quantity === 'spin-power' && runs.length > 1,
      );
      return cells.length === 0
        ? null
        : [
            'Each article was taken off and refitted between repeats; the scatter of refits is in every interval. Every word under every other choice stands under ',
            to(view, 'stress/', 'stress'),
            '.',
          ];
    },
    otherwise: () => ['Nothing was run twice with a refit between.'],
  },
  {
    id: 'durability',
    asks: 'Does it last, and does it wear?',
    answer: () => null,
    otherwise: () => ['Nothing in this book runs long enough to say anything about wear or life.'],
  },
];
