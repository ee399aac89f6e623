import { expect, test } from 'vitest';
import type { VariantWordsView } from '$lib/types';
import { factsOf } from './facts';

const PLAIN: VariantWordsView = {
  variant: 'squat-chair',
  cues: 3,
  position: 'standing',
  needs: [],
  cautions: [],
  loading: { with: 'body' },
  ready: { by: 'reps', reps: 12 },
  usual_start: null,
  per_side: false,
  yours: null,
  uncertain: false,
  own: null,
};

const whats = (of: Partial<VariantWordsView>, top = false) =>
  factsOf({ ...PLAIN, ...of }, top).map((fact) => fact.what);

test('without kit, cautions and load there is the position, what is held, and when the next step is due', () => {
  expect(whats({})).toEqual(['standing', 'nothing', 'at 12 reps, or the top of the range']);
});

test('of two weights each is told, not what both weigh together', () => {
  const of: Partial<VariantWordsView> = {
    loading: { with: 'pair' },
    ready: { by: 'load', kg: 16 },
    usual_start: { from: 5, to: 8 },
  };
  expect(whats(of).slice(2)).toEqual(['two of 2.5 to 4 kg', 'at two of 8 kg, at the top of the range']);
});

test('help is told as help, and the highest step has none above it', () => {
  const of: Partial<VariantWordsView> = {
    loading: { with: 'assist', stretch: 1 },
    needs: ['pull_up_bar'],
    cautions: ['overhead', 'midline'],
    ready: { by: 'load', kg: -10 },
  };
  expect(whats(of)).toContain('at 10 kg of help or less');
  expect(whats(of)).toContain('work overhead, strain on the midline');
  expect(whats(of, true)).toContain('none above this one');
});
