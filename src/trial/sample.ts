import type { Dimension } from '../quantity/quantity.ts';
import type { QuantityName } from './figures.ts';

/** Where a sample was drawn. The first gush of a drain is none of them: it carries what lay at the bottom. */
export const samplePoints = ['drain-mid', 'syringe', 'unused'] as const;
export type SamplePoint = (typeof samplePoints)[number];

export interface PropertyOfOil {
  readonly name: string;
  /** Its change is a figure of this kind. */
  readonly change: QuantityName;
  /** Null where it is a number without a unit. */
  readonly dimension: Dimension | null;
  readonly like: string;
  /** How it is written on a page: unit of the table. */
  readonly unit: string;
  readonly method: string;
}

const property = (
  name: string,
  change: QuantityName,
  dimension: Dimension | null,
  like: string,
  unit: string,
  method: string,
): PropertyOfOil => ({ name, change, dimension, like, unit, method });

/**
 * What a laboratory finds in a sample. Methods are examples by the number of their standard: D3427 (air release) was seen,
 * the others are named from memory, so that none of them decides anything; what counts is the method that the note writes.
 */
export const oilProperties = {
  'viscosity-40': property(
    'kinematic viscosity at 40 °C',
    'viscosity-40-change',
    'kinematic-viscosity',
    '168.2 mm²/s',
    'mm²/s',
    'ASTM D445',
  ),
  'viscosity-100': property(
    'kinematic viscosity at 100 °C',
    'viscosity-100-change',
    'kinematic-viscosity',
    '15.52 mm²/s',
    'mm²/s',
    'ASTM D445',
  ),
  'viscosity-index': property('viscosity index', 'viscosity-index-change', null, '93', '1', 'ASTM D2270'),
  'acid-number': property('acid number', 'acid-number-change', 'acid-number', '1.42 mg KOH/g', 'mg KOH/g', 'ASTM D664'),
  water: property('water', 'water-change', 'mass-fraction', '60 mg/kg', 'mg/kg', 'ASTM D6304'),
  iron: property('iron', 'iron-change', 'mass-fraction', '14 mg/kg', 'mg/kg', 'ASTM D5185'),
  copper: property('copper', 'copper-change', 'mass-fraction', '2 mg/kg', 'mg/kg', 'ASTM D5185'),
  foam: property('foam', 'foam-change', 'volume', '30 mL', 'mL', 'ASTM D892'),
  'air-release': property('air release time', 'air-release-change', 'time', '9 min', 'min', 'ASTM D3427'),
} as const satisfies Readonly<Record<string, PropertyOfOil>>;

export type OilPropertyName = keyof typeof oilProperties;
export const oilPropertyNames = Object.keys(oilProperties) as readonly OilPropertyName[];

export interface SampleResult {
  readonly property: OilPropertyName;
  /** As typed: which standard, or what else was done. */
  readonly method: string;
  /** SI; a plain number where the property has no unit. */
  readonly value: number;
  /** One in the last digit typed, as `value`. */
  readonly step: number;
  /** Of the method, for two results: as `value`, or a share of it. */
  readonly repeatability: { readonly value: number; readonly relative: boolean };
  /** Where it stands in the note: `samples.1.results.0`. */
  readonly path: string;
}

/** One sample of an oil, drawn before its first run or after some. */
export interface OilSample {
  readonly id: string;
  readonly point: SamplePoint;
  readonly batch: string;
  readonly volume_m3: number | null;
  readonly temperature_K: number | null;
  readonly takenOn: string;
  /** The run that it was drawn after, or before; both null when nothing had run. */
  readonly afterRun: string | null;
  readonly beforeRun: string | null;
  readonly results: readonly SampleResult[];
  /** `samples.1` */
  readonly path: string;
}
