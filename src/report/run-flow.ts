import type { Run } from '../trial/run.ts';
import { articleSpan } from './cite.ts';
import { besideSection } from './flow-beside.ts';
import { runDrawing } from './flow-drawing.ts';
import { cameraNote, clipsSection, filmBlocks } from './flow-film.ts';
import { settleSection } from './flow-settle.ts';
import { flowSheet, isGraded, stepFigure, type FlowSheet } from './flow-steps.ts';
import { stillsSection } from './flow-stills.ts';
import { firstGradesFold, gapSentence, gapTable, gradersSpans, gradeTable, levelTable } from './flow-tables.ts';
import { flowLead } from './flow-words.ts';
import { gradeLegend, kindsNotUsable } from './grade-words.ts';
import { pairLinks } from './pairs.ts';
import type { MarginNote, Page, Section } from './page.ts';
import { pinionSentence } from './pinion-words.ts';
import { conditionsSection, rawFileNote } from './run-conditions.ts';
import { beforePower, givesSection, howSure, leadOf, remarksNote, runPage } from './run-parts.ts';
import { speedOf } from './spin-figures.ts';
import { link, listOf, listed, prose, section } from './spans.ts';
import { gradeKinds, type StepName } from '../trial/flow.ts';
import { derivedOf, type View } from './view.ts';

/** A flow trial behind a window: what the oil does as the gears turn. It is unloaded and says nothing about wear. */
export function flowPage(view: View, run: Run): Page {
  const sheet = flowSheet(view, run);
  return runPage(view, run, {
    lead: leadOf(view, run, () =>
      sheet === null || sheet.flow.steps.length === 0
        ? ['No step of the plan was found in its log.']
        : flowLead(view, sheet),
    ),
    sections: [
      section('picture', null, sheet === null ? [] : filmBlocks(view, sheet), [
        beforePower(view, run),
        windowNote,
        sheet && cameraNote(view, sheet),
      ]),
      ...(sheet === null || sheet.flow.steps.length === 0
        ? []
        : [
            stepsSection(view, sheet),
            gapSection(view, sheet),
            stillsSection(view, run),
            drawingSection(view, sheet),
            settleSection(view, sheet),
            besideSection(view, sheet),
          ]),
      // Figures of a step stand in the tables of the steps.
      givesSection(view, run, ({ at }) => speedOf(at) !== null, [
        remarksNote(derivedOf(view, run.id)),
        rawFileNote(view, run),
      ]),
      standsInSection(view, run),
      sheet && clipsSection(view, sheet),
      conditionsSection(view, run),
    ],
  });
}

/** What a window without load can say. */
const windowNote: MarginNote = {
  name: 'What a window can say.',
  text: [
    'Where oil stands and moves here: without load, at this temperature, behind a window. Durability is not tested, and a loaded axle may differ.',
  ],
};

const reference = (view: View): StepName => ({
  outputSpeed_rad_s: view.series.reference.outputSpeed_rad_s,
  direction: 'up',
});

function stepsSection(view: View, sheet: FlowSheet): Section {
  const graded = isGraded(sheet);
  const unusable = graded ? kindsNotUsable(view, gradeKinds) : null;
  return section(
    'steps',
    'Step by step',
    [
      prose(
        `Speeds are of the ${view.speed.replace(/ rpm$/, '')}; the level is counted from the axle centreline, over the last part of each hold.`,
      ),
      levelTable(view, sheet),
      graded ? gradeTable(view, sheet) : null,
      firstGradesFold(view, sheet),
    ],
    [
      howSure(view, stepFigure(view, sheet.run.id, 'running-level', reference(view))),
      { name: 'Graded by.', text: gradersSpans(view, sheet) },
      graded ? { name: 'In a cell.', text: [gradeLegend] } : null,
      graded
        ? {
            name: 'What a grade means.',
            text: [
              'The printed scale stands with ',
              link(`${view.base}grades/#scale`, 'the grades of the series'),
              '.',
            ],
          }
        : null,
      unusable === null ? null : { name: 'Not to lean on.', text: [unusable] },
    ],
  );
}

function gapSection(view: View, sheet: FlowSheet): Section | null {
  const gap = gapTable(view, sheet);
  if (gap === null) return null;
  return section(
    'ways',
    'Way up and way down',
    [prose(...gapSentence(view, sheet)), gap],
    [
      {
        name: 'Never averaged.',
        text: [
          'Air let in at speed leaves slowly and oil hangs on walls, so that a step on the way down begins with what the step before it left.',
        ],
      },
    ],
  );
}

function drawingSection(view: View, sheet: FlowSheet): Section | null {
  const drawn = runDrawing(view, sheet);
  const pinion = pinionSentence(view, sheet);
  const pairs = pairLinks(view, sheet.run);
  if (drawn === null && pinion.length === 0 && pairs.length === 0) return null;
  return section(
    'section-drawing',
    'Where it stands',
    [
      drawn,
      pinion.length === 0 ? null : prose(...pinion),
      pairs.length === 0 ? null : prose('Side by side with ', ...listed(pairs), '.'),
    ],
    [
      {
        name: 'Running level.',
        text: ['Air in the oil raises it, oil in flight lowers it: it is no measure of either.'],
      },
    ],
  );
}

function standsInSection(view: View, run: Run): Section | null {
  const article = view.articles.get(run.article);
  if (article?.role !== 'window_copy' || article.differences.length === 0) return null;
  return section('stands-in', 'What this copy changes', [
    listOf(article.differences.map((difference) => [difference])),
    prose('It stands in for ', ...listed(article.standsInFor.map((id) => [articleSpan(view, id)])), '.'),
  ]);
}
