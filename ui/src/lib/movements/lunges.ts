// One leg carries: lunges back, forward and aside, and down from a step.
import type { Limb, Movement, Point, Pose, Prop } from '../figure';
import { atChest, forward, hang, TALL } from './standing';

const ANKLE = 0.03;
const weight: Prop = { prop: 'weight', at: 'hand' };
const chairAhead: Prop = { prop: 'chair', x: 0.45, seat: 0.265, back: 'left' };

/** One foot steps back and comes forward again; the front foot stays. */
function reverse(depth: number, arm: Limb, props: Prop[], back: Point = [-0.28, 0.09]): Movement {
  const leg: Limb = { at: [0.22, ANKLE] };
  return {
    start: { hip: [0.01, depth], trunk: 6, arm, leg, farLeg: { at: back }, farFoot: 163 },
    end: { hip: [0.22, TALL], trunk: 0, arm, leg, farLeg: { at: [0.2, ANKLE] }, farFoot: 90 },
    props,
    trace: 'hip',
  };
}

/** Up from a lunge, the other leg already on its way to the next step. */
function walking(props: Prop[]): Movement {
  const leg: Limb = { at: [0.22, ANKLE] };
  return {
    start: { hip: [0, 0.3], trunk: 4, arm: hang, leg, farLeg: { angles: [200, 276] }, farFoot: 163 },
    end: { hip: [0.25, TALL], trunk: 0, arm: hang, leg, farLeg: { angles: [116, 202] }, farFoot: 86 },
    props,
    trace: 'hip',
  };
}

/** Seen from the front: the foot on the right steps out and back. */
function side(out: number, hip: Point, arms: [Limb, Limb], endArms: [Limb, Limb], props: Prop[]): Movement {
  const feet = { farLeg: { at: [-0.2, ANKLE], bend: 1 } as Limb, foot: 100, farFoot: 260 };
  return {
    view: 'front',
    start: { hip, trunk: 5, arm: arms[0], farArm: arms[1], leg: { at: [out, ANKLE], bend: -1 }, ...feet },
    end: {
      hip: [-0.13, 0.508],
      trunk: 0,
      arm: endArms[0],
      farArm: endArms[1],
      leg: { at: [-0.06, ANKLE], bend: -1 },
      ...feet,
    },
    props,
    trace: 'hip',
  };
}

const folded: [Limb, Limb] = [{ angles: [150, 318] }, { angles: [210, 42] }];
/** Hands on a counter, given how far to the right they are. */
const onCounter = (x: number): [Limb, Limb] => [
  { at: [x + 0.14, 0.53], bend: -1 },
  { at: [x - 0.14, 0.53], bend: 1 },
];

/** On a step of some height, the other heel down to the floor in front of it. */
function stepDown(height: number, arm: Limb, upArm: Limb, props: Prop[]): Movement {
  const leg: Limb = { at: [-0.02, ANKLE + height] };
  return {
    start: { hip: [-0.08, 0.495], trunk: 20, head: 8, arm, leg, farLeg: { at: [0.12, 0.05] }, farFoot: 74 },
    end: {
      hip: [-0.01, TALL + height],
      trunk: 0,
      arm: upArm,
      leg,
      farLeg: { at: [0.12, ANKLE + height + 0.03] },
      farFoot: 84,
    },
    props: [{ prop: 'block', x: -0.09, y: height, width: 0.36 }, ...props],
    trace: 'hip',
  };
}

/** On the floor on one leg, the other heel taps in front. */
function heelTap(hip: Point, trunk: number, heel: Point, arm: Limb, upArm: Limb, props: Prop[]): Movement {
  const leg: Limb = { at: [0, ANKLE] };
  return {
    start: { hip, trunk, head: trunk * 0.4, arm, leg, farLeg: { at: heel }, farFoot: 66 },
    end: { hip: [0, TALL], trunk: 0, arm: upArm, leg, farLeg: { at: [0.13, 0.07] }, farFoot: 80 },
    props,
    trace: 'hip',
  };
}

const standOnOne: Pose = {
  hip: [0.02, TALL],
  trunk: 0,
  arm: { off: [0.2, -0.2] },
  leg: { at: [0.02, ANKLE] },
  farLeg: { angles: [160, 172] },
  farFoot: 80,
};

export const lunges: Record<string, Movement> = {
  'lunge-reverse-held': reverse(0.38, { at: [0.3, 0.53] }, [chairAhead], [-0.22, 0.08]),
  'lunge-reverse': reverse(0.3, hang, []),
  'lunge-reverse-loaded': reverse(0.3, hang, [weight]),
  'lunge-reverse-goblet': reverse(0.3, atChest, [weight]),
  'lunge-walking': walking([]),
  'lunge-walking-loaded': walking([weight]),

  'side-lunge-short': side(0.16, [0.05, 0.43], onCounter(0.07), onCounter(-0.13), [
    { prop: 'bench', x: 0, y: 0.5, width: 0.84 },
  ]),
  'side-lunge-full': side(0.3, [0.13, 0.385], folded, folded, []),
  'side-lunge-goblet': side(0.3, [0.13, 0.385], folded, folded, [weight]),

  'step-down-5-held': stepDown(0.03, { at: [0.33, 0.7] }, { at: [0.32, 0.76] }, [{ prop: 'wall', x: 0.36 }]),
  'step-down-heel-tap-held': heelTap(
    [-0.05, 0.452],
    16,
    [0.22, 0.05],
    { at: [0.22, 0.55] },
    { at: [0.22, 0.55] },
    [{ prop: 'chair', x: 0.38, seat: 0.265, back: 'left' }],
  ),
  'step-down-10': stepDown(0.06, { off: [0.24, -0.12] }, hang, []),
  'step-down-heel-tap': heelTap([-0.11, 0.4], 30, [0.22, 0.05], { off: [0.3, 0] }, hang, []),
  'step-down-20': stepDown(0.12, { off: [0.26, -0.08] }, hang, []),
  'step-down-to-chair': {
    start: {
      hip: [-0.19, 0.39],
      trunk: 24,
      head: 10,
      arm: forward,
      leg: { at: [0.02, ANKLE] },
      farLeg: { angles: [104, 128] },
      farFoot: 62,
    },
    end: standOnOne,
    props: [{ prop: 'chair', x: -0.27, seat: 0.35, back: 'left' }],
    trace: 'hip',
  },
};
