// Looking for a session by what stands in it: day, title, movements, symptoms, own words.
import { markWords, sessionLine } from '$lib/logwords';
import type { SessionLogView } from '$lib/types';
import { dayWords, ladderName, variantName } from '$lib/words';

const plain = (text: string): string => text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLocaleLowerCase();

/** True if every word that is looked for stands somewhere in the session; accents and case do not matter. */
export function isFound(session: SessionLogView, wanted: string): boolean {
  const words = plain(wanted).split(/\s+/).filter(Boolean);
  if (words.length === 0) return true;
  const text = plain(
    [
      session.day,
      dayWords(session.day),
      session.title,
      session.note ?? '',
      sessionLine(session),
      ...session.sets.flatMap((set) => [variantName(set.variant), ladderName(set.ladder)]),
      ...session.marks.map(markWords),
    ].join(' '),
  );
  return words.every((word) => text.includes(word));
}
