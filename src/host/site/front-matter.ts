import type { UserConfig } from '@11ty/eleventy';
import { parseDocument } from 'yaml';

/**
 * Front matter of our own templates is plain YAML and nothing else. The site builder would evaluate `---js` and its other
 * spellings; each engine it knows is replaced here by one that refuses (merging options would leave some of them standing).
 */
export function closeFrontMatter(config: UserConfig): void {
  const { engines } = config.frontMatterParsingOptions;
  for (const name of new Set([...Object.keys(engines), ...evaluating]))
    engines[name] = { parse: refuse, stringify: empty };
  engines['yaml'] = { parse: plainYaml, stringify: empty };
}

const evaluating = [
  'js',
  'javascript',
  'jsLegacy',
  'JS',
  'JavaScript',
  'node',
  'json',
  'toml',
  'coffee',
  'cson',
  'constructor',
  'toString',
];

const empty = () => '';

function refuse(): never {
  throw new Error('Front matter must be plain YAML.');
}

function plainYaml(text: string): unknown {
  const document = parseDocument(text, { schema: 'core', uniqueKeys: true });
  const trouble = document.errors[0] ?? document.warnings[0];
  if (trouble) throw trouble;
  if (document.directives.yaml.explicit === true) refuse();
  return document.toJS({ maxAliasCount: 20 });
}
