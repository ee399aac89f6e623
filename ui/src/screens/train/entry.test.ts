import { expect, test } from 'vitest';
import { kg, work } from '../../fixtures/scenes-train';
import { sameLoad } from '$lib/words';
import { Amounts, reserveOf, SetEntry } from './entry.svelte';
import { Memory } from './memory';

const plank = {
  ...work,
  target: { by: 'seconds' as const, count: 20 },
  loads: [],
  load: { make: 'nothing' as const },
};

test('a set stands prefilled and is logged as it stands', () => {
  const entry = new SetEntry('run-5', work, new Memory(null));
  expect(entry.form(reserveOf(3)), 'nothing was stepped').toEqual({
    run: 'run-5',
    slot: 'a1',
    round: 2,
    side: 'left',
    variant: 'offset-hinge-loaded',
    load: kg(12),
    done: { by: 'reps', count: 10 },
    reserve: { said: 'exactly', reps: 3 },
  });
});

test('the last tap of the row is a bound and not a number', () => {
  expect(reserveOf(0)).toEqual({ said: 'exactly', reps: 0 });
  expect(reserveOf(4)).toEqual({ said: 'exactly', reps: 4 });
  expect(reserveOf(5)).toEqual({ said: 'at_least', reps: 5 });
});

test('loads step through what her kit makes, and stop at both ends', () => {
  const entry = new SetEntry('run-5', work, new Memory(null));
  entry.add();
  expect(entry.load, 'the next one of her kit, not one kilogram more').toEqual(kg(16));
  expect(entry.canAdd).toBe(false);
  entry.add();
  expect(entry.load, 'no further').toEqual(kg(16));
  for (let i = 0; i < 9; i++) entry.lighten();
  expect(entry.load).toEqual(kg(6));
  expect(entry.canLighten).toBe(false);
});

test('a load that her kit does not list stays within reach', () => {
  const amounts = new Amounts({ by: 'reps', count: 8 }, kg(11), [kg(8), kg(12)]);
  expect(amounts.loads.some((l) => sameLoad(l, kg(11)))).toBe(true);
  amounts.add();
  amounts.lighten();
  expect(amounts.load).toEqual(kg(11));
  expect(new Amounts({ by: 'reps', count: 8 }, { make: 'nothing' }, []).canAdd, 'nothing to hold').toBe(
    false,
  );
});

test('reps go one by one, seconds by fives, neither below none', () => {
  const reps = new Amounts({ by: 'reps', count: 1 }, kg(8), []);
  reps.fewer();
  reps.fewer();
  expect(reps.done).toEqual({ by: 'reps', count: 0 });
  const seconds = new Amounts({ by: 'seconds', count: 20 }, kg(8), []);
  seconds.more();
  expect(seconds.done).toEqual({ by: 'seconds', count: 25 });
});

test('the clock of a timed set runs by its deadline, also while nobody looks', () => {
  const entry = new SetEntry('run-5', plank, new Memory(null));
  entry.start(1_000);
  expect(entry.left(6_000)).toBe(15);
  expect(entry.lookAt(20_900), 'a tenth of a second before').toBe(false);
  expect(entry.lookAt(600_000), 'long after').toBe(true);
  expect(entry.count, 'what was meant counts, not the ten minutes away').toBe(20);
  expect(entry.lookAt(600_001), 'it ends once').toBe(false);
});

test('stopped early, what was held counts', () => {
  const entry = new SetEntry('run-5', plank, new Memory(null));
  entry.start(1_000);
  entry.stop(13_700);
  expect(entry.done).toEqual({ by: 'seconds', count: 12 });
  entry.stop(99_000);
  expect(entry.count, 'a second tap changes nothing').toBe(12);
});

test('a running clock is found again after the page was gone, for its own set alone', () => {
  const memory = new Memory(null);
  new SetEntry('run-5', plank, memory).start(1_000);
  expect(new SetEntry('run-5', plank, memory).left(11_000), 'the same set').toBe(10);
  expect(new SetEntry('run-5', { ...plank, side: 'right' }, memory).from, 'the other side').toBeNull();
});
