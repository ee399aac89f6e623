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
