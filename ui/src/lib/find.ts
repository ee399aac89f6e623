// Finding by name: accents and case are not looked at, and the words may come in any order.

/** Letters that no accent is taken off, as people type them. */
const PLAIN: Record<string, string> = { ł: 'l', ø: 'o', đ: 'd', ß: 'ss', æ: 'ae', œ: 'oe', ı: 'i' };

export const plain = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[łøđßæœı]/gu, (letter) => PLAIN[letter] ?? letter);

/** True where each word that was typed begins a word of the name, or stands in it. */
export function finds(typed: string, name: string): boolean {
  const within = plain(name);
  return plain(typed)
    .split(/\s+/u)
    .every((word) => within.includes(word));
}
