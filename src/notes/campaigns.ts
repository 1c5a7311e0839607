import { mayAdjust, type Campaign } from '../trial/campaign.ts';
import type { Series } from '../trial/book.ts';
import type { Into } from './read-value.ts';
import { tellAt } from './record.ts';
import * as say from './texts-campaigns.ts';

/** Later campaigns as they are read: each with a name and days of its own, after the series began. */
export function campaignsOf(
  written: readonly Campaign[] | null,
  started: string,
  into: Into,
): Pick<Series, 'campaigns'> {
  if (written === null) return {};
  for (const [i, campaign] of written.entries()) {
    const before = written[i - 1]?.from ?? started;
    if (written.findIndex(({ id }) => id === campaign.id) < i)
      tellAt(into, `campaigns.${i}.id`, say.campaignTwice(campaign.id));
    if (campaign.from <= before) tellAt(into, `campaigns.${i}.from`, say.campaignNotLater(campaign, before));
    if (campaign.bridge === 'adjust' && !mayAdjust(campaign))
      tellAt(into, `campaigns.${i}.bridge`, say.bridgeChosenLate(campaign));
  }
  return { campaigns: written };
}
