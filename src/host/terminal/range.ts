/** Part of a file that a player asked for, first and last byte; `none` lies outside, `whole` where nothing readable was asked. */
export type Range = { readonly from: number; readonly to: number } | 'whole' | 'none';

/**
 * What a Range header asks of a file of so many bytes. Only one range of bytes is answered in part; of several the whole is
 * given, as the standard allows.
 *
 * source             RFC 9110, section 14.1.2 and 14.2
 */
export function rangeOf(header: string | undefined, size: number): Range {
  const [, first, last] = /^bytes=(\d*)-(\d*)$/.exec(header?.trim() ?? '') ?? [];
  if (first === undefined || last === undefined || (first === '' && last === '')) return 'whole';
  if (first === '')
    return size === 0 || Number(last) === 0 ? 'none' : { from: Math.max(0, size - Number(last)), to: size - 1 };
  const from = Number(first);
  if (last !== '' && Number(last) < from) return 'whole';
  return from >= size ? 'none' : { from, to: last === '' ? size - 1 : Math.min(Number(last), size - 1) };
}
