import { quantityKinds } from '../trial/figures.ts';

/** Where it lies, from a `ledger.json` on. */
export const ledgerSchemaPath = '../../schema/ledger.schema.json';

const text = (description: string, more: object = {}) => ({ type: 'string', description, ...more });
const number = (description: string) => ({ type: ['number', 'null'], description });
const only = (properties: Readonly<Record<string, object>>, optional: readonly string[] = []) => ({
  type: 'object',
  properties,
  required: Object.keys(properties).filter((name) => !optional.includes(name)),
  additionalProperties: false,
});
const every = (properties: Readonly<Record<string, object>>) => only(properties, Object.keys(properties));

const id = text('Permanent: subject/quantity@condition,…', { pattern: '^[^\\s/]+/[a-z0-9-]+(?:@.+)?$' });
const codes = [...new Set(Object.values(quantityKinds).map(({ ucum }) => ucum))].sort();
const unit = { enum: codes, description: 'UCUM code of value and interval' };
const bound = {
  enum: [null, 'above', 'below'],
  description: 'Where no value was reached: it lies beyond the end of the interval',
};
const interval = {
  type: 'array',
  items: { type: ['number', 'null'] },
  minItems: 2,
  maxItems: 2,
  description: 'Low and high end at the stated coverage; null where an end is not known',
};
const value = number('Null where a limit was not reached');

const cell = only(
  { article: text('Id'), oil: text('Id'), fill: text('Litres at 20 °C'), campaign: text('A later one') },
  ['campaign'],
);
const subject = every({
  run: text('Id'),
  article: text('Id'),
  oil: text('Id'),
  rig: text('Id'),
  series: text('Id'),
  fill: text('Litres at 20 °C, with its unit'),
  against: { ...cell, description: 'The cell that a difference is taken from' },
  campaign: text('The later campaign that it was run in'),
});
const at = every({
  'wheel-speed': text('With its unit'),
  'output-speed': text('With its unit'),
  sump: text('With its unit'),
  limit: text('With its unit'),
  basis: text('Same litres or same level'),
  tilt: text('With its unit'),
  direction: text('Of a step on the way down'),
  grade: text('Of an agreement'),
  observers: text('Of an agreement: numbers, never initials'),
  band: text('Of a thermal dose'),
  charge: text('Of a thermal dose: one charge of oil'),
  sample: text('Of a used sample of oil'),
});

const figure = only(
  {
    id,
    kind: { enum: ['value', 'difference'] },
    quantity: { enum: Object.keys(quantityKinds) },
    subject,
    at: { ...at, description: 'What it was taken at, as people write it' },
    value,
    unit,
    bound,
    interval,
    coverage: { type: 'number', exclusiveMinimum: 0, exclusiveMaximum: 1 },
    k: number('Coverage factor; null where the interval is by trials or by ends'),
    dof: number('Degrees of freedom; null where there are none or no end of them'),
    class: { enum: ['measured', 'derived from measurement', 'model estimate'] },
    separated: { type: 'boolean', description: 'Of a difference: whether it is told apart from none' },
    inputs: {
      type: 'array',
      items: only({ file: text('Path in the book'), sha256: text('Of its bytes', { pattern: '^[0-9a-f]{64}$' }) }),
    },
    relation: text('Id of the relation on the method pages, or empty'),
    method: text('Id of the step of reduction'),
    notes: { type: 'array', items: { type: 'string' } },
  },
  ['separated'],
);

const superseded = only({
  id,
  correction: text('Id of the correction that put it out of use'),
  until: text('The day from which another value holds', { pattern: '^\\d{4}-\\d{2}-\\d{2}$' }),
  value,
  bound,
  interval,
  unit,
});

/** JSON Schema (draft 7) of `ledger.json`, from the table of quantities. */
export const ledgerSchema = () => ({
  $schema: 'http://json-schema.org/draft-07/schema#',
  title: 'Dipmark: ledger of one series',
  description: 'Every figure that the pages of a series show, and the values that corrections put out of use.',
  ...only(
    {
      $schema: text('Where this schema lies'),
      series: text('Id of the series'),
      method: text('Version of the method'),
      figures: { type: 'array', items: figure },
      superseded: { type: 'array', items: superseded },
    },
    ['superseded'],
  ),
});
