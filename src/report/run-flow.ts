import type { Run } from '../trial/run.ts';
import { cited, runFigures } from './cite.ts';
import type { Figure } from '../ledger/figure.ts';
import type { Block, Page, Span, SpeedData } from './page.ts';
import { conditionsSection, rawFileNote } from './run-conditions.ts';
import { beforePower, givesSection, howSure, leadOf, remarksNote, runPage } from './run-parts.ts';
import { pointOf, speedOf, speedTable } from './run-spin.ts';
import { code, link, listOf, section } from './spans.ts';
import { derivedOf, type View } from './view.ts';

/** A flow trial behind a window: what the level does as the gears turn. It is unloaded and says nothing about wear. */
export function flowPage(view: View, run: Run): Page {
  const levels = [...runFigures(view, run.id, 'running-level')].sort(
    (a, b) => (speedOf(a.at) ?? 0) - (speedOf(b.at) ?? 0),
  );
  const article = view.articles.get(run.article);
  return runPage(view, run, {
    lead: leadOf(view, run, () => flowLead(view, levels)),
    sections: [
      section(
        'picture',
        null,
        [levelChart(view, run, levels)],
        [
          beforePower(view, run),
          {
            name: 'What a flow trial can say.',
            text: [
              'Where oil stands and moves in this window, without load, at this temperature. It is no word on wear or on a loaded axle.',
            ],
          },
        ],
      ),
      givesSection(view, run, () => false, [
        howSure(view, levels.at(-1)),
        remarksNote(derivedOf(view, run.id)),
        { name: 'Pinion supply.', text: ['Not graded here yet.'] },
        rawFileNote(view, run),
      ]),
      article?.role !== 'window_copy' || article.differences.length === 0
        ? null
        : section('stands-in', `What this copy changes`, [
            listOf(article.differences.map((difference) => [difference])),
            listOf([
              [
                'It stands in for ',
                ...article.standsInFor.flatMap((id, i): Span[] => [
                  ...(i === 0 ? [] : [', ']),
                  view.articles.has(id) ? link(`${view.base}articles/${id}/`, id) : id,
                ]),
                '.',
              ],
            ]),
          ]),
      conditionsSection(view, run),
      run.clips.length === 0 ? null : section('clips', 'Clips', [listOf(run.clips.map((clip) => [code(clip.file)]))]),
    ],
  });
}

function flowLead(view: View, levels: readonly Figure[]): Span[] {
  const first = levels[0];
  const last = levels.at(-1);
  if (first === undefined || last === undefined) return ['No running level could be formed from its steps.'];
  const at = (figure: Figure): string => {
    const speed = speedOf(figure.at);
    return speed === null ? '' : ` at ${String(speed)} ${view.speed}`;
  };
  if (first === last) return ['The oil stands at ', cited(view, first), at(first), ', from the axle centreline.'];
  const falls = (last.value ?? 0) < (first.value ?? 0);
  return [
    `The running level ${falls ? 'falls' : 'goes'} from `,
    cited(view, first),
    `${at(first)} to `,
    cited(view, last),
    `${at(last)}, from the axle centreline.`,
  ];
}

function levelChart(view: View, run: Run, levels: readonly Figure[]): Block | null {
  const points = levels.flatMap(pointOf);
  if (points.length === 0) return null;
  const lines: SpeedData['lines'] = [
    { label: `${run.article} running level`, mark: view.marks.get(run.article) ?? 0, points },
  ];
  return {
    kind: 'chart',
    chart: {
      id: 'running-level',
      title: `Running level of ${run.id} at each step`,
      alternative: `Height of the oil surface in millimetres from the axle centreline against ${view.speed}, with intervals. The table below holds the same numbers.`,
      caption: ['Mean of each step’s steady window; bars are 95 % intervals.'],
      data: { kind: 'speed', yTitle: 'running level, mm from the axle centreline', xTitle: view.speed, lines },
      table: speedTable('running-level-table', view.speed, lines, 'mm'),
    },
  };
}
