import { rpm } from '../ledger/ids.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { Run } from '../trial/run.ts';
import { cautionsFor } from './cautions.ts';
import { articleSpan, tiltWords } from './cite.ts';
import { dateWords, momentWords } from './dates.ts';
import { numberText, quantityText } from './digits.ts';
import type { Block, MarginNote, Section } from './page.ts';
import { runLink } from './run-parts.ts';
import { code, counts, facts, fold, link, row, section, tableBlock } from './spans.ts';
import { besides, derivedOf, type View } from './view.ts';

export function rawFileNote(view: View, run: Run): MarginNote | null {
  if (run.log === null) return null;
  const log = view.input.record.logs.get(run.id);
  if (log === undefined) {
    const sum = view.input.sums.get(besides(run.file, run.log.file));
    return {
      name: 'Raw file.',
      text: [code(run.log.file), ' could not be used', ...(sum === undefined ? [] : ['; sha-256 ', code(sum)]), '.'],
    };
  }
  return {
    name: 'Raw file.',
    text: [
      code(run.log.file),
      `, ${numberText(log.rows, 0)} rows, sha-256 `,
      code(`${log.sha256.slice(0, 4)}…${log.sha256.slice(-4)}`),
      '.',
    ],
    ...(log.record.length === 0 ? {} : { list: log.record.map((line) => [line]) }),
  };
}

export function rawFileFold(view: View, run: Run): Block | null {
  const log = view.input.record.logs.get(run.id);
  if (log === undefined) return null;
  return fold(
    'Raw file, whole',
    facts([
      ['File', [code(log.file)]],
      ['SHA-256', [code(log.sha256)]],
    ]),
  );
}

/** Dated and reasoned; nothing is deleted. */
export function exclusionsNote(view: View, run: Run): MarginNote | null {
  if (run.exclude.length === 0) return null;
  return {
    name: 'Left out.',
    text: [`${counts(run.exclude.length, 'stretch', 'stretches')} of the log:`],
    list: run.exclude.map(({ from_s, to_s, channels, reason, by, on }) => [
      `${quantityText(from_s, 's', 0)} to ${quantityText(to_s, 's', 0)}, ${channels.length === 0 ? 'all channels' : channels.join(', ')}: ${reason}${view.house ? ` (${by})` : ''}${on === null ? '' : `, ${dateWords(on)}`}`,
    ]),
  };
}

/** What it was run under, with the cautions of its kind in the margin. */
export function conditionsSection(view: View, run: Run): Section {
  const derived = derivedOf(view, run.id);
  const c = derived?.conditions;
  const article = view.articles.get(run.article);
  const { fill } = run;
  return section(
    'conditions',
    'Conditions',
    [
      facts([
        ['Article', [articleSpan(view, run.article)]],
        [
          'Oil',
          [
            view.oils.has(run.oil)
              ? link(`${view.base}oils/${run.oil}/`, `${run.oil} ${view.oils.get(run.oil)!.name}`)
              : run.oil,
          ],
        ],
        [
          'Filled',
          [
            `${fill.mass_kg === null ? (fill.volume_m3 === null ? '' : quantityText(fill.volume_m3, 'L', 2, view.withUs)) : quantityText(fill.mass_kg, 'g', 0)} at ${quantityText(fill.temperature_K, '°C', 1, view.withUs)}, by ${fill.basis}`.trim(),
          ],
        ],
        c?.volume20_m3 == null ? null : ['Litres at 20 °C', [quantityText(c.volume20_m3, 'L', 3, view.withUs)]],
        c?.level_z_m == null ? null : ['Static level', [quantityText(c.level_z_m, 'mm', 1, view.withUs)]],
        [
          'Ambient',
          [
            `${quantityText(run.ambient.start_K, '°C', 1, view.withUs)} to ${quantityText(run.ambient.end_K, '°C', 1, view.withUs)}, ${run.ambient.place}`,
          ],
        ],
        ['Airflow', [quantityText(c?.airflow_m_s ?? run.airflow_m_s, 'm/s', 2)]],
        derived && derived.cell.tilt_ratio !== 0 ? ['Tilt', [tiltWords(derived.cell).slice(2)]] : null,
        ['Rotation', [run.rotation]],
        ['Refit, order', [`refit ${numberText(run.refit, 0)}, run ${numberText(run.order, 0)} of the series`]],
        ['Rig state', [view.rigShown ? link(`${view.base}rig/#states`, run.rigState) : run.rigState]],
        ['Started, ended', [`${momentWords(run.started)} to ${momentWords(run.ended)}`]],
        view.house && run.operators.length > 0 ? ['By', [run.operators.join(', ')]] : null,
        run.fromRun === null ? null : ['Follows', [runLink(view, run.fromRun)]],
        run.gearState === null ? null : ['Gears', [run.gearState]],
      ]),
      zeroTable(run),
      windowsFold(view, derived),
      rawFileFold(view, run),
    ],
    [
      exclusionsNote(view, run),
      ...cautionsFor(run, article, view.rig).map(({ stage, name, short }): MarginNote => ({
        name: `${name}.`,
        text: [short, ' ', link(`cautions/#${stage}`, 'More')],
        code: `caution-${stage}`,
      })),
    ],
  );
}

function zeroTable(run: Run): Block | null {
  if (run.zeros.length === 0) return null;
  return tableBlock(
    'zeros',
    ['wide zero of', 'number before', 'number after'],
    run.zeros.map(({ instrument, before_Nm, after_Nm, step_Nm }) => {
      const decimals = Math.max(0, Math.round(-Math.log10(step_Nm)));
      return row(
        instrument,
        quantityText(before_Nm, 'N·m', decimals),
        after_Nm === null ? 'not read' : quantityText(after_Nm, 'N·m', decimals),
      );
    }),
  );
}

function windowsFold(view: View, derived: DerivedRun | undefined): Block | null {
  if (derived === undefined || derived.windows.length === 0) return null;
  return fold(
    `Windows used (${numberText(derived.windows.length, 0)})`,
    tableBlock(
      'windows',
      ['wide window', 'number s', 'number lines', `number ${view.speed}`, 'number sump', 'number readings', 'steady'],
      [...derived.windows]
        .sort((a, b) => a.from_s - b.from_s)
        .map((w) =>
          row(
            w.name,
            `${numberText(w.from_s, 0)}–${numberText(w.to_s, 0)}`,
            `${numberText(w.fromLine, 0)}–${numberText(w.toLine, 0)}`,
            rpm(w.outputSpeed_rad_s),
            quantityText(w.sump_K, '°C', 1),
            numberText(w.readings, 0),
            w.steady ? 'yes' : 'no',
          ),
        ),
    ),
  );
}
