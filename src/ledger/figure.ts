/** The form of one figure in `ledger.json`. Units are UCUM codes; values are in the canonical units of the quantity. */
export interface Figure {
  readonly id: string;
  readonly kind: 'value' | 'difference';
  readonly quantity: string;
  readonly subject: Subject;
  readonly at: Conditions;
  readonly value: number | null;
  readonly unit: string;
  readonly bound: null | 'above' | 'below';
  readonly interval: readonly [number | null, number | null];
  readonly coverage: number;
  readonly k: number | null;
  readonly dof: number | null;
  readonly class: FigureClass;
  readonly separated?: boolean;
  readonly inputs: readonly { readonly file: string; readonly sha256: string }[];
  readonly relation: string;
  readonly method: string;
  readonly notes: readonly string[];
}

export type FigureClass = 'measured' | 'derived from measurement' | 'model estimate';

export interface Subject {
  readonly run?: string;
  readonly article?: string;
  readonly oil?: string;
  readonly rig?: string;
  readonly series?: string;
  /** Litres at 20 °C, as "2.40 L". */
  readonly fill?: string;
  /** The cell it is compared with. */
  readonly against?: {
    readonly article: string;
    readonly oil: string;
    readonly fill: string;
    readonly campaign?: string;
  };
  /** The later campaign that it was run in; absent in the first. */
  readonly campaign?: string;
}

/** Written as people write them: "290 rpm", "60 Cel". */
export interface Conditions {
  readonly 'wheel-speed'?: string;
  readonly 'output-speed'?: string;
  readonly sump?: string;
  readonly limit?: string;
  readonly basis?: string;
  readonly tilt?: string;
  /** Of a step on the way down; the way up goes without saying. */
  readonly direction?: string;
  /** Of an agreement: the grade, and whose. */
  readonly grade?: string;
  readonly observers?: string;
  /** Of a thermal dose: "60 to 70 Cel". */
  readonly band?: string;
  /** Of a thermal dose: one charge of oil, "P0-3" for article and refit. */
  readonly charge?: string;
  /** Of a used sample of oil. */
  readonly sample?: string;
}
