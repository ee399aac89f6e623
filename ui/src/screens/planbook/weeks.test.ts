import { describe, expect, it } from 'vitest';
import type { Block, Phase, Programme, ProgrammeView, Slot } from '$lib/types';
import { placeAmong } from './drag.svelte';
import { doseIn, isOwn, ownWeeks, shapeIn, Weeks } from './weeks.svelte';

const dose = (low: number) => ({
  amount: { by: 'reps' as const, low, high: low + 4 },
  target_rir: 3,
  tempo: null,
});

const slot: Slot = {
  id: 's',
  ladder: 'squat',
  levels: null,
  dose: dose(8),
  by_week: [{ week: 3, dose: dose(6) }],
};

const block: Block = {
  id: 'b',
  form: 'straight_sets',
  rounds: 3,
  rest_seconds: 90,
  rest_between_seconds: 0,
  by_week: [{ week: 2, rounds: 4, rest_seconds: 60, rest_between_seconds: 0 }],
  slots: [slot],
};

const one: Phase = { id: 'one', title: 'One', weeks: 2 };
const two: Phase = { id: 'two', title: 'Two', weeks: 3, light_weeks: [2] };
const session = (id: string, phase: string | null) => ({ id, title: id, phase, blocks: [block] });

const [a, c, d] = [session('a', 'one'), session('c', 'two'), session('d', 'two')];

const programme: Programme = {
  id: 'p',
  revision: 1,
  title: 'P',
  per_week: 2,
  weeks: 5,
  phases: [one, two],
  sessions: [a, c, d],
};

const week = (phase: string, inPhase: number, minutes: number[]) => ({
  phase,
  in_phase: inPhase,
  light: false,
  own: false,
  minutes,
  sets: [],
});

const view: ProgrammeView = {
  programme,
  own: true,
  can_undo: false,
  can_redo: false,
  whole: true,
  minutes: [20, 30, 40],
  week: [],
  weeks: [
    week('one', 1, [21]),
    week('one', 2, [22]),
    week('two', 1, [31, 41]),
    week('two', 2, [32, 42]),
    week('two', 3, [33, 43]),
  ],
};

describe('the week in view', () => {
  it('is every week of the first phase to begin with', () => {
    const weeks = new Weeks();
    expect(weeks.phase(programme)?.id).toBe('one');
    expect(weeks.week(programme)).toBeNull();
    expect(weeks.sessions(programme).map((s) => s.id)).toEqual(['a']);
    expect(weeks.minutes(view, a)).toBe(20);
  });

  it('is looked up by its phase', () => {
    const weeks = new Weeks();
    weeks.show('two', 2);
    expect(weeks.sessions(programme).map((s) => s.id)).toEqual(['c', 'd']);
    expect(weeks.light(programme)).toEqual([2]);
    expect(weeks.seen(view)?.minutes).toEqual([32, 42]);
    expect(weeks.minutes(view, d)).toBe(42);
    expect(weeks.all(view).map((w) => w.in_phase)).toEqual([1, 2, 3]);
  });

  it('is every week again where that week is gone, and the first phase where that phase is', () => {
    const weeks = new Weeks();
    weeks.show('two', 3);
    const shorter = { ...programme, phases: [one, { ...two, weeks: 2 }] };
    expect(weeks.week(shorter)).toBeNull();
    const alone = { ...programme, phases: [one] };
    expect(weeks.phase(alone)?.id).toBe('one');
  });

  it('asks for its own or for what every week asks for', () => {
    expect(shapeIn(block, 2).rounds).toBe(4);
    expect(shapeIn(block, 3).rounds).toBe(3);
    expect(shapeIn(block, null).rounds).toBe(3);
    expect(doseIn(slot, 3).amount.low).toBe(6);
    expect(doseIn(slot, 2).amount.low).toBe(8);
    expect([1, 2, 3].map((w) => isOwn(block, w))).toEqual([false, true, true]);
    expect(ownWeeks(block)).toEqual([2, 3]);
  });
});

describe('where a dragged thing comes to stand', () => {
  const boxes = [
    { top: 0, bottom: 40 },
    { top: 40, bottom: 80 },
  ];
  it('is before the first whose middle lies below the finger', () => {
    expect([0, 19, 21, 59, 61, 500].map((y) => placeAmong(y, boxes))).toEqual([0, 0, 1, 1, 2, 2]);
    expect(placeAmong(10, [])).toBe(0);
  });
});
