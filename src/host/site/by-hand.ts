import type { UserConfig } from '@11ty/eleventy';
import { copyAssets } from './assets.ts';
import type { SiteInput } from './build.ts';
import { aroundView, layOut, writeFiles } from './build.ts';
import { placeMedia } from './place-media.ts';
import { noMedia } from './shown.ts';
import { wire } from './wire.ts';

/** For `npx eleventy` started by hand in this package: the same sheets, written straight into Eleventy's own output folder. */
export async function wireByHand(
  config: UserConfig,
  made: Pick<SiteInput, 'pages' | 'files' | 'frame' | 'shown'>,
  end: () => void,
): Promise<void> {
  wire(config, { sheets: await layOut(made), around: aroundView(made.frame) });
  config.on('eleventy.after', async () => {
    await copyAssets(config.directories.output);
    await writeFiles(made.files, config.directories.output);
    await placeMedia(made.shown ?? noMedia, { fresh: config.directories.output });
    end();
  });
}
