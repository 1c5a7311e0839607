import { printedPaper } from '../../src/host/paper/print.ts';
import { typstPrinter } from '../../src/host/paper/typst.ts';
import { foundIn } from '../../src/one-series.ts';
import { readHead } from '../../src/pipeline.ts';
import { paperOf } from '../../src/report/copy.ts';
import { demoFiles } from '../scenario/demo.ts';

// The client copy of the demo from its reduced series on: words, drawings, PDF. Alone in its process, so that the peak is its own.
const files = demoFiles();
const { book } = readHead(files);
const { found } = foundIn({
  ...{ files, media: null, book: book!, folder: 'hill-bowl', folders: ['hill-bowl'], audience: 'house' },
  asOf: '2026-07-10',
});
const start = performance.now();
const { paper } = paperOf(found!, found!.record.reports[0]!);
const pdf = await printedPaper(paper, (await typstPrinter())!, 'A4');
const time_s = (performance.now() - start) / 1000;
const pages = [
  ...Buffer.from(pdf)
    .toString('latin1')
    .matchAll(/\/Type\s*\/Page[^s]/g),
].length;
process.stdout.write(JSON.stringify({ time_s, pages, peak_MB: process.resourceUsage().maxRSS / 1024 }));
