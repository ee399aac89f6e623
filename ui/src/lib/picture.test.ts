import { expect, test } from 'vitest';
import { fitInto, madeSmall } from './picture';

test('a picture keeps its shape and is never made larger', () => {
  expect(fitInto(4000, 3000, 960)).toEqual([960, 720]);
  expect(fitInto(3000, 4000, 960)).toEqual([720, 960]);
  expect(fitInto(300, 200, 960)).toEqual([300, 200]);
  expect(fitInto(10_000, 1, 960)).toEqual([960, 1]);
  expect(fitInto(0, 0, 960)).toEqual([1, 1]);
});

test('what cannot be read as a picture is none', async () => {
  expect(await madeSmall(new Blob(['no picture']))).toBeNull();
});
