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

/** Findings as JSON to standard output, or as text with their lines: to standard output where they are what was asked for. */
export function sayFindings(findings: readonly Finding[], json: boolean, asked = false): void {
  if (json) {
    sayJson(findings.map(asJson));
    return;
  }
  const to = asked ? process.stdout : process.stderr;
  if (findings.length > 0) to.write(`${showFindings(findings, { limit: 200 })}\n`);
  to.write(`${summary(findings)}\n`);
}

export function sayJson(list: readonly unknown[]): void {
  process.stdout.write(`${JSON.stringify(list, null, 2)}\n`);
}

export const counted =
  (tell: (what: string) => void) =>
  (done: number, all: number, what: string): void => {
    tell(`${done} of ${all}  ${what}`);
  };
