// How a row of the log is said: planned, done, effort, marks. The numbers stay those of the record.
import type { LogRow, SideDone } from './log';
import type { MarkLogView, SessionLogView } from './types';
import { amountWords, doseWords, has, loadWords, numberWords, sameLoad, say, symptomName } from './words';

/** `10, 10, 8 reps`, with the side before it where one side works at a time. */
function countsWords(side: SideDone): string {
  const counts = side.done.map((t) => numberWords(t.count)).join(', ');
  const by = side.done[0]?.by ?? 'reps';
  const text = say(`log-counts-${by}`, { counts });
  return side.side ? say('log-of-side', { side: say(`log-side-${side.side}`), text }) : text;
}

export const plannedWords = (row: LogRow): string =>
  row.planned && row.plannedLoad ? doseWords(row.planned, row.plannedLoad) : say('log-not-planned');

/** What was done, with the load where it differs from the planned one. */
export function doneWords(row: LogRow): string {
  const counts = row.sides.map(countsWords).join('; ');
  const other = !row.plannedLoad || !sameLoad(row.load, row.plannedLoad);
  return other ? say('dose', { amount: counts, load: loadWords(row.load) }) : counts;
}

/** What she said was left, set by set: `3, 2, 5+`. */
export function saidWords(row: LogRow): string {
  const all = row.sides.flatMap((s) => s.said);
  if (all.every((r) => r === null)) return say('log-left-unsaid');
  return all
    .map((r) => (r === null ? '–' : r.said === 'at_least' ? `${r.reps}+` : String(r.reps)))
    .join(', ');
}

export const meantWords = (row: LogRow): string => (row.meant === null ? '–' : numberWords(row.meant));

/** Number of sets (or sides of sets) that a mark ended. */
export const stoppedIn = (row: LogRow): number => row.sides.reduce((n, s) => n + s.stopped.length, 0);

/** `Heaviness or dragging, clearly, set 3`, with her own words last. */
export function markWords(mark: MarkLogView): string {
  const { kind, amount, place, words } = mark.symptom;
  const parts = [kind ? symptomName(kind) : say('log-mark-unsaid')];
  if (amount) parts.push(amountWords(amount).toLocaleLowerCase());
  if (place && has(`where-${place}`)) parts.push(say(`where-${place}`).toLocaleLowerCase());
  if (mark.round !== null) parts.push(say('log-mark-round', { round: mark.round }));
  if (words) parts.push(`“${words}”`);
  return parts.join(', ');
}

/** Effort, minutes and how she came, as one line; empty when nothing of it was said. */
export function sessionLine(session: SessionLogView): string {
  const parts: string[] = [];
  if (!session.ended) parts.push(say('log-open'));
  if (session.readiness) parts.push(say(`log-readiness-${session.readiness}`));
  if (session.minutes !== null) parts.push(say('log-minutes', { minutes: session.minutes }));
  if (session.effort !== null) parts.push(say('log-effort', { effort: session.effort }));
  return parts.join(' · ');
}

export const nextDayWords = (session: SessionLogView): string =>
  say(`log-next-${session.next_day ?? 'unanswered'}`);
