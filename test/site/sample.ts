import type { SiteFrame } from '../../src/report/frame.ts';
import type { Block, MarginNote, Page, PageKind, Section, Span, Table } from '../../src/report/page.ts';
import { chart, deepSection, heat, level, planGrid, section, speed, standing, trace } from './sample-charts.ts';

/** One invented page of each kind and with each block: for the tests of the site and for eyes. No figure here means anything. */
const series = 'hill-bowl';
const root = `series/${series}/`;

export const frame: SiteFrame = {
  lab: 'Quillstone Axle Room',
  bookName: 'The Quillstone book',
  language: 'en',
  pathPrefix: '/',
  invented: true,
  nav: [
    { text: 'Method', to: 'method/' },
    { text: 'Cautions', to: 'cautions/' },
    { text: 'Words', to: 'words/' },
    { text: 'Guide', to: 'guide/' },
    { text: 'Checks', to: 'checks/' },
  ],
  seriesNav: {
    [series]: [
      { text: 'The Hill Bowl Series', to: root },
      { text: 'Standing', to: `${root}standing/` },
      { text: 'Runs', to: `${root}runs/` },
      { text: 'Plan', to: `${root}plan/` },
      { text: 'Rig', to: `${root}rig/` },
      { text: 'Ledger', to: `${root}ledger/` },
    ],
  },
  footer: ['Words and figures under CC-BY-4.0.', 'Corrections: corrections@quillstone.example'],
};

const figure = (text: string, id: string): Span => ({ kind: 'figure', to: `${root}working/${id}/`, text, id });
const article = (mark: number, id: string, name: string): readonly Span[] => [
  { kind: 'article', mark, text: id, to: `${root}articles/${id}/` },
  ` ${name}`,
];
const link = (to: string, text: string): Span => ({ kind: 'link', to, text });
const prose = (...text: readonly Span[]): Block => ({ kind: 'prose', text });
const note = (name: string, ...text: readonly Span[]): MarginNote => ({ name, text });
const part = (
  id: string,
  heading: string | null,
  blocks: readonly Block[],
  margin: readonly MarginNote[] = [],
): Section => ({
  id,
  heading,
  blocks,
  margin,
});

function page(kind: PageKind, path: string, title: string, more: Partial<Page>): Page {
  const whereabouts: readonly Span[] = path.startsWith(root) ? [link(root, 'The Hill Bowl Series'), ` · ${kind}`] : [];
  const plain = { whereabouts, lead: [], banners: [], sections: [], description: `${title}.` };
  return { kind, path, title, series: path.startsWith(root) ? series : null, ...plain, ...more };
}

function table(id: string, heads: readonly string[], rows: readonly (readonly (readonly Span[])[])[]): Table {
  const columns = heads.map((head, i): Table['columns'][number] =>
    head.startsWith('#') ? { head: head.slice(1), align: 'number' } : { head, align: i === 0 ? 'wide' : 'text' },
  );
  return { id: `${id}-rows`, caption: null, columns, rows: rows.map((cells) => ({ cells })) };
}

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

export const pages: readonly Page[] = [home, seriesPage, standingPage, articlePage, runPage, ...furtherPages()];

function furtherPages(): readonly Page[] {
  return [
    page('oil', `${root}oils/O1/`, 'O1, SAE 85W-90 mineral', {
      sections: [
        part('facts', null, [
          {
            kind: 'facts',
            rows: [
              { name: 'viscosity at 40 °C', value: ['170 mm²/s'] },
              { name: 'at 100 °C', value: ['15.6 mm²/s'] },
            ],
          },
        ]),
      ],
    }),
    page('rig', `${root}rig/`, 'Quillstone rear-axle bench', {
      sections: [
        part('drawing', null, [{ kind: 'chart', chart: chart('rig-section', 'Section of the rig', section) }]),
        part('instruments', 'Instruments', [
          {
            kind: 'table',
            table: table(
              'instrument-table',
              ['instrument', 'measures', '#range', 'status'],
              [[['torque-low'], ['torque'], ['0 to 50 N·m'], ['in date']]],
            ),
          },
        ]),
      ],
    }),
    page('plan', `${root}plan/`, 'Plan: 63 runs wanted, 59 done', {
      sections: [
        part(
          'grid',
          null,
          [{ kind: 'chart', chart: chart('plan', 'Cells of the plan', planGrid) }],
          [note('How sure', 'A cell set aside is run again.')],
        ),
      ],
    }),
    page('runs', `${root}runs/`, 'Runs', {
      sections: [
        part('spin', 'Spin', [
          {
            kind: 'table',
            table: {
              ...table(
                'spin-runs',
                ['run', 'article', '#fill', 'status'],
                [
                  [['S-07'], article(4, 'P4', 'shroud'), ['2.40 L'], ['accepted']],
                  [['S-08'], article(0, 'P0', 'pressed bowl'), ['2.40 L'], ['set aside']],
                ],
              ),
              rows: [
                { cells: [['S-07'], article(4, 'P4', 'shroud'), ['2.40 L'], ['accepted']] },
                {
                  cells: [['S-08'], article(0, 'P0', 'pressed bowl'), ['2.40 L'], ['set aside']],
                  role: 'left-out',
                  anchor: 'S-08',
                },
              ],
            },
          },
        ]),
      ],
    }),
    page('ledger', `${root}ledger/`, 'Ledger', {
      lead: ['Every figure of the series, once.'],
      sections: ['S-07', 'H-05', 'P4'].map((id) =>
        part(id, id, [
          {
            kind: 'table',
            table: table(
              `ledger-${id}`,
              ['figure', '#value', '#low', '#high', 'class', 'relation'],
              Array.from({ length: 6 }, (_, i) => [
                [figure(`${id}/spin-power@${60 + 40 * i}rpm`, `${id}/spin-power@${60 + 40 * i}rpm`)],
                [`${20 + 31 * i} W`],
                [`${18 + 30 * i}`],
                [`${22 + 32 * i}`],
                ['derived'],
                ['spin power'],
              ]),
            ),
          },
        ]),
      ),
    }),
    workingPage(),
    page('method', 'method/', 'Method', {
      sections: [
        part(
          'upright-plate',
          'Heat from an upright wall',
          [
            {
              kind: 'formula',
              latex:
                'Nu = \\left\\{ 0.825 + \\frac{0.387\\,Ra^{1/6}}{\\left[1 + (0.492/Pr)^{9/16}\\right]^{8/27}} \\right\\}^2',
              plain: 'Nu = (0.825 + 0.387 Ra^(1/6) / (1 + (0.492/Pr)^(9/16))^(8/27))²',
            },
            { kind: 'facts', rows: [{ name: 'source', value: ['Churchill and Chu 1975'] }] },
          ],
          [note('How sure', 'Commonly quoted within 10 %.')],
        ),
      ],
    }),
    page('cautions', 'cautions/', 'Cautions', {
      sections: [
        part('any', 'Any rotation', [
          { kind: 'list', items: [['guard before power'], ['nobody in the plane of shaft or tyre']] },
        ]),
      ],
    }),
    page('words', 'words/', 'Words', {
      sections: [
        part('words', 'Oil', [
          {
            kind: 'facts',
            rows: [
              { name: 'sump', value: ['oil at rest in the housing'] },
              { name: 'level', value: ['height of oil at rest'] },
            ],
          },
        ]),
      ],
    }),
    page('guide', 'guide/', 'How a run note is written', {
      sections: [
        part('note', 'A whole run note', [
          {
            kind: 'code',
            language: 'yaml',
            text: 'id: S-07\nfill: { basis: volume, temperature: 20.5 °C } # as typed\nlist: [<b>, "&"]',
          },
          { kind: 'code', language: 'nonesuch', text: 'a < b & c' },
        ]),
      ],
    }),
    page('checks', 'checks/', 'Checks', {
      sections: [
        part('physics', 'Physics', [
          {
            kind: 'table',
            table: table(
              'checks',
              ['relation', '#printed', '#ours', 'source'],
              [[['upright plate'], ['147'], ['147.2'], ['a textbook example']]],
            ),
          },
        ]),
      ],
    }),
  ];
}

function workingPage(): Page {
  const budget: Table = {
    ...table('budget', ['cause', '#standard', 'scope', '#share'], []),
    rows: [
      { cells: [['refit'], ['3.5 W'], ['refit'], ['71']] },
      { cells: [['torque zero'], ['1.8 W'], ['run'], ['18']] },
      { cells: [['temperature'], ['1.2 W'], ['series'], ['11']] },
      { cells: [['together'], ['4.1 W'], [''], ['100']], role: 'total' },
    ],
  };
  const columns = budget.columns.map((column, i) => (i === 3 ? { ...column, unit: '%', bar: true as const } : column));
  return page('working', `${root}working/S-07/spin-power@290rpm,60Cel/`, 'Spin power of P4 in run S-07', {
    lead: ['At 290 wheel rpm and 60 °C.'],
    sections: [
      part(
        'given',
        'Given',
        [
          {
            kind: 'table',
            table: table(
              'given-table',
              ['reading', '#value', '#standard', 'from'],
              [
                [['pinion torque'], ['1.545 N·m'], ['0.021'], ['S-07.csv, lines 912 to 1 212']],
                [['pinion speed'], ['1 321 rpm'], ['0.3'], ['S-07.csv']],
              ],
            ),
          },
        ],
        [note('Raw file', 'S-07.csv, column tq_in.')],
      ),
      part('relation', 'Relation', [{ kind: 'formula', latex: 'P = \\tau\\,\\omega', plain: 'P = τ ω' }]),
      part('numbers', 'Numbers', [prose('1.545 N·m × 138.3 rad/s')]),
      part(
        'result',
        'Result',
        [prose('213 W ± 8 W'), prose('95 %, k = 2.0')],
        [note('How sure', 'Refitting is most of it.')],
      ),
      part('budget', 'Budget', [{ kind: 'table', table: { ...budget, columns } }]),
    ],
  });
}
