/**
 * Wiring only. Started by the `dipmark` command, the sheets come with its call; started by hand (`npm run compile`, then
 * `npx eleventy`), they are made of a book here: the demo, or the folder that DIPMARK_BOOK names.
 */
export default async function (config) {
  const byHand = process.env.ELEVENTY_SOURCE === 'cli';
  if (byHand) {
    const [{ madeFrom }, { stillStore }, { wireByHand }] = await Promise.all([
      import('./dist/host/terminal/make.js'),
      import('./dist/host/pictures/stills.js'),
      import('./dist/host/site/by-hand.js'),
    ]);
    const store = stillStore();
    const folder = process.env.DIPMARK_BOOK ?? 'demo-runs';
    const made = await madeFrom({ folder, audience: 'house', tell: () => undefined, store });
    if (typeof made === 'string') throw new Error(made);
    await wireByHand(config, made, store.close);
  }
  return {
    // What is given here would override the folders of a call.
    dir: {
      includes: '../_includes',
      data: '../_includes/data',
      ...(byHand ? { input: 'content', output: '_site' } : {}),
    },
    templateFormats: ['njk'],
    markdownTemplateEngine: false,
    htmlTemplateEngine: false,
  };
}
