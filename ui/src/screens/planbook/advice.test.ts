import { beforeEach, expect, test, vi } from 'vitest';
import type { Advice, AdviceView, LookFor, Programme } from '$lib/types';
import { adviceWords, fixWords, groups, isCut } from './advice';

let asked: { look: LookFor | null; answer: (view: AdviceView) => void; fail: () => void }[] = [];
vi.mock('$lib/bridge', async (original) => ({
  ...(await original<object>()),
  programmeAdvice: (_: string, look: LookFor | null) =>
    new Promise<AdviceView>((answer, reject) => {
      asked.push({
        look,
        answer,
        fail: () => {
          reject(new Error('no'));
        },
      });
    }),
}));
const { Looked } = await import('./advice.svelte');

const view = (advice: Advice[] = []): AdviceView => ({
  programme: 'p',
  look: { of: 'all' },
  looked: 9,
  given: 0,
  clients: Array.from({ length: 9 }, (_, n) => ({ person: `c${n}`, name: `Client ${n}` })),
  advice,
  minutes: [],
});

const about = (slot: string, people = 1): Advice => ({
  code: 'no-kit',
  nothing_left: true,
  whom: Array.from({ length: people }, (_, n) => ({ person: `c${n}`, from: null, until: null })),
  session: 'monday',
  block: 'b',
  slot,
  week: null,
  facts: { ladder: { is: 'ladder', value: 'row' } },
  closed: [],
  rule: 'kit.has',
  source: '',
  fixes: [
    {
      fix: 'edit',
      does: 'levels',
      facts: { level: { is: 'number', value: 2 }, variant: { is: 'variant', value: 'row-hinged' } },
      helps: 1,
      edit: { edit: 'levels_of_slot', slot, low: 1, high: null },
    },
  ],
});

const PROGRAMME = {
  id: 'p',
  sessions: [
    { id: 'monday', title: 'Monday', blocks: [{ id: 'b', slots: [{ id: 'here', ladder: 'row' }] }] },
  ],
} as unknown as Programme;

beforeEach(() => {
  vi.useFakeTimers();
  asked = [];
});

test('a run of changes is one question, and an answer to an older one is let go', async () => {
  const looked = new Looked();
  for (let n = 0; n < 5; n += 1) {
    looked.soon('p');
    vi.advanceTimersByTime(100);
  }
  expect(asked).toHaveLength(0);
  vi.advanceTimersByTime(300);
  expect(asked).toHaveLength(1);
  looked.soon('p');
  vi.advanceTimersByTime(300);
  expect(asked).toHaveLength(2);
  const newer = view([about('here')]);
  asked[1]?.answer(newer);
  asked[0]?.answer(view());
  await vi.advanceTimersByTimeAsync(0);
  expect(looked.view).toBe(newer);
  expect(looked.of('here')).toHaveLength(1);
  expect(looked.asking).toBe(false);
});

test('a choice asks at once and stays; advice that cannot be had is none', async () => {
  const looked = new Looked();
  looked.choose('p', { of: 'one', person: 'c1' });
  await vi.advanceTimersByTimeAsync(0);
  asked[0]?.answer(view());
  looked.soon('p');
  await vi.advanceTimersByTimeAsync(300);
  expect(asked.map((a) => a.look)).toEqual([
    { of: 'one', person: 'c1' },
    { of: 'one', person: 'c1' },
  ]);
  asked[1]?.fail();
  await vi.advanceTimersByTimeAsync(0);
  expect([looked.view, looked.asking]).toEqual([null, false]);
});

test('what is said about a slot stands under its name, and goes with it', () => {
  const seen = view([about('here'), about('gone')]);
  const shown = groups(seen, PROGRAMME);
  expect(shown.map((g) => [g.key, g.session, g.nothing])).toEqual([['here', 'monday', true]]);
});

test('a few names stand in the sentence; of many the rest is counted, and a fix says how many it helps', () => {
  const few = about('here', 5);
  const many = about('here', 7);
  expect([isCut(few), isCut(many)]).toEqual([false, true]);
  expect(adviceWords(view(), few)).toContain('Client 4');
  expect(adviceWords(view(), many)).toContain('3 more');
  const [fix] = many.fixes;
  expect(fix && fixWords(PROGRAMME, many, fix)).toContain('1 of 7');
});
