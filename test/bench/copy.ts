import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Measure } from './book.ts';

/** The client copy of the demo, some thirty pages with twenty charts, from its reduced series to the bytes of its PDF. */
export function copyBench(): readonly Measure[] {
  const child = fileURLToPath(new URL('copy-child.ts', import.meta.url));
  const told = execFileSync(process.execPath, ['--import', 'tsx', child], { encoding: 'utf8' });
  const { time_s, pages, peak_MB } = JSON.parse(told) as { time_s: number; pages: number; peak_MB: number };
  return [
    { name: 'client copy, pages', value: pages, unit: 'pages' },
    { name: 'client copy, set and drawn', value: Math.round(time_s * 10) / 10, unit: 's' },
    { name: 'client copy, peak memory', value: Math.round(peak_MB), unit: 'MB' },
  ];
}
