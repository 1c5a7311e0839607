import type { UserConfig } from '@11ty/eleventy';
import syntaxHighlight from '@11ty/eleventy-plugin-syntaxhighlight';
import { closeFrontMatter } from './front-matter.ts';
import { html } from './html.ts';
import { keptTogether } from './kept-together.ts';
import type { SheetView } from './view.ts';

/** What the templates are given besides the pages. */
export interface AroundView {
  readonly lab: string;
  readonly language: string;
  readonly invented: boolean;
  readonly footer: readonly string[];
  readonly version: string;
}

/** Sets up Eleventy: templates of this package only, no evaluated front matter, nothing remembered between two builds. */
export function wire(
  config: UserConfig,
  given: { readonly sheets: readonly SheetView[]; readonly around: AroundView },
): void {
  // An installed package lies in node_modules, which the builder skips without a word.
  config.ignores.delete('**/node_modules/**');
  config.setUseGitIgnore(false);
  config.setUseTemplateCache(false);
  config.setTemplateFormats(['njk']);
  config.setDataFileSuffixes([]);
  config.setNunjucksEnvironmentOptions({
    autoescape: true,
    throwOnUndefined: false,
    trimBlocks: true,
    lstripBlocks: true,
  });
  // It would tell the terminal which of its own steps took a tenth of a build.
  for (const group of ['Configuration', 'Data', 'Aggregate'])
    config.benchmarkManager.get(group).setMinimumThresholdPercent(1000);
  closeFrontMatter(config);
  config.addPlugin(syntaxHighlight, { templateFormats: ['njk'], preAttributes: { tabindex: 0 } });
  // All give finished HTML. As filters the builder would time each call, and report it.
  config.addNunjucksGlobal('text', { kept: keptTogether, ...html });
  config.addGlobalData('sheets', given.sheets);
  config.addGlobalData('around', given.around);
}
