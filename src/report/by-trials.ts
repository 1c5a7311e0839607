import type { Figure } from '../ledger/figure.ts';
import type { Working } from '../ledger/ledger.ts';
import { numberText } from './digits.ts';
import type { Block } from './page.ts';
import { code, prose, row, strong, tableBlock } from './spans.ts';

/** The same figure by trials beside the linear answer, and which of the two is published. */
export function trialBlocks(
  figure: Figure,
  working: Working | undefined,
  { id, unit }: { id: string; unit: string },
): Block[] {
  const trials = working?.trials;
  if (trials == null || working?.u == null) return [];
  const decimals = decimalsFor(working.u);
  const ends = ([low, high]: readonly [number, number]) => [numberText(low, decimals), numberText(high, decimals)];
  const coverage = `${numberText(figure.coverage * 100, 0)} %`;
  return [
    prose(
      strong('By trials'),
      ` ${numberText(trials.draws, 0)} of them (JCGM 101), seed `,
      code(trials.seed),
      trials.shortest ? `; the shortest interval that holds ${coverage}` : `; as much below the interval as above it`,
      trials.met ? '' : '; they had not settled to one digit of it by then',
      trials.agrees
        ? '. Both ends of the linear interval lie within a tenth of the standard uncertainty of these, so the linear one is published.'
        : '. An end of the linear interval lies further off than a tenth of the standard uncertainty, so the one by trials is published.',
    ),
    tableBlock(
      id,
      ['wide way', `number one standard uncertainty, ${unit}`, `number ${coverage} from`, 'number to'],
      [
        row('linear (JCGM 100)', numberText(working.u, decimals), ...ends(trials.linear)),
        row('by trials', trials.u === null ? '—' : numberText(trials.u, decimals), ...ends(trials.interval)),
      ],
    ),
  ];
}

/** Two digits of the uncertainty, and one more so that the two ways can be held against each other. */
const decimalsFor = (u: number): number => (u > 0 ? Math.max(0, 2 - Math.floor(Math.log10(u))) : 2);
