import type { Choice } from '../../trial/stress.ts';

/** A choice as the address names it: "sump:own", "without:S-07". */
export function nameOf(choice: Choice): string {
  switch (choice.kind) {
    case 'sump':
      return `sump:${String(choice.sump_K)}`;
    case 'limit':
      return `limit:${String(choice.limit_K)}`;
    case 'fill':
      return `fill:${choice.basis.replace(' ', '-')}`;
    case 'drift':
      return `drift:${choice.over}`;
    case 'without':
    case 'put-back':
      return `${choice.kind}:${choice.run}`;
    default:
      return `${choice.kind}:${String(choice.times)}`;
  }
}

/** Choices that are made otherwise, by name, as the address holds them: "#with=sump:own,without:S-07". Unknown ones are passed over. */
export function takenIn(hash: string, choices: readonly Choice[]): readonly Choice[] {
  const written = new URLSearchParams(hash.replace(/^#/, '')).get('with') ?? '';
  const asked = new Set(written.split(','));
  return choices.filter((choice) => asked.has(nameOf(choice)));
}

export const addressOf = (taken: readonly Choice[]): string =>
  taken.length === 0
    ? '#with='
    : `#with=${taken.map((choice) => encodeURIComponent(nameOf(choice)).replaceAll('%3A', ':')).join(',')}`;
