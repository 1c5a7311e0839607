import type { View } from '../report/view.ts';
import { isOut, partsOf } from '../report/parts-view.ts';
import { siteAddress } from './data-package.ts';
import type { TextFile } from './files.ts';

/** `CITATION.cff` (Citation File Format 1.2.0) of a series: how it is to be named in another text. */
export function citation(view: View): TextFile {
  const { series } = view;
  const { book } = view.input;
  const last =
    partsOf(view)
      .filter(isOut)
      .map(({ published }) => published!)
      .sort()
      .at(-1) ?? series.started;
  const address = siteAddress(view);
  const spdx = /^(?:CC-BY(?:-SA|-NC|-ND)*-4\.0|CC0-1\.0|ODbL-1\.0)$/.test(series.licence);
  const lines = [
    'cff-version: 1.2.0',
    'message: If you use these figures, name the series as below, and the day you read it.',
    'type: dataset',
    `title: ${quoted(series.title)}`,
    `abstract: ${quoted(series.summary)}`,
    'authors:',
    `  - name: ${quoted(book.lab)}`,
    ...(spdx ? [`license: ${series.licence}`] : []),
    `date-released: ${last}`,
    ...(address === null ? [] : [`url: ${quoted(`${address}${view.base}`)}`]),
    `version: ${quoted(`method ${view.input.ledger.methodVersion}`)}`,
  ];
  return { path: `${view.base}CITATION.cff`, text: `${lines.join('\n')}\n` };
}

/** A YAML string in double quotes is JSON. */
const quoted = (text: string): string => JSON.stringify(text);
