import { readNumber } from '../quantity/read.ts';
import type { Run } from '../trial/run.ts';
import {
  type OilPropertyName,
  oilProperties,
  oilPropertyNames,
  type OilSample,
  samplePoints,
} from '../trial/sample.ts';
import type { Oil } from '../trial/oil.ts';
import { namesOf, stranger } from './check-series.ts';
import {
  code,
  day,
  group,
  later,
  list,
  optional,
  part,
  quantity,
  required,
  text,
  type ValueOf,
  words,
} from './fields.ts';
import { foundAt, type Gathered, withEffect } from './gather.ts';
import type { Node } from './note.ts';
import { leftOut } from './read.ts';
import { checked, type Into, quantityOf, wrong } from './read-value.ts';
import { tellAt, warnAt } from './record.ts';
import * as say from './texts-samples.ts';

/** `samples` of `oils/<id>.md`: what a laboratory found before the runs and after some of them. */
export const samplesKind = list(
  part(
    say.sampleLeftOut,
    group({
      id: required(code('O1-used'), 'Its results are cited by it.'),
      point: required(
        words(...samplePoints),
        'The first gush of a drain carries what lay at the bottom: it is drawn from the middle of the drain, or by syringe.',
      ),
      batch: required(
        text('B-0311'),
        'It is held against an unused sample of the same batch, and against nothing else.',
      ),
      'after-run': optional(code('H-03'), 'The last run that the oil had seen.'),
      'before-run': optional(code('H-04'), 'The first run that it had not seen.'),
      volume: optional(
        quantity('volume', '100 mL', { hard: ['0.1 mL', '20 L'] }),
        'A small sample holds fewer of the larger particles.',
      ),
      temperature: optional(
        quantity('temperature', '60 °C', { hard: ['-40 °C', '250 °C'] }),
        'Warm oil carries what cold oil lets settle.',
      ),
      'taken-on': required(day, 'Oil goes on changing in the bottle.'),
      results: required(
        list(
          part(
            say.resultLeftOut,
            group({
              property: required(words(...oilPropertyNames), 'Only like is held against like.'),
              method: required(text('ASTM D445'), 'Two methods need not agree on one oil.'),
              value: required(
                later('168.2 mm²/s', 'a value in a unit of its property'),
                'What the laboratory reported.',
              ),
              repeatability: required(
                later('0.4 %', 'how far two results on one oil may lie apart: a share, or in the unit of the value'),
                'A change within it is none that this method can show. It stands in the standard of the method.',
              ),
            }),
          ),
        ),
        'A sample without results says nothing.',
      ),
    }),
  ),
);

type Written = NonNullable<NonNullable<ValueOf<typeof samplesKind>>[number]>;

/** Samples that stand; what is wrong is told, and leaves out the sample or the one result. */
export function readSamples(written: readonly (Written | null)[] | null, into: Into): OilSample[] {
  const samples: OilSample[] = [];
  for (const [i, v] of (written ?? []).entries()) {
    if (v === null) continue;
    const path = `samples.${i}`;
    const from = into.findings.length;
    const sample: OilSample = {
      ...{ id: v.id, point: v.point, batch: v.batch, takenOn: v['taken-on'], path },
      ...{ volume_m3: v.volume?.value ?? null, temperature_K: v.temperature?.value ?? null },
      ...{ afterRun: v['after-run'], beforeRun: v['before-run'] },
      results: v.results.flatMap((result, n) => readResult(result, `${path}.results.${n}`, into) ?? []),
    };
    checkSample(sample, samples, into);
    if (!leftOut(into, from, say.sampleLeftOut)) samples.push(sample);
  }
  tellTwinless(samples, into);
  return samples;
}

type WrittenResult = Written['results'][number];

function readResult(v: WrittenResult, path: string, into: Into): OilSample['results'][number] | null {
  if (v === null) return null;
  const from = into.findings.length;
  const value = amountOf(v.property, v.value, `${path}.value`, into);
  const repeatability = spreadOf(v.property, v.repeatability, `${path}.repeatability`, into);
  if (leftOut(into, from, say.resultLeftOut) || value === null || repeatability === null) return null;
  return { property: v.property, method: v.method, ...value, repeatability, path };
}

/** A value in a unit of its property; null when it was told why not. */
function amountOf(property: OilPropertyName, node: Node, path: string, into: Into) {
  const { dimension, like } = oilProperties[property];
  if (dimension !== null) return quantityOf({ dimension, like }, node, path, into);
  if (node.kind !== 'text') {
    tellAt(into, path, say.resultShape(property, like));
    return null;
  }
  const value = checked(readNumber(node.text), node, path, into);
  return value === wrong ? null : { value, step: 1 };
}

/** A share in per cent, or an amount as the value is. */
function spreadOf(property: OilPropertyName, node: Node, path: string, into: Into) {
  const relative = node.kind === 'text' && /%\s*$/.test(node.text);
  const read = relative
    ? quantityOf({ dimension: 'ratio', like: '0.4 %' }, node, path, into)
    : amountOf(property, node, path, into);
  if (read === null) return null;
  if (read.value > 0) return { value: read.value, relative };
  tellAt(into, path, say.repeatabilityNone());
  return null;
}

function checkSample(sample: OilSample, before: readonly OilSample[], into: Into): void {
  const { path, point, afterRun, beforeRun, id, results } = sample;
  if (before.some((other) => other.id === id)) tellAt(into, `${path}.id`, say.sampleTwice(id));
  if (point === 'unused' && afterRun !== null) tellAt(into, `${path}.after-run`, say.unusedAfterRun(afterRun));
  if (point !== 'unused' && afterRun === null && beforeRun === null) tellAt(into, `${path}.point`, say.usedSinceWhen());
  const twice = results.find((r, i) => results.findIndex((other) => other.property === r.property) < i);
  if (twice !== undefined) tellAt(into, `${twice.path}.property`, say.propertyTwice(twice.property));
}

/** A used sample without an unused one of its batch changes from nothing that is known. */
function tellTwinless(samples: readonly OilSample[], into: Into): void {
  for (const { point, batch, path, id } of samples) {
    const twin = samples.some((other) => other.point === 'unused' && other.batch === batch);
    if (point !== 'unused' && !twin) warnAt(into, `${path}.batch`, say.noUnusedTwin(id, batch));
  }
}

/** Samples name runs of the series that used their oil. One that does not is left out; its oil stays. */
export function withSamples(oils: Gathered<Oil>, runs: Gathered<Run>, series: string): Gathered<Oil> {
  const records = new Map<string, Oil>();
  const findings = [...oils.findings];
  for (const [id, oil] of oils.records) {
    const samples = oil.samples.filter((sample) => {
      const told = [
        ...namedRun(oil, sample.path, 'after-run', sample.afterRun, runs),
        ...namedRun(oil, sample.path, 'before-run', sample.beforeRun, runs),
        ...drawnTooSoon(oil, sample, runs),
      ];
      findings.push(...withEffect(told, say.sampleLeftOut, { series }));
      return told.length === 0;
    });
    records.set(id, { ...oil, samples });
  }
  return { ...oils, records, findings };
}

/** Days as they were typed, at the place of the bench. */
function drawnTooSoon(oil: Oil, { path, afterRun, takenOn }: OilSample, runs: Gathered<Run>) {
  const started = runs.records.get(afterRun ?? '')?.started.slice(0, 10);
  return started !== undefined && takenOn < started
    ? [foundAt(oil, `${path}.taken-on`, say.drawnBeforeRun(takenOn, afterRun!, started))]
    : [];
}

function namedRun(oil: Oil, sample: string, field: string, run: string | null, runs: Gathered<Run>) {
  if (run === null) return [];
  const path = `${sample}.${field}`;
  const unknown = stranger(oil, path, 'run', run, namesOf(runs));
  const used = runs.records.get(run)?.oil ?? oil.id;
  return used === oil.id ? unknown : [foundAt(oil, path, say.sampleOfOtherOil(run, used, oil.id))];
}
