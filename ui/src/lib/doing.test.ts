import { describe, expect, it } from 'vitest';
import { Doing } from './doing.svelte';

describe('doing', () => {
  it('refuses a second start while one is under way', async () => {
    const doing = new Doing();
    let finish = (): void => undefined;
    let runs = 0;
    const slow = doing.run('write', () => {
      runs += 1;
      return new Promise<void>((done) => {
        finish = () => {
          done();
        };
      });
    });
    expect(doing.busy).toBe(true);
    await doing.run('write', async () => {
      runs += 1;
    });
    finish();
    await slow;
    expect(runs, 'a double tap writes once').toBe(1);
    expect(doing.busy).toBe(false);
  });

  it('keeps the words of a result, and drops them when the next one goes wrong', async () => {
    const doing = new Doing();
    await doing.run(
      'a',
      async () => 3,
      (n) => `${n} kept`,
    );
    expect(doing.said).toBe('3 kept');
    await doing.run('b', () =>
      Promise.reject({ code: 'disk-full', message: 'no room', remedy: 'make room' }),
    );
    expect(doing.said).toBe('');
    expect(doing.error).toEqual({ code: 'disk-full', message: 'no room', remedy: 'make room' });
    await doing.run('c', async () => null);
    expect(doing.error, 'gone with the next start').toBeNull();
  });

  it('says the result beside the action it belongs to', async () => {
    const doing = new Doing();
    await doing.run(
      'kit',
      async () => 1,
      () => 'kept',
    );
    expect(doing.saidOf('kit')).toBe('kept');
    expect(doing.saidOf('mass')).toBe('');
  });
});
