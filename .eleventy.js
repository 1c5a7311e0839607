/**
 * Wiring only. Started by the `dipmark` command, the sheets come with its call; started by hand (`npm run compile`, then
 * `npx eleventy`), they are made of a book here: the demo, or the folder that DIPMARK_BOOK names.
 */
export default async function (config) {
  const byHand = process.env.ELEVENTY_SOURCE === 'cli';
  if (byHand) {
    const [{ makeBook }, { readFolder }, { wireByHand }] = await Promise.all([
      import('./dist/pipeline.js'),
      import('./dist/host/disk/book.js'),
      import('./dist/host/site/by-hand.js'),
    ]);
    await wireByHand(
      config,
      makeBook({ files: readFolder(process.env.DIPMARK_BOOK ?? 'demo-runs'), audience: 'house' }),
    );
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
