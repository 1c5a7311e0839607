import {
  assumed,
  code,
  day,
  dayLike,
  group,
  headFields,
  later,
  list,
  named,
  number,
  optional,
  quantity,
  recommended,
  required,
  shaped,
  text,
  whole,
  words,
  yesNo,
} from './fields.ts';
import { channelKinds, shaftKinds } from '../trial/rig.ts';

const height = (like: string) => quantity('length', like, { hard: ['-2 m', '2 m'], soft: ['-500 mm', '500 mm'] });
const size = (like: string, low: string, high: string) =>
  quantity('length', like, { hard: ['1 mm', '5 m'], soft: [low, high] });

const efficiency = quantity('ratio', '95.1 %', { hard: ['1 %', '100 %'], soft: ['50 %', '99.9 %'] });

const breakIn = group({
  'settled-within': required(
    quantity('ratio', '0.2 %', { hard: ['0.001 %', '20 %'], soft: ['0.02 %', '1 %'] }),
    'By how much the efficiency at the end of a load may still lie off that in its middle.',
  ),
  loads: required(
    list(
      group({
        power: required(
          quantity('power', '22 kW', { hard: ['1 W', '5000 kW'] }),
          'Power taken off at the output while it bedded in.',
        ),
        start: required(efficiency, 'Efficiency as this load began.'),
        middle: required(efficiency, 'Efficiency in its middle.'),
        end: required(efficiency, 'Efficiency as it ended.'),
      }),
      1,
    ),
    'One entry a load: what still rose at the end had not settled.',
  ),
});

const state = group({
  id: required(code('Q1-a'), 'Every run names the state of the rig it was run in.'),
  from: required(day, 'The day from which the rig stood like this.'),
  'gearset-hours': optional(
    quantity('time', '140 h', { hard: ['0 h', '100000 h'] }),
    'A gear set beds in with its hours.',
  ),
  'preload-touched': required(yesNo, 'Bearing preload changes the loss more than most bowls do.'),
  'break-in': optional(breakIn, 'Loss falls while a gear set beds in, and a later article would profit from it.'),
  note: required(text('as built'), 'What was done to the rig.'),
});

export const instrumentKind = group({
  id: required(code('torque-low'), 'Column maps and zeros name the instrument by it.'),
  measures: required(
    words('torque', 'speed', 'temperature', 'airflow', 'level', 'mass', 'time', 'pressure', 'voltage'),
    'It decides the units of its range and accuracy.',
  ),
  what: required(text('input flange for spin trials'), 'Readers want to know what hangs on it.'),
  range: optional(
    later('[0 N·m, 50 N·m]', 'two quantities of what it measures'),
    'An accuracy in per cent of range needs the range.',
  ),
  accuracy: required(
    later('"± 0.05 % of range"', 'a ± with its unit, or % of range or of reading; (k=2) when it is stated'),
    'No figure is wider known than its instrument.',
  ),
  repeat: optional(
    later('0.015 N·m', 'a standard deviation in the unit of what it measures'),
    'How far it scatters by itself.',
  ),
  calibrated: recommended(day, 'Figures lean on the day it was last compared with a standard.'),
  'next-due': recommended(dayLike('2027-03-17'), 'Figures from an overdue instrument are flagged.'),
  checked: optional(day, 'A check on the rig between calibrations.'),
  certificate: optional(text('Q-2231'), 'Where the calibration can be looked up.'),
  position: optional(text('in the drain boss'), 'A probe reads the place it is in.'),
  tip: optional(
    named('article', height('-76 mm')),
    'Whether a probe stands in the oil depends on its height and the article.',
  ),
  zero: optional(
    later('1.8 N·m', 'a reading in the unit of what it measures'),
    'A constant zero that is taken off every reading.',
  ),
  'zero-policy': optional(words('before-after', 'kept', 'none'), 'Whether zeros are written with each run.'),
  'share-group': optional(
    code('bridge-1'),
    'Instruments of one group share one calibration error, which cancels in differences.',
  ),
});

const columnKind = group({
  is: required(words(...channelKinds), 'What the column holds.'),
  unit: optional(text('rpm'), 'A number without a unit has several readings.'),
  instrument: optional(code('enc-1'), 'Accuracy comes from the instrument.'),
  sign: assumed(words('1', '-1'), '1', 'Turns a reading whose sign is the other way round.'),
  plausible: optional(
    later('[-40 °C, 200 °C]', 'two quantities of the channel'),
    'Readings outside are taken for faults.',
  ),
  'max-step': optional(later('2 K/s', 'a change a second'), 'Nothing on the rig changes faster.'),
  stuck: optional(
    quantity('time', '120 s', { hard: ['1 s', '100 h'] }),
    'A reading that stands still this long is taken for a fault.',
  ),
});

const mapKind = group({
  delimiter: required(
    shaped('","', '^([,;\\t]|\\\\t|comma|semicolon|tab)$', '"," ";" or "\\t", or the words comma, semicolon, tab'),
    'What parts the columns of the file.',
  ),
  decimal: assumed(shaped('"."', '^[.,]$', '"." or ","'), '.', 'The decimal sign in the file.'),
  thousands: optional(
    shaped('none', "^(none|[ .,'’]|space|comma|dot)$", 'none, or the sign between thousands'),
    'The sign between thousands in the file.',
  ),
  header: required(whole('1', [1, 10000]), 'The line of the file that holds the names of the columns.'),
  'units-row': optional(whole('2', [1, 10000]), 'The line of the file that holds units, if there is one.'),
  encoding: optional(
    words('utf-8', 'utf-16le', 'utf-16be', 'windows-1252', 'iso-8859-1', 'iso-8859-15'),
    'How the file spells ° and ·, when it is not UTF-8.',
  ),
  missing: optional(list(text('"-999"')), 'Words and numbers that mean: no reading.'),
  clock: required(
    group({
      column: required(text('t_s'), 'The column that holds the time.'),
      unit: required(words('s', 'min', 'h:mm:ss'), 'The unit of that time.'),
    }),
    'Every reading has its time.',
  ),
  columns: required(named('column', columnKind), 'What each named column of the file holds.'),
});

const shaft = required(words(...shaftKinds), 'The shaft it sits on, and so the speed it turns at.');

const bearing = group({
  at: shaft,
  bore: required(size('45 mm', '10 mm', '200 mm'), 'Its drag is estimated from the mean of bore and outside.'),
  outside: required(size('90 mm', '20 mm', '400 mm'), 'Its drag is estimated from the mean of bore and outside.'),
  'turning-torque': optional(
    quantity('torque', '0.9 N·m', { hard: ['0 N·m', '1000 N·m'], soft: ['0.05 N·m', '20 N·m'] }),
    'What its preload alone asks to turn it, as set on assembly; without it an estimate leaves preload out.',
  ),
});

const seal = group({
  at: shaft,
  shaft: required(size('50 mm', '10 mm', '200 mm'), 'Diameter it runs on.'),
});

/** `<series>/rig.md` */
export const rigKind = group({
  id: required(code('Q-1'), 'It names the rig.'),
  name: required(text('Quillstone rear-axle bench'), 'Readers see it beside the id.'),
  kind: required(
    words('axle_bench', 'vehicle_on_rollers', 'vehicle_on_stands', 'road', 'gearbox_bench'),
    'A bench and a road differ in what is held.',
  ),
  'gear-kind': required(words('hypoid', 'spiral_bevel', 'helical', 'spur', 'worm'), 'Mesh loss depends on it.'),
  teeth: required(
    group({
      pinion: required(whole('9', [1, 1000], [4, 100]), 'The ratio is counted, not measured.'),
      ring: required(whole('41', [1, 2000], [10, 300]), 'The ratio is counted, not measured.'),
      'hub-reduction': assumed(
        number('1', [0.01, 100]),
        '1',
        'A reduction in the hub turns the wheel slower than the ring gear.',
      ),
    }),
    'Speeds of pinion, ring gear and wheel follow from the teeth.',
  ),
  ring: required(
    group({
      diameter: required(size('248 mm', '120 mm', '500 mm'), 'How deep the ring gear dips is counted from its rim.'),
      face: optional(size('38 mm', '10 mm', '120 mm'), 'Width of its face.'),
      'tooth-height': optional(
        size('11.6 mm', '3 mm', '40 mm'),
        'Whole depth of its teeth; the oil in the tooth gaps is estimated from it.',
      ),
    }),
    'The ring gear is what moves the oil.',
  ),
  bearings: optional(
    list(bearing, 1),
    'Tapered roller bearings inside the loss figure, one entry each; models of spin loss have their share only then.',
  ),
  seals: optional(
    list(seal, 1),
    'Lip seals inside the loss figure, one entry each; models of spin loss have their share only then.',
  ),
  offset: required(
    quantity('length', '-32 mm', { hard: ['-1 m', '1 m'], soft: ['-60 mm', '60 mm'] }),
    'Negative when the pinion is below the axle centreline.',
  ),
  'rejecting-area': optional(
    quantity('area', '0.90 m²', { hard: ['0.001 m²', '100 m²'] }),
    'Outside surface of the whole axle that gives off heat, the baseline article included.',
  ),
  'rolling-radius': optional(
    quantity('length', '0.338 m', { hard: ['0.05 m', '3 m'], soft: ['0.2 m', '1 m'], none: 'n.a.' }),
    'Needed for km/h; n.a. where there is no wheel.',
  ),
  'pinion-front': optional(
    group({
      ahead: required(size('190 mm', '50 mm', '600 mm'), 'How far its front bearing is ahead of the axle centre.'),
      below: required(
        quantity('length', '32 mm', { hard: ['-1 m', '1 m'] }),
        'How far it is below the axle centreline.',
      ),
      'race-radius': required(size('45 mm', '15 mm', '200 mm'), 'Radius of its outer race.'),
    }),
    'Tilted nose up, the front bearing is the first to run short of oil.',
  ),
  heights: recommended(
    group({
      'tube-lip': optional(height('-38 mm'), 'Oil above it runs out along the axle tubes.'),
      'filler-lip': optional(height('-52 mm'), '"To the plug" means this height.'),
      floor: optional(height('-132 mm'), 'The lowest point inside.'),
    }),
    'Heights from the axle centreline, negative below.',
  ),
  differential: required(
    words('open_two_outputs', 'locked', 'spool', 'open_one_output'),
    'With one output held, the differential itself turns and churns.',
  ),
  boundary: required(
    list(text('input flange'), 1),
    'The loss figure is the loss of what sits between the torque points.',
  ),
  drive: required(text('input motor'), 'What drives the input.'),
  absorbers: required(text('two hub-coupled absorbers'), 'What holds the output.'),
  'airflow-device': optional(text('fan and duct'), 'What moves the air over the housing.'),
  window: optional(
    group({
      'used-on': required(list(code('P0w'), 1), 'The articles with a window.'),
      material: required(text('polycarbonate'), 'What the window is made of.'),
      'max-sump': required(
        quantity('temperature', '60 °C', { hard: ['0 °C', '200 °C'] }),
        'A window run past its cap is flagged.',
      ),
    }),
    'A window has a temperature cap of its own.',
  ),
  states: required(list(state, 1), 'Runs of two states of the rig are not compared unseen.'),
  instruments: required(list(instrumentKind, 1), 'Uncertainty begins with the instruments.'),
  maps: required(named('map', mapKind), 'How each kind of logger file is read.'),
  ...headFields,
});
