import type { FindArticle, FindCell, FindCondition, FindRun, FindSeries } from '../../trial/find.ts';
import type { Ask } from './ask.ts';

/** Fields by which one run can be nearer to what is asked than another. */
export const facets = ['trial', 'kind', 'article', 'oil', 'basis', 'fill', 'speed', 'sump', 'grade'] as const;
export type Facet = (typeof facets)[number];

/** In which fields something differs from what is asked (a bit for each facet), and how far in those that can be measured. */
export interface Differs {
  readonly mask: number;
  /** In tolerances. */
  readonly distance: number;
}

export const bitOf = (facet: Facet): number => 1 << facets.indexOf(facet);
export const facetsIn = (mask: number): readonly Facet[] => facets.filter((facet) => (mask & bitOf(facet)) !== 0);

/** Reference temperatures of a series lie 10 K apart or more (common practice, no source): a quarter of that is the same. */
const sameSump_K = 2.5;
/** Between what has no measure: farther than anything measured. */
const far = 1e6;

export function cellDiffers(series: FindSeries, [article, oil, fill_L]: FindCell, ask: Ask): Differs {
  const articles = standingFor(series, article);
  const grade = series.oils[oil]?.[2] ?? '';
  const off = ask.fill_L === null ? 0 : fill_L === null ? far : Math.abs(fill_L - ask.fill_L) / series.tolerance.fill_L;
  return {
    mask:
      bit('kind', ask.kind !== '' && !articles.some(([, , kind]) => kind === ask.kind)) |
      bit('article', ask.article !== '' && !articles.some(([id, name]) => articleKey(id, name) === ask.article)) |
      bit('oil', ask.oil !== '' && grade !== ask.oil) |
      bit('fill', off > 1 + 1e-9),
    distance: off,
  };
}

export function runDiffers(series: FindSeries, [, trial, cell, basis]: FindRun, ask: Ask): Differs {
  const of = cellDiffers(series, series.cells[cell]!, ask);
  return {
    mask:
      of.mask |
      bit('trial', ask.trial !== '' && trial !== ask.trial) |
      bit('basis', ask.basis !== '' && basis !== ask.basis),
    distance: of.distance,
  };
}

export function conditionDiffers({ tolerance }: FindSeries, [, , speed_rpm, sump]: FindCondition, ask: Ask): Differs {
  const speed = ask.speed_rpm === null ? 0 : speedsApart(speed_rpm, ask.speed_rpm) / Math.log1p(tolerance.speed_ratio);
  const warm = ask.sump === null ? 0 : sumpsApart(sump, ask.sump) / sameSump_K;
  return {
    mask: bit('speed', speed > 1 + 1e-9) | bit('sump', warm > 1 + 1e-9),
    distance: Math.min(far, speed) + Math.min(far, warm),
  };
}

/** An article and what it stands in for: a flow trial of a window copy is one of the article behind it. */
function standingFor({ articles }: FindSeries, place: number): readonly FindArticle[] {
  const own = articles[place];
  return own === undefined ? [] : [own, ...own[3].map((other) => articles[other]!)];
}

export const articleKey = (id: string, name: string): string => `${id} ${name}`;

const bit = (facet: Facet, differs: boolean): number => (differs ? bitOf(facet) : 0);

/** Speeds are apart by their ratio, as loss goes by a power of speed. */
const speedsApart = (speed_rpm: number | null, asked_rpm: number): number =>
  speed_rpm === null ? Infinity : speed_rpm === asked_rpm ? 0 : Math.abs(Math.log(speed_rpm / asked_rpm));

const sumpsApart = (sump: FindCondition[3], asked: number | 'own'): number =>
  sump === asked ? 0 : sump === null || sump === 'own' || asked === 'own' ? Infinity : Math.abs(sump - asked);
