import { existsSync, writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { readFolder } from '../src/host/disk/book.ts';
import { builtFrom, frozenFile, printedOf, readFrozen, type Frozen } from './frozen.ts';

/**
 * Freezes the demo for the test of the upgrade path, once a format: npx tsx test/make-frozen.ts
 * Where a later version prints a figure otherwise, and the list of changes says so: npx tsx test/make-frozen.ts --figures
 */
const onlyFigures = process.argv.includes('--figures');
if (existsSync(frozenFile) && !onlyFigures)
  throw new Error(`${frozenFile} is there already, and its notes stay as they are`);
const files: Frozen['files'] = onlyFigures
  ? readFrozen().files
  : Object.fromEntries(readFolder('demo-runs').map(({ path, bytes }) => [path, Buffer.from(bytes).toString('latin1')]));
const frozen: Frozen = { files, figures: printedOf(builtFrom({ files })) };
writeFileSync(frozenFile, gzipSync(JSON.stringify(frozen), { level: 9 }));
