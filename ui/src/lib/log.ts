// A session of the log, gathered by movement: sets that alternate in a superset stand together, planned beside done.
import type { Load, Reserve, SessionLogView, SetLogView, Side, Target } from './types';

/** What was done on one side, or on both at once (`side` null), set by set. */
export interface SideDone {
  side: Side | null;
  done: Target[];
  /** What she said was left, set by set; null where nothing was said. */
  said: (Reserve | null)[];
  /** Positions of sets that a mark ended. */
  stopped: number[];
}

/** One movement of a session with one load. */
export interface LogRow {
  ladder: string;
  variant: string;
  load: Load;
  planned: Target | null;
  plannedLoad: Load | null;
  plannedVariant: string | null;
  meant: number | null;
  sides: SideDone[];
  corrected: boolean;
}

const key = (set: SetLogView): string =>
  JSON.stringify([
    set.ladder,
    set.variant,
    set.load,
    set.planned,
    set.planned_load,
    set.planned_variant,
    set.reserve_meant,
  ]);

/** Gathers the sets of a session, in the order in which each movement began. */
export function gather(sets: readonly SetLogView[]): LogRow[] {
  const rows = new Map<string, LogRow>();
  for (const set of sets) {
    const id = key(set);
    let row = rows.get(id);
    if (!row) {
      row = {
        ladder: set.ladder,
        variant: set.variant,
        load: set.load,
        planned: set.planned,
        plannedLoad: set.planned_load,
        plannedVariant: set.planned_variant,
        meant: set.reserve_meant,
        sides: [],
        corrected: false,
      };
      rows.set(id, row);
    }
    let side = row.sides.find((s) => s.side === set.side);
    if (!side) {
      side = { side: set.side, done: [], said: [], stopped: [] };
      row.sides.push(side);
    }
    if (set.stopped) side.stopped.push(side.done.length);
    side.done.push(set.done);
    side.said.push(set.reserve);
    row.corrected ||= set.corrected;
  }
  return [...rows.values()];
}

/** Rows of the ladders chosen by the mark, so that a mark can stand beside its movement. Marks without one come last. */
export function marksOf(session: SessionLogView, ladder: string | null): SessionLogView['marks'] {
  return session.marks.filter((mark) => mark.ladder === ladder);
}

/** Marks that no row of the session shows: at rest before any set, or on a ladder without a set. */
export function looseMarks(session: SessionLogView, rows: readonly LogRow[]): SessionLogView['marks'] {
  const shown = new Set(rows.map((row) => row.ladder));
  return session.marks.filter((mark) => mark.ladder === null || !shown.has(mark.ladder));
}
