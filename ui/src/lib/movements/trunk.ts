// The trunk held or lifted: planks face down, reaching on hands and knees or at a counter, curl-ups.
import { away, type Limb, type Movement, type Point, type Pose, type Prop } from '../figure';
import { allFours, cushions, onBack, onIncline } from './floor';

const BODY = 0.491;
const TOES: Point = [0, 0.07];

/** A straight body, held; `lean` from upright. */
function plank(lean: number, arm: Limb, props: Prop[], foot: Point = [0, 0.03]): Movement {
  return {
    start: {
      hip: away(foot, lean, BODY),
      trunk: lean,
      arm,
      leg: { at: foot },
      foot: Math.max(90, lean + 62),
    },
    props,
    trace: 'hip',
  };
}

function kneelingPlank(lean: number, arm: Limb): Movement {
  return {
    start: {
      hip: away([0, 0.03], lean, 0.245),
      trunk: lean,
      arm,
      leg: { angles: [lean + 180, 284] },
      foot: 238,
    },
    props: [],
    trace: 'hip',
  };
}

const wall: Prop = { prop: 'wall', x: 0.6 };

/** Hands and knees; one leg goes away, and the other arm if `reach`. */
function onFours(leg: Limb, foot: number, reach = false, from?: Limb): Movement {
  const base = allFours(0.268, 79, 94);
  // Straight down to the hands, as allFours has it, but by its angles, so that the arm can travel.
  const down: Limb = { angles: [194, 161] };
  const far = { farLeg: base.leg, farFoot: 226 };
  return {
    start: { ...base, leg: from ?? base.leg, farArm: down, ...far },
    end: { ...base, farArm: reach ? { angles: [74, 74] } : down, ...far, leg, foot },
    props: [],
    trace: 'ankle',
  };
}

/** Folded over a counter on the forearms. */
function atCounter(leg: Point, foot: number, reach = false): Movement {
  const arm: Limb = { angles: [168, 90] };
  const base: Pose = {
    hip: [-0.1, 0.5],
    trunk: 51,
    head: 62,
    arm,
    farArm: arm,
    leg: { at: [-0.12, 0.03] },
    farLeg: { at: [-0.12, 0.03] },
    farFoot: 90,
  };
  return {
    start: base,
    end: { ...base, leg: { at: leg }, foot, farArm: reach ? { angles: [58, 58] } : arm },
    props: [{ prop: 'counter', x: 0.14, y: 0.475 }],
    trace: 'ankle',
  };
}

/** Fingertips low on the belly: flat on the back, and leaning back. */
const onBelly: Limb = { angles: [94, 66] };
const onBellyRaised: Limb = { angles: [132, 70] };

/** From lying: head, then shoulders; `to` is where the trunk comes to. */
function curl(
  base: Pose,
  to: number,
  head: number,
  arms: [Limb, Limb],
  props: Prop[],
  far: { farArm?: Limb } = {},
): Movement {
  return {
    start: { ...base, arm: arms[0], ...far },
    end: { ...base, trunk: to, head, arm: arms[1], ...far },
    props,
    trace: 'head',
  };
}

const toKnees: [Limb, Limb] = [{ angles: [80, 80] }, { angles: [76, 76] }];
const onThighs: [Limb, Limb] = [{ at: [0.06, 0.2] }, { at: [0.1, 0.25] }];
/** The hand at the ear, the elbow in front. */
const atEar: Limb = { off: [0.03, 0.08] };

export const trunk: Record<string, Movement> = {
  'front-plank-wall': plank(19, { at: [0.575, 0.74] }, [wall]),
  'front-plank-wall-forearms': plank(24, { angles: [100, 4] }, [{ prop: 'wall', x: 0.53 }]),
  'front-plank-counter': plank(34.5, { at: [0.72, 0.5] }, [{ prop: 'counter', x: 0.74, y: 0.475 }]),
  'front-plank-counter-forearms': plank(34.8, { angles: [160, 88] }, [
    { prop: 'counter', x: 0.485, y: 0.475 },
  ]),
  'front-plank-kneeling': kneelingPlank(52.3, { at: [0.46, 0.03] }),
  'front-plank-kneeling-forearms': kneelingPlank(69.6, { angles: [180, 90] }),
  'front-plank-all-fours': {
    start: {
      hip: [0.075, 0.258],
      trunk: 76,
      head: 78,
      arm: { at: [0.31, 0.01] },
      leg: { angles: [197, 278] },
      foot: 226,
    },
    props: [],
    trace: 'hip',
  },
  'front-plank-floor': plank(67, { at: [0.735, 0.035] }, [], TOES),
  'front-plank-forearms': plank(79.2, { angles: [180, 90] }, [], TOES),
  'front-plank-knees-off': {
    start: {
      hip: [0, 0.335],
      trunk: 90,
      head: 86,
      arm: { at: [0.288, 0.01] },
      leg: { at: [-0.215, 0.098] },
      foot: 156,
    },
    props: [],
    trace: 'hip',
  },

  'bird-dog-slide': onFours({ at: [-0.43, 0.09] }, 205, false, { at: [-0.2126, 0.0593] }),
  'bird-dog-slide-counter': atCounter([-0.36, 0.11], 150),
  'bird-dog-leg': onFours({ angles: [266, 268] }, 200),
  'bird-dog-leg-counter': atCounter([-0.53, 0.27], 180),
  'bird-dog-opposite': onFours({ angles: [266, 268] }, 200, true),
  'bird-dog-opposite-counter': atCounter([-0.53, 0.27], 180, true),

  'curl-up-head': curl(onBack, -90, -52, [onBelly, onBelly], []),
  'curl-up-head-incline': curl(onIncline, -58, -24, [onBellyRaised, onBellyRaised], [cushions]),
  'curl-up-curl': curl(onBack, -74, -40, toKnees, []),
  'curl-up-curl-incline': curl(onIncline, -46, -16, onThighs, [cushions]),
  'curl-up-lean-seated': {
    start: {
      hip: [0, 0.305],
      trunk: -20,
      head: -10,
      arm: { off: [0.11, -0.08] },
      leg: { at: [0.26, 0.03] },
    },
    end: { hip: [0, 0.305], trunk: 2, head: 0, arm: { off: [0.11, -0.08] }, leg: { at: [0.26, 0.03] } },
    props: [{ prop: 'chair', x: -0.1, seat: 0.265, back: 'left' }],
    trace: 'head',
  },
  'curl-up-turn': curl(onBack, -66, -36, [{ angles: [80, 80] }, { angles: [72, 72] }], [], {
    farArm: atEar,
  }),
  'curl-up-turn-incline': curl(onIncline, -44, -14, onThighs, [cushions], { farArm: atEar }),
};
