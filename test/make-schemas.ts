import { mkdirSync, writeFileSync } from 'node:fs';
import { jsonSchemas } from '../src/notes/json-schema.ts';
import { ledgerSchema } from '../src/outlets/ledger-schema.ts';

/** Writes content/schema/*.schema.json from the tables of the notes and of the quantities: npx tsx test/make-schemas.ts */
const folder = new URL('../content/schema/', import.meta.url);
mkdirSync(folder, { recursive: true });
for (const [name, schema] of Object.entries({ ...jsonSchemas(), 'ledger.schema.json': ledgerSchema() }))
  writeFileSync(new URL(name, folder), `${JSON.stringify(schema, null, 2)}\n`);
