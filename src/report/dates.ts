const months = 'January February March April May June July August September October November December'.split(' ');

/** "17 March 2026", from a date or a time of ISO 8601; what cannot be read stays as it was written. */
export function dateWords(iso: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})/.exec(iso) ?? [];
  const name = months[Number(month) - 1];
  return year === undefined || day === undefined || name === undefined ? iso : `${String(Number(day))} ${name} ${year}`;
}

/** "10:05", as the clock at the rig showed it; empty for a bare date. */
export const clockWords = (iso: string): string => /T(\d{2}:\d{2})/.exec(iso)?.[1] ?? '';

export const momentWords = (iso: string): string =>
  [dateWords(iso), clockWords(iso)].filter((words) => words !== '').join(', ');
