import { claimsOf } from '../report/claims-view.ts';
import { besides, derivedOf, type View } from '../report/view.ts';
import type { Figure } from '../ledger/figure.ts';
import type { Cell } from './csv.ts';

/** A field of a table as the data package describes it; `unit` is a UCUM code. */
export interface Field {
  readonly name: string;
  readonly type: 'string' | 'number' | 'integer' | 'boolean' | 'date' | 'datetime';
  readonly description: string;
  readonly unit?: string;
}

/** One table of the data package of a series. */
export interface DataTable {
  readonly name: string;
  readonly title: string;
  readonly key: string;
  readonly fields: readonly Field[];
  readonly rows: readonly (readonly Cell[])[];
}

type Column<T> = Field & { readonly of: (row: T) => Cell };

/** What these readers may see, as tables: figures, runs, articles, oils and claims. */
export const dataTables = (view: View): readonly DataTable[] =>
  [
    made('figures', 'Every figure with its interval', 'id', figureColumns, view.figures),
    made('runs', 'Runs and the conditions they were made under', 'id', runColumns(view), view.runs),
    made('articles', 'What was compared', 'id', articleColumns, [...view.articles.values()]),
    made('oils', 'Oils as they came out of the drum', 'id', oilColumns, [...view.oils.values()]),
    made('claims', 'Claims with their day and their word', 'id', claimColumns, claimsOf(view)),
  ].filter(({ rows }) => rows.length > 0);

const made = <T>(
  name: string,
  title: string,
  key: string,
  columns: readonly Column<T>[],
  list: readonly T[],
): DataTable => ({
  ...{ name, title, key },
  fields: columns.map(({ name: field, type, description, unit }) => ({
    ...{ name: field, type, description },
    ...(unit === undefined ? {} : { unit }),
  })),
  rows: list.map((one) => columns.map(({ of }) => of(one))),
});

const text = <T>(name: string, description: string, of: (row: T) => Cell): Column<T> => ({
  ...{ name, type: 'string', description, of },
});
const number = <T>(name: string, description: string, of: (row: T) => Cell, unit?: string): Column<T> => ({
  ...{ name, type: 'number', description, of },
  ...(unit === undefined ? {} : { unit }),
});

const figureColumns: readonly Column<Figure>[] = [
  text('id', 'Permanent name of the figure: subject/quantity@conditions', (f) => f.id),
  text('quantity', 'What it is', (f) => f.quantity),
  text('kind', 'value, or difference of two cells', (f) => f.kind),
  text('run', 'Of one run', (f) => f.subject.run ?? null),
  text('article', 'Of one article', (f) => f.subject.article ?? null),
  text('fill', 'Litres at 20 °C, as it is spoken of', (f) => f.subject.fill ?? null),
  text('oil', 'On this oil', (f) => f.subject.oil ?? null),
  text('against', 'The cell that a difference is held against', (f) => {
    const { against } = f.subject;
    return against === undefined ? null : [against.article, against.fill, against.oil].join(' ');
  }),
  text('at', 'Conditions', (f) =>
    Object.entries(f.at)
      .map(([name, value]) => `${name}: ${String(value)}`)
      .join('; '),
  ),
  number('value', 'Value in the unit beside it; empty where only a bound or a band is told', (f) => f.value),
  number('low', 'Lower end of its interval', (f) => f.interval[0]),
  number('high', 'Upper end of its interval', (f) => f.interval[1]),
  text('unit', 'UCUM code', (f) => f.unit),
  text('bound', 'above or below, where it was not reached', (f) => f.bound),
  number('coverage', 'What the interval is meant to hold', (f) => f.coverage, '1'),
  number('k', 'Coverage factor', (f) => f.k, '1'),
  number('dof', 'Degrees of freedom; empty where there is no end to them', (f) => f.dof, '1'),
  text('class', 'measured, derived from measurement, or model estimate', (f) => f.class),
  text('separated', 'Of a difference: yes or no', (f) =>
    f.separated === undefined ? null : f.separated ? 'yes' : 'no',
  ),
  text('relation', 'The relation it rests on, on the method pages', (f) => f.relation),
  text('method', 'How it was come by', (f) => f.method),
  text('notes', 'What is to be said of it', (f) => f.notes.join('; ')),
];

const runColumns = (view: View): readonly Column<View['runs'][number]>[] => [
  text('id', 'Name of the run', (r) => r.id),
  text('trial', 'flow, spin, heat-up or cool-down', (r) => r.trial),
  text('status', 'As its note says', (r) => r.status),
  text('article', 'What was fitted', (r) => r.article),
  text('oil', 'On this oil', (r) => r.oil),
  text('rig_state', 'State of the rig', (r) => r.rigState),
  number('order', 'Place in the order of the series', (r) => r.order),
  { name: 'started', type: 'datetime', description: 'With its offset from UTC', of: (r) => r.started },
  number('fill', 'Litres at 20 °C', (r) => litres(derivedOf(view, r.id)?.cell.fill_m3), 'L'),
  number('tilt', 'Nose up positive, as a slope', (r) => derivedOf(view, r.id)?.cell.tilt_ratio ?? null, '1'),
  number('airflow', 'At the axle', (r) => r.airflow_m_s, 'm/s'),
  text('left_out', 'Why it gives no figures', (r) => derivedOf(view, r.id)?.leftOut ?? null),
  text('log', 'Its logger file, in the book', (r) => (r.log === null ? null : besides(r.file, r.log.file))),
  text('log_sha256', 'Sum of that file', (r) =>
    r.log === null ? null : (view.input.sums.get(besides(r.file, r.log.file)) ?? null),
  ),
];

const litres = (volume_m3: number | undefined): number | null => (volume_m3 === undefined ? null : volume_m3 * 1e3);

type Article = NonNullable<ReturnType<View['articles']['get']>>;
const articleColumns: readonly Column<Article>[] = [
  text('id', 'Name of the article', (a) => a.id),
  text('name', 'In words', (a) => a.name),
  text('kind', 'cover, bowl, insert, housing, window_copy or assembly', (a) => a.kind),
  text('role', 'baseline, candidate, window_copy or modified', (a) => a.role),
  text('material', 'Material', (a) => a.material),
  number('mass', 'Mass', (a) => a.mass_kg, 'kg'),
  text('obtained', 'How it came here', (a) => a.obtained),
  number('samples', 'How many of it', (a) => a.samples, '1'),
  text('stands_in_for', 'Of a copy: what it stands in for', (a) => a.standsInFor.join('; ')),
];

type Oil = NonNullable<ReturnType<View['oils']['get']>>;
const oilColumns: readonly Column<Oil>[] = [
  text('id', 'Name of the oil', (o) => o.id),
  text('name', 'In words', (o) => o.name),
  text('grade', 'Designation on the drum', (o) => o.grade),
  text('base', 'mineral, synthetic, semi or unknown', (o) => o.base),
  number('viscosity_40', 'Kinematic viscosity at 40 °C', (o) => o.nu40_m2_s * 1e6, 'mm2/s'),
  number('viscosity_100', 'Kinematic viscosity at 100 °C', (o) => o.nu100_m2_s * 1e6, 'mm2/s'),
  number('density_15', 'Density at 15 °C', (o) => o.density15_kg_m3, 'kg/m3'),
];

type Held = ReturnType<typeof claimsOf>[number];
const claimColumns: readonly Column<Held>[] = [
  text('id', 'Name of the claim', ({ claim }) => claim.id),
  text('sentence', 'As it was put', ({ claim }) => claim.sentence),
  text('by', 'Who put it, as a role', ({ claim }) => claim.by ?? 'house'),
  { name: 'made', type: 'date', description: 'When it was put', of: ({ claim }) => claim.made },
  text('word', 'What its rule and its runs make of it', ({ judged }) => judged.word),
];
