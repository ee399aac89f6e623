// Ladders by what is typed: the beginning of the name first, then the beginning of any word in it, then anywhere.

const plain = (text: string): string =>
  text.normalize('NFD').replace(/\p{M}/gu, '').toLocaleLowerCase().trim();

/** The ladders that fit what was typed, the best first; all of them for nothing typed. */
export function ladderFor<T extends { ladder: string }>(
  typed: string,
  ladders: readonly T[],
  name: (ladder: string) => string,
): T[] {
  const wanted = plain(typed);
  if (wanted === '') return [...ladders];
  const rank = (of: T): number => {
    const found = plain(name(of.ladder));
    if (found.startsWith(wanted)) return 0;
    if (found.split(/[\s-]+/).some((word) => word.startsWith(wanted))) return 1;
    return found.includes(wanted) ? 2 : 3;
  };
  return ladders
    .map((of, i) => ({ of, i, rank: rank(of) }))
    .filter((f) => f.rank < 3)
    .sort((a, b) => a.rank - b.rank || a.i - b.i)
    .map((f) => f.of);
}
