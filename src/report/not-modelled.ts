import { notModelledPath } from './method.ts';
import type { Page } from './page.ts';
import { link, row, section, tableBlock } from './spans.ts';

/** What is often asked and has no honest number, and what is said instead. */
export function notModelledPage(): Page {
  return {
    kind: 'method',
    path: notModelledPath,
    title: 'What cannot be reckoned honestly',
    description: 'Questions that have no honest number, and what this book says instead.',
    whereabouts: [link('method/', 'Method'), ' · what cannot be reckoned'],
    lead: [
      'Some things that are asked of a bench have no number that would survive an argument. Here is what stands in its place.',
    ],
    banners: [],
    series: null,
    sections: [
      section('not-modelled', 'Asked for, and what is said', [
        tableBlock(
          'not-modelled-table',
          ['wide asked for', 'wide what is said instead'],
          rows.map(([asked, said]) => row(asked, said)),
        ),
      ]),
    ],
  };
}

const rows: readonly (readonly [string, string])[] = [
  [
    'Churning loss of an axle from its drawing',
    'Laws differ by a factor of five and more at one point. They lend their exponents and their form, never a headline.',
  ],
  [
    'What an inside form does to churning',
    'Measured, or not known. The momentum of the oil that comes back bounds it from above.',
  ],
  ['What clearance, ribs and deflectors do', 'Measured. The literature agrees on a direction, on no formula.'],
  [
    'How much oil is thrown, where it lands, how large the drops are',
    'From film alone, with its speed and the temperature of the oil. An estimate is within a factor of five.',
  ],
  [
    'The running level from the static one',
    'Measured: oil in the air lowers it, air in the oil raises it, and the two work against each other.',
  ],
  [
    'What a cold flow picture says of a hot axle',
    'Nothing, unless both numbers of similarity match. Their ratio stands beside the picture.',
  ],
  [
    'Air in the oil from one level',
    'Not to be told without weighed oil, a sample of known volume, or the whole course after the stop.',
  ],
  ['What air in the oil does to films and wear', 'A word, no number: no law is agreed on.'],
  [
    'Film over roughness, and margins against scuffing or pitting',
    'One alone is good to ± 40 %; the ratio of two articles on one axle is good to a few percent.',
  ],
  ['Life of an oil in hours or kilometres', 'A ratio within one oil, with a factor of 1.5 either way; never hours.'],
  [
    'Shed on the road from a rig in still air',
    'Does not carry over. Airflow and surface stand beside the measured shed, with a band of what air can do.',
  ],
  ['Store and shed from a cool-down alone', 'Only the one over the other, and for an axle at rest.'],
  [
    'A final temperature from a run that stopped early',
    'An extrapolation: what the readings leave open, what the ambient did and what the model leaves open are told apart. Half a time constant reads some 5 K low.',
  ],
  [
    'Efficiency of a hypoid mesh from its offset',
    'Within ± 40 % of its loss, since friction is not known better: for plausibility.',
  ],
  ['Drag of a bearing where it sits', 'Within ± 50 %: preload and starving decide. Measure the turning torque.'],
  [
    'Fuel saved by tens of watts',
    'The sum is exact and its meaning small: it stands beside what a road measurement could see.',
  ],
  [
    'Cooling gained by fins on the road',
    'Bounded by the share of the surface. A gain beyond the bound has another reason.',
  ],
  [
    'Which part of a spin loss is churning, which bearings, which seals',
    'Only where speeds and viscosities part them, or parts were run alone; otherwise the sum.',
  ],
  ['Which of two is lower inside their common doubt', 'Not separated. That is a result.'],
];
