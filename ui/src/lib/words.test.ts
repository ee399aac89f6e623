import { expect, test, vi } from 'vitest';
import type { Load, Reason } from './types';
import {
  dayWords,
  doseWords,
  errorWords,
  has,
  loadParts,
  loadWords,
  reasonWords,
  reserveWords,
  sameLoad,
  say,
  stageWords,
  tails,
  targetWords,
} from './words';

const kg = (value: number) => ({ value, unit: 'kg' as const });
const bar: Load = { make: 'barbell', bar: kg(10), plates: [kg(5), kg(1.25)] };

test('every sentence that the page names is there', () => {
  const sources = import.meta.glob<string>(['../**/*.svelte', '../**/*.ts', '!../**/*.test.ts'], {
    query: '?raw',
    import: 'default',
    eager: true,
  });
  const named = Object.entries(sources).flatMap(([path, text]) =>
    [...text.matchAll(/\bsay\(\s*'([a-z0-9_.-]+)'/g)].map((found) => ({ path, id: found[1] ?? '' })),
  );
  expect(named.length, 'the sources were read').toBeGreaterThan(150);
  expect(
    named.filter(({ id }) => !has(id)).map(({ path, id }) => `${path}: ${id}`),
    'ids without words',
  ).toEqual([]);
});

test('a missing sentence shows its id and says so', () => {
  const said = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  expect(say('no-such-thing'), 'the card goes on').toBe('no-such-thing');
  expect(said, 'and it is reported').toHaveBeenCalledOnce();
});

test('loads are said as one lays them out', () => {
  expect(loadWords({ make: 'one', weight: kg(7.5) })).toBe('7.5 kg');
  expect(loadWords({ make: 'pair', weight: { value: 25, unit: 'lb' } })).toBe('two of 25 lb');
  expect(loadWords(bar)).toBe('bar 10 kg, each side 5 kg + 1.25 kg');
  expect(loadParts(bar), 'both sides are in the sum').toEqual({ big: '22.5', small: 'kg in all' });
  expect(loadParts({ ...bar, plates: [{ value: 5, unit: 'lb' }] }).small, 'mixed units are not summed').toBe(
    '',
  );
  expect(loadWords({ make: 'nothing' })).toBe('no load');
  expect(sameLoad(bar, { ...bar }), 'equal by what is held').toBe(true);
  expect(sameLoad(bar, { ...bar, plates: [] })).toBe(false);
});

test('doses read as one would say them', () => {
  expect(targetWords({ by: 'reps', count: 1 })).toBe('1 rep');
  expect(targetWords({ by: 'reps', count: 8 }, true)).toBe('8 reps each side');
  expect(targetWords({ by: 'seconds', count: 20 })).toBe('20 seconds');
  expect(doseWords({ by: 'reps', count: 8 }, { make: 'one', weight: kg(12) })).toBe('8 reps, 12 kg');
  expect(doseWords({ by: 'reps', count: 8 }, { make: 'nothing' }), 'nothing held is not named').toBe(
    '8 reps',
  );
  expect(reserveWords({ said: 'at_least', reps: 5 })).toBe('5 or more left');
});

test('days carry their weekday, and the year when it is another', () => {
  expect(dayWords('2026-03-12', '2026-03-12')).toBe('today');
  expect(dayWords('2026-03-11', '2026-03-12')).toBe('yesterday');
  expect(dayWords('2026-03-05', '2026-03-12')).toBe('Thursday 5 March');
  expect(dayWords('2025-12-30', '2026-03-12')).toContain('2025');
});

test('a stage is said in weeks, and after a loss without a word of a baby', () => {
  expect(stageWords({ stage: 'pregnant', age: { weeks: 34, days: 1 }, trimester: 3 })).toBe(
    '34 weeks and 1 day pregnant',
  );
  expect(
    stageWords({ stage: 'postpartum', age: { weeks: 11, days: 4 }, mode: 'caesarean', severe_tear: false }),
  ).toBe('11 weeks after birth');
  expect(stageWords({ stage: 'after_loss', age: { weeks: 3, days: 0 } })).not.toMatch(/birth|baby/);
});

test('a reason turns its facts into words', () => {
  const reason: Reason = {
    code: 'restricted',
    facts: {
      variant: { is: 'variant', value: 'squat-chair' },
      note: { is: 'words', value: 'Knee, until May' },
    },
    rule: 'x',
    source: 'y',
  };
  expect(reasonWords(reason)).toContain('Sit to stand from a chair');
  expect(reasonWords(reason)).toContain('Knee, until May');
});

test('an error is said in the language of the screen when its code is known, else as it came', () => {
  const known = errorWords({ code: 'unexpected', message: 'boom', remedy: '' });
  expect(known.what).toContain('boom');
  expect(known.remedy, 'what is safe and what to do').toContain('safe');
  const refused = errorWords({ code: 'app-error-older-plan', message: 'as the shell said it', remedy: '' });
  expect(refused.what, 'the sentence of the screen, not that of the shell').toContain(
    'older than the one you have',
  );
  expect(refused.remedy).toContain('Nothing is lost');
  expect(errorWords({ code: 'never_heard_of', message: 'It is so.', remedy: 'Do this.' })).toEqual({
    what: 'It is so.',
    remedy: 'Do this.',
  });
});

test('the places of a symptom come from the words', () => {
  expect(tails('where-')).toContain('wrist-left');
  expect(tails('where-').length).toBeGreaterThan(10);
});
