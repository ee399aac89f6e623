import { expect, test } from 'vitest';
import { minuteText, secondsLeft, secondsSince } from './clock';

test('a rest is over at its deadline, however late it is looked at', () => {
  expect(secondsLeft(10_000, 0), 'ten seconds to go').toBe(10);
  expect(secondsLeft(10_000, 9_001), 'a part of a second still counts as one').toBe(1);
  expect(secondsLeft(10_000, 10_000), 'over').toBe(0);
  expect(secondsLeft(10_000, 3_600_000), 'an hour late it is over, not below zero').toBe(0);
});

test('time held counts whole seconds and never less than none', () => {
  expect(secondsSince(1_000, 12_900), 'rounded down').toBe(11);
  expect(secondsSince(5_000, 1_000), 'a clock that was set back').toBe(0);
});

test('minutes and seconds are read as on a clock', () => {
  expect(minuteText(0)).toBe('0:00');
  expect(minuteText(65)).toBe('1:05');
  expect(minuteText(600)).toBe('10:00');
});
