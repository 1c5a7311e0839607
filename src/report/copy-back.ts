import { amendsPage, hasAmends } from './amends.ts';
import { cautionsFor, cautions } from './cautions.ts';
import type { LeftOut } from './copy-view.ts';
import { withheldWords } from './copy-view.ts';
import { dateWords } from './dates.ts';
import type { Report } from '../trial/report.ts';
import type { Block, Span } from './page.ts';
import type { Chapter } from './paper.ts';
import { capital, code, counts, listOf, prose, row, section, strong, tableBlock } from './spans.ts';
import { besides, type View } from './view.ts';

/** The rows of what was run; whose word counts above them. */
export function cautionsChapter(view: View): Chapter {
  const stages = new Set(
    view.runs.flatMap((run) => cautionsFor(run, view.articles.get(run.article), view.rig).map(({ stage }) => stage)),
  );
  return {
    id: 'cautions',
    heading: 'Cautions',
    sections: [
      section('whose-word', null, [
        prose(
          'Results on a bench release nothing for the road, and these rows permit nothing. Above them stand the maker’s data, the lab’s own procedures, local law, licensed practice and the data sheet of the oil.',
        ),
      ]),
      section('cautions-rows', null, [
        tableBlock(
          'cautions-table',
          ['of', 'wide what to mind', 'wide hazard', 'wide whose word counts'],
          cautions
            .filter(({ stage }) => stages.has(stage))
            .map(({ name, hazard, caution, deferral }) => row(strong(name), caution, hazard, deferral)),
        ),
      ]),
    ],
  };
}

/** What must not be read out of this paper, what is withheld, and what no test of this kind can say. */
export function notTestedChapter(view: View, report: Report, left: LeftOut): Chapter {
  const named = [...report.notTested, ...view.series.notTested];
  return {
    id: 'not-tested',
    heading: 'What was not tested',
    sections: [
      section('never-said', null, [
        prose(
          'Not tested is no result, neither way. This paper approves nothing: it is no statement on durability, on safety, on fitness for a road or for a vehicle, and none on other units of the same kind than those that were on the rig.',
        ),
        named.length === 0 ? null : listOf([...new Set(named)].map((text) => [`${capital(text)}.`])),
      ]),
      left.runs.length === 0
        ? null
        : section('withheld', 'Withheld', [
            prose(
              strong(`${capital(counts(left.runs.length, 'run'))} withheld at the client’s request. `),
              left.figures === 0
                ? 'No figure of this paper would have told them.'
                : `${counts(left.figures, 'figure')} that would tell them ${left.figures === 1 ? 'is' : 'are'} left out: each ${withheldWords}. A scatter that is pooled over many runs has them in it, and tells none of them.`,
            ),
          ]),
    ].filter((one) => one !== null),
  };
}

/** Corrections that reached what this paper tells, and objections with their answers. */
export function amendmentsChapter(view: View, report: Report): Chapter {
  const reached = new Set(
    view.input.reaches
      .filter(({ runs, figures, claims }) => runs.length + figures.length + claims.length > 0)
      .map(({ correction }) => correction.id),
  );
  const sections = hasAmends(view)
    ? amendsPage(view)
        .sections.filter(({ id }) => reached.has(id))
        .map((one) => ({ ...one, blocks: one.blocks.map(unfolded) }))
    : [];
  return {
    id: 'amendments',
    heading: 'Amendments',
    sections: [
      section('issues', null, [
        prose(
          `This is issue ${String(report.version)}`,
          report.supersedes === null
            ? '; it takes the place of none.'
            : `. It takes the place of ${report.supersedes}, which is kept.`,
          ' An issue is never changed: a later one says what differs and why.',
        ),
        sections.length === 0 ? prose('No correction reached what this paper tells.') : null,
      ]),
      ...sections,
    ],
  };
}

/** What stands in a fold on the site is counted on paper. */
const unfolded = (block: Block): Block =>
  block.kind === 'fold'
    ? prose(
        `${capital(block.summary)} moved as well, too little to show in their digits or of another quantity; they stand in the ledger of the lab.`,
      )
    : block;

/** Sums of the notes and logger files of its runs, so that anybody who is shown a file can tell whether it is the one. */
export function filesChapter(view: View): Chapter {
  const sum = (path: string): Span => code(view.input.sums.get(path) ?? 'not in the folder');
  return {
    id: 'files',
    heading: 'Raw files',
    sections: [
      section('sums', null, [
        prose(
          'SHA-256 of each logger file as it left the logger. The files are kept as they are, under the numbers of their runs; what a correction reads otherwise is written beside them.',
        ),
        tableBlock(
          'sums-table',
          ['run', 'begun', 'wide SHA-256 of its logger file'],
          view.runs.flatMap((run) =>
            run.log === null ? [] : [row(run.id, dateWords(run.started), sum(besides(run.file, run.log.file)))],
          ),
        ),
      ]),
    ],
  };
}
