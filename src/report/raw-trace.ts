import type { Figure } from '../ledger/figure.ts';
import { workingPath } from '../ledger/ids.ts';
import { fromSI, unitNamed } from '../quantity/units.ts';
import type { Source } from '../trial/derived.ts';
import { channelDimension, type ReadingKind } from '../trial/rig.ts';
import { conditionWords, quantityWords } from './cite.ts';
import { numberText } from './digits.ts';
import type { Section } from './page.ts';
import { capital, code, counts, link, prose, row, section, table } from './spans.ts';
import { minutes, traceNamed } from './traces.ts';
import { derivedOf, groupBy, type View } from './view.ts';

type LogSource = Extract<Source, { kind: 'log' }>;

interface Stretch {
  readonly figure: Figure;
  readonly from: LogSource;
}

/** Beyond so many the names of the stretches would run into each other. */
const mostNamed = 6;

/**
 * Where the figures of a page come from in the raw log: the channel over the whole run, with the stretches marked that they were
 * read from. Null for what is no figure of one run, and where the log is held back or has no such channel.
 */
export function rawSection(view: View, figures: readonly Figure[]): Section | null {
  const run = figures[0]?.subject.run;
  const derived = run === undefined ? undefined : derivedOf(view, run);
  if (run === undefined || derived === undefined) return null;
  const stretches = figures.flatMap((figure) =>
    stretchesOf(view, figure, 2).map((from): Stretch => ({ figure, from })),
  );
  const byChannel = [...groupBy(stretches, ({ from }) => from.channel)];
  const [channel, own] = byChannel.find(([name]) => traceNamed(derived, name) !== undefined) ?? [];
  const trace = channel === undefined ? undefined : traceNamed(derived, channel);
  const [first] = own ?? [];
  if (trace === undefined || own === undefined || first === undefined || trace.time_s.length < 2) return null;
  const once = own.filter((a, i) => own.findIndex((b) => b.from.fromLine === a.from.fromLine && b.from.toLine === a.from.toLine) === i); // prettier-ignore
  const { name, unit } = axisOf(trace.channel);
  const axis = unitNamed(unit)!;
  const points = trace.time_s.flatMap((t_s, i) => {
    const value = trace.value[i];
    return value === undefined || !Number.isFinite(value) ? [] : [[minutes(t_s), fromSI(axis, value)] as const];
  });
  const marks = once.map(({ figure, from }) => ({
    from: minutes(from.from_s),
    to: minutes(from.to_s),
    label: once.length > mostNamed ? '' : conditionWords(figure.at),
  }));
  return section(
    'raw',
    'In the raw log',
    [
      prose(
        `${capital(name)} of ${run} over the whole run, from `,
        code(first.from.file),
        `; marked ${once.length === 1 ? 'is the stretch' : `are the ${counts(once.length, 'stretch', 'stretches')}`} that ${figures.length === 1 ? 'this figure was' : 'these figures were'} read from. The steps from there stand below.`,
      ),
      {
        kind: 'chart',
        chart: {
          id: 'raw-trace',
          title: `${capital(name)} of ${run} by time, with what was read marked`,
          alternative: `${capital(name)} in ${unit} against time in minutes, ${counts(once.length, 'stretch', 'stretches')} marked. The table below has their lines in the file and their times.`,
          data: { kind: 'marked', yTitle: `${name}, ${unit}`, points, marks },
          caption: ['Thinned for the picture; the figures are read from every line between the marks.'],
          table: table(
            'raw-stretches',
            ['wide figure', 'number from line', 'number to line', 'number from min', 'number to min'],
            own.map(({ figure, from }) =>
              row(
                link(
                  `#${workingPath(figure, view.series.id).anchor}`,
                  conditionWords(figure.at) || quantityWords(figure.quantity),
                ),
                lineText(from.fromLine),
                lineText(from.toLine),
                numberText(minutes(from.from_s), 2),
                numberText(minutes(from.to_s), 2),
              ),
            ),
          ),
        },
      },
    ],
    [],
  );
}

/** A line number is a name, not an amount: nothing parts its thousands. */
const lineText = (line: number): string => String(line);

/** What was read for a figure itself, or for the figures of the same run that it is made of. */
function stretchesOf(view: View, figure: Figure, depth: number): LogSource[] {
  const given = view.input.ledger.workings.get(figure.id)?.given ?? [];
  return given.flatMap(({ from }): LogSource[] => {
    if (from.kind === 'log') return view.hidden.has(from.file) ? [] : [from];
    if (from.kind !== 'figure' || depth <= 1) return [];
    const inner = view.figureById.get(from.id);
    return inner?.subject.run === figure.subject.run && inner !== undefined ? stretchesOf(view, inner, depth - 1) : [];
  });
}

const units: Readonly<Record<string, string>> = {
  temperature: '°C',
  torque: 'N·m',
  rotation: 'rpm',
  length: 'mm',
  speed: 'm/s',
};

const axisOf = (channel: string): { readonly name: string; readonly unit: string } => ({
  name: channel.replaceAll('-', ' '),
  unit: units[channelDimension[channel as ReadingKind]] ?? '1',
});
