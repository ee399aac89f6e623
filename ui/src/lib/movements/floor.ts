// Movements on or near the floor: bridges, planks, push-ups, lying presses, the dead bug, side-lying work.
import { away, type Limb, type Movement, type Point, type Pose, type Prop } from '../figure';

const FLOOR = 0.05;
const along: Limb = { angles: [95, 91] };
export const cushions: Prop = {
  prop: 'cushions',
  points: [
    [-0.04, 0],
    [-0.08, 0.05],
    [-0.36, 0.29],
    [-0.46, 0.29],
    [-0.5, 0],
  ],
};

/** Head to the left, face up; raised on cushions if `raised`. The pelvis lifts, head and shoulders stay. */
function bridge(raised: boolean, props: Prop[], singleLeg = false): Movement {
  const foot: Point = [0.27, 0.03];
  const far = { farLeg: { at: foot } as Limb, farFoot: 90 };
  const start: Pose = raised
    ? { hip: [0, 0.07], trunk: -58, head: -58, arm: along, leg: { at: foot } }
    : { hip: [0, FLOOR], trunk: -90, head: -90, arm: along, leg: { at: foot } };
  const end: Pose = raised
    ? { hip: [0.035, 0.255], trunk: -97, head: -58, arm: { angles: [132, 120] }, leg: { at: foot } }
    : {
        hip: [-0.05, 0.205],
        trunk: -122.5,
        head: -90,
        arm: along,
        leg: { at: foot },
      };
  return {
    start: singleLeg ? { ...start, leg: { angles: [46, 46] }, ...far, foot: 0 } : start,
    end: singleLeg ? { ...end, leg: { angles: [66, 66] }, ...far, foot: 10 } : end,
    props: raised ? [cushions, ...props] : props,
    trace: 'hip',
  };
}

/** A straight body leaning on its hands; `lean` from upright. */
function pushUp(
  lean: number,
  up: number,
  hand: Point,
  props: Prop[],
  foot: Point,
  farther = 0.491,
): Movement {
  const pose = (angle: number): Pose => ({
    hip: away(foot, angle, farther),
    trunk: angle,
    arm: { at: hand },
    leg: { at: foot },
    foot: Math.max(90, angle + 62),
  });
  return { start: pose(lean), end: pose(up), props, trace: 'shoulder' };
}

function kneelingPushUp(): Movement {
  const pose = (angle: number): Pose => ({
    hip: away([0, 0.03], angle, 0.245),
    trunk: angle,
    arm: { at: [0.46, 0.03] },
    leg: { angles: [angle + 180, 284] },
    foot: 238,
  });
  return { start: pose(75), end: pose(54), props: [], trace: 'shoulder' };
}

/** Lying back, pressing towards the ceiling. */
function lyingPress(trunk: number, hip: Point, foot: Point, props: Prop[]): Movement {
  const base = { hip, trunk, leg: { at: foot } as Limb };
  const lean = ((trunk + 90) * Math.PI) / 180;
  // "Up" in the trunk's own frame, so that the weight rises straight whatever the incline.
  const up = (height: number): Limb => ({ off: [height * Math.cos(lean), height * Math.sin(lean)] });
  return {
    start: { ...base, arm: up(0.13) },
    end: { ...base, arm: up(0.325) },
    props,
    trace: 'hand',
  };
}

function plank(foot: Point, lean: number, legs: Limb, farFoot: number, length: number): Pose {
  return {
    hip: away(foot, lean, length),
    trunk: lean,
    head: lean,
    arm: { angles: [180, 268] },
    farArm: { angles: [lean + 176, lean + 176] },
    leg: legs,
    foot: farFoot,
  };
}

export const onBack: Pose = { hip: [0, FLOOR], trunk: -90, head: -90, arm: along, leg: { at: [0.27, 0.03] } };
export const onIncline: Pose = { ...onBack, hip: [0, 0.07], trunk: -58, head: -58 };
const tableTop: Limb = { angles: [4, 92] };
const armUp: Limb = { angles: [0, 0] };

const onSide: Pose = {
  hip: [0, 0.085],
  trunk: -90,
  head: -84,
  arm: { angles: [72, 128] },
  farArm: { angles: [-70, -100] },
  leg: { angles: [91, 96] },
  foot: 60,
};
const pillow: Prop = {
  prop: 'cushions',
  points: [
    [-0.36, 0],
    [-0.36, 0.05],
    [-0.5, 0.055],
    [-0.5, 0],
  ],
};

const bentLeg: Limb = { angles: [97, 262] };

/** Hands and knees; the trunk is one piece, so rounding shows in pelvis and head. */
export function allFours(height: number, trunk: number, head: number): Pose {
  const lean = Math.acos((height - 0.025) / 0.245) * (180 / Math.PI);
  return {
    hip: [0, height],
    trunk,
    head,
    arm: { at: [0.286, 0.005] },
    leg: { angles: [180 - lean, 278] },
    foot: 226,
  };
}

export const floor: Record<string, Movement> = {
  'bridge-two-legs': bridge(false, []),
  'bridge-two-legs-incline': bridge(true, []),
  'bridge-band': bridge(false, [{ prop: 'loop' }]),
  'bridge-band-incline': bridge(true, [{ prop: 'loop' }]),
  'bridge-paused': bridge(false, []),
  'bridge-paused-incline': bridge(true, []),
  'bridge-loaded': bridge(false, [{ prop: 'weight', at: 'hip', lift: 0.065 }]),
  'bridge-loaded-incline': bridge(true, [{ prop: 'weight', at: 'hip', lift: 0.065 }]),
  'bridge-single-leg': bridge(false, [], true),
  'bridge-single-leg-incline': bridge(true, [], true),

  'push-up-wall': pushUp(31, 19, [0.57, 0.73], [{ prop: 'wall', x: 0.6 }], [0, 0.03]),
  'push-up-counter': pushUp(49, 38, [0.72, 0.5], [{ prop: 'counter', x: 0.74, y: 0.475 }], [0, 0.03]),
  'push-up-chair': pushUp(
    63,
    52,
    [0.81, 0.3],
    [{ prop: 'chair', x: 0.88, seat: 0.265, back: 'right' }],
    [0, 0.04],
  ),
  'push-up-kneeling': kneelingPushUp(),
  'push-up-floor': pushUp(80, 67, [0.735, 0.035], [], [0, 0.07]),

  'chest-press-incline-one': lyingPress(
    -52,
    [0, 0.07],
    [0.3, 0.03],
    [cushions, { prop: 'weight', at: 'hand' }],
  ),
  'chest-press-incline-pair': lyingPress(
    -52,
    [0, 0.07],
    [0.3, 0.03],
    [cushions, { prop: 'weight', at: 'hand' }],
  ),
  'chest-press-floor': lyingPress(-90, [0, FLOOR], [0.27, 0.03], [{ prop: 'weight', at: 'hand' }]),
  'chest-press-bench': lyingPress(
    -90,
    [0, 0.305],
    [0.2, 0.03],
    [
      { prop: 'bench', x: -0.2, y: 0.26, width: 0.62 },
      { prop: 'weight', at: 'hand' },
    ],
  ),
  'chest-press-bench-incline': lyingPress(
    -55,
    [0, 0.305],
    [0.24, 0.03],
    [
      {
        prop: 'cushions',
        points: [
          [0.1, 0.26],
          [-0.06, 0.265],
          [-0.42, 0.52],
          [-0.44, 0.49],
          [-0.1, 0.22],
          [0.1, 0.22],
        ],
      },
      { prop: 'bench', x: -0.03, y: 0.24, width: 0.26 },
      { prop: 'weight', at: 'hand' },
    ],
  ),

  'side-plank-wall': {
    view: 'front',
    start: {
      hip: away([0, 0.03], -16, 0.491),
      trunk: -16,
      arm: { at: [-0.4, 0.78], bend: -1 },
      farArm: { angles: [166, 170] },
      leg: { at: [0, 0.03] },
      foot: 90,
    },
    props: [{ prop: 'wall', x: -0.43 }],
    trace: 'hip',
  },
  'side-plank-kneeling': {
    view: 'front',
    start: plank([0.25, 0.03], -67, { angles: [113, 92] }, 80, 0.245),
    props: [],
    trace: 'hip',
  },
  'side-plank-straight': {
    view: 'front',
    start: plank([0.45, 0.04], -74, { angles: [106, 106] }, 30, 0.491),
    props: [],
    trace: 'hip',
  },

  'dead-bug-heel-slide': {
    start: { ...onBack, farLeg: { at: [0.27, 0.03] } },
    end: { ...onBack, leg: { at: [0.47, 0.03] }, farLeg: { at: [0.27, 0.03] }, foot: 30 },
    props: [],
    trace: 'ankle',
  },
  'dead-bug-heel-slide-incline': {
    start: { ...onIncline, farLeg: { at: [0.27, 0.03] } },
    end: { ...onIncline, leg: { at: [0.47, 0.03] }, farLeg: { at: [0.27, 0.03] }, foot: 30 },
    props: [cushions],
    trace: 'ankle',
  },
  'dead-bug-toe-tap': {
    start: { ...onBack, leg: tableTop, farLeg: { at: [0.27, 0.03] }, foot: 60, farFoot: 90 },
    end: { ...onBack, leg: { angles: [44, 140] }, farLeg: { at: [0.27, 0.03] }, foot: 110, farFoot: 90 },
    props: [],
    trace: 'toe',
  },
  'dead-bug-toe-tap-incline': {
    start: { ...onIncline, leg: { angles: [18, 104] }, farLeg: { at: [0.27, 0.03] }, foot: 70, farFoot: 90 },
    end: { ...onIncline, leg: { angles: [46, 146] }, farLeg: { at: [0.27, 0.03] }, foot: 105, farFoot: 90 },
    props: [cushions],
    trace: 'toe',
  },
  'dead-bug-leg-lower': {
    start: { ...onBack, leg: tableTop, foot: 20 },
    end: { ...onBack, leg: { angles: [72, 76] }, farLeg: tableTop, foot: 20, farFoot: 20 },
    props: [],
    trace: 'ankle',
  },
  'dead-bug-opposite': {
    start: { ...onBack, arm: armUp, leg: tableTop, foot: 20 },
    end: {
      ...onBack,
      arm: armUp,
      farArm: { angles: [-66, -70] },
      leg: { angles: [72, 76] },
      farLeg: tableTop,
      foot: 20,
      farFoot: 20,
    },
    props: [],
    trace: 'ankle',
  },

  'hip-abduction-clam': {
    view: 'front',
    // Heels stay together, the upper knee opens: seen from the front, a little from above.
    start: { ...onSide, leg: { angles: [88, 262] }, farLeg: { angles: [97, 262] }, foot: 262, farFoot: 262 },
    end: { ...onSide, leg: { angles: [46, 222] }, farLeg: { angles: [97, 262] }, foot: 262, farFoot: 262 },
    props: [pillow],
    trace: 'knee',
  },
  'hip-abduction-side-lying': {
    view: 'front',
    start: { ...onSide, farLeg: { angles: [93, 97] } },
    end: { ...onSide, leg: { angles: [62, 64] }, farLeg: { angles: [93, 97] }, foot: 30, farFoot: 60 },
    props: [pillow],
    trace: 'ankle',
  },

  'breathing-side-lying': {
    view: 'front',
    start: { ...onSide, leg: { angles: [84, 103] }, farLeg: { angles: [95, 91] } },
    props: [pillow, { prop: 'breath' }],
    trace: 'hip',
  },

  'pelvic-floor-let-go': {
    view: 'front',
    start: { ...onSide, leg: { angles: [84, 103] }, farLeg: { angles: [95, 91] } },
    props: [pillow, { prop: 'breath' }, { prop: 'pelvis', way: 'down', aside: 0.11 }],
    trace: 'hip',
  },
  'pelvic-floor-short': {
    view: 'front',
    start: { ...onSide, leg: { angles: [84, 103] }, farLeg: { angles: [95, 91] } },
    props: [pillow, { prop: 'pelvis', way: 'up', aside: 0.11 }],
    trace: 'hip',
  },

  'mobility-round-all-fours': {
    start: allFours(0.268, 79, 60),
    end: allFours(0.25, 74, 128),
    props: [],
    trace: 'head',
    apart: 0.86,
  },
  'mobility-open-chest-lying': {
    view: 'front',
    // The upper arm draws a half circle over her: seen from the front.
    start: { ...onSide, arm: { angles: [74, 88] }, leg: bentLeg, farLeg: bentLeg, foot: 262 },
    end: { ...onSide, arm: { angles: [-28, -34] }, leg: bentLeg, farLeg: bentLeg, foot: 262 },
    props: [pillow],
    trace: 'hand',
  },
};
