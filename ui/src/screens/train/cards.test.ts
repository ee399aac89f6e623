import { expect, test } from 'vitest';
import {
  blocks,
  finished,
  inSession,
  isClosed,
  isReady,
  mark,
  view,
  work,
} from '../../fixtures/scenes-train';
import type { TrainView } from '$lib/types';
import { cardOf, fills, openMark, type Doing } from './cards';
import { Memory, type Store } from './memory';

const idle: Doing = { marking: null, checkingIn: false, paused: false, finishing: false };

function shelf(): Store {
  const kept = new Map<string, string>();
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}

const card = (v: TrainView, doing: Partial<Doing> = {}, memory = new Memory(shelf())) =>
  cardOf(v, { ...idle, ...doing }, memory);

const rest = { after: 'set-1', until: '2026-03-12T09:10:00+01:00', seconds: 90 };
const opens = blocks[0] ?? null;

test('before and after a session', () => {
  expect(card(view({ state: 'no_plan' }))).toBe('no-plan');
  expect(card(isReady())).toBe('ready');
  expect(card(isReady(), { checkingIn: true })).toBe('check-in');
  expect(card(view({ state: 'finished', ...finished }))).toBe('finished');
});

test('in a session: rest, then the block, then the set', () => {
  const memory = new Memory(shelf());
  const now = inSession({ rest, opens });
  expect(card(now, {}, memory), 'the rest runs first').toBe('rest');
  memory.leaveRest(rest.after);
  expect(card(now, {}, memory), 'then what is coming').toBe('block');
  memory.readBlock('run-5', opens?.block ?? '');
  expect(card(now, {}, memory)).toBe('work');
  expect(
    card(inSession({ rest: { ...rest, after: 'set-2' } }), {}, memory),
    'another rest is another card',
  ).toBe('rest');
});

test('all sets done, or stopped for today: the finish card', () => {
  expect(card(inSession({ work: null }))).toBe('finish');
  expect(card(inSession({ rest }), { finishing: true })).toBe('finish');
  expect(card(inSession(), { paused: true })).toBe('pause');
});

test('a mark is asked about before anything else, but a sign that stops training is answered at once', () => {
  expect(card(inSession({ rest }), { marking: mark })).toBe('mark');
  expect(card(isClosed({ class: 'hold' }), { marking: mark }), 'a hold is still being described').toBe(
    'mark',
  );
  expect(card(isClosed({ class: 'hold' }))).toBe('stop');
  expect(card(isClosed({ class: 'red' }), { marking: mark }), 'red').toBe('stop');
});

test('only the cards of a session push the navigation aside', () => {
  expect(fills('work') && fills('rest') && fills('mark') && fills('finish') && fills('block')).toBe(true);
  expect(fills('ready') || fills('stop') || fills('pause') || fills('finished')).toBe(false);
});

test('a mark that was never described is asked about again after a restart, unless it was passed by', () => {
  const now = inSession({ marks: [mark] });
  const store = shelf();
  expect(openMark(now, new Memory(store))?.mark).toBe(mark.mark);
  new Memory(store).passMark(mark.mark);
  expect(openMark(now, new Memory(store)), 'passed by').toBeNull();
  const said = { ...mark, symptom: { ...mark.symptom, kind: 'heaviness' } };
  expect(openMark(inSession({ marks: [said] }), new Memory(shelf())), 'described').toBeNull();
  expect(openMark(isReady(), new Memory(shelf())), 'no session').toBeNull();
});

test('what the page remembers outlives a restart of the page, and a store that is barred does no harm', () => {
  const store = shelf();
  const first = new Memory(store);
  first.leaveRest('set-9');
  first.addExtra('set-9', 30);
  first.addExtra('set-9', -15);
  first.runTimer('a set', 1234);
  const again = new Memory(store);
  expect(again.restLeft('set-9')).toBe(true);
  expect(again.extra('set-9'), 'seconds add up').toBe(15);
  expect(again.extra('set-10'), 'of that rest alone').toBe(0);
  expect(again.timerFrom('a set')).toBe(1234);
  expect(again.timerFrom('another set')).toBeNull();

  const barred: Store = {
    getItem: () => {
      throw new Error('barred');
    },
    setItem: () => {
      throw new Error('barred');
    },
  };
  const memory = new Memory(barred);
  memory.leaveRest('set-1');
  expect(memory.restLeft('set-1'), 'remembered while the page lives').toBe(true);
  expect(work.slot, 'the fixtures are read').toBe('a1');
});
