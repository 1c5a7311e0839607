import type { Page, Table } from '../../src/report/page.ts';
import { chart, planGrid, section } from './sample-charts.ts';
import { article, figure, note, page, part, prose, root, table } from './sample-parts.ts';

/** Sample sheets beside the main ones. */
export function furtherPages(): readonly Page[] {
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
