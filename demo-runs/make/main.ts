import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { makeDemo } from './demo.ts';

// The shipped book is a draw in which H-09 starts 3.4 K under its own ambient probe, as the story tells.
const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '2562' },
    quiet: { type: 'boolean', default: false },
    out: { type: 'string', default: join(import.meta.dirname, '..') },
  },
});

const files = makeDemo({ seed: Number(values.seed), quiet: values.quiet, select: !values.quiet });
let size = 0;
for (const [path, text] of files) {
  const target = join(values.out, path);
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, text);
  size += Buffer.byteLength(text);
}
console.log(`${files.size} files, ${(size / 1e6).toFixed(1)} MB in ${values.out}`);
