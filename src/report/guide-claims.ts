import type { Section } from './page.ts';
import { code, link, listOf, prose, section, strong, verdict } from './spans.ts';

/** How a claim is written so that its runs can refute it. */
export const claimsGuide = (): Section =>
  section(
    'a-claim',
    'A claim, before the data',
    [
      prose(
        'A claim is put before its runs, in ',
        code('claims.md'),
        ' beside the series, as ',
        link('guide/claims/#note-claims', 'shown above'),
        '. Its word is worked out at each build; there is no field for it.',
      ),
      listOf([
        [strong('One sentence'), ', as whoever put it would say it, and the day on which it was put.'],
        [
          strong('Two cells'),
          ', each with its fill: the same litres and the same level are two claims. What differs between them is what the claim is about; everything else has to match.',
        ],
        [strong('One quantity'), ' with its conditions, from those that a standing can hold.'],
        [
          strong('The smallest difference that matters'),
          ', said now: ',
          code('by-at-least: 5 K'),
          '. Left out, any difference will do. Chosen after the data it can be made to fit, so look up before the runs what they can separate: a standing says it as ',
          strong('smallest visible difference'),
          '.',
        ],
        [
          strong('Several things at once'),
          ' are ',
          code('clauses:'),
          ', and the claim holds only where all of them do. “…and keeps the bearing within 2 K” is a clause.',
        ],
        [
          strong('A word that you would rather have'),
          ' goes under ',
          code('override:'),
          ' with its reason. It stands beside the computed word and hides nothing.',
        ],
      ]),
    ],
    [
      {
        name: 'Five words.',
        text: [
          ...[verdict('shown'), ', ', verdict('leaning'), ', ', verdict('not shown'), ', '],
          ...[
            verdict('shown against'),
            ', ',
            verdict('cannot tell'),
            ': ',
            link('words/#claims', 'what each means'),
            '.',
          ],
        ],
      },
      {
        name: 'Too late?',
        text: [
          'A claim made on or after the day of its first run is judged like any other, and stamped ',
          verdict('put after its data'),
          '.',
        ],
      },
    ],
  );
