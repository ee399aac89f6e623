import { afterEach, expect, test, vi } from 'vitest';
import { dueTone } from './tone';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

test('the last three seconds tick once each, and the end is told once', () => {
  const seen = [5, 4, 4, 3, 3, 2, 1, 1, 0, 0];
  const told = seen.map((left, i) => dueTone(left, seen[i - 1] ?? 6));
  expect(told).toEqual([null, null, null, 'tick', null, 'tick', 'tick', null, 'end', null]);
});

test('the end is told although the seconds before it were slept through, and more time is no tick', () => {
  expect(dueTone(0, 40)).toBe('end');
  expect(dueTone(0, 0)).toBeNull();
  expect(dueTone(3, 1), 'half a minute was added').toBeNull();
});

test('each beep starts and stops at its time; the end has two', async () => {
  const calls: [string, number][] = [];
  const param = () => ({ value: 0, setValueAtTime: vi.fn(), linearRampToValueAtTime: vi.fn() });
  class Audio {
    currentTime = 10;
    state = 'running';
    destination = {};
    createGain() {
      return { gain: param(), connect: (to: unknown) => to };
    }
    createOscillator() {
      return {
        frequency: param(),
        connect: (to: unknown) => to,
        start: (at: number) => calls.push(['start', at]),
        stop: (at: number) => calls.push(['stop', at]),
      };
    }
  }
  vi.stubGlobal('AudioContext', Audio);
  const { play } = await import('./tone');
  expect(play('end')).toBe(true);
  expect(calls.map(([name]) => name)).toEqual(['start', 'stop', 'start', 'stop']);
  const [first, stop, second] = calls.map(([, at]) => at);
  expect((stop ?? 0) - (first ?? 0)).toBeCloseTo(0.18, 3);
  expect(second).toBeGreaterThan((first ?? 0) + 0.16);
});

test('a system without sound stays silent and breaks nothing', async () => {
  vi.stubGlobal('AudioContext', undefined);
  const { play } = await import('./tone');
  expect(play('end')).toBe(false);
});
