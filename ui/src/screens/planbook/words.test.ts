import { expect, test } from 'vitest';
import { PLACES, WordsDraft } from './words.svelte';

const OWN = { variant: 'squat-goblet', cues: ['Sit between your heels'], picture: 'ab'.repeat(32) };

test('what she wrote before stands in the form, and empty lines are left out', () => {
  const draft = new WordsDraft({ variant: 'squat-goblet', cues: 3, own: OWN });
  expect(draft.cues).toEqual(['Sit between your heels', '', '', '']);
  draft.cues[2] = '  Knees over toes ';
  expect(draft.toForm()).toEqual({
    variant: 'squat-goblet',
    cues: ['Sit between your heels', 'Knees over toes'],
    keep_picture: true,
    new_picture: null,
  });
});

test('a picture can be taken away, and a file that is none is told and changes nothing', async () => {
  const draft = new WordsDraft({ variant: 'squat-goblet', cues: 3, own: OWN });
  await draft.take(new Blob(['no picture']));
  expect(draft.refused).toBe(true);
  expect(draft.toForm().keep_picture).toBe(true);
  draft.takeAway();
  expect(draft.refused).toBe(false);
  expect(draft.toForm().keep_picture).toBe(false);
});

test('without words of hers there is nothing to keep', () => {
  const draft = new WordsDraft({ variant: 'squat-goblet', cues: 3, own: null });
  expect(draft.cues).toHaveLength(PLACES);
  expect(draft.toForm()).toEqual({
    variant: 'squat-goblet',
    cues: [],
    keep_picture: false,
    new_picture: null,
  });
});
