import { guidePages } from './guide-pages.ts';
import type { Page } from './page.ts';
import { code, link, listOf, prose, section, strong } from './spans.ts';

/** How to read these pages, and how to start a book of one's own. */
export function guidePage(): Page {
  return {
    kind: 'guide',
    path: 'guide/',
    title: 'Guide',
    description: 'How to read these pages, how to start a book of your own, and what it does not do.',
    whereabouts: ['The book · guide'],
    lead: [
      'A book is a folder of plain text notes with the logger’s files beside them. A text editor is all it takes to write one, and to read it in ten years.',
    ],
    banners: [],
    series: null,
    sections: [
      section('read-a-page', 'How to read a page', [
        listOf([
          [strong('The title says what was found'), ', or names the thing on its sheet.'],
          [
            strong('The margin says how sure'),
            ': what limits the sentence beside it, which caution belongs to it, where its raw file is.',
          ],
          [
            strong('A number that is a link'),
            ' leads to its working: given, relation, numbers, result, and where the doubt comes from.',
          ],
          [strong('± is half a 95 % interval'), ', unless the page says otherwise.'],
          [
            strong('Not separated'),
            ' means that these runs cannot tell two things apart. It does not say that they are alike.',
          ],
          [
            strong('> 150 min'),
            ' means that a limit was not reached in that time. It is kept as a bound, not left out.',
          ],
        ]),
        prose(
          'All words stand under ',
          link('words/', 'Words'),
          ', all relations under ',
          link('method/', 'Method'),
          '.',
        ),
      ]),
      section('pages', 'Ten pages, one after the other', [
        {
          kind: 'list',
          items: guidePages.map(({ id, title, lead }) => [link(`guide/${id}/`, title), `: ${lead}`]),
        },
      ]),
      section(
        'folder',
        'A book as a folder',
        [{ kind: 'code', language: 'text', text: folder }],
        [
          {
            name: 'Who sees it.',
            text: [
              'Every note is for the house unless it says ',
              code('shown-to: public'),
              '. A public build leaves the others out and says how many.',
            ],
          },
        ],
      ),
      section(
        'rules',
        'How notes are written',
        [
          listOf([
            [
              'A note is Markdown with fields between two lines of ',
              code('---'),
              '. Fields are YAML; nothing in a note can run.',
            ],
            [
              'A quantity is written as people write it, with its unit: ',
              code('2.40 L'),
              ', ',
              code('203 °F'),
              ', ',
              code('30 lbf·ft'),
              ', ',
              code('5 7/16 in'),
              ', ',
              code('2,4 L'),
              '. Between ',
              code('{ }'),
              ' or ',
              code('[ ]'),
              ' a decimal comma needs quotes: ',
              code('fill: "2,4 L"'),
              '.',
            ],
            [
              'What can be read two ways is refused, and both readings are named: a bare ',
              code('pt'),
              ', ',
              code('gal'),
              ' or ',
              code('hp'),
              ', ',
              code('1,234 L'),
              ', ',
              code('03/04/25'),
              '.',
            ],
            ['A tolerance says what it is: ', code('2.40 L ± 0.02 L (k=2)'), '.'],
            ['Dates are ISO 8601, with the offset from UTC where there is a time of day.'],
            [
              'A run that went wrong stays: ',
              code('status: set aside'),
              ' with its reason. Seconds that went wrong are excluded with a reason; the raw file is left as it is.',
            ],
          ]),
        ],
        [{ name: 'Ask first.', text: [code('dipmark check'), ' reads everything and changes nothing.'] }],
      ),
      section('does-not', 'What it does not do', [
        listOf([
          ['It drives no rig and watches no trial. It reads what was written and logged.'],
          ['It releases nothing to run, and gives no word on durability, fitness or law.'],
          ['It grades no picture: people do. It fills no gap and smooths nothing unseen.'],
          ['It forms no difference between runs whose conditions do not match; it says which condition.'],
          ['It gives a rank to nobody: it says what is separated, and by how much.'],
        ]),
      ]),
    ],
  };
}

const folder = `millrace/
  book.md
  pan-depth/
    series.md
    rig.md
    plan.md
    claims.md
    parts/1-what-stands-in-the-pan.md   amendments/COR-01.md
    reports/CR-01.md
    articles/A0.md  A1.md
    oils/L1.md
    runs/S-01.md  S-01.csv
    runs/F-01.md  F-01.csv  F-01.mp4  F-01.vtt
    pictures/F-01-200.png`;
