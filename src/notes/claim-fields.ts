import type { Dimension } from '../quantity/quantity.ts';
import { type ClaimQuantity, claimQuantities, claimWords } from '../trial/claim.ts';
import {
  assumed,
  type Bounds,
  code,
  day,
  group,
  headFields,
  later,
  list,
  optional,
  part,
  quantity,
  required,
  text,
  words,
} from './fields.ts';
import { question } from './questions.ts';
import { questionLeftOut } from './texts-parts.ts';
import { fillVolume, outputSpeed, sumpTemperature, tilt } from './plan.ts';

export const claimLeftOut = 'This claim is left out; the others stand.';
export const overrideLeftOut = 'The override is left out; the claim stands with its computed word.';

const cell = {
  article: required(code('P1'), 'What is fitted.'),
  fill: required(fillVolume, 'Filled to what, since the same litres and the same level are two claims.'),
  oil: optional(code('O1'), 'On what oil; on that of the baseline unless said.'),
};
const subject = group({ ...cell, tilt: assumed(tilt, '0 %', 'At what tilt, nose up positive.') });
const other = group({
  ...cell,
  tilt: optional(tilt, 'At what tilt, nose up positive; at that of the first unless said.'),
});

const conditions = group({
  'wheel-speed': optional(outputSpeed, 'With spin-power: one of the steps of the plan.'),
  'output-speed': optional(outputSpeed, 'With spin-power on a box: one of the steps of the plan.'),
  sump: optional(
    quantity('temperature', '60 °C', { hard: ['-60 °C', '300 °C'], none: 'own' }),
    'With spin-power: one of the reference temperatures, or own for the running temperature of each.',
  ),
  limit: optional(sumpTemperature, 'With limit-crossing: one of the limits of the plan.'),
});

const threshold = later('5 K', 'a difference in the unit of the quantity');
const whys = {
  of: 'What the claim is about.',
  against: 'What it is held against; the baseline of the series, at the same tilt, unless said.',
  quantity: 'One figure of a cell decides.',
  direction: 'Which way it should differ; at-least is for a share.',
  threshold: 'The smallest difference that matters; any difference unless said, but needed for within and at-least.',
  at: 'Conditions, where the quantity has them.',
};
const directions = words('lower', 'higher', 'within', 'at-least');
const about = words(...claimQuantities);

const clause = group({
  of: required(subject, whys.of),
  against: optional(other, whys.against),
  quantity: required(about, whys.quantity),
  direction: required(directions, whys.direction),
  'by-at-least': optional(threshold, whys.threshold),
  at: optional(conditions, whys.at),
});

const override = group({
  word: required(words(...claimWords), 'The word that is wanted instead; it stands beside the computed one.'),
  by: required(text('A'), 'Who wants it.'),
  on: required(day, 'Since when.'),
  why: required(text('"the fan was changed between the two"'), 'A word without its reason is an opinion.'),
});

const claim = group(
  {
    id: required(code('CL-1'), 'Pages and readers call the claim by it.'),
    sentence: required(text('"P1 settles at least 5 K lower than P0."'), 'The claim as it was put.'),
    made: required(day, 'A claim made after its first run is stamped so.'),
    by: optional(text('supplier'), 'Who put it, as a role; the house unless said.'),
    of: optional(subject, whys.of),
    against: optional(other, whys.against),
    quantity: optional(about, `${whys.quantity} Needed where there are no clauses.`),
    direction: optional(directions, `${whys.direction} Needed where there are no clauses.`),
    'by-at-least': optional(threshold, whys.threshold),
    at: optional(conditions, whys.at),
    clauses: optional(list(clause, 1), 'For a claim that says several things: it holds only where all of them do.'),
    override: optional(part(overrideLeftOut, override), 'A word that somebody wants instead of the computed one.'),
  },
  [['of', 'clauses']],
);

/** `claims.md` */
export const claimsKind = group({
  questions: optional(
    list(part(questionLeftOut, question)),
    'What was asked; parts put them and answer them, and what is open is carried on.',
  ),
  claims: required(
    list(part(claimLeftOut, claim), 1),
    'A claim with its rule and its date can be refuted by its runs; one without cannot.',
  ),
  ...headFields,
});

/** How the smallest difference that matters is written, quantity by quantity. A difference is never negative. */
export const thresholds: Readonly<
  Record<ClaimQuantity, { readonly dimension: Dimension; readonly like: string; readonly hard: Bounds }>
> = {
  'spin-power': { dimension: 'power', like: '15 W', hard: ['0 W', '5000 kW'] },
  'heat-made': { dimension: 'power', like: '15 W', hard: ['0 W', '5000 kW'] },
  'final-rise': { dimension: 'temperature-difference', like: '5 K', hard: ['0 K', '300 K'] },
  'final-temperature': { dimension: 'temperature-difference', like: '5 K', hard: ['0 K', '300 K'] },
  'limit-crossing': { dimension: 'time', like: '7 min', hard: ['0 s', '1000 h'] },
  shed: { dimension: 'conductance', like: '0.5 W/K', hard: ['0 W/K', '1000 W/K'] },
  store: { dimension: 'heat-capacity', like: '2 kJ/K', hard: ['0 kJ/K', '1000 kJ/K'] },
  'bearing-rise': { dimension: 'temperature-difference', like: '2 K', hard: ['0 K', '300 K'] },
  'makes-less-share': { dimension: 'ratio', like: '50 %', hard: ['0 %', '100 %'] },
};

/** The conditions that a figure of this quantity has; the others are one figure of a cell. */
export const conditionsOf: Readonly<Partial<Record<ClaimQuantity, readonly ('speed' | 'sump' | 'limit')[]>>> = {
  'spin-power': ['speed', 'sump'],
  'limit-crossing': ['limit'],
};
