import { expect, test } from 'vitest';
import { read } from './prefs.svelte';

test('what was kept is read again, and what is not one of the choices is the usual', () => {
  expect(read(null)).toEqual({ sound: false, belly: false, hand: 'right', effort: 'left', sheet: 'a4' });
  expect(read('{"sound":true,"hand":"left","effort":"rating","belly":true}')).toEqual({
    sound: true,
    belly: true,
    hand: 'left',
    effort: 'rating',
    sheet: 'a4',
  });
  expect(read('{"sound":"yes","hand":"both"}')).toEqual(read(null));
  expect(read('not JSON')).toEqual(read(null));
});
