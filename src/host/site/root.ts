import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Where this package lies: three rooms up, from its sources and from its compiled form alike. */
export const packageRoot = fileURLToPath(new URL('../../../', import.meta.url));

const described = JSON.parse(readFileSync(`${packageRoot}package.json`, 'utf8')) as { readonly version: string };
export const packageVersion = described.version;
