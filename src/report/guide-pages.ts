import { claimsGuide } from './guide-claims.ts';
import { noteExamples } from './guide-examples.ts';
import { everyField, type NoteKind } from './guide-fields.ts';
import { flowGuide } from './guide-flow.ts';
import { coolDownNote, heatUpNote } from './guide-heat.ts';
import { says, said, steps } from './guide-words.ts';
import { handingOver } from './guide-handing-over.ts';
import type { MarginNote, Page, Section } from './page.ts';
import { code, link, prose, section } from './spans.ts';

/** One page of the guide: what to do, why, and the note as it is written. */
export interface GuidePage {
  readonly id: string;
  readonly title: string;
  readonly lead: string;
  readonly sections: readonly Section[];
}

/** The note of one kind as it is written, with every field that it can have. */
const noteOf = (kind: NoteKind): Section => {
  const note = noteExamples.find((one) => one.kind === kind)!;
  return section(note.id, note.heading, [
    prose(code(note.file), ': ', note.says),
    { kind: 'code', language: 'yaml', text: note.yaml },
    everyField(note.kind),
  ]);
};

const beside = (name: string, text: string): MarginNote => ({ name, text: said(text) });
const cautioned = beside(
  'Before anything turns.',
  'Read [Cautions](cautions/). The maker’s data, the lab’s own rules, local law and licensed practice stand above all that is said here.',
);

export const guidePages: readonly GuidePage[] = [
  {
    id: 'first-series',
    title: 'A first series',
    lead: 'From an empty folder to a page of one’s own: who asks, what is compared, on which rig, in which oil.',
    sections: [
      section(
        'begin',
        'Begin',
        [
          steps(
            '`dipmark start my-book` asks six questions and writes a book that builds at once. With `--log file.csv` it reads the columns of a logger file of yours and proposes the map; what the file does not say, it asks.',
            '`dipmark check my-book` names each place that will not do and what to write there, and at its end what is still missing, in the order of what waits for it.',
            '`dipmark preview my-book` shows the pages, built again at each saved note.',
            'What nobody was asked stands in the notes as a likely value, named under `guessed:`. Look it up, write it in, take its name out. Until then the runs that rest on it give no figures.',
          ),
        ],
        [
          beside(
            'By hand.',
            'A book is a folder with `book.md`, a series a folder in it with `series.md`. All of it can be typed.',
          ),
        ],
      ),
      ...(['book', 'series', 'rig', 'plan', 'oil'] as const).map(noteOf),
    ],
  },
  {
    id: 'level-survey',
    title: 'A level survey',
    lead: 'How much oil stands below each height. Without it, nobody can tell the same litres from the same level.',
    sections: [
      section(
        'pour-and-dip',
        'Pour and dip',
        [
          steps(
            'Axle level in both directions, article fitted, drained until it drips no more. Oil and axle at the temperature of the room; write it down.',
            'Pour what covers the floor, turn the input by hand a few times, wait until the level stands, and read it on both sides from the axle centreline, negative below it.',
            'Again in six steps or more, from below the bottom of the ring gear to above the filler lip. Weigh each portion: grams do not depend on how a jug is read.',
            'Drain, weigh what comes out, and hold it against what went in. What stays behind on the walls belongs in the note.',
            'One article after the other, in the same oil, on the same day where that can be done.',
          ),
          says(
            'Both columns have to rise from row to row; a row that does not is told. Between rows the level is joined by straight lines, and never beyond the first and the last.',
          ),
        ],
        [
          beside(
            'What it gives.',
            'The litres that bring one article to the level of another, the dip of the ring gear, and two comparisons where there was one: at the same litres and at the same level.',
          ),
          cautioned,
        ],
      ),
      noteOf('article'),
    ],
  },
  {
    id: 'spin-run',
    title: 'A spin run',
    lead: 'What it takes to turn the axle without load, at stepped speeds and stated temperatures of the sump.',
    sections: [
      section(
        'spin',
        'Run it',
        [
          steps(
            'Zero of the torque flange at rest, unloaded, before and after; both go into the note. A drift between them is part of the doubt.',
            'Warm through on the highest step, then go down or up through the steps of the plan at each temperature, holding each as long as the plan says. Steady means that the sump moves by less than the slope in the plan.',
            'Outputs free. What hangs on them is in the figure: say so under `boundary` of the rig.',
            'Log the sump, the pinion bearing, the ambient; the probe of the sump has to hang in oil at each step. A probe in mist is told and its step left out.',
            'Take the article off and fit it again before the next one of the same kind: only refits are repeats. The baseline comes at the start, in the middle and at the end.',
          ),
        ],
        [cautioned],
      ),
      noteOf('run'),
    ],
  },
  {
    id: 'heat-up',
    title: 'A heat-up and a cool-down',
    lead: 'How hot each design gets under one load, how soon, and how well it sheds the heat.',
    sections: [
      section(
        'heat',
        'Run it',
        [
          steps(
            'Cold soak until sump, skin and ambient read alike within 2 K. Probes are looked at while all should agree.',
            'One load and one speed from the plan, held to the end. Airflow from a fan at a stated speed, measured at the mouth; the ambient upstream of it, shielded.',
            'Log input and both outputs where there are absorbers, sump, skin, pinion bearing, ambient, airflow. The heat made is what goes in less what comes out.',
            'Run until the sump has flattened, or until the longest time of the plan. A limit that is not reached is kept as a bound, `> 150 min`, and not left out.',
            'Stop, and log the cool-down for an hour: it gives the time constant without any load in it.',
          ),
          prose(code(heatUpNote.file), ' under load, and ', code(coolDownNote.file), ' after it:'),
          { kind: 'code', language: 'yaml', text: heatUpNote.yaml },
          { kind: 'code', language: 'yaml', text: coolDownNote.yaml },
        ],
        [
          cautioned,
          beside(
            'What follows.',
            'Final rise above ambient by three models and the one that fits, time to each limit, heat made, shed, store, and a rise split into made less and shed more.',
          ),
        ],
      ),
    ],
  },
  {
    id: 'flow-trial',
    title: 'A flow trial',
    lead: 'What oil does behind a window, graded by people so that it can be compared.',
    sections: [flowGuide()],
  },
  {
    id: 'claims',
    title: 'Claims',
    lead: 'Sentences that runs can refute, put before the runs, each with its rule.',
    sections: [noteOf('claims'), claimsGuide()],
  },
  {
    id: 'parts',
    title: 'Parts',
    lead: 'A series is published in instalments; what each of them showed on its day is kept.',
    sections: [
      section('in-parts', 'Write, put out, pin', [
        steps(
          'Write the words; take every number, claim, run and picture by reference, so that none is typed wrong or grows old.',
          'While it is a draft only the house sees it. `status: out` with the day, then `dipmark pin --part …` shows what would be kept; with `--write` it is kept for good in a small text file beside the note.',
          'From then on the page shows then and now wherever they differ, with the reason. Words that were changed afterwards say so.',
          'A part that was wrong is corrected, not rewritten: see [Corrections](guide/corrections/). One that should not be read any more is `withdrawn` with why, and stays.',
        ),
      ]),
      noteOf('part'),
    ],
  },
  {
    id: 'client-copy',
    title: 'A client copy',
    lead: 'The same figures on paper, for one client, under the names that this client uses.',
    sections: [
      section(
        'print',
        'Print and sign',
        [
          steps(
            'Write the note: what is reported, which article goes by which name, which runs are withheld and why, what was not tested, who signs.',
            '`dipmark print CR-01` writes one PDF, `CR-01-issue-1.pdf`, with the figures as they stood on the day of issue. `--sheet letter` for the other sheet; `--browser chromium` where the printer that comes with the tool is not installed.',
            'Whatever would tell a name that is kept back stops it. Withheld runs are counted, and what would tell them is left out.',
            'Read it page by page. Sign it by hand, on paper. Keep the file: an issue is never changed, a later one says what it takes the place of.',
          ),
        ],
        [
          beside(
            'What it is not.',
            'It is laid out after the elements of a report in ISO/IEC 17025, and it is no accredited report; it says so on its first page.',
          ),
        ],
      ),
      noteOf('report'),
    ],
  },
  {
    id: 'corrections',
    title: 'Corrections',
    lead: 'What was wrong, since when, and what it moved. Nothing is deleted.',
    sections: [
      section('correct', 'Correct in public', [
        steps(
          'Leave the raw file and the note of the run as they are.',
          'Write what is read otherwise: a channel of a run, an instrument over some days, a field of a note. From the day it is published it holds.',
          'The series is worked out with and without it; runs, figures, claims, parts and client copies that it reached are named, old values beside new ones.',
          'An objection is a note as well, with its answer or without one yet. A maker’s reply is printed as it came.',
        ),
      ]),
      noteOf('amendment'),
    ],
  },
  handingOver,
];

/** The pages of the guide behind its first one. */
export const guideChapters = (): readonly Page[] =>
  guidePages.map(({ id, title, lead, sections }, at) => ({
    kind: 'guide',
    path: `guide/${id}/`,
    title,
    description: lead,
    whereabouts: ['The book · ', link('guide/', 'guide'), ` · page ${String(at + 1)} of ${String(guidePages.length)}`],
    lead: [lead],
    banners: [],
    series: null,
    sections: [...sections, ...onward(at)],
  }));

function onward(at: number): readonly Section[] {
  const next = guidePages[at + 1];
  return next === undefined
    ? []
    : [section('next', null, [prose('Next: ', link(`guide/${next.id}/`, next.title), '.')])];
}
