import { describe, expect, it } from 'vitest';
import { gather, looseMarks, marksOf } from './log';
import type { Load, SessionLogView, SetLogView } from './types';

const kg = (value: number): Load => ({ make: 'one', weight: { value, unit: 'kg' } });
let n = 0;
const set = (ladder: string, load: Load, count: number, over: Partial<SetLogView> = {}): SetLogView => ({
  record: `r${(n += 1)}`,
  ladder,
  side: null,
  variant: `${ladder}-plain`,
  load,
  done: { by: 'reps', count },
  reserve: { said: 'exactly', reps: 3 },
  reserve_meant: 3,
  planned: { by: 'reps', count: 10 },
  planned_load: load,
  planned_variant: `${ladder}-plain`,
  stopped: false,
  corrected: false,
  ...over,
});

describe('gathering a session', () => {
  it('brings together what a superset does by turns', () => {
    const rows = gather([
      set('squat', kg(12), 10),
      set('row', kg(8), 9),
      set('squat', kg(12), 8, { stopped: true }),
      set('row', kg(8), 9, { corrected: true }),
    ]);
    expect(rows.map((r) => r.ladder)).toEqual(['squat', 'row']);
    expect(rows[0]?.sides[0]?.done.map((t) => t.count)).toEqual([10, 8]);
    expect(rows[0]?.sides[0]?.stopped, 'the second set was ended by a mark').toEqual([1]);
    expect(rows[1]?.corrected).toBe(true);
  });

  it('shows another load as a row of its own', () => {
    const rows = gather([set('squat', kg(12), 10), set('squat', kg(10), 10, { planned_load: kg(12) })]);
    expect(rows).toHaveLength(2);
    expect(rows[1]?.plannedLoad).toEqual(kg(12));
  });

  it('keeps the sides apart within a row', () => {
    const rows = gather([
      set('row', kg(8), 10, { side: 'right' }),
      set('row', kg(8), 8, { side: 'left', reserve: null }),
      set('row', kg(8), 9, { side: 'right' }),
    ]);
    expect(rows).toHaveLength(1);
    expect(rows[0]?.sides.map((s) => [s.side, s.done.map((t) => t.count)])).toEqual([
      ['right', [10, 9]],
      ['left', [8]],
    ]);
    expect(rows[0]?.sides[1]?.said).toEqual([null]);
  });

  it('loses no mark: each stands beside its ladder or among the loose ones', () => {
    const symptom = { kind: 'heaviness', amount: null, place: null, words: null };
    const session: SessionLogView = {
      today: [],
      run: 'run',
      day: '2026-03-05',
      title: 'A',
      readiness: null,
      sets: [set('squat', kg(12), 10)],
      marks: [
        { mark: 'm1', ladder: 'squat', symptom, round: 1 },
        { mark: 'm2', ladder: null, symptom, round: null },
        { mark: 'm3', ladder: 'row', symptom, round: 1 },
      ],
      effort: null,
      minutes: null,
      note: null,
      next_day: null,
      ended: true,
    };
    const rows = gather(session.sets);
    const shown = [...rows.flatMap((r) => marksOf(session, r.ladder)), ...looseMarks(session, rows)];
    expect(shown.map((m) => m.mark).sort()).toEqual(['m1', 'm2', 'm3']);
  });
});
