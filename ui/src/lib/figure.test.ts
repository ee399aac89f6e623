import { expect, test } from 'vitest';
import catalogue from '../../../crates/engine/data/catalogue.json';
import { between, distance, joints, LENGTH, type Joints, type Pose } from './figure';
import { movementOf, movements } from './figures';

/** The bones as pairs of joints with the length that each must keep. */
const BONES: [keyof Joints, keyof Joints, number][] = [
  ['hip', 'shoulder', LENGTH.trunk],
  ['shoulder', 'neck', LENGTH.neck],
  ['neck', 'head', LENGTH.head / 2],
  ['shoulder', 'elbow', LENGTH.upperArm],
  ['elbow', 'hand', LENGTH.foreArm],
  ['shoulder', 'farElbow', LENGTH.upperArm],
  ['farElbow', 'farHand', LENGTH.foreArm],
  ['hip', 'knee', LENGTH.thigh],
  ['knee', 'ankle', LENGTH.shank],
  ['ankle', 'toe', LENGTH.foot],
  ['hip', 'farKnee', LENGTH.thigh],
  ['farKnee', 'farAnkle', LENGTH.shank],
  ['farAnkle', 'farToe', LENGTH.foot],
];

function expectBones(pose: Pose, where: string) {
  const found = joints(pose);
  for (const [from, to, length] of BONES)
    expect(distance(found[from], found[to]), `${where}: ${from} to ${to} keeps its length`).toBeCloseTo(
      length,
      6,
    );
}

test('no bone changes its length, in any movement, at any time', () => {
  for (const [id, movement] of Object.entries(movements)) {
    for (const t of [0, 0.21, 0.5, 0.77, 1])
      expectBones(between(movement.start, movement.end ?? movement.start, t), `${id} at ${t}`);
  }
});

test('nothing sinks into the floor', () => {
  for (const [id, movement] of Object.entries(movements)) {
    for (const t of [0, 0.5, 1]) {
      const found = joints(between(movement.start, movement.end ?? movement.start, t));
      for (const [joint, [, y]] of Object.entries(found))
        expect(y, `${id} at ${t}: ${joint} is above the floor`).toBeGreaterThan(-0.02);
    }
  }
});

test('a foot that rests stays where it is on the whole way', () => {
  const squat = movements['squat-free'];
  if (!squat?.end) throw new Error('the free squat is drawn with two poses');
  const at = (t: number) => joints(between(squat.start, squat.end ?? squat.start, t)).ankle;
  for (const t of [0.25, 0.5, 0.75, 1]) {
    expect(at(t)[0], 'ankle, sideways').toBeCloseTo(at(0)[0], 6);
    expect(at(t)[1], 'ankle, height').toBeCloseTo(at(0)[1], 6);
  }
});

test('a hand given by its place is there, as long as the arm reaches', () => {
  const pose: Pose = {
    hip: [0, 0.52],
    trunk: 0,
    arm: { at: [0.2, 0.9] },
    leg: { angles: [180, 180] },
  };
  expect(distance(joints(pose).hand, [0.2, 0.9]), 'within reach').toBeLessThan(1e-6);
  const far = joints({ ...pose, arm: { at: [2, 0.808] } });
  expect(distance(far.shoulder, far.hand), 'beyond reach the arm is stretched').toBeCloseTo(
    LENGTH.upperArm + LENGTH.foreArm,
    4,
  );
});

test('every variant of the catalogue is drawn, and by a movement of its own', () => {
  const ids = catalogue.ladders.flatMap((l) => l.levels.flatMap((v) => v.variants.map((x) => x.id)));
  expect(ids.length, 'the catalogue was read').toBeGreaterThan(60);
  expect(
    ids.filter((id) => !movements[id]),
    'variants without a movement',
  ).toEqual([]);
});

test('a variant that is not known here is drawn by the nearest of its ladder, or not at all', () => {
  expect(movementOf('squat-something-new'), 'the ladder is told by the id').toBe(movements['squat-free']);
  expect(movementOf('unheard-of'), 'nothing near').toBeUndefined();
});

// Ranges of joints in degrees, wider by ten than what handbooks of joint measurement give for adults (knee 0 to 140,
// elbow 0 to 150, hip 30 back to 125 forward, ankle 20 up to 50 down, neck 60 back to 50 forward): from memory, no source
// at hand. Only movements seen from the side: from the front an angle in the picture is none of a joint.
const RANGE = {
  knee: [-10, 150],
  elbow: [-10, 160],
  hip: [-40, 135],
  ankle: [-60, 35],
  neck: [-70, 60],
} as const;

const turn = (from: number, to: number) => ((((to - from) % 360) + 540) % 360) - 180;
const angle = ([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]) =>
  (Math.atan2(bx - ax, by - ay) * 180) / Math.PI;

function angles(found: Joints): Record<string, readonly [keyof typeof RANGE, number]> {
  const trunk = angle(found.hip, found.shoulder);
  const leg = (side: string, knee: keyof Joints, ankle: keyof Joints, toe: keyof Joints) => {
    const thigh = angle(found.hip, found[knee]);
    const shank = angle(found[knee], found[ankle]);
    const foot = angle(found[ankle], found[toe]);
    return {
      // Seen from the right, a knee folds clockwise, a hip and an ankle anticlockwise.
      [`${side} knee`]: ['knee', turn(thigh, shank)],
      [`${side} hip`]: ['hip', turn(thigh, trunk + 180)],
      [`${side} ankle`]: ['ankle', turn(foot, shank) - 90],
    } as const;
  };
  const arm = (side: string, elbow: keyof Joints, hand: keyof Joints) => ({
    [`${side} elbow`]: [
      'elbow',
      -turn(angle(found.shoulder, found[elbow]), angle(found[elbow], found[hand])),
    ] as const,
  });
  return {
    ...leg('near', 'knee', 'ankle', 'toe'),
    ...leg('far', 'farKnee', 'farAnkle', 'farToe'),
    ...arm('near', 'elbow', 'hand'),
    ...arm('far', 'farElbow', 'farHand'),
    neck: ['neck', turn(trunk, angle(found.neck, found.head))],
  };
}

test('no joint bends further than a person can, in any movement seen from the side', () => {
  const beyond: string[] = [];
  for (const [id, movement] of Object.entries(movements)) {
    if (movement.view === 'front') continue;
    for (const t of [0, 0.25, 0.5, 0.75, 1])
      for (const [name, [joint, value]] of Object.entries(
        angles(joints(between(movement.start, movement.end ?? movement.start, t))),
      )) {
        const [least, most] = RANGE[joint];
        if (value < least || value > most) beyond.push(`${id} at ${t}: ${name} ${Math.round(value)}`);
      }
  }
  expect(beyond).toEqual([]);
});

test('a hand or a foot that is to rest somewhere reaches it', () => {
  const short: string[] = [];
  for (const [id, movement] of Object.entries(movements))
    for (const pose of [movement.start, movement.end ?? movement.start]) {
      const found = joints(pose);
      const limbs = [
        [pose.arm, found.hand],
        [pose.farArm ?? pose.arm, found.farHand],
        [pose.leg, found.ankle],
        [pose.farLeg ?? pose.leg, found.farAnkle],
      ] as const;
      for (const [limb, end] of limbs)
        if ('at' in limb && distance(limb.at, end) > 0.012)
          short.push(`${id}: ${distance(limb.at, end).toFixed(3)} short of ${limb.at.join(', ')}`);
    }
  expect(short).toEqual([]);
});

test('what rests in both poses rests on the whole way', () => {
  for (const [id, movement] of Object.entries(movements)) {
    if (!movement.end) continue;
    const { start, end } = movement;
    for (const [one, other, joint] of [
      [start.arm, end.arm, 'hand'],
      [start.leg, end.leg, 'ankle'],
      [start.farLeg ?? start.leg, end.farLeg ?? end.leg, 'farAnkle'],
    ] as const) {
      if (!('at' in one && 'at' in other) || distance(one.at, other.at) > 0) continue;
      for (const t of [0.2, 0.5, 0.8])
        expect(
          distance(joints(between(start, end, t))[joint], one.at),
          `${id} at ${t}: ${joint}`,
        ).toBeLessThan(0.02);
    }
  }
});
