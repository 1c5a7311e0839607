/** Wiring only. Started by the `dipmark` command, the pages come with its call; started by hand, they are made of a book here. */
export default async function (config) {
  const byHand = process.env.ELEVENTY_SOURCE === 'cli';
  if (byHand) {
    const { wireBook } = await import('./dist/host/site/by-hand.js');
    await wireBook(config, process.env.DIPMARK_BOOK ?? 'demo-runs');
  }
  return {
    // What is given here would override the folders of a call.
    dir: { includes: '../_includes', data: '../_includes/data', ...(byHand ? { input: 'content', output: '_site' } : {}) },
    templateFormats: ['njk'],
    markdownTemplateEngine: false,
    htmlTemplateEngine: false,
  };
}
