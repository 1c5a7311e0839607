/** Column maps of the bench's logger, one a kind of trial: what a trial does not read, its map does not name. */
const always = {
  n_in: '{ is: pinion-speed, unit: rpm, instrument: enc-in }',
  n_out_l: '{ is: output-speed, unit: rpm, instrument: enc-out }',
  T_sump: '{ is: sump, unit: °C, instrument: tc-sump, plausible: [-40 °C, 200 °C], max-step: 2 K/s, stuck: 120 s }',
  T_skin: '{ is: skin, unit: °C, instrument: tc-skin, plausible: [-40 °C, 200 °C] }',
  T_pb: '{ is: pinion-bearing, unit: °C, instrument: tc-race, plausible: [-40 °C, 200 °C] }',
  T_amb: '{ is: ambient, unit: °C, instrument: tc-ambient }',
  u_air: '{ is: airflow, unit: m/s, instrument: vane, stuck: 600 s }',
  evt: '{ is: event }',
};
const outputs = {
  tq_out_l: '{ is: torque-out-left, unit: N·m, instrument: torque-out-l }',
  tq_out_r: '{ is: torque-out-right, unit: N·m, instrument: torque-out-r }',
};

const maps: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'bench-low': { ...always, tq_in: '{ is: torque-in, unit: N·m, instrument: torque-low }', ...outputs },
  'bench-high': { ...always, tq_in: '{ is: torque-in, unit: N·m, instrument: torque-high }', ...outputs },
  'bench-rest': always,
  'bench-flow': { ...always, lvl: '{ is: level, unit: mm, instrument: level-eye }' },
};

export const mapTexts = (only: readonly string[] = Object.keys(maps)): string =>
  only
    .map((id) => {
      const columns = Object.entries(maps[id]!).map(([header, is]) => `      ${header}: ${is}`);
      return [
        `  ${id}:`,
        '    delimiter: ","',
        '    decimal: "."',
        '    header: 1',
        '    missing: [""]',
        '    clock: { column: t_s, unit: s }',
        '    columns:',
        ...columns,
      ].join('\n');
    })
    .join('\n');
