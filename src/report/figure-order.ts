import type { Figure } from '../ledger/figure.ts';

/** Order of the story: what was found, then what it rests on, then what it was filled with. */
const quantities: readonly string[] = [
  'spin-power',
  'final-rise',
  'makes-less',
  'sheds-more',
  'cover-share-bound',
  'makes-less-share',
  'surface-shed',
  'article-shed',
  'article-shed-share',
  'film-ratio',
  'energy-cost',
  'fuel-cost',
  'spin-power-interaction',
  'spin-power-by-level',
  'final-rise-interaction',
  'final-rise-by-level',
  'heat-made-interaction',
  'heat-made-by-level',
  'limit-crossing',
  'final-temperature',
  'heat-made',
  'shed',
  'store',
  'bearing-rise',
  'reach',
  'running-level',
  'level-swing',
  'level-gap',
  'side',
  'wall',
  'bubble',
  'tube',
  'held-up',
  'level-half-time',
  'bubble-clear-time',
  'air-share',
  'level-at-pinion',
  'bath-over-race',
  'reynolds',
  'reynolds-loaded',
  'jet-power',
  'kappa',
  'grades-equal',
  'grades-within-one',
  'time-constant',
  'shed-rest',
  'closure',
  'spin-torque',
  'loss-estimate',
  'speed-exponent',
  'viscosity-exponent',
  'speed-exponent-above',
  'viscosity-exponent-above',
  'viscosity',
  'fill-volume',
  'static-level',
  'immersion',
  'equal-level-volume',
  'hot-level-rise',
  'camera-ahead',
  'thermal-dose',
  'viscosity-40-change',
  'viscosity-100-change',
  'viscosity-index-change',
  'acid-number-change',
  'water-change',
  'iron-change',
  'copper-change',
  'foam-change',
  'air-release-change',
];

export const rankOf = (quantity: string): number => {
  const at = quantities.indexOf(quantity);
  return at === -1 ? quantities.length : at;
};

/** By quantity, then speed, sump and limit as numbers; a book's order, not a computer's. */
export const byStory = (a: Figure, b: Figure): number =>
  rankOf(a.quantity) - rankOf(b.quantity) ||
  byText(a.quantity, b.quantity) ||
  numberIn(a.at['wheel-speed'] ?? a.at['output-speed']) - numberIn(b.at['wheel-speed'] ?? b.at['output-speed']) ||
  numberIn(a.at.sump) - numberIn(b.at.sump) ||
  numberIn(a.at.limit) - numberIn(b.at.limit) ||
  byText(a.at.sample ?? '', b.at.sample ?? '') ||
  Number(a.at.charge !== undefined) - Number(b.at.charge !== undefined) ||
  byText(a.at.charge ?? '', b.at.charge ?? '') ||
  bandIn(a) - bandIn(b) ||
  numberIn(a.at.tilt) - numberIn(b.at.tilt) ||
  Number(a.at.direction === 'down') - Number(b.at.direction === 'down');

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The whole stands before its bands. */
const bandIn = ({ at }: Figure): number => (at.band === undefined ? -1e9 : Number.parseFloat(at.band));

/** "own" stands after every temperature. */
const numberIn = (text: string | undefined): number => {
  const value = Number.parseFloat(text ?? '0');
  return Number.isNaN(value) ? 1e9 : value;
};
