import type { ProposedColumn, ProposedMap } from '../logs/proposed-map.ts';
import type { ChannelKind } from '../trial/rig.ts';

/** The map of a new book as lines of YAML. What the file does not say stands as a remark that tells what to find out. */
export function mapLines(map: ProposedMap | null): readonly string[] {
  if (map === null) return likely;
  const { delimiter, decimal, header, unitsRow, clock, columns } = map;
  return [
    `delimiter: ${JSON.stringify(delimiter)}`,
    `decimal: ${JSON.stringify(decimal)}`,
    `header: ${header.toFixed(0)}`,
    ...(unitsRow === null ? [] : [`units-row: ${unitsRow.toFixed(0)}`]),
    clock?.unit == null
      ? `clock: { column: ${JSON.stringify(clock?.column ?? 't')}, unit: s } # ${clock === null ? 'no column looks like a time: write which it is' : 'the file does not say its unit: s, min or h:mm:ss'}`
      : `clock: { column: ${JSON.stringify(clock.column)}, unit: ${clock.unit} }`,
    'columns:',
    ...columns.map((column) => `  ${columnLine(column)}`),
    ...(columns.some(isWhole) ? [] : ['  {}']),
  ];
}

/** What a person has to say before the map is whole; one question each. */
export const mapAsks = ({ clock, columns }: ProposedMap): readonly string[] => [
  ...(clock === null
    ? ['Which column is the time?']
    : clock.unit === null
      ? [`${clock.column}: in which unit is the time?`]
      : []),
  ...columns.flatMap((column) => (isWhole(column) ? [] : [`${column.header}: ${askOf(column)}`])),
];

const isWhole = ({ is, unit }: ProposedColumn): boolean => is === 'event' || (is !== null && unit !== null);

function columnLine(column: ProposedColumn): string {
  const { header, is, unit } = column;
  if (is === 'event') return `${JSON.stringify(header)}: { is: event }`;
  const instrument = is === null ? '' : instrumentOf[is];
  const line = `${JSON.stringify(header)}: { is: ${is ?? '…'}, unit: ${unit ?? '…'}${instrument === '' ? '' : `, instrument: ${instrument}`} }`;
  return isWhole(column) ? line : `# ${line}   # ${askOf(column)} Take this mark away once it is said.`;
}

function askOf({ is, unit, range }: ProposedColumn): string {
  const reads = range === null ? 'no readings in its first lines' : `reads ${range.join(' to ')}`;
  if (is === null) return `what is it? It ${reads}${unit === null ? '' : ` ${unit}`}.`.replace('It no', 'No');
  return `in which unit? It ${reads}.`.replace('It no', 'No');
}

const instrumentOf: Readonly<Record<ChannelKind, string>> = {
  ...{ 'pinion-speed': 'speed-1', 'output-speed': 'speed-1', 'torque-in': 'torque-1' },
  ...{ 'torque-out-left': '', 'torque-out-right': '' },
  ...{ sump: 'probe-1', skin: 'probe-1', 'pinion-bearing': 'probe-1', ambient: 'probe-1' },
  ...{ airflow: 'vane-1', level: 'rule-1', event: '' },
};

const likely: readonly string[] = [
  'delimiter: ","             # ";" with decimal: "," where the file has decimal commas',
  'header: 1                  # the line of the names',
  'clock: { column: t_s, unit: s }',
  'columns:                   # dipmark start --log file.csv writes these from a file of yours',
  '  n_in: { is: pinion-speed, unit: rpm, instrument: speed-1 }',
  '  tq_in: { is: torque-in, unit: N·m, instrument: torque-1 }',
  '  T_sump: { is: sump, unit: °C, instrument: probe-1 }',
];
