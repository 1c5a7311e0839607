/** The known word that was meant, or null when it is not sure: too far, or two words equally near. */
export function nearest(word: string, known: readonly string[]): string | null {
  const typed = word.toLowerCase();
  const allowed = typed.length < 3 ? 0 : typed.length < 6 ? 1 : 2;
  let found: string | null = null;
  let least = allowed + 1;
  let tied = false;
  for (const candidate of new Set(known)) {
    const edits = editsBetween(typed, candidate.toLowerCase(), allowed);
    if (edits < least) [found, least, tied] = [candidate, edits, false];
    else if (edits === least && edits <= allowed) tied = true;
  }
  return tied ? null : found;
}

/** Insertions, deletions, replacements and swaps of neighbours (optimal string alignment); allowed + 1 means farther. */
export function editsBetween(a: string, b: string, allowed = Infinity): number {
  if (Math.abs(a.length - b.length) > allowed) return allowed + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let edits = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) edits = Math.min(edits, before[j - 2]! + 1);
      row.push(edits);
    }
    [before, last] = [last, row];
  }
  return Math.min(last[b.length]!, allowed + 1);
}
