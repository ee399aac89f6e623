import { expect, test } from 'vitest';
import { cuesOf, slipsOf } from './cues';

test('the slips of a variant are there as sentences, and of one that is not known there are none', () => {
  expect(slipsOf('squat-chair')).toHaveLength(2);
  expect(slipsOf('squat-chair')[0]).toMatch(/^Knees falling in: /);
  expect(slipsOf('unheard-of')).toEqual([]);
});

test('a coach’s own cues stand in the place of the built-in ones, and without any the built-in ones stay', () => {
  const own = { variant: 'squat-chair', cues: ['Nose over toes'], picture: null };
  expect(cuesOf({ variant: 'squat-chair', cues: 3, own })).toEqual(['Nose over toes']);
  expect(cuesOf({ variant: 'squat-chair', cues: 3, own: { ...own, cues: [] } })).toHaveLength(3);
});
