import { beforeAll, describe, expect, it } from 'vitest';
import { printedPaper } from '../../src/host/paper/print.ts';
import { typstPrinter } from '../../src/host/paper/typst.ts';
import { foundIn } from '../../src/one-series.ts';
import { readHead } from '../../src/pipeline.ts';
import { paperOf } from '../../src/report/copy.ts';
import { demoFiles } from '../scenario/demo.ts';
import { readPdf } from '../scenario/pdf-text.ts';

// The same client copy of the demo, issued again after COR-01 had reached it.
let text: string;
beforeAll(async () => {
  const files = demoFiles();
  const { found } = foundIn({
    ...{ files, media: null, book: readHead(files).book!, folder: 'hill-bowl', folders: ['hill-bowl'] },
    ...{ audience: 'house', asOf: '2026-08-10' },
  });
  const [first] = found!.record.reports;
  const second = { ...first!, version: 2, issued: '2026-08-10', supersedes: 'CR-01, issue 1' };
  const { paper, told } = paperOf(found!, second);
  expect(told).toBeNull();
  const { pages } = await readPdf(await printedPaper(paper, (await typstPrinter())!, 'A4'));
  text = pages.join('\n').replaceAll(/\s+/g, ' ');
});

describe('a second issue', () => {
  it('says what it takes the place of, what was corrected, and which word changed', () => {
    expect(text).toContain('This is issue 2. It takes the place of CR-01, issue 1, which is kept.');
    expect(text).toContain('CL-5: shown → not shown');
    expect(text).toMatch(/less P0 pressed bowl, 2\.40 L of O1: final rise above ambient −5\.0 ± 1\.3 K −1\.1 ± 1\.3 K/);
  });
  it('tells nothing of what was run later, of other articles, or of what is withheld', () => {
    expect(text).not.toContain('no longer told');
    expect(text).not.toMatch(/\b(?:P1w?|P3|P5|H-10|S-30)\b|deep[\s_-]*bowl/i);
    expect(text).toContain('Two runs withheld');
  });
});
