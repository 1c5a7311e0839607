import type { View } from '../report/view.ts';
import { dataTables } from './data-tables.ts';
import { licencePages, siteAddress } from './data-package.ts';
import type { TextFile } from './files.ts';

/** A schema.org Dataset in JSON-LD: for the head of the series page, and as a file of its own. */
export function dataset(view: View): TextFile {
  const { series } = view;
  const address = siteAddress(view);
  const at = (path: string) => (address === null ? path : `${address}${path}`);
  const block = {
    '@context': 'https://schema.org',
    '@type': 'Dataset',
    name: series.title,
    description: `${series.summary} ${series.question}`,
    ...(address === null ? {} : { url: at(view.base), '@id': at(view.base) }),
    license: licencePages[series.licence] ?? series.licence,
    creator: { '@type': 'Organization', name: view.input.book.lab },
    temporalCoverage: `${series.started}/..`,
    measurementTechnique: 'axle bench trial',
    variableMeasured: [...new Set(view.figures.map(({ quantity }) => quantity))].sort(),
    distribution: [
      { '@type': 'DataDownload', encodingFormat: 'application/json', contentUrl: at(`${view.base}datapackage.json`) },
      ...dataTables(view).map(({ name }) => ({
        '@type': 'DataDownload',
        encodingFormat: 'text/csv',
        contentUrl: at(`${view.base}data/${name}.csv`),
      })),
    ],
  };
  return { path: `${view.base}dataset.jsonld`, text: `${JSON.stringify(block)}\n` };
}
