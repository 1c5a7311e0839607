import { gradeKinds } from '../trial/flow.ts';
import { scales, viewAnchors } from '../trial/grade-anchors.ts';
import { clipFiles, codedClip } from './clip-view.ts';
import { flowSheets } from './flow-steps.ts';
import type { GradingView, Page } from './page.ts';
import { code, link, listOf, prose, section, strong } from './spans.ts';
import type { View } from './view.ts';

/**
 * Coded clips, graded by key. Nothing on this page names an article, a fill, an oil, a run or a file: who grades knows the
 * code and the step, and no more.
 */
export function gradingPage(view: View): Page {
  const clips = codedClips(view);
  return {
    kind: 'grading',
    path: `${view.base}grading/`,
    title: 'Grade the clips',
    description: 'Coded clips to be graded blind, by key.',
    whereabouts: [link(view.base, view.series.title), ' · grading, for the house only'],
    lead: [
      'Two people grade the same clips, each alone, before either sees what the other gave. A clip goes by its code; what was run stays hidden.',
    ],
    banners: [],
    series: view.series.id,
    sections: [
      section(
        'grade',
        null,
        [{ kind: 'grading', grading: { clips, scales: scaleViews, views: Object.values(viewAnchors) } }],
        [
          { name: 'Ten seconds.', text: ['Look at the ten seconds after the hold begins. Grade what is there.'] },
          { name: 'Not gradable.', text: ['What cannot be seen is ng, never 0. With View 0 or 1 everything is ng.'] },
          {
            name: 'Words.',
            text: ['Write what was there: no cause, no verdict, and nothing that it looks like.'],
          },
        ],
      ),
      section('how', 'How two people grade', [
        listOf([
          [
            'Each opens this page alone and gives the initials that the notes use. Nothing is sent anywhere: it works from the disk.',
          ],
          [
            'Grade every step of every clip, in any order, and save the file of each clip when it is done: ',
            code('K7-A.vtt'),
            '.',
          ],
          [
            'Whoever keeps the list of codes, and not the graders, lays the files of both observers together under ',
            strong('Files of two observers as one'),
            ' above, puts the one file beside the note of the run that has this code, and names it there under the clip: ',
            code('captions: K7.vtt'),
            '.',
          ],
          [
            'Run ',
            code('dipmark check'),
            '. It holds every cue against the scale, the clip and the steps of the log, and names each line that will not do.',
          ],
          [
            'Where the two differ, the page of grades names run, step and time. Look again together and save that as a joint look; first grades stay as they are.',
          ],
        ]),
      ]),
      section('hide', 'What can be hidden', [
        prose(
          'Fill and oil can: the code says nothing of them. The shape of an article cannot, to whoever knows it. Write down what was hidden, as ',
          code('blind fill oil'),
          '.',
        ),
      ]),
    ],
  };
}

/** In the order of their codes, which says nothing of the order of the runs. */
const codedClips = (view: View): GradingView['clips'] =>
  flowSheets(view)
    .flatMap((sheet) => clipFiles(view, sheet.run, sheet.flow).flatMap((file) => codedClip(sheet, file) ?? []))
    .sort((a, b) => (a.code < b.code ? -1 : a.code > b.code ? 1 : 0));

const scaleViews: GradingView['scales'] = gradeKinds.map((key) => ({
  key,
  name: scales[key].name,
  of: scales[key].of,
  anchors: ([0, 1, 2, 3, 4] as const).map((grade) => scales[key].anchors[grade]),
}));
