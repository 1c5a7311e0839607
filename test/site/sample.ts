import type { Page } from '../../src/report/page.ts';
import { chart, deepSection, heat, level, section, speed, standing, trace } from './sample-charts.ts';
import { flowPages } from './sample-flow.ts';
import { furtherPages } from './sample-further.ts';
import { article, figure, link, note, page, part, prose, root, table } from './sample-parts.ts';

/** One invented page of each kind and with each block: for the tests of the site and for eyes. No figure here means anything. */

export { frame } from './sample-parts.ts';

const working = link(`${root}working/S-07/spin-power@290rpm,60Cel/`, 'working');
const runFigures = table(
  'figures',
  ['figure', '#value', '#95 %', 'class', ''],
  [
    [
      ['final sump temperature'],
      [figure('95.7 °C', 'S-07/spin-power@290rpm,60Cel')],
      ['± 1.3'],
      ['derived'],
      [working],
    ],
    [['heat made'], ['991 W'], ['± 49'], ['measured'], [working]],
    [['shed'], ['13.3 W/K'], ['± 0.7'], ['derived'], [working]],
    [['time to 95 °C'], ['> 150 min'], ['bound'], ['measured'], [working]],
  ],
);

const home = page('book', '', 'Two bowls, the same oil, the same level: how many watts is a shape worth?', {
  lead: ['Four watts, give or take nine. Most of what looked like shape was where the oil stood.'],
  sections: [
    part('drawing', null, [
      {
        kind: 'chart',
        chart: chart('home-section', 'Section of the shrouded axle', section, ['The axle from its side, to scale.']),
      },
    ]),
    part(
      'series',
      'Series',
      [
        {
          kind: 'table',
          table: table(
            'series-list',
            ['series', '#runs', 'what it asks'],
            [
              [
                [link(root, 'The Hill Bowl Series')],
                ['63'],
                ['Does the shape of a cover change loss and heat, or only where the oil stands?'],
              ],
              [['Where the Oil Stands'], ['8'], ['How high does a litre stand?']],
            ],
          ),
        },
      ],
      [note('How sure', 'Every figure leads to its working, and from there to the line of the raw file.')],
    ),
  ],
});

const seriesPage = page('series', root, 'The Hill Bowl Series', {
  lead: [
    'The shroud takes ',
    figure('28 W ± 9 W', 'P4~P0/spin-power@290rpm,60Cel'),
    ' off the spin loss; the deep bowl is ',
    { kind: 'verdict', text: 'not separated' },
    ' from the pressed one at the same level.',
  ],
  sections: [
    part(
      'question',
      null,
      [
        prose(
          'Five covers, two oils, one axle. ',
          { kind: 'strong', text: 'Same level' },
          ' is the rule of the comparison.',
        ),
        {
          kind: 'notice',
          code: 'read-with',
          text: [
            { kind: 'strong', text: 'Read with it. ' },
            'Lower loss is no gain where the pinion runs short: P4 shows Reach 1 where P0 shows 2.',
          ],
        },
      ],
      [note('How sure', 'Three refits each; pooled scatter 6.0 W.')],
    ),
    part(
      'heat',
      'Heat made and shed',
      [{ kind: 'chart', chart: chart('heat', 'Heat made and shed by article', heat, ['Bars are 95 %.']) }],
      [note('Depends on', 'airflow: 0.1 m/s is worth 1 K.')],
    ),
    part('speed', 'Spin power', [
      { kind: 'chart', chart: chart('speed', 'Spin power against wheel speed', speed, ['A line an article.']) },
    ]),
    part('articles', 'Articles', [
      {
        kind: 'list',
        items: [
          article(0, 'P0', 'pressed bowl'),
          article(1, 'P1', 'deep bowl'),
          article(2, 'P2', 'catch tray'),
          article(3, 'P3', 'moulded bowl'),
          article(4, 'P4', 'shroud'),
          article(5, 'P5', 'cast bowl'),
          article(6, 'P6', 'ribbed bowl'),
          article(7, 'P7', 'split tray'),
          article(8, 'P8', 'second shroud'),
        ],
      },
    ]),
  ],
});

const standingPage = page(
  'standing',
  `${root}standing/`,
  'At the same level, the deep bowl is not separated from the pressed one',
  {
    lead: [
      'Filled to the same litres it saves ',
      figure('33 W', 'P1~P0/spin-power@290rpm,60Cel'),
      '; filled to the same level, 4 W, inside the ± 9 W that refitting alone moves.',
    ],
    sections: [
      part(
        'order',
        null,
        [
          {
            kind: 'chart',
            chart: chart('standing', 'Standing by spin power', standing, [
              'Groups that share a letter are not separated (all pairs, Tukey–Kramer).',
            ]),
          },
        ],
        [
          note(
            'How sure',
            'Intervals are 95 % of the difference to the bracketing baseline, three refits each, 14 degrees of freedom.',
          ),
          note('Depends on', 'The order of P1 changes with the fill basis. Nothing else tried changes it.'),
        ],
      ),
      part(
        'table',
        'Same litres, same level',
        [
          {
            kind: 'table',
            table: {
              ...table(
                'order-table',
                ['article and fill', '#W', '#95 %', 'group', 'note'],
                [
                  [[...article(1, 'P1', 'deep bowl, 2.40 L')], ['−33'], ['± 9'], ['a'], ['level not matched']],
                  [[...article(4, 'P4', 'shroud, 2.40 L')], ['−28'], ['± 9'], ['ab'], ['']],
                  [[...article(0, 'P0', 'pressed bowl, 2.40 L')], ['0'], ['—'], ['c'], ['baseline']],
                ],
              ),
              caption: 'Spin power less the baseline, 290 wheel rpm, 60 °C',
            },
          },
        ],
        [
          {
            ...note('Claim CL-3', { kind: 'verdict', text: 'shown' }, ': the shroud cuts spin power by 15 W or more.'),
            code: 'claim',
          },
        ],
      ),
    ],
  },
);

const articlePage = page('article', `${root}articles/P4/`, 'P4 shroud', {
  lead: ['A sheet of steel round the ring gear, in the pressed bowl.'],
  sections: [
    part(
      'drawing',
      null,
      [
        {
          kind: 'chart',
          chart: chart('section-P4', 'Section of the housing with P4', section, [
            'To scale; only what is known is drawn.',
          ]),
        },
      ],
      [note('How sure', 'Inside profile taken by hand, ± 1 mm. Drawing only: no figure comes from it.')],
    ),
    part('facts', 'What it is', [
      {
        kind: 'facts',
        rows: [
          { name: 'material', value: ['steel, 1 mm'] },
          { name: 'mass', value: ['3.7 kg with bowl'] },
          { name: 'static level', value: [figure('−52.3 mm', 'P4/static-level')] },
        ],
      },
    ]),
    part('deep', 'Beside the deep bowl', [
      { kind: 'chart', chart: chart('section-P1', 'Section of the housing with P1', deepSection) },
    ]),
    part('where', 'Where it stands', [
      { kind: 'chart', chart: chart('level', 'Level curve', level, ['Surveyed rows joined by straight lines.']) },
    ]),
  ],
});

const runPage = page('run', `${root}runs/H-05/`, 'P1 deep bowl, 3.59 L of O1', {
  lead: [
    'It reached 80 °C in 72 minutes and 90 °C in 121, did not reach 95 °C in 150, and is heading for ',
    figure('95.7 °C ± 1.3 °C', 'S-07/spin-power@290rpm,60Cel'),
    '.',
  ],
  banners: [
    {
      code: 'release-not-recorded',
      text: [
        { kind: 'strong', text: 'Release not recorded. ' },
        'The note does not say who released the rig for power.',
      ],
    },
  ],
  sections: [
    part(
      'trace',
      null,
      [
        {
          kind: 'chart',
          chart: chart('trace', 'Sump temperature against time', trace, [
            'Dashed black: the baseline run ',
            link(`${root}runs/H-05/`, 'H-01'),
            '. Circles: sustained crossings (20 s).',
          ]),
        },
      ],
      [
        {
          name: 'Before power',
          text: ['Guards on, breather proven open, stop temperature 120 °C set.'],
          code: 'any-rotation',
          list: [
            ['guard before power; no gloves, cuffs or cloths near shafts'],
            ['wait for the probe, not the clock'],
            [link('cautions/', 'all cautions')],
          ],
        },
        note('One store misfits', 'A one-store fit leaves 0.63 K rms and lands 1.0 K low; the two-store fit is used.'),
      ],
    ),
    part(
      'gives',
      'What it gives',
      [{ kind: 'table', table: runFigures }],
      [note('Raw file', 'H-05.csv, 4 501 rows, SHA-256 ', { kind: 'code', text: '3f9a0c…c1' })],
    ),
    part('words', 'From the bench', [
      {
        kind: 'words',
        markdown:
          '# Second refit\n\nBreather *proven* open. [final rise](figure:H-03/final-rise) <script>alert(1)</script> [x](javascript:alert(1)) ![still](a.jpg)\n\n| a | b |\n|--|--:|\n| 1 | 2 |',
      },
    ]),
    part('left-out', 'What was left out', [
      { kind: 'fold', summary: 'Two findings, one exclusion', blocks: [prose('70:00 to 70:12, probe off.')] },
    ]),
  ],
});

export const pages: readonly Page[] = [
  home,
  seriesPage,
  standingPage,
  articlePage,
  runPage,
  ...flowPages,
  ...furtherPages(),
];
