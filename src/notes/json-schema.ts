import { amendmentKind } from './amendment.ts';
import { articleKind } from './article.ts';
import { bookKind } from './book-note.ts';
import { claimsKind } from './claim-fields.ts';
import type { Field, GroupKind, Kind } from './fields.ts';
import { oilKind } from './oil.ts';
import { planKind } from './plan.ts';
import { rigKind } from './rig-fields.ts';
import { runKind } from './run.ts';
import { partKind } from './part-note.ts';
import { reportKind } from './report-note.ts';
import { seriesKind } from './series.ts';
import { exampleOf } from './texts-fields.ts';

/** The tables of all kinds of note, by the word that names the kind. */
export const noteKinds = {
  book: bookKind,
  series: seriesKind,
  rig: rigKind,
  plan: planKind,
  article: articleKind,
  oil: oilKind,
  run: runKind,
  claims: claimsKind,
  amendment: amendmentKind,
  part: partKind,
  report: reportKind,
} as const satisfies Readonly<Record<string, GroupKind>>;

export interface Schema {
  readonly [keyword: string]: unknown;
}

/** A JSON Schema (draft 7) for each kind of note, so that an editor completes and explains the fields. By file name. */
export const jsonSchemas = (): Readonly<Record<string, Schema>> =>
  Object.fromEntries(
    Object.entries(noteKinds).map(([name, kind]) => [
      `${name}.schema.json`,
      {
        $schema: 'http://json-schema.org/draft-07/schema#',
        title: `Dipmark: front matter of ${article(name)} note`,
        ...ofGroup(kind),
      },
    ]),
  );

const article = (name: string): string => (/^[aeiou]/.test(name) ? `an ${name}` : `a ${name}`);

function ofGroup(kind: GroupKind): Schema {
  const fields = Object.entries(kind.fields);
  const one = (name: string): Schema => ({
    type: 'object',
    properties: { [name]: ofKind(kind.fields[name]!.kind) },
    required: [name],
  });
  const either = (kind.either ?? []).map((names) => ({ oneOf: names.map(one) }));
  return {
    type: 'object',
    properties: Object.fromEntries(fields.map(([name, field]) => [name, ofField(field)])),
    required: fields.filter(([, field]) => field.need === 'required').map(([name]) => name),
    additionalProperties: false,
    ...(either.length > 0 ? { allOf: either } : {}),
  };
}

const needs: Readonly<Record<Field['need'], string>> = {
  required: '',
  recommended: ' Recommended.',
  optional: ' Optional.',
  assumed: ' Optional.',
};

function ofField({ kind, need, why, otherwise }: Field): Schema {
  const unless = otherwise === undefined || otherwise === '' ? '' : ` Unless said: ${otherwise}.`;
  return { description: `${why}${needs[need]}${unless}${formOf(kind)}`, ...ofKind(kind) };
}

/** What is written there, in words. */
function formOf(kind: Kind): string {
  switch (kind.type) {
    case 'quantity': {
      const bounds = kind.soft ?? kind.hard;
      const range = bounds ? ` Mostly between ${bounds[0]} and ${bounds[1]}.` : '';
      return ` A number with its unit (${kind.dimension.replace('-', ' ')}), as ${kind.like}.${range}`;
    }
    case 'day':
      return ` A date, as ${kind.like}.`;
    case 'instant':
      return ' Date, time and offset, as 2026-03-17T10:05:00+01:00.';
    case 'later':
      return ` Here stands ${kind.says}, as ${kind.like}.`;
    case 'timecode':
      return ' Hours, minutes, seconds, as 00:00:36.000.';
    case 'step':
      return ' A speed of the plan and up or down, as 290 rpm up.';
    case 'text':
      return kind.says === undefined ? '' : ` Here stands ${kind.says}.`;
    default:
      return '';
  }
}

const stepPattern = '^\\S.* (up|down)$';

function ofKind(kind: Kind): Schema {
  const example = { examples: [exampleOf(kind)] };
  switch (kind.type) {
    case 'text':
      return {
        type: ['string', 'number'],
        ...(kind.pattern === undefined ? {} : { pattern: kind.pattern }),
        ...example,
      };
    case 'words':
      // a word such as 1 is a number to an editor
      return { enum: kind.words.flatMap((word) => (/^-?\d+$/.test(word) ? [word, Number(word)] : [word])) };
    case 'quantity':
    case 'day':
    case 'instant':
      return { type: 'string', ...example };
    case 'number': {
      const [minimum, maximum] = kind.hard ?? [];
      return { type: kind.whole ? 'integer' : 'number', minimum, maximum };
    }
    case 'timecode':
      return { type: 'string', pattern: '^\\d{2,4}:[0-5]\\d:[0-5]\\d(\\.\\d{3})?$', ...example };
    case 'step':
      return { type: 'string', pattern: stepPattern, ...example };
    case 'grade':
      return { enum: [...Array.from({ length: kind.most + 1 }, (_, i) => i), ...(kind.ng ? ['ng'] : [])] };
    case 'yes-no':
      return { type: 'boolean' };
    case 'list':
      return { type: 'array', items: ofKind(kind.of), ...(kind.least > 0 ? { minItems: kind.least } : {}) };
    case 'point':
      return { type: 'array', items: { type: 'number' }, minItems: 2, maxItems: 2 };
    case 'named':
      return {
        type: 'object',
        ...(kind.steps ? { propertyNames: { pattern: stepPattern } } : {}),
        additionalProperties: ofKind(kind.of),
      };
    case 'group':
      return ofGroup(kind);
    case 'later':
      return kind.group === undefined ? {} : { anyOf: [{ type: 'string' }, ofGroup(kind.group)] };
  }
}
