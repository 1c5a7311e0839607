/** Neighbouring steps whose names end alike: "60 rpm up", "120 rpm up" are the heads 60 and 120 of "rpm up". */
export interface NameGroup {
  /** Where the group begins in the list. */
  readonly first: number;
  readonly heads: readonly string[];
  /** What all of them share; empty when the name is one word. */
  readonly rest: string;
}

export function nameGroups(names: readonly string[]): readonly NameGroup[] {
  const groups: { first: number; heads: string[]; rest: string }[] = [];
  names.forEach((name, i) => {
    const [head = '', ...words] = name.trim().split(/\s+/);
    const rest = words.join(' ');
    const last = groups.at(-1);
    if (last?.rest === rest) last.heads.push(head);
    else groups.push({ first: i, heads: [head], rest });
  });
  return groups;
}
