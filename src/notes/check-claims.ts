import type { Finding } from '../finding/finding.ts';
import { rpmText } from '../trial/cue.ts';
import { nominalCell } from '../trial/cell.ts';
import type { Series } from '../trial/book.ts';
import type { Claim, Clause } from '../trial/claim.ts';
import type { At, Cell } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';
import { claimLeftOut } from './claim-fields.ts';
import type { ClaimNote, ClaimsNote, ClauseNote } from './claims.ts';
import { type Known, namesOf, stranger } from './check-series.ts';
import { foundAt } from './gather.ts';
import { plannedSpeed } from './step.ts';
import * as say from './texts-claims.ts';

export interface ClaimsAround {
  readonly known: Pick<Known, 'articles' | 'oils'>;
  readonly runs: readonly string[];
  readonly series: Series;
  readonly plan: Plan | null;
}

/** Claims whose cells, speeds and limits are those of the series, in the order of the note. A wrong one is left out alone. */
export function checkClaims(
  note: ClaimsNote,
  around: ClaimsAround,
): { readonly claims: readonly Claim[]; readonly findings: readonly Finding[] } {
  const claims: Claim[] = [];
  const findings: Finding[] = [];
  const taken = [...namesOf(around.known.articles), ...namesOf(around.known.oils), ...around.runs];
  for (const one of note.claims) {
    const same = taken.find((name) => name.toLowerCase() === one.id.toLowerCase());
    const clauses = one.clauses.map((clause) => toClause(clause, note, around));
    const found = [
      ...(same === undefined ? [] : [foundAt(note, `${one.path}.id`, say.idTaken(one.id, same))]),
      ...clauses.flatMap((c) => c.findings),
    ];
    taken.push(one.id);
    findings.push(...found.map((f) => ({ ...f, effect: claimLeftOut, about: { claim: one.id } })));
    if (found.length === 0) claims.push(toClaim(one, clauses));
  }
  return { claims, findings };
}

const toClaim = (
  { id, sentence, by, made, override, place }: ClaimNote,
  clauses: readonly { clause: Clause }[],
): Claim => ({ id, sentence, by, made, override, place, clauses: clauses.map(({ clause }) => clause) });

function toClause(
  one: ClauseNote,
  note: ClaimsNote,
  around: ClaimsAround,
): { readonly clause: Clause; readonly findings: readonly Finding[] } {
  const { known, series } = around;
  const { baseline } = series;
  const of = { ...one.of, oil: one.of.oil ?? baseline.oil };
  const other = one.against;
  const against = {
    article: other?.article ?? baseline.article,
    oil: other?.oil ?? baseline.oil,
    fill_m3: other?.fill.value ?? baseline.fill_m3,
    tilt_ratio: other?.tilt?.value ?? of.tilt.value,
  };
  const subject = nominalCell({ ...of, fill_m3: of.fill.value, tilt_ratio: of.tilt.value }, { ...around, ...series });
  const held = nominalCell(against, { ...around, ...series });
  const strangers = [
    ...stranger(note, `${one.path}.of.article`, 'article', of.article, namesOf(known.articles)),
    ...stranger(note, `${one.path}.of.oil`, 'oil', of.oil, namesOf(known.oils)),
    ...(other === null
      ? []
      : [
          ...stranger(note, `${one.path}.against.article`, 'article', against.article, namesOf(known.articles)),
          ...stranger(note, `${one.path}.against.oil`, 'oil', against.oil, namesOf(known.oils)),
        ]),
  ];
  const conditions = conditionsOf(one, note, around);
  const same =
    strangers.length === 0 && isSame(subject, held)
      ? [foundAt(note, `${one.path}.${other === null ? 'of' : 'against'}`, say.sameCells())]
      : [];
  const { quantity, direction, threshold, thresholdTyped, place } = one;
  return {
    clause: {
      ...{ quantity, at: conditions.at, subject, against: held },
      ...{ direction, threshold, thresholdTyped, place },
    },
    findings: [...strangers, ...conditions.findings, ...same],
  };
}

const isSame = (a: Cell, b: Cell): boolean =>
  a.article === b.article &&
  a.oil === b.oil &&
  Math.abs(a.fill_m3 - b.fill_m3) < 1e-9 &&
  Math.abs(a.tilt_ratio - b.tilt_ratio) < 1e-9;

/** Each condition as the plan or the series has it, since figures stand at those only. */
function conditionsOf(
  { path, speed, sump, limit }: ClauseNote,
  note: ClaimsNote,
  { plan, series }: ClaimsAround,
): { readonly at: At; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const tell = (field: string, told: ReturnType<typeof say.notListed>): void => {
    findings.push(foundAt(note, `${path}.at.${field}`, told));
  };
  const step = speed && plan ? plannedSpeed(speed.value, plan.steps_rad_s) : null;
  if (speed && plan && step?.planned !== true) {
    const field = note.places.has(`${path}.at.wheel-speed`) ? 'wheel-speed' : 'output-speed';
    const near = step && `${rpmText(step.speed_rad_s)} rpm`;
    tell(field, say.notListed(speed.asWritten, 'the steps of the plan', 'steps in plan.md', near));
  }
  const listed = (typed: number, list: readonly number[]) => list.find((value) => Math.abs(value - typed) < 1e-3);
  const held = sump === null || sump === 'own' ? sump : listed(sump.value, series.reference.sump_K);
  if (sump !== null && sump !== 'own' && held === undefined)
    tell(
      'sump',
      say.notListed(sump.asWritten, 'the reference sump temperatures', 'sump under reference in series.md', null),
    );
  const crossed = limit && plan ? listed(limit.value, plan.limits_K) : limit?.value;
  if (limit && crossed === undefined)
    tell('limit', say.notListed(limit.asWritten, 'the limits of the plan', 'limits in plan.md', null));
  return {
    at: {
      ...(speed ? { outputSpeed_rad_s: step?.speed_rad_s ?? speed.value } : {}),
      ...(held == null ? {} : { sump_K: held }),
      ...(crossed === undefined ? {} : { limit_K: crossed }),
    },
    findings,
  };
}
