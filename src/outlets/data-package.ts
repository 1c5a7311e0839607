import { sha256 } from '@noble/hashes/sha2';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils';
import type { View } from '../report/view.ts';
import { addressOf } from '../report/frame.ts';
import { csvText } from './csv.ts';
import { dataTables, type DataTable } from './data-tables.ts';
import type { TextFile } from './files.ts';

/** A Frictionless Data Package (version 1) of one series: a CSV a table, described, summed and licensed. */
export function dataPackage(view: View): readonly TextFile[] {
  const { series } = view;
  const tables = dataTables(view).map((table) => ({
    table,
    text: csvText(
      table.fields.map(({ name }) => name),
      table.rows,
    ),
  }));
  const descriptor = {
    profile: 'tabular-data-package',
    name: series.id,
    title: series.title,
    description: `${series.summary} ${series.question}`,
    ...(view.input.book.address === null ? {} : { homepage: `${siteAddress(view)}${view.base}` }),
    version: `method ${view.input.ledger.methodVersion}`,
    licenses: [licenceOf(series.licence)],
    contributors: [{ title: view.input.book.lab, role: 'author' }],
    keywords: ['axle', 'spin loss', 'heat rejection', 'lubricant', 'churning'],
    resources: tables.map(({ table, text }) => resource(table, text)),
  };
  return [
    { path: `${view.base}datapackage.json`, text: `${JSON.stringify(descriptor, null, 2)}\n` },
    ...tables.map(({ table, text }) => ({ path: `${view.base}${fileOf(table)}`, text })),
  ];
}

const fileOf = ({ name }: DataTable): string => `data/${name}.csv`;

function resource(table: DataTable, text: string) {
  const bytes = utf8ToBytes(text);
  return {
    profile: 'tabular-data-resource',
    name: table.name,
    title: table.title,
    path: fileOf(table),
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    bytes: bytes.length,
    hash: `sha256:${bytesToHex(sha256(bytes))}`,
    dialect: { delimiter: ',', lineTerminator: '\r\n', quoteChar: '"', doubleQuote: true, header: true },
    schema: { fields: table.fields, primaryKey: table.key, missingValues: [''] },
  };
}

/** With `/` at the end; null where the book has no address of its own. */
export const siteAddress = ({ input: { book } }: Pick<View, 'input'>): string | null => addressOf(book);

/** The name that the licence goes by; a path where it is one of the well-known ones. */
const licenceOf = (licence: string): { readonly name: string; readonly path?: string } => {
  const path = licencePages[licence];
  return path === undefined ? { name: licence.replace(/[^A-Za-z0-9._-]+/g, '-') } : { name: licence, path };
};

export const licencePages: Readonly<Record<string, string>> = {
  'CC-BY-4.0': 'https://creativecommons.org/licenses/by/4.0/',
  'CC-BY-SA-4.0': 'https://creativecommons.org/licenses/by-sa/4.0/',
  'CC-BY-NC-4.0': 'https://creativecommons.org/licenses/by-nc/4.0/',
  'CC0-1.0': 'https://creativecommons.org/publicdomain/zero/1.0/',
  'ODbL-1.0': 'https://opendatacommons.org/licenses/odbl/1-0/',
};
