import { expect, test } from 'vitest';
import { beatOf, breathAt, lengthOf, momentAt } from './play';

const tempo = { down: 3, pause: 1, up: 2 };

test('a repetition takes what its tempo says, with a quarter of a second at each end', () => {
  expect(lengthOf(beatOf(tempo))).toBeCloseTo(3 + 1 + 2 + 0.5, 9);
  expect(lengthOf(beatOf(null)), 'without a tempo: one up, two down').toBeCloseTo(3.5, 9);
  expect(beatOf({ down: 0, pause: 0, up: 0 }).effort, 'never a jump').toBe(0.6);
});

test('it is at the start, at the end and back when the tempo says so', () => {
  const beat = beatOf(tempo);
  const at = (seconds: number) => momentAt(seconds, beat).t;
  expect(at(0)).toBe(0);
  expect(at(1)).toBeCloseTo(0.5, 9);
  expect(at(2.1)).toBe(1);
  expect(at(2.25 + 1.5), 'half way back').toBeCloseTo(0.5, 9);
  expect(at(2.25 + 3.5), 'the pause').toBe(0);
  expect(at(lengthOf(beat) + 1), 'and again').toBeCloseTo(0.5, 9);
});

test('nothing leaps: from one frame to the next it moves less than a tenth', () => {
  for (const beat of [beatOf(tempo), beatOf(null)])
    for (let frame = 0; frame < 600; frame += 1) {
      const step = momentAt((frame + 1) / 60, beat).t - momentAt(frame / 60, beat).t;
      expect(Math.abs(step)).toBeLessThan(0.1);
    }
});

test('the breath goes out on the effort and in on the way back, or the other way round where it is written so', () => {
  const beat = beatOf(tempo);
  expect(momentAt(1, beat).breath).toBe('out');
  expect(momentAt(4, beat).breath).toBe('in');
  expect(momentAt(1, beat, true).breath).toBe('in');
  expect(momentAt(0, beat).full, 'full before the effort').toBe(1);
  expect(momentAt(0, beat, true).full).toBe(0);
});

test('a hold breathes calmly: in for four, out for six', () => {
  expect(breathAt(1).breath).toBe('in');
  expect(breathAt(3.999).full).toBeCloseTo(1, 4);
  expect(breathAt(5).breath).toBe('out');
  expect(breathAt(10).full).toBeCloseTo(0, 9);
});
