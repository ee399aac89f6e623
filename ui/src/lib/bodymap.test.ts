import { expect, test } from 'vitest';
import { faceOf, REACH, SHEET, SPOTS } from './bodymap';
import { tails } from './words';

test('every place that has a word is on the drawing, but for "somewhere else", and every spot has its word', () => {
  const words = new Set(tails('where-'));
  const drawn = new Set([...SPOTS.front, ...SPOTS.back].map((spot) => spot.place));
  expect([...words].filter((place) => !drawn.has(place))).toEqual(['elsewhere']);
  expect([...drawn].filter((place) => !words.has(place))).toEqual([]);
});

test('no finger meets two spots, and none is cut by the edge', () => {
  for (const spots of Object.values(SPOTS))
    for (const [i, a] of spots.entries()) {
      expect(Math.min(a.x, SHEET.width - a.x, a.y, SHEET.height - a.y), a.place).toBeGreaterThanOrEqual(
        REACH,
      );
      for (const b of spots.slice(i + 1)) {
        const apart = Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y));
        expect(apart, `${a.place} and ${b.place}`).toBeGreaterThanOrEqual(2 * REACH);
      }
    }
});

test('in front her left is on the right, from behind on the left', () => {
  const x = (face: 'front' | 'back', place: string) => SPOTS[face].find((s) => s.place === place)?.x ?? 0;
  expect(x('front', 'shoulder-left')).toBeGreaterThan(120);
  expect(x('back', 'shoulder-left')).toBeLessThan(120);
});

test('the side turns to where the place is drawn', () => {
  expect(faceOf('low-back', 'front')).toBe('back');
  expect(faceOf('shoulder-left', 'back')).toBe('back');
  expect(faceOf('elsewhere', 'front')).toBe('front');
  expect(faceOf(null, 'back')).toBe('back');
});
