import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { jsonSchemas, noteKinds, type Schema } from '../../../src/notes/json-schema.ts';

const folder = new URL('../../../content/schema/', import.meta.url);
const schemas = jsonSchemas();

describe('the published schemas', () => {
  it.each(Object.keys(schemas))('%s is what the tables give today (npx tsx test/make-schemas.ts writes it)', (name) => {
    expect(JSON.parse(readFileSync(new URL(name, folder), 'utf8'))).toEqual(JSON.parse(JSON.stringify(schemas[name])));
  });

  it('have one file for each kind of note', () => {
    expect(Object.keys(schemas)).toEqual(Object.keys(noteKinds).map((kind) => `${kind}.schema.json`));
  });

  it('explain every field with a sentence', () => {
    const silent: string[] = [];
    const walk = (schema: Schema, path: string): void => {
      for (const [name, field] of Object.entries((schema['properties'] ?? {}) as Record<string, Schema>)) {
        if (!/^[A-Z"].*\.$/s.test(String(field['description']))) silent.push(`${path}${name}`);
        walk(field, `${path}${name}.`);
        walk((field['items'] ?? field['additionalProperties'] ?? {}) as Schema, `${path}${name}.`);
      }
    };
    for (const [name, schema] of Object.entries(schemas)) walk(schema, `${name}: `);
    expect(silent).toEqual([]);
  });

  it('name in their required list only fields that they have', () => {
    for (const schema of Object.values(schemas))
      expect(Object.keys(schema['properties'] as object)).toEqual(
        expect.arrayContaining(schema['required'] as string[]),
      );
  });
});
