import { expect, test } from 'vitest';
import { minuteText, restLeft, secondsLeft, secondsSince, Steady } from './clock';

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

test('a clock that is set back holds nobody up, and sleep is believed', () => {
  const clock = new Steady();
  expect(clock.at(100_000)).toBe(100_000);
  expect(clock.at(101_000)).toBe(101_000);
  // Set back by an hour: time goes on from where it was.
  expect(clock.at(101_000 - 3_600_000)).toBe(101_000);
  expect(clock.at(103_000 - 3_600_000)).toBe(103_000);
  // And once more, by a minute.
  expect(clock.at(103_000 - 3_660_000)).toBe(103_000);
  expect(clock.at(104_000 - 3_660_000)).toBe(104_000);
  // Forty minutes asleep.
  expect(clock.at(104_000 - 3_660_000 + 2_400_000)).toBe(2_504_000);
  // A few milliseconds back, as the network sets a clock right, are nothing.
  expect(clock.at(2_504_000 - 3_660_000 - 40)).toBe(2_504_000);
  expect(clock.at(2_504_000 - 3_660_000 + 500)).toBe(2_504_500);
});

test('a rest that would last longer than it is was begun by another clock, and is over', () => {
  expect(restLeft(90_000, 0, 90)).toBe(90);
  expect(restLeft(93_000, 0, 90), 'a little is the way from the log to the screen').toBe(93);
  expect(restLeft(3_600_000, 0, 90)).toBe(0);
});
