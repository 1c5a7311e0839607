import type { Clause } from '../trial/claim.ts';
import type { CellFigure } from '../trial/compared.ts';
import type { Cell } from '../trial/derived.ts';
import { atKey, cellKey } from './group.ts';
import * as texts from './texts-bridging.ts';

/**
 * A claim names cells, not times. What was run in the first campaign is taken from there; an article that came later is taken
 * from its own, and so is what it is held against, unless both stand in one table.
 */
export function inCampaign(clause: Clause, cells: readonly CellFigure[]): Clause {
  const of = clause.quantity === 'makes-less-share' ? 'final-rise' : clause.quantity;
  const own = cells.filter((c) => c.quantity === of && atKey(c.at) === atKey(clause.at));
  const has = (cell: Cell): boolean => own.some((c) => cellKey(c.cell) === cellKey(cell));
  const later = own.find(
    ({ cell }) =>
      cell.campaign !== undefined && cellKey(cell) === cellKey({ ...clause.subject, campaign: cell.campaign }),
  );
  if (later?.cell.campaign === undefined || has(clause.subject)) return clause;
  const { campaign } = later.cell;
  const against = { ...clause.against, campaign };
  const joined = later.moved !== undefined;
  return {
    ...clause,
    subject: { ...clause.subject, campaign },
    against: has(against) && !(joined && has(clause.against)) ? against : clause.against,
  };
}

/** Why two figures of different campaigns are not held together. */
export function notBridged([own, other]: readonly (CellFigure | undefined)[]): string[] {
  if (own === undefined || other === undefined || own.cell.campaign === other.cell.campaign) return [];
  const later = [own, other].find(({ cell }) => cell.campaign !== undefined)!;
  return later.moved === undefined ? [texts.otherCampaign(later.cell.campaign!)] : [];
}
