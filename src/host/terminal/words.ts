import { readFileSync } from 'node:fs';

export const usage = `Usage
  dipmark check   [folder]                     findings only
  dipmark build   [folder] [--out _site]       the site of the whole book, for the house
  dipmark build   [folder] --public            only what is marked shown-to: public
  dipmark preview [folder] [--port 8080]       build, serve on this machine only, rebuild on save

Options
  --json       findings as JSON, for other programs (check, build)
  --help, -h   this text
  --version    the version

Exit status: 0 clean, 1 findings that stop publication, 2 wrong call.
`;

/** From the package's own package.json, beside dist/. */
export function version(): string {
  const text = readFileSync(new URL('../../../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}
