import { still, stream, type Stream } from './random.ts';

/** What the invented laboratory finds: true values, and the repeatability it gives with each, in the unit or as a share of it. */
interface Asked {
  readonly property: string;
  readonly method: string;
  readonly unit: string;
  readonly places: number;
  readonly unused: number;
  readonly used: number;
  readonly repeatability: number;
  readonly share?: true;
  /** Of the used sample, where it was done in another way. */
  readonly usedMethod?: string;
}

interface Pair {
  readonly oil: string;
  readonly batch: string;
  readonly afterRun: string;
  readonly drawn: readonly [string, string];
  readonly used: string;
  readonly asked: readonly Asked[];
}

const asked = (
  property: string,
  method: string,
  [unused, used, unit]: readonly [number, number, string],
  rest: Pick<Asked, 'places' | 'repeatability' | 'share' | 'usedMethod'>,
): Asked => ({ property, method, unit, unused, used, ...rest });

/** New gears give iron; four hours do little else to a straight oil, and shear the thickener of the other one. */
const pairs: readonly Pair[] = [
  {
    ...{ oil: 'O1', batch: 'B-0311', afterRun: 'C-01', drawn: ['2026-03-02', '2026-03-05'] },
    used: 'point: drain-mid, volume: 120 mL, temperature: 48 °C',
    asked: [
      asked('viscosity-40', 'ASTM D445', [170, 169.8, 'mm²/s'], { places: 1, repeatability: 0.4, share: true }),
      asked('viscosity-100', 'ASTM D445', [15.6, 15.59, 'mm²/s'], { places: 2, repeatability: 0.4, share: true }),
      asked('acid-number', 'ASTM D664', [1.86, 1.9, 'mg KOH/g'], { places: 2, repeatability: 7, share: true }),
      asked('water', 'ASTM D6304', [64, 58, 'mg/kg'], { places: 0, repeatability: 14 }),
      asked('iron', 'ASTM D5185', [2, 23, 'mg/kg'], { places: 0, repeatability: 3 }),
      asked('copper', 'ASTM D5185', [1, 2, 'mg/kg'], { places: 0, repeatability: 2 }),
      asked('air-release', 'ASTM D3427', [9.5, 9.8, 'min'], { places: 1, repeatability: 1.2 }),
    ],
  },
  {
    ...{ oil: 'O2', batch: 'B-0318', afterRun: 'H-08', drawn: ['2026-03-05', '2026-03-27'] },
    used: 'point: syringe, volume: 60 mL, temperature: 70 °C',
    asked: [
      asked('viscosity-40', 'ASTM D445', [58, 57.2, 'mm²/s'], { places: 2, repeatability: 0.4, share: true }),
      asked('viscosity-100', 'ASTM D445', [9.8, 9.66, 'mm²/s'], { places: 3, repeatability: 0.4, share: true }),
      asked('acid-number', 'ASTM D664', [2.41, 2.3, 'mg KOH/g'], {
        ...{ places: 2, repeatability: 7, share: true, usedMethod: 'ASTM D974' },
      }),
      asked('iron', 'ASTM D5185', [1, 9, 'mg/kg'], { places: 0, repeatability: 2 }),
      asked('copper', 'ASTM D5185', [1, 1, 'mg/kg'], { places: 0, repeatability: 2 }),
    ],
  },
];

/** How far two results lie apart in 95 % of cases, over the standard deviation of one. */
const limitOverSd = 1.96 * Math.SQRT2;

const spreadOf = ({ repeatability, share, unused, used }: Asked): number =>
  share ? ((repeatability / 100) * (unused + used)) / 2 : repeatability;

export interface Wanted {
  readonly seed: number;
  readonly quiet: boolean;
}

/** The field `samples` of one oil; empty where nobody sent one in. */
export const sampleLines = (oil: string, wanted: Wanted): string =>
  pairs
    .filter((pair) => pair.oil === oil)
    .map((pair) => ['samples:', ...pairLines(pair, wanted)].join('\n'))
    .join('\n');

function pairLines(pair: Pair, { seed, quiet }: Wanted): string[] {
  const noise = quiet ? still : stream(seed, 7, pairs.indexOf(pair));
  const { oil, batch, drawn, afterRun } = pair;
  return [
    `  - id: ${oil}-new`,
    `    ${['point: unused', `batch: ${batch}`, 'volume: 120 mL', `taken-on: ${drawn[0]}`].join('\n    ')}`,
    '    results:',
    ...pair.asked.map((one) => resultLine(one, one.unused, one.method, noise)),
    `  - id: ${oil}-${afterRun}`,
    `    ${[...pair.used.split(', '), `batch: ${batch}`, `after-run: ${afterRun}`, `taken-on: ${drawn[1]}`].join('\n    ')}`,
    '    results:',
    ...pair.asked.map((one) => resultLine(one, one.used, one.usedMethod ?? one.method, noise)),
  ];
}

function resultLine(one: Asked, value: number, method: string, noise: Stream): string {
  const { property, unit, places, repeatability, share } = one;
  const read = Math.max(0, value + noise.normal(spreadOf(one) / limitOverSd));
  const within = share ? `${repeatability} %` : `${repeatability} ${unit}`;
  return `      - { property: ${property}, method: ${method}, value: ${read.toFixed(places)} ${unit}, repeatability: ${within} }`;
}

/** What the oil really did, and whether that is more than two results may lie apart. */
export const sampleTruth = () =>
  pairs.flatMap(({ oil, afterRun, asked: list }) =>
    list.map((one) => ({
      ...{ oil, sample: `${oil}-${afterRun}`, property: one.property },
      ...{ change: Number((one.used - one.unused).toFixed(4)), repeatability: Number(spreadOf(one).toFixed(5)) },
      ...{ unit: one.unit, sameMethod: one.usedMethod === undefined },
    })),
  );
