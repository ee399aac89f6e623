import { expect, test } from 'vitest';
import { SESSIONS } from '../../fixtures/people';
import { isFound } from './find';
import { nextWords } from './next';

test('a session is found by movement, symptom and day, whatever the case', () => {
  const by = (wanted: string) => SESSIONS.filter((session) => isFound(session, wanted)).length;
  expect(by('')).toBe(SESSIONS.length);
  expect(by('no such thing')).toBe(0);
  expect(by('ROW')).toBeGreaterThan(0);
  expect(by(SESSIONS[0]?.day ?? '')).toBeGreaterThan(0);
  expect(by('row zebra'), 'every word has to stand in it').toBe(0);
});

test('what leads up is said with its numbers', () => {
  const earn = nextWords({
    ahead: 'earn',
    to: 'squat-goblet',
    done: 1,
    of: 2,
    count: 12,
    timed: false,
    reserve: 4,
    mark: { by: 'load', kg: 8 },
  });
  expect(earn).toContain('Goblet squat');
  expect(earn).toContain('12 reps and 4 or more left');
  expect(earn).toContain('8 kg');
  expect(nextWords({ ahead: 'top' })).not.toBe('');
  expect(nextWords({ ahead: 'back', to: 1, done: 0, of: 2, symptom: 'heaviness' })).toContain('step 2');
});
