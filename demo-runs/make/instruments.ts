import type { Stream } from './random.ts';

/** An instrument as rig.md states it. Limits without k are drawn evenly, a value with k from a normal of sd value/k. */
export interface Instrument {
  readonly id: string;
  readonly measures: string;
  readonly what: string;
  readonly range: readonly [number, number];
  readonly unit: string;
  readonly accuracy: {
    readonly value: number;
    readonly of: 'absolute' | 'reading' | 'range';
    readonly k: number | null;
  };
  /** How the accuracy is written. */
  readonly written: string;
  readonly repeat?: string;
  readonly calibrated: string;
  readonly due: string;
  readonly checked?: string;
  readonly certificate: string;
  readonly more?: readonly string[];
}

const limits = (value: number, of: 'absolute' | 'reading' | 'range' = 'absolute') => ({ value, of, k: null });
const twice = (value: number, of: 'absolute' | 'reading' | 'range' = 'absolute') => ({ value, of, k: 2 });
const probe = { measures: 'temperature', range: [-40, 200], unit: '°C', repeat: '0.05 K' } as const;

export const instruments: readonly Instrument[] = [
  {
    ...{ id: 'torque-low', measures: 'torque', what: 'input flange for spin trials', range: [0, 50], unit: 'N·m' },
    ...{ accuracy: twice(0.0005, 'range'), written: '± 0.05 % of range (k=2)', repeat: '0.015 N·m' },
    ...{ calibrated: '2026-01-12', due: '2028-01-12', checked: '2026-03-01', certificate: 'Q-2231' },
    more: ['zero-policy: before-after'],
  },
  {
    ...{ id: 'torque-high', measures: 'torque', what: 'input flange for loaded trials', range: [0, 500], unit: 'N·m' },
    ...{ accuracy: limits(0.3), written: '± 0.3 N·m', repeat: '0.25 N·m' },
    ...{ calibrated: '2026-01-13', due: '2028-01-13', checked: '2026-03-01', certificate: 'Q-2232' },
    more: ['zero-policy: before-after'],
  },
  {
    ...{ id: 'torque-out-l', measures: 'torque', what: 'left hub flange', range: [0, 1000], unit: 'N·m' },
    ...{ accuracy: limits(0.001, 'range'), written: '± 0.1 % of range', repeat: '0.25 N·m' },
    ...{ calibrated: '2026-01-14', due: '2028-01-14', certificate: 'Q-2235' },
    more: ['zero: 1.8 N·m', 'zero-policy: kept'],
  },
  {
    ...{ id: 'torque-out-r', measures: 'torque', what: 'right hub flange', range: [0, 1000], unit: 'N·m' },
    ...{ accuracy: limits(0.001, 'range'), written: '± 0.1 % of range', repeat: '0.25 N·m' },
    ...{ calibrated: '2026-01-14', due: '2028-01-14', certificate: 'Q-2236' },
    more: ['zero: -0.9 N·m', 'zero-policy: kept'],
  },
  {
    ...{ id: 'enc-in', measures: 'speed', what: 'pulse disc on the pinion shaft', range: [0, 6000], unit: 'rpm' },
    ...{ accuracy: limits(0.0001, 'reading'), written: '± 0.01 % of reading', repeat: '0.3 rpm' },
    ...{ calibrated: '2026-02-02', due: '2028-02-02', certificate: 'Q-2240' },
  },
  {
    ...{ id: 'enc-out', measures: 'speed', what: 'pulse disc on the left hub', range: [0, 1500], unit: 'rpm' },
    ...{ accuracy: limits(0.0001, 'reading'), written: '± 0.01 % of reading', repeat: '0.3 rpm' },
    ...{ calibrated: '2026-02-02', due: '2028-02-02', certificate: 'Q-2241' },
  },
  {
    ...probe,
    ...{ id: 'tc-sump', what: 'sump probe, type T class 1', accuracy: twice(0.3), written: '± 0.3 K (k=2)' },
    ...{ calibrated: '2026-02-09', due: '2028-02-09', checked: '2026-03-01', certificate: 'Q-2250' },
    more: [
      'position: "through the drain side, tip in the open sump, clear of the ring gear"',
      'tip: { other: -76 mm, P1: -112 mm, P1w: -112 mm }',
    ],
  },
  {
    ...probe,
    ...{ id: 'tc-skin', what: 'skin probe, type T class 1', accuracy: limits(0.5), written: '± 0.5 K' },
    ...{ calibrated: '2026-02-09', due: '2028-02-09', certificate: 'Q-2251' },
    more: ['position: "housing, 40 mm above the cover joint, left, under paste and a clamped pad"'],
  },
  {
    ...probe,
    ...{ id: 'tc-race', what: 'pinion bearing race probe', accuracy: limits(0.5), written: '± 0.5 K' },
    ...{ calibrated: '2026-02-09', due: '2028-02-09', certificate: 'Q-2252' },
    more: ['position: "outer race of the front pinion bearing, drilled from above"'],
  },
  {
    ...probe,
    ...{ id: 'tc-ambient', what: 'ambient probe, shielded', accuracy: limits(0.5), written: '± 0.5 K' },
    ...{ calibrated: '2026-02-09', due: '2028-02-09', certificate: 'Q-2253' },
    more: ['position: "1 m upstream of the axle, in a double tube"'],
  },
  {
    ...{ id: 'vane', measures: 'airflow', what: 'vane anemometer in the duct mouth', range: [0, 20], unit: 'm/s' },
    ...{ accuracy: limits(0.05), written: '± 0.05 m/s', repeat: '0.03 m/s' },
    ...{ calibrated: '2025-11-18', due: '2027-11-18', certificate: 'Q-2260' },
    more: ['position: "mean of 3 points, duct mouth, 0.3 m ahead of the housing"'],
  },
  {
    ...{
      id: 'level-eye',
      measures: 'level',
      what: 'float in a side glass, read by a camera',
      range: [-140, 0],
      unit: 'mm',
    },
    ...{ accuracy: limits(1), written: '± 1 mm' },
    ...{ calibrated: '2026-02-20', due: '2028-02-20', certificate: 'Q-2262' },
  },
  {
    ...{ id: 'level-rule', measures: 'level', what: 'dip wire and steel rule', range: [-140, 0], unit: 'mm' },
    ...{ accuracy: limits(1), written: '± 1 mm', repeat: '0.3 mm' },
    ...{ calibrated: '2026-02-20', due: '2028-02-20', certificate: 'Q-2263' },
  },
  {
    ...{ id: 'oil-scale', measures: 'mass', what: 'bench scale for oil in and out', range: [0, 6000], unit: 'g' },
    ...{ accuracy: limits(2), written: '± 2 g' },
    ...{ calibrated: '2026-01-20', due: '2028-01-20', certificate: 'Q-2270' },
  },
  {
    ...{ id: 'pour-probe', measures: 'temperature', what: 'stem probe in the jug', range: [-20, 120], unit: '°C' },
    ...{ accuracy: limits(0.5), written: '± 0.5 K' },
    ...{ calibrated: '2026-02-09', due: '2028-02-09', certificate: 'Q-2254' },
  },
];

/** Indicated less true of each instrument, in its unit; of a speed, the fraction. One draw an instrument and series. */
export type Calibration = Readonly<Record<string, number>>;

export const drawCalibration = (list: readonly Instrument[], from: Stream): Calibration =>
  Object.fromEntries(
    list.map(({ id, accuracy: { value, of, k }, range }) => {
      const size = of === 'range' ? value * (range[1] - range[0]) : value;
      return [id, k === null ? from.even(-size, size) : from.normal(size / k)];
    }),
  );

export const instrumentText = (list: readonly Instrument[]): string =>
  list
    .map((i) => {
      const lines = [
        `id: ${i.id}`,
        `measures: ${i.measures}`,
        `what: ${i.what}`,
        `range: [${i.range[0]} ${i.unit}, ${i.range[1]} ${i.unit}]`,
        `accuracy: "${i.written}"`,
        ...(i.repeat ? [`repeat: ${i.repeat}`] : []),
        `calibrated: ${i.calibrated}`,
        `next-due: ${i.due}`,
        ...(i.checked ? [`checked: ${i.checked}`] : []),
        `certificate: ${i.certificate}`,
        ...(i.more ?? []),
      ];
      return `  - ${lines.join('\n    ')}`;
    })
    .join('\n');
