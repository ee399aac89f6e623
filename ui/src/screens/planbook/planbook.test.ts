import { beforeEach, expect, test, vi } from 'vitest';
import type { Edit, PlanbookView } from '$lib/types';
import { ladderFor } from './find';

const calls: string[] = [];
vi.mock('$lib/bridge', async (original) => ({
  ...(await original<object>()),
  planbookView: () => Promise.resolve(VIEW),
  programmeEdit: async (_: string, edit: Edit) => {
    // The first answer comes late.
    if (calls.length === 0) await new Promise((done) => setTimeout(done, 20));
    calls.push(edit.edit);
    return VIEW;
  },
  programmeTurn: (_: string, back: boolean) => {
    calls.push(back ? 'undo' : 'redo');
    return Promise.resolve(VIEW);
  },
}));
const VIEW: PlanbookView = { programmes: [], away: [], ladders: [] };
const { Planbook } = await import('./planbook.svelte');

beforeEach(() => {
  calls.length = 0;
});

test('changes that come faster than answers are made one after the other, in their order', async () => {
  const book = new Planbook();
  book.open = 'a';
  const done = [
    book.edit({ edit: 'title', title: 'x' }),
    book.edit({ edit: 'weeks', weeks: null }),
    book.turn(true),
  ];
  await Promise.all(done);
  expect(calls).toEqual(['title', 'weeks', 'undo']);
});

test('undo and redo by keys, and not inside a field that has its own', async () => {
  const book = new Planbook();
  book.open = 'a';
  const press = (key: string, more: KeyboardEventInit = {}, target: HTMLElement = document.body) => {
    const event = new KeyboardEvent('keydown', { key, ctrlKey: true, cancelable: true, ...more });
    Object.defineProperty(event, 'target', { value: target });
    book.key(event);
  };
  press('z');
  press('Z', { shiftKey: true });
  press('y');
  press('a');
  const field = document.createElement('input');
  field.type = 'text';
  press('z', {}, field);
  await book.turn(false);
  expect(calls).toEqual(['undo', 'redo', 'redo', 'redo']);
});

test('a ladder is found by the beginning of its name, of a word in it, or anywhere', () => {
  const names: Record<string, string> = { a: 'Split squat', b: 'Squat', c: 'Elevación', d: 'Step-up' };
  const ladders = Object.keys(names).map((ladder) => ({ ladder }));
  const find = (typed: string) => ladderFor(typed, ladders, (l) => names[l] ?? '').map((l) => l.ladder);
  expect(find('sq')).toEqual(['b', 'a']);
  expect(find('ELEVACION')).toEqual(['c']);
  expect(find('up')).toEqual(['d']);
  expect(find('')).toEqual(['a', 'b', 'c', 'd']);
  expect(find('zzz')).toEqual([]);
});
