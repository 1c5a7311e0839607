import type { Figure } from '../ledger/figure.ts';
import { litres } from '../ledger/ids.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { Run } from '../trial/run.ts';
import { cited, runFigures, inCelsius } from './cite.ts';
import { givenText, quantityText, uncertaintyText } from './digits.ts';
import type { Block, Chart, MarginNote, Page, Span, TraceData } from './page.ts';
import { conditionsSection, rawFileNote } from './run-conditions.ts';
import { beforePower, givesSection, howSure, leadOf, remarksNote, runLink, runPage } from './run-parts.ts';
import { facts, fold, listed, prose, row, section, tableBlock } from './spans.ts';
import { besideTheRun } from './supply.ts';
import { celsius, excludedIn, minutes, pointsOf, traceNamed, traceTable } from './traces.ts';
import { derivedOf, type View } from './view.ts';

/** A loaded heat-up: the curve, the limits it crossed, where it is heading, and how that was found. */
export function heatUpPage(view: View, run: Run): Page {
  const derived = derivedOf(view, run.id);
  const [final] = runFigures(view, run.id, 'final-temperature');
  const chart = heatUpChart(view, run, derived);
  return runPage(view, run, {
    lead: leadOf(view, run, () => heatUpLead(view, run)),
    sections: [
      section('picture', null, [chart], [beforePower(view, run), modelsNote(derived)]),
      givesSection(view, run, () => false, [howSure(view, final), besideTheRun(view, run), rawFileNote(view, run)]),
      derived === undefined || derived.models.length === 0
        ? null
        : section('models', 'How the final temperature was found', modelBlocks(derived), [remarksNote(derived)]),
      conditionsSection(view, run),
    ],
  });
}

/** "It reached 80 °C in 47.7 min and 90 °C in 70.5 min, did not reach 95 °C in 150 min, and is heading for 105.2 ± 1.3 °C." */
function heatUpLead(view: View, run: Run): Span[] {
  const crossings = [...runFigures(view, run.id, 'limit-crossing')].sort((a, b) => limitOf(a) - limitOf(b));
  const reached = crossings.filter(({ value }) => value !== null);
  const missed = crossings.filter(({ value }) => value === null);
  const [final] = runFigures(view, run.id, 'final-temperature');
  const clauses: Span[][] = [
    ...(reached.length === 0
      ? []
      : [['reached ', ...listed(reached.map((f) => [`${limitText(f)} in `, cited(view, f)]))]]),
    ...(missed.length === 0
      ? []
      : [['did not reach ', ...listed(missed.map((f) => [`${limitText(f)} (`, cited(view, f), ')']))]]),
    ...(final === undefined ? [] : [['is heading for ', cited(view, final)]]),
  ];
  return clauses.length === 0
    ? ['No crossing and no final temperature could be formed.']
    : ['It ', ...listed(clauses, ', and '), '.'];
}

const limitOf = (figure: Figure): number => Number.parseFloat(figure.at.limit ?? '0');
const limitText = (figure: Figure): string => inCelsius(figure.at.limit ?? 'its limit');

function heatUpChart(view: View, run: Run, derived: DerivedRun | undefined): Block | null {
  const sump = traceNamed(derived, 'sump');
  if (derived === undefined || sump === undefined) return null;
  const baseline = baselineRun(view, run, derived);
  const mark = view.marks.get(run.article) ?? 0;
  const skin = traceNamed(derived, 'skin');
  const baselineTrace = baseline && traceNamed(baseline, 'sump');
  const line = (role: TraceData['lines'][number]['role'], label: string, trace: typeof sump, of = mark) => ({
    label,
    mark: of,
    role,
    points: pointsOf(trace),
  });
  const lines = [
    line('main', `${run.article} sump`, sump),
    ...(skin ? [line('second', `${run.article} skin`, skin)] : []),
    ...(derived.fitted ? [line('fit', 'fit', derived.fitted)] : []),
    ...(baseline && baselineTrace ? [line('baseline', `${baseline.cell.article} baseline`, baselineTrace, 0)] : []),
  ];
  const chart: Chart = {
    id: 'sump',
    title: `Sump temperature of ${run.id} against time`,
    alternative: `Sump temperature against minutes under load, ${lines.map(({ label }) => label).join(', ')}; ${derived.crossings.map(crossingWords).join('; ')}. The table below holds points of the same lines.`,
    caption: [
      ...(baseline ? ['The dashed curve is the baseline run ', runLink(view, baseline.run), '. '] : []),
      `Level dashed lines are limits; circles are sustained crossings${view.plan ? ` (${quantityText(view.plan.sustained_s, 's', 0)})` : ''}.`,
    ],
    data: {
      kind: 'trace',
      yTitle: 'sump, °C',
      xTitle: `minutes ${loadWords(view, derived)}`,
      lines,
      limits: derived.crossings.map(({ limit_K }) => ({ y: celsius(limit_K), label: quantityText(limit_K, '°C', 0) })),
      crossings: derived.crossings.flatMap(({ limit_K, t_s }) =>
        t_s === null ? [] : [{ x: minutes(t_s), y: celsius(limit_K), label: quantityText(t_s, 'min', 0) }],
      ),
      excluded: excludedIn(run),
    },
    table: traceTable('sump-table', lines),
  };
  return { kind: 'chart', chart };
}

const crossingWords = ({ limit_K, t_s }: DerivedRun['crossings'][number]): string =>
  t_s === null
    ? `${quantityText(limit_K, '°C', 0)} is not reached`
    : `${quantityText(limit_K, '°C', 0)} is crossed at ${quantityText(t_s, 'min', 0)}`;

function loadWords(view: View, derived: DerivedRun): string {
  const load = view.plan?.load;
  const air = derived.conditions.airflow_m_s;
  return [
    load
      ? `under ${quantityText(load.powerOut_W, 'kW', 0)} at ${quantityText(load.outputSpeed_rad_s, 'rpm', 0).replace('rpm', view.speed)}`
      : 'under load',
    air === null ? '' : `air ${quantityText(air, 'm/s', 1)}`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}

/** The nearest heat-up of the baseline in the order of the series, under the same tilt and oil where there is one. */
function baselineRun(view: View, run: Run, own: DerivedRun): DerivedRun | undefined {
  const { article, fill_m3 } = view.series.baseline;
  if (run.article === article && litres(own.cell.fill_m3) === litres(fill_m3)) return undefined;
  const distance = (d: DerivedRun): number =>
    Math.abs(d.order - own.order) +
    (d.cell.oil === own.cell.oil ? 0 : 1e4) +
    (d.cell.tilt_ratio === own.cell.tilt_ratio ? 0 : 1e6);
  return view.runs
    .filter(({ id, trial }) => trial === 'heat-up' && id !== run.id)
    .map(({ id }) => derivedOf(view, id))
    .filter((d) => d !== undefined)
    .filter((d) => d.leftOut === null && d.cell.article === article && litres(d.cell.fill_m3) === litres(fill_m3))
    .sort((a, b) => distance(a) - distance(b))[0];
}

function modelsNote(derived: DerivedRun | undefined): MarginNote | null {
  if (derived === undefined || derived.models.length === 0) return null;
  return {
    name: 'Models tried.',
    text: [],
    list: derived.models.map(({ model, final_K, misfit_K, taken }) => [
      `${modelWords[model]}: ${quantityText(final_K, '°C', 1)}, misfit ${quantityText(misfit_K, 'K', 2)} rms${taken ? '; taken' : ''}`,
    ]),
  };
}

function modelBlocks({ models }: DerivedRun): Block[] {
  return [
    tableBlock(
      'models-table',
      ['model', 'number final', 'number one standard uncertainty of the fit', 'number misfit', 'taken', 'wide why'],
      models.map(({ model, final_K, u_K, misfit_K, taken, why }) =>
        row(
          modelWords[model],
          quantityText(final_K, '°C', 1),
          `${uncertaintyText(0, u_K, 'K')} K`,
          quantityText(misfit_K, 'K', 2),
          taken ? 'taken' : 'no',
          why.replace(/^taken: /, ''),
        ),
      ),
    ),
    ...models
      .filter(({ parameters }) => parameters.length > 0)
      .map(({ model, parameters }) =>
        fold(
          `Parameters, ${modelWords[model]}`,
          facts(parameters.map(({ name, value, u, unit }) => [name, [parameterText(value, u, unit)]])),
        ),
      ),
    prose('A misfit is the root mean square of what the fitted curve leaves over.'),
  ];
}

const parameterText = (value: number, u: number, unit: string): string =>
  `${givenText(value, u, unit)}, one standard uncertainty ${uncertaintyText(value, u, unit)}`;

const modelWords: Readonly<Record<DerivedRun['models'][number]['model'], string>> = {
  'one-store': 'one store',
  'two-store': 'two stores',
  tail: 'the tail alone',
};
