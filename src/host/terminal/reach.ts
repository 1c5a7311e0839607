import type { SeriesInput } from '../../report/input.ts';
import { effectNames } from '../../compare/texts-reach.ts';
import { reachRows } from '../../report/plan-reach.ts';
import { capital } from '../../report/spans.ts';
import type { PlanReach } from '../../trial/plan-reach.ts';
import type { Plan } from '../../trial/plan.ts';

interface Ahead {
  readonly id: string;
  readonly plan: Plan;
  readonly reach: PlanReach;
}

/** Series with a plan and no run yet: what their plan can and cannot separate is worth knowing now. */
export const notBegun = (series: readonly SeriesInput[]): Ahead[] =>
  series.flatMap(({ record, outlook: { reach } }) =>
    record.plan === null || reach === null || record.runs.length > 0
      ? []
      : [{ id: record.series.id, plan: record.plan, reach }],
  );

/** As lines for a terminal. */
export const reachText = (series: readonly SeriesInput[]): string =>
  notBegun(series)
    .map(({ plan, reach }) =>
      [
        `${plan.file}  no run yet: what this plan can and cannot separate`,
        ...reachRows(reach).flatMap(({ trial, rows }) => [
          '',
          `  ${trial}`,
          ...rows.flatMap(({ effect, can, cannot }) => [
            `    ${effect}`,
            ...(can === '' ? [] : wrapped('can     ', can)),
            ...cannot.flatMap((why) => wrapped('cannot  ', why)),
          ]),
        ]),
        '',
      ].join('\n'),
    )
    .join('\n');

/** As entries beside the findings, in their shape, so that one list holds all; `code` tells them apart. */
export const reachJson = (series: readonly SeriesInput[]): readonly Readonly<Record<string, unknown>>[] =>
  notBegun(series).flatMap(({ id, plan, reach }) =>
    reach.items.map(({ trial, kind, of, estimable, why, cells }) => {
      const at = plan.cells.indexOf(cells[0]!);
      const { line, column } = plan.places.get(`cells.${at}`) ?? { line: 1, column: 1 };
      return {
        code: 'plan-reach',
        level: 'notice',
        file: plan.file,
        ...{ line, column },
        says: `${effectNames[kind]}${of === '' ? '' : `, ${of}`}: ${estimable ? 'can be told apart' : 'cannot be told apart'}.`,
        why: `${capital(why)}.`,
        write: estimable
          ? 'Nothing needs writing.'
          : 'Add the cells or repeats that are missing, or do not ask it of this plan.',
        about: { series: id },
        ...{ trial, effect: kind, of, estimable },
        cells: cells.map((cell) => plan.cells.indexOf(cell)),
      };
    }),
  );

const width = 100;

function wrapped(head: string, text: string): string[] {
  const indent = ' '.repeat(6);
  const lines: string[] = [];
  let line = indent + head;
  for (const word of text.replaceAll('\u202f', ' ').split(' ')) {
    if (line.length + word.length + 1 > width && line.trim() !== '') {
      lines.push(line.trimEnd());
      line = indent + ' '.repeat(head.length);
    }
    line += `${word} `;
  }
  return [...lines, line.trimEnd()];
}
