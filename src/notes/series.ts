import type { Finding, Reading } from '../finding/finding.ts';
import { driftBases, type Series } from '../trial/book.ts';
import { bridgeWays } from '../trial/campaign.ts';
import { claimQuantities } from '../trial/claim.ts';
import { currentMethod, methodVersions } from '../trial/method.ts';
import { campaignsOf } from './campaigns.ts';
import { thresholds } from './claim-fields.ts';
import {
  assumed,
  code,
  day,
  group,
  headFields,
  list,
  number,
  optional,
  quantity,
  required,
  shaped,
  text,
  whole,
  words,
} from './fields.ts';
import { nodeAt, type Note } from './note.ts';
import { dutyOf, dutyKind } from './duty.ts';
import { fillVolume, outputSpeed, rising, sumpTemperature } from './plan.ts';
import { readRecord, tellAt } from './record.ts';
import * as say from './texts-check.ts';

const airspeed = quantity('speed', '4.0 m/s', { hard: ['0 m/s', '100 m/s'], soft: ['0 m/s', '30 m/s'] });

const tolerance = group({
  ambient: assumed(
    quantity('temperature-difference', '3 K', { hard: ['0 K', '100 K'] }),
    '3 K',
    'How far ambient may differ.',
  ),
  airflow: assumed(
    quantity('speed', '0.3 m/s', { hard: ['0 m/s', '30 m/s'] }),
    '0.3 m/s',
    'How far the air speed may differ.',
  ),
  level: assumed(
    quantity('length', '3 mm', { hard: ['0 mm', '500 mm'] }),
    '3 mm',
    'How far the static level may differ.',
  ),
  fill: assumed(quantity('volume', '0.05 L', { hard: ['0 L', '20 L'] }), '0.05 L', 'How far the fill may differ.'),
  speed: assumed(quantity('ratio', '1 %', { hard: ['0 %', '50 %'] }), '1 %', 'How far the speed may differ.'),
  tilt: assumed(quantity('ratio', '0.5 %', { hard: ['0 %', '50 %'] }), '0.5 %', 'How far the tilt may differ.'),
});

const reference = group(
  {
    'wheel-speed': optional(outputSpeed, 'The wheel speed at which the series compares.'),
    'output-speed': optional(outputSpeed, 'The output speed at which a series on a box compares.'),
    sump: required(list(sumpTemperature, 1), 'The sump temperatures at which loss is given.'),
    'main-sump': required(sumpTemperature, 'The one of them that the standing is made at.'),
    'main-limit': optional(sumpTemperature, 'The limit whose crossing the standing shows.'),
    airflow: optional(airspeed, 'The air speed at which shed is compared.'),
    ambient: optional(
      quantity('temperature', '21 °C', { hard: ['-60 °C', '80 °C'] }),
      'The ambient that loaded runs are brought to; the mean of them unless said.',
    ),
  },
  [['wheel-speed', 'output-speed']],
);

const agreement = group({
  'within-one': assumed(
    quantity('ratio', '90 %', { hard: ['0 %', '100 %'] }),
    '90 %',
    'The share of pairs of grades that differ by one at most.',
  ),
  kappa: assumed(number('0.6', [0, 1]), '0.6', 'The least quadratic-weighted kappa.'),
});

const marginField = (of: (typeof thresholds)['shed']) =>
  optional(quantity(of.dimension, of.like, { hard: of.hard }), 'The largest difference that does not matter.');
const marginQuantities = claimQuantities.filter((q) => q !== 'makes-less-share');
const margins = group({
  declared: required(day, 'A margin chosen after the data is no margin.'),
  ...(Object.fromEntries(marginQuantities.map((q) => [q, marginField(thresholds[q])])) as Readonly<
    Record<(typeof marginQuantities)[number], ReturnType<typeof marginField>>
  >),
});

/** `<series>/series.md` */
export const seriesKind = group({
  format: required(whole('1', [1, 1]), 'It says by which rules the folder is read.'),
  id: required(
    shaped('hill-bowl', '^[a-z0-9]+(-[a-z0-9]+)*$', 'a slug of lower-case letters, digits and hyphens'),
    'It is the name of the folder and part of every permanent address.',
  ),
  title: required(text('The Hill Bowl Series'), 'Readers look for it.'),
  summary: required(text('Five bowls on one axle.'), 'It stands in lists and in the feed.'),
  question: required(text('What is a shape worth?'), 'A series without a question cannot be answered.'),
  started: required(day, 'A claim is dated against it.'),
  licence: optional(text('CC-BY-4.0'), 'The licence of the book holds unless the series has its own.'),
  conflicts: required(
    text('none declared'),
    'Readers weigh a result by who paid; write "none declared" where there is nothing.',
  ),
  baseline: required(
    group({
      article: required(code('P0'), 'The article that the others are compared with.'),
      fill: required(fillVolume, 'The fill of the baseline.'),
      oil: required(code('O1'), 'The oil of the baseline.'),
    }),
    'Every effect is a change against it.',
  ),
  reference: required(reference, 'Runs are compared under one set of conditions.'),
  tolerance: assumed(tolerance, '', 'Runs that differ by more are not compared.'),
  agreement: assumed(agreement, '', 'Grades of two observers are used when they agree this far.'),
  margins: optional(
    margins,
    'Differences too small to matter; only a margin declared before the data can call two articles equal.',
  ),
  duty: optional(dutyKind, 'What the vehicle does all day, for what watts cost on the road.'),
  drift: assumed(
    group({
      over: assumed(
        words(...driftBases),
        'running-time',
        'Over what one drift common to all runs is taken out; none leaves it in.',
      ),
    }),
    '',
    'A gearset runs in and an oil ages while the articles take their turns.',
  ),
  coverage: assumed(
    quantity('ratio', '95 %', { hard: ['50 %', '99.99 %'] }),
    '95 %',
    'How much an interval is meant to hold.',
  ),
  family: assumed(
    quantity('ratio', '5 %', { hard: ['0.01 %', '50 %'] }),
    '5 %',
    'How often a whole standing may err by chance.',
  ),
  'repeat-rule': optional(
    group({
      'refit-torque': required(
        quantity('torque', '0.035 N·m', { hard: ['0 N·m', '1000 N·m'] }),
        'The lab’s own figure for the scatter of a refit on spin torque.',
      ),
    }),
    'What the lab knows of its own repeats.',
  ),
  campaigns: optional(
    list(
      group({
        id: required(code('U-01'), 'It marks the runs of that time, and their figures.'),
        from: required(day, 'Runs from that day on belong to it, until the next one.'),
        why: required(text('a thin bowl arrived; gears changed since'), 'A reader asks what was done in between.'),
        bridge: assumed(
          words(...bridgeWays),
          'separate',
          'What becomes of its runs where the baseline moved by more than it repeats.',
        ),
        declared: optional(day, 'The day `bridge` was chosen; adjust counts only when that was before the first run.'),
      }),
      1,
    ),
    'Later times at which the baseline was run again, before anything else.',
  ),
  method: assumed(
    words(...methodVersions.map(({ version }) => version)),
    currentMethod,
    'The version of the reduction; an older one builds an old table again as it was.',
  ),
  'not-tested': optional(
    list(text('"wear: nothing ran long enough"')),
    'What this series does not look at, each with its reason; reports print it.',
  ),
  'cautions-by': optional(text('workshop procedure 12'), 'Whose cautions the lab works by.'),
  ...headFields,
});

/** A folder of a later format is told as such, and not by the fields that this version does not know. */
function laterFormat(note: Note): Reading<never> | null {
  const at = nodeAt(note.front, 'format');
  if (at?.kind !== 'text' || !/^[2-9]\d{0,2}$/.test(at.text)) return null;
  const findings: Finding[] = [];
  tellAt({ note, findings }, 'format', say.formatLater(at.text));
  return { ok: false, findings };
}

/** `licence` is the one of the book where the series has none of its own. */
export const readSeriesNote = (note: Note, licence: string): Reading<Series> =>
  laterFormat(note) ??
  readRecord(seriesKind, note, (v, head, into): Series => {
    const { reference: r, tolerance: t } = v;
    rising('reference.sump', r.sump, into);
    if (!r.sump.some((q) => Math.abs(q.value - r['main-sump'].value) < 1e-6))
      tellAt(into, 'reference.main-sump', say.mainSumpNotListed(r['main-sump'].asWritten));
    return {
      ...head,
      id: v.id,
      format: 1,
      agreement: { withinOne_ratio: v.agreement['within-one'].value, kappa: v.agreement.kappa },
      title: v.title,
      summary: v.summary,
      question: v.question,
      started: v.started,
      licence: v.licence ?? licence,
      conflicts: v.conflicts,
      baseline: { article: v.baseline.article, fill_m3: v.baseline.fill.value, oil: v.baseline.oil },
      reference: {
        outputSpeed_rad_s: (r['wheel-speed'] ?? r['output-speed'])?.value ?? NaN,
        sump_K: r.sump.map((q) => q.value),
        mainSump_K: r['main-sump'].value,
        mainLimit_K: r['main-limit']?.value ?? null,
        airflow_m_s: r.airflow?.value ?? null,
        ambient_K: r.ambient?.value ?? null,
      },
      tolerance: {
        ambient_K: t.ambient.value,
        airflow_m_s: t.airflow.value,
        level_m: t.level.value,
        fill_m3: t.fill.value,
        outputSpeed_ratio: t.speed.value,
        tilt_ratio: t.tilt.value,
      },
      margins:
        v.margins === null
          ? null
          : {
              declared: v.margins.declared,
              by: new Map(
                marginQuantities.flatMap((q) => {
                  const size = v.margins?.[q];
                  return size == null ? [] : [[q, size.value] as const];
                }),
              ),
            },
      duty: dutyOf(v.duty, into),
      driftOver: v.drift.over,
      coverage: v.coverage.value,
      familyLevel: v.family.value,
      refit_Nm: v['repeat-rule']?.['refit-torque'].value ?? null,
      cautionsBy: v['cautions-by'],
      ...campaignsOf(v.campaigns, v.started, into),
      method: v.method,
      notTested: v['not-tested'] ?? [],
    };
  });
