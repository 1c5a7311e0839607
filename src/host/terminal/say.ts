import { asJson, showFindings, summary } from '../../finding/show.ts';
import type { Finding } from '../../finding/finding.ts';

/** One changing line on a terminal; silent in a pipe, so that logs stay clean. */
export function progress(): { tell: (what: string) => void; end: () => void } {
  const shown = process.stderr.isTTY;
  return {
    tell: (what) => {
      if (shown) process.stderr.write(`\r\u001b[K${what}`);
    },
    end: () => {
      if (shown) process.stderr.write('\r\u001b[K');
    },
  };
}

/** Findings to standard output as JSON, or to standard error as text with their lines. */
export function sayFindings(findings: readonly Finding[], json: boolean): void {
  if (json) {
    process.stdout.write(`${JSON.stringify(findings.map(asJson), null, 2)}\n`);
    return;
  }
  if (findings.length > 0) process.stderr.write(`${showFindings(findings, { limit: 200 })}\n`);
  process.stderr.write(`${summary(findings)}\n`);
}
