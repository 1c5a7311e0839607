/** Bench book: who stood at the bench and what they wrote down. */
export type Words = Readonly<Record<string, { readonly by: readonly string[]; readonly text: string }>>;
