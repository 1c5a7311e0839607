import { expect } from 'vitest';
import type { ColumnMap } from '../../../src/trial/rig.ts';
import { foundIn, read, recordOf } from './sheets.ts';

/** A malformed file and what must become of it. Metrology practice: common practice, no source. */
export interface Hazard {
  readonly id: string;
  readonly title: string;
  readonly content: string | Uint8Array;
  readonly map?: ColumnMap;
  readonly finds: readonly string[];
  /** A line of the record; a log that is refused has none. */
  readonly record?: RegExp;
  readonly says?: RegExp;
}

export function expectHazard({ content, map, finds, record, says }: Hazard): void {
  const reading = read(content, map);
  expect(foundIn(reading)).toEqual(finds);
  // A unit in doubt is a warning that still leaves the log unused.
  expect(reading.ok).toBe(
    !finds.some((found) => found.startsWith('error') || found.includes('warning unit-contradicted')),
  );
  if (record !== undefined) expect(recordOf(reading)).toMatch(record);
  if (says !== undefined) expect(reading.findings.map((f) => f.says).join(' ')).toMatch(says);
}
