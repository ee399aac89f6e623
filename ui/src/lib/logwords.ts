// How a row of the log is said: planned, done, effort, marks. The numbers stay those of the record.
import type { LogRow, SideDone } from './log';
import type { MarkLogView, SessionLogView } from './types';
import { amountWords, doseWords, has, loadWords, numberWords, sameLoad, say, symptomName } from './words';

/** What each side did, the side named before it: `right 10, 9; left 8, 8`. */
function bySide(row: LogRow, words: (side: SideDone) => string): string {
  return row.sides
    .map((side) =>
      side.side
        ? say('past-of-side', { side: say(`past-side-${side.side}`), counts: words(side) })
        : words(side),
    )
    .join('; ');
}

export const plannedWords = (row: LogRow): string =>
  row.planned && row.plannedLoad ? doseWords(row.planned, row.plannedLoad) : say('past-not-planned');

/** What was done, with the load where it differs from the planned one. */
export function doneWords(row: LogRow): string {
  const by = row.sides[0]?.done[0]?.by ?? 'reps';
  const counts = say(`past-counts-${by}`, {
    counts: bySide(row, (side) => side.done.map((t) => numberWords(t.count)).join(', ')),
  });
  const other = !row.plannedLoad || !sameLoad(row.load, row.plannedLoad);
  const text = other ? say('dose', { amount: counts, load: loadWords(row.load) }) : counts;
  return row.corrected ? say('past-corrected', { text }) : text;
}

/** What she said was left, set by set: `3, 2, 5+`. */
export function saidWords(row: LogRow): string {
  if (row.sides.every((s) => s.said.every((r) => r === null))) return say('past-left-unsaid');
  return bySide(row, (side) =>
    side.said
      .map((r) => (r === null ? '–' : r.said === 'at_least' ? `${r.reps}+` : String(r.reps)))
      .join(', '),
  );
}

export const meantWords = (row: LogRow): string => (row.meant === null ? '–' : numberWords(row.meant));

/** Number of sets (or sides of sets) that a mark ended. */
export const stoppedIn = (row: LogRow): number => row.sides.reduce((n, s) => n + s.stopped.length, 0);

/** `Heaviness or dragging, clearly, set 3`, with her own words last. */
export function markWords(mark: MarkLogView): string {
  const { kind, amount, place, words } = mark.symptom;
  const parts = [kind ? symptomName(kind) : say('past-mark-unsaid')];
  if (amount) parts.push(amountWords(amount).toLocaleLowerCase());
  if (place && has(`where-${place}`)) parts.push(say(`where-${place}`).toLocaleLowerCase());
  if (mark.round !== null) parts.push(say('past-mark-round', { round: mark.round }));
  if (words) parts.push(`“${words}”`);
  return parts.join(', ');
}

/** Effort, minutes and how she came, as one line; empty when nothing of it was said. */
export function sessionLine(session: SessionLogView): string {
  const parts: string[] = [];
  if (!session.ended) parts.push(say('past-open'));
  if (session.readiness) parts.push(say(`past-readiness-${session.readiness}`));
  parts.push(...session.today.map((thing) => say(`past-today-${thing}`)));
  if (session.minutes !== null) parts.push(say('past-minutes', { minutes: session.minutes }));
  if (session.effort !== null) parts.push(say('past-effort', { effort: session.effort }));
  return parts.join(' · ');
}

export const nextDayWords = (session: SessionLogView): string =>
  say(`past-next-${session.next_day ?? 'unanswered'}`);
