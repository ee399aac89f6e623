// The jointed figure: where each joint is, from a few angles and resting points. Pure geometry, no drawing.
//
// All lengths are shares of body height; x points to the right, y up, the floor is y = 0. Angles are degrees clockwise
// from straight up: 90 points to the right, 180 down. The figure faces right when it stands.

/** Shares of height: Drillis R, Contini R, Body Segment Parameters, 1966 (as commonly reprinted). Hand and foot are
 *  drawn to the grip and to the ball of the foot, and so shorter than measured. */
export const LENGTH = {
  trunk: 0.288,
  neck: 0.052,
  head: 0.13,
  upperArm: 0.186,
  foreArm: 0.146,
  thigh: 0.245,
  shank: 0.246,
  foot: 0.1,
} as const;

export type Point = readonly [x: number, y: number];

/** An arm or a leg: by its two angles; by where wrist or ankle rests (absolute); or by the offset from its root in the
 *  trunk's own frame (forward, towards the head). `bend` chooses the side to which elbow or knee points. */
export type Limb =
  | { readonly angles: readonly [upper: number, lower: number] }
  | { readonly at: Point; readonly bend?: 1 | -1 }
  | { readonly off: Point; readonly bend?: 1 | -1 };

export interface Pose {
  readonly hip: Point;
  /** From hip to shoulder. */
  readonly trunk: number;
  /** From shoulder through the neck; as the trunk if left out. */
  readonly head?: number;
  readonly arm: Limb;
  readonly leg: Limb;
  /** Direction of the foot; flat on the floor (90) if left out. */
  readonly foot?: number;
  /** The limbs of the other side; as the near ones if left out. */
  readonly farArm?: Limb;
  readonly farLeg?: Limb;
  readonly farFoot?: number;
}

export type Joint =
  | 'hip'
  | 'shoulder'
  | 'neck'
  | 'head'
  | 'elbow'
  | 'hand'
  | 'knee'
  | 'ankle'
  | 'toe'
  | 'farElbow'
  | 'farHand'
  | 'farKnee'
  | 'farAnkle'
  | 'farToe';

export type Joints = Record<Joint, Point>;

const RADIANS = Math.PI / 180;

/** The point at a distance from another, in a direction. */
export function away([x, y]: Point, angle: number, length: number): Point {
  return [x + Math.sin(angle * RADIANS) * length, y + Math.cos(angle * RADIANS) * length];
}

export function distance([ax, ay]: Point, [bx, by]: Point): number {
  return Math.hypot(bx - ax, by - ay);
}

const direction = ([ax, ay]: Point, [bx, by]: Point): number => Math.atan2(bx - ax, by - ay) / RADIANS;

/** A point given in the trunk's frame (forward, towards the head), in the picture's. */
function fromTrunk(root: Point, trunk: number, [forward, along]: Point): Point {
  return away(away(root, trunk + 90, forward), trunk, along);
}

/** The two angles of a limb. A target beyond reach is approached with the limb stretched. */
export function limbAngles(
  limb: Limb,
  root: Point,
  trunk: number,
  upper: number,
  lower: number,
  usual: 1 | -1,
): readonly [number, number] {
  if ('angles' in limb) return limb.angles;
  const target = 'at' in limb ? limb.at : fromTrunk(root, trunk, limb.off);
  const reach = Math.min(Math.max(distance(root, target), Math.abs(upper - lower) + 1e-6), upper + lower);
  const cosine = (upper ** 2 + reach ** 2 - lower ** 2) / (2 * upper * reach);
  const fold = Math.acos(Math.min(1, Math.max(-1, cosine))) / RADIANS;
  const first = direction(root, target) + (limb.bend ?? usual) * fold;
  return [first, direction(away(root, first, upper), away(root, direction(root, target), reach))];
}

/** Where every joint of a pose is. */
export function joints(pose: Pose): Joints {
  const { hip, trunk } = pose;
  const shoulder = away(hip, trunk, LENGTH.trunk);
  const headAngle = pose.head ?? trunk;
  const neck = away(shoulder, headAngle, LENGTH.neck);
  const head = away(neck, headAngle, LENGTH.head / 2);
  // Elbows point down and back, knees forward: seen from the right side, that is + and - in these angles.
  const arm = (limb: Limb) => {
    const [upper, lower] = limbAngles(limb, shoulder, trunk, LENGTH.upperArm, LENGTH.foreArm, 1);
    const elbow = away(shoulder, upper, LENGTH.upperArm);
    return [elbow, away(elbow, lower, LENGTH.foreArm)] as const;
  };
  const leg = (limb: Limb, foot: number) => {
    const [upper, lower] = limbAngles(limb, hip, trunk, LENGTH.thigh, LENGTH.shank, -1);
    const knee = away(hip, upper, LENGTH.thigh);
    const ankle = away(knee, lower, LENGTH.shank);
    return [knee, ankle, away(ankle, foot, LENGTH.foot)] as const;
  };
  const foot = pose.foot ?? 90;
  const [elbow, hand] = arm(pose.arm);
  const [farElbow, farHand] = arm(pose.farArm ?? pose.arm);
  const [knee, ankle, toe] = leg(pose.leg, foot);
  const [farKnee, farAnkle, farToe] = leg(pose.farLeg ?? pose.leg, pose.farFoot ?? foot);
  return {
    hip,
    shoulder,
    neck,
    head,
    elbow,
    hand,
    knee,
    ankle,
    toe,
    farElbow,
    farHand,
    farKnee,
    farAnkle,
    farToe,
  };
}

const mix = (a: number, b: number, t: number): number => a + (b - a) * t;
const mixPoint = (a: Point, b: Point, t: number): Point => [mix(a[0], b[0], t), mix(a[1], b[1], t)];

function mixLimb(a: Limb, b: Limb, t: number): Limb {
  if ('angles' in a && 'angles' in b)
    return { angles: [mix(a.angles[0], b.angles[0], t), mix(a.angles[1], b.angles[1], t)] };
  if ('at' in a && 'at' in b) return { ...a, at: mixPoint(a.at, b.at, t) };
  if ('off' in a && 'off' in b) return { ...a, off: mixPoint(a.off, b.off, t) };
  return t < 0.5 ? a : b;
}

/** The pose on the way between two: t = 0 is the first, 1 the second. Resting hands and feet stay where they rest. */
export function between(a: Pose, b: Pose, t: number): Pose {
  return {
    hip: mixPoint(a.hip, b.hip, t),
    trunk: mix(a.trunk, b.trunk, t),
    head: mix(a.head ?? a.trunk, b.head ?? b.trunk, t),
    arm: mixLimb(a.arm, b.arm, t),
    leg: mixLimb(a.leg, b.leg, t),
    foot: mix(a.foot ?? 90, b.foot ?? 90, t),
    farArm: mixLimb(a.farArm ?? a.arm, b.farArm ?? b.arm, t),
    farLeg: mixLimb(a.farLeg ?? a.leg, b.farLeg ?? b.leg, t),
    farFoot: mix(a.farFoot ?? a.foot ?? 90, b.farFoot ?? b.foot ?? 90, t),
  };
}

/** What stands or is held beside the figure. */
export type Prop =
  /** A chair: its seat's height, the x of the seat's middle, and the side of its back. */
  | { readonly prop: 'chair'; readonly x: number; readonly seat: number; readonly back: 'left' | 'right' }
  | { readonly prop: 'stool'; readonly x: number; readonly seat: number }
  | { readonly prop: 'wall'; readonly x: number }
  | { readonly prop: 'counter'; readonly x: number; readonly y: number }
  | { readonly prop: 'block'; readonly x: number; readonly y: number; readonly width: number }
  | { readonly prop: 'bench'; readonly x: number; readonly y: number; readonly width: number }
  | { readonly prop: 'cushions'; readonly points: readonly Point[] }
  | { readonly prop: 'bar'; readonly x: number; readonly y: number }
  /** A band, a strap or a towel between joints or fixed points. */
  | {
      readonly prop: 'line';
      readonly from: Joint | Point;
      readonly to: Joint | Point;
      readonly kind: 'band' | 'strap';
    }
  | { readonly prop: 'weight'; readonly at: Joint; readonly lift?: number }
  | { readonly prop: 'plate'; readonly at: Joint }
  /** A loop band about both knees. */
  | { readonly prop: 'loop' }
  /** A pillow between the knees, seen from the front. */
  | { readonly prop: 'pillow' }
  /** The pelvic floor, drawn up or let go. */
  | { readonly prop: 'pelvis'; readonly way: 'up' | 'down'; readonly aside?: number }
  /** Ribs that widen. */
  | { readonly prop: 'breath' };

export interface Movement {
  /** The stretched end, where the effort begins. */
  readonly start: Pose;
  /** Where the effort ends; left out for a hold. */
  readonly end?: Pose;
  readonly props: readonly Prop[];
  /** The joint whose way is dotted. */
  readonly trace: Joint;
  /** Seen from the front: what stands to the right is her left. From the side if left out. */
  readonly view?: 'front';
  /** The breath goes in on the way to the end pose. */
  readonly inward?: boolean;
  /** How far the end pose is drawn to the right of the start pose, where the two would hide each other. */
  readonly apart?: number;
}

/** The middle of a belly, and its half axes along and across the trunk, for an outline late in pregnancy. Drawn, not
 *  measured: chosen, no source. */
export function belly(
  found: Joints,
  view: Movement['view'],
): { at: Point; turn: number; along: number; across: number } {
  const trunk = direction(found.hip, found.shoulder);
  const low = away(found.hip, trunk, LENGTH.trunk * 0.32);
  const at = view === 'front' ? low : away(low, trunk + 90, 0.05);
  return { at, turn: trunk, along: 0.098, across: view === 'front' ? 0.078 : 0.085 };
}

/** The way of a joint from start to end, in steps. */
export function way(movement: Movement, joint: Joint, steps = 14): Point[] {
  const { start, end, apart = 0 } = movement;
  if (!end) return [];
  return Array.from({ length: steps + 1 }, (_, i) => {
    const t = i / steps;
    const [x, y] = joints(between(start, end, t))[joint];
    return [x + apart * t, y];
  });
}
