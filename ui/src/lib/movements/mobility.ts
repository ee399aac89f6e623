// Joints moved through their range: back, hips, ankles, shoulders. Turns are drawn by what the arms do, as a trunk
// that turns looks the same from the side.
import type { Limb, Movement, Point, Pose, Prop } from '../figure';
import { allFours } from './floor';
import { hang, stand } from './standing';

const ANKLE = 0.03;
const chair: Prop = { prop: 'chair', x: -0.03, seat: 0.265, back: 'left' };
const stool: Prop = { prop: 'stool', x: 0, seat: 0.43 };
const counter: Prop = { prop: 'counter', x: 0.25, y: 0.56 };
const onCounter: Limb = { at: [0.22, 0.6] };

function sit(arm: Limb, extra: Partial<Pose> = {}): Pose {
  return { hip: [0, 0.305], trunk: 0, arm, leg: { at: [0.26, ANKLE] }, ...extra };
}

/** On a seat, seen from the front; the far arm is the mirror of the near one if left out. */
function facing(arm: readonly [number, number], farArm?: readonly [number, number]): Pose {
  return {
    hip: [0, 0.488],
    trunk: 0,
    arm: { angles: arm },
    farArm: { angles: farArm ?? [-arm[0], -arm[1]] },
    leg: { at: [0.12, ANKLE], bend: -1 },
    farLeg: { at: [-0.12, ANKLE], bend: 1 },
    foot: 112,
    farFoot: 248,
  };
}

/** Folded over a counter on the forearms. */
const folded: Pose = {
  hip: [-0.1, 0.5],
  trunk: 51,
  head: 62,
  arm: { angles: [168, 90] },
  leg: { at: [-0.12, ANKLE] },
};
const low: Prop = { prop: 'counter', x: 0.14, y: 0.475 };

/** Hands and knees; one arm straight down, by its angles so that it can travel. */
const fours: Pose = { ...allFours(0.268, 79, 94), farArm: { at: [0.286, 0.005] } };

/** The knees stay where they are while the hips go back. */
const rockedBack: Pose = {
  hip: [-0.157, 0.183],
  trunk: 84,
  head: 100,
  arm: { at: [0.286, 0.005] },
  leg: { angles: [130, 278] },
  foot: 242,
};

/** Before a wall, one foot ahead. */
function toWall(hip: Point): Pose {
  return {
    hip,
    trunk: 3,
    arm: { at: [0.3, 0.72] },
    leg: { at: [0.12, ANKLE] },
    farLeg: { at: [-0.2, 0.05] },
    farFoot: 122,
  };
}

export const mobility: Record<string, Movement> = {
  'mobility-round-counter': {
    start: { ...folded, head: 44 },
    end: { ...folded, hip: [-0.13, 0.5], trunk: 50, head: 108 },
    props: [low],
    trace: 'head',
  },
  'mobility-roll-wall': {
    start: { ...stand(hang, 0), hip: [-0.03, 0.495], leg: { at: [0.08, ANKLE] } },
    end: {
      hip: [-0.04, 0.48],
      trunk: 50,
      head: 98,
      arm: { angles: [178, 172] },
      leg: { at: [0.08, ANKLE] },
    },
    props: [{ prop: 'wall', x: -0.11 }],
    trace: 'head',
  },

  'mobility-turn-seated': {
    view: 'front',
    start: facing([156, 284]),
    end: facing([112, 274], [172, 62]),
    props: [stool],
    trace: 'elbow',
  },
  'mobility-turn-counter': {
    start: { ...folded, arm: { angles: [182, 178] }, farArm: folded.arm },
    end: { ...folded, head: 40, arm: { angles: [14, 10] }, farArm: folded.arm },
    props: [low],
    trace: 'hand',
  },
  'mobility-turn-all-fours': {
    start: { ...fours, arm: { angles: [194, 161] } },
    end: { ...fours, head: 62, arm: { angles: [8, 4] } },
    props: [],
    trace: 'hand',
  },

  'mobility-hip-fold-seated': {
    start: sit({ at: [0.19, 0.37] }),
    end: sit({ at: [0.28, 0.24] }, { trunk: 44, head: 40 }),
    props: [chair],
    trace: 'head',
  },
  'mobility-hip-rock-all-fours': {
    start: { ...allFours(0.268, 79, 94), leg: { angles: [172.7, 278] } },
    end: rockedBack,
    props: [],
    trace: 'hip',
  },
  'mobility-hip-rock-counter': {
    start: stand({ at: [0.26, 0.58] }, 0, { hip: [0, 0.51], trunk: 12, head: 6 }),
    end: stand({ at: [0.26, 0.58] }, 0, { hip: [-0.3, 0.41], trunk: 62, head: 58 }),
    props: [{ prop: 'counter', x: 0.29, y: 0.54 }],
    trace: 'hip',
  },
  'mobility-hip-squat-held': {
    start: stand(onCounter, 0.02),
    end: stand(onCounter, 0.02, { hip: [-0.16, 0.19], trunk: 22, head: 10 }),
    props: [counter],
    trace: 'hip',
  },

  'mobility-ankle-rock-seated': {
    start: sit({ at: [0.2, 0.36] }, { leg: { at: [0.28, 0.092] }, foot: 128 }),
    end: sit({ at: [0.2, 0.36] }, { foot: 64 }),
    props: [chair],
    trace: 'toe',
  },
  'mobility-ankle-knees-forward': {
    start: stand(onCounter),
    end: stand(onCounter, 0, { hip: [-0.01, 0.45] }),
    props: [counter],
    trace: 'knee',
  },
  'mobility-ankle-knee-wall': {
    start: toWall([-0.02, 0.485]),
    end: toWall([0.05, 0.455]),
    props: [{ prop: 'wall', x: 0.33 }],
    trace: 'knee',
  },

  'mobility-shoulder-circles-seated': {
    start: sit({ angles: [172, 14] }),
    end: sit({ angles: [74, -84] }),
    props: [chair],
    trace: 'elbow',
  },
  'mobility-shoulder-open-seated': {
    view: 'front',
    // Hands in front, drawn from a little above; the forearms turn outward.
    start: facing([170, -30]),
    end: facing([170, 72]),
    props: [stool],
    trace: 'hand',
  },
  'mobility-shoulder-wall-slide': {
    start: stand({ at: [0.18, 0.9] }, 0),
    end: stand({ at: [0.18, 1.06] }, 0),
    props: [{ prop: 'wall', x: 0.21 }],
    trace: 'hand',
  },
  'mobility-shoulder-towel-seated': {
    view: 'front',
    inward: true,
    start: facing([142, 150]),
    end: facing([32, 14]),
    props: [stool, { prop: 'line', from: 'farHand', to: 'hand', kind: 'strap' }],
    trace: 'hand',
  },
};
