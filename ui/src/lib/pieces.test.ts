import { describe, expect, it } from 'vitest';
import { Onward, whole } from './pieces';

interface Answer {
  name: string;
  unread: number;
}

function asker(answers: Answer[]): () => Promise<Answer> {
  return () => {
    const next = answers.shift();
    return next ? Promise.resolve(next) : Promise.reject(new Error('asked too often'));
  };
}

describe('an answer in pieces', () => {
  it('is asked for until it is whole, and each piece is shown', async () => {
    const shown: number[] = [];
    const pieces = [24, 12, 0].map((unread) => ({ name: 'a', unread }));
    const onward = new Onward(asker(pieces), (view) => shown.push(view.unread));
    await onward.take({ name: 'a', unread: 36 });
    expect(shown).toEqual([36, 24, 12, 0]);
    expect((await whole(asker([5, 0].map((unread) => ({ name: 'b', unread }))))).unread).toBe(0);
  });

  it('is dropped once a newer one was taken', async () => {
    const shown: string[] = [];
    let answer: (view: Answer) => void = () => undefined;
    const onward = new Onward<Answer>(
      () => new Promise((done) => (answer = done)),
      (view) => shown.push(view.name),
    );
    const old = onward.take({ name: 'first', unread: 3 });
    await onward.take({ name: 'after a change', unread: 0 });
    answer({ name: 'late', unread: 0 });
    await old;
    expect(shown).toEqual(['first', 'after a change']);
  });

  it('says when asking on goes wrong', async () => {
    const onward = new Onward(asker([]), () => undefined);
    await expect(onward.take({ name: 'a', unread: 1 })).rejects.toThrow('asked too often');
  });
});
