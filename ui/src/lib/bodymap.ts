// Where on a body: the places that can be named, front and back, and where each lies on the drawing. Pure data, tested.
// The figure faces the reader in front: her right is on the reader's left.

export type Face = 'front' | 'back';
export interface Spot {
  readonly place: string;
  readonly x: number;
  readonly y: number;
}

/** The drawing's own measure. */
export const SHEET = { width: 240, height: 404 } as const;
/** Half of what a finger needs on the narrowest phone, in the drawing's own measure. */
export const REACH = 19;

const middle = (place: string, y: number): Spot => ({ place, x: 120, y });
/** A pair; `out` from the middle. Seen from behind, her left is on the reader's left. */
const pair = (face: Face, place: string, out: number, y: number): Spot[] => {
  const right = face === 'front' ? 120 - out : 120 + out;
  return [
    { place: `${place}-right`, x: right, y },
    { place: `${place}-left`, x: 240 - right, y },
  ];
};

export const SPOTS: Readonly<Record<Face, readonly Spot[]>> = {
  front: [
    middle('head', 30),
    middle('neck', 70),
    ...pair('front', 'shoulder', 46, 92),
    middle('chest', 110),
    middle('belly', 152),
    ...pair('front', 'wrist', 92, 204),
    ...pair('front', 'hip', 44, 196),
    middle('pelvis-front', 192),
    middle('pelvic-floor', 231),
    ...pair('front', 'knee', 27, 304),
    ...pair('front', 'ankle', 32, 380),
  ],
  back: [
    middle('neck', 66),
    ...pair('back', 'shoulder', 46, 92),
    middle('upper-back', 110),
    middle('low-back', 156),
    ...pair('back', 'wrist', 92, 204),
    ...pair('back', 'hip', 44, 200),
    middle('pelvis-back', 197),
    ...pair('back', 'calf', 28, 336),
  ],
};

/** The side on which a place is drawn: where it is now if it is there, else the other one. */
export function faceOf(place: string | null, now: Face): Face {
  if (place === null || SPOTS[now].some((spot) => spot.place === place)) return now;
  const other: Face = now === 'front' ? 'back' : 'front';
  return SPOTS[other].some((spot) => spot.place === place) ? other : now;
}
