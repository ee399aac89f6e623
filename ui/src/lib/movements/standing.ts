// Movements on the feet: squats, hinges, split squats, steps, carries.
import type { Limb, Movement, Point, Pose, Prop } from '../figure';

const ANKLE = 0.03;
/** Legs all but straight. */
export const TALL = 0.519;

export const hang: Limb = { angles: [180, 178] };
export const atChest: Limb = { off: [0.12, -0.13] };
export const atShoulder: Limb = { off: [0.09, 0.0] };
export const forward: Limb = { off: [0.32, -0.03] };

const weightAt = { prop: 'weight', at: 'hand' } as const;

export function stand(arm: Limb = hang, x = 0, extra: Partial<Pose> = {}): Pose {
  return { hip: [x, TALL], trunk: 0, arm, leg: { at: [x, ANKLE] }, ...extra };
}

function squat(hip: Point, lean: number, arm: Limb, upArm: Limb, props: Prop[], apart = 0): Movement {
  return {
    start: { hip, trunk: lean, head: lean * 0.4, arm, leg: { at: [0.02, ANKLE] } },
    end: stand(upArm, 0.02),
    props,
    trace: 'shoulder',
    apart,
  };
}

function hinge(arm: Limb, upArm: Limb, props: Prop[], lean = 68): Movement {
  return {
    start: { hip: [-0.15, 0.465], trunk: lean, head: lean - 14, arm, leg: { at: [0, ANKLE] } },
    end: stand(upArm),
    props,
    trace: 'hand',
    apart: 0.42,
  };
}

/** One foot half a step back on its toes. */
function offset(arm: Limb, upArm: Limb, props: Prop[], apart: number): Movement {
  const far = { farLeg: { at: [-0.24, 0.055] } as Limb, farFoot: 125 };
  return {
    start: { hip: [-0.13, 0.44], trunk: 62, head: 46, arm, leg: { at: [0.02, ANKLE] }, ...far },
    end: { hip: [-0.02, 0.5], trunk: 4, arm: upArm, leg: { at: [0.02, ANKLE] }, ...far },
    props,
    trace: 'shoulder',
    apart,
  };
}

function singleLeg(arm: Limb, upArm: Limb, props: Prop[], apart: number, farArm?: Limb): Movement {
  return {
    start: {
      hip: [-0.05, 0.5],
      trunk: 72,
      head: 58,
      arm,
      leg: { at: [0, ANKLE] },
      farLeg: { angles: [258, 262] },
      farFoot: 170,
      ...(farArm ? { farArm } : {}),
    },
    end: stand(upArm, 0, { farLeg: { angles: [186, 196] }, farFoot: 110 }),
    props,
    trace: 'shoulder',
    apart,
  };
}

/** On one leg, a hand sliding on the wall. */
function heldHinge(): Movement {
  const base = singleLeg(hang, hang, [{ prop: 'wall', x: 0.33 }], 0);
  return {
    ...base,
    start: {
      ...base.start,
      trunk: 50,
      head: 40,
      arm: { at: [0.3, 0.62] },
      farLeg: { angles: [242, 246] },
      farFoot: 160,
    },
    end: base.end ? { ...base.end, arm: { at: [0.3, 0.7] } } : base.start,
  };
}

function split(depth: number, arm: Limb, props: Prop[], farAnkle: Point, farFoot = 163, lean = 5): Movement {
  const feet = { leg: { at: [0.22, ANKLE] } as Limb, farLeg: { at: farAnkle } as Limb, farFoot };
  return {
    start: { hip: [0, depth], trunk: lean, arm, ...feet },
    end: { hip: [0, 0.455], trunk: lean * 0.6, arm, ...feet },
    props,
    trace: 'shoulder',
  };
}

function stepUp(height: number, arm: Limb, props: Prop[]): Movement {
  const lean = 12 + height * 40;
  return {
    start: {
      hip: [-0.05, 0.505],
      trunk: lean,
      head: lean * 0.4,
      arm,
      leg: { at: [0.2, ANKLE + height] },
      farLeg: { at: [-0.1, ANKLE] },
    },
    end: {
      hip: [0.2, TALL + height],
      trunk: 0,
      arm,
      leg: { at: [0.2, ANKLE + height] },
      farLeg: { at: [0.13, ANKLE + height + 0.04] },
    },
    props: [{ prop: 'block', x: 0.3, y: height, width: 0.36 }, ...props],
    trace: 'hip',
  };
}

/** Off the floor from soft knees, and down again on the spot. */
function bounce(down: Partial<Pose>, up: Partial<Pose>): Movement {
  const arm: Limb = { off: [0.2, -0.1] };
  return {
    start: { hip: [-0.03, 0.485], trunk: 8, head: 4, arm, leg: { at: [0, ANKLE] }, ...down },
    end: { ...stand(arm, 0, { hip: [0, TALL + 0.09], leg: { at: [0, 0.125] }, foot: 152 }), ...up },
    props: [],
    trace: 'hip',
    apart: 0.5,
  };
}

function carry(arm: Limb, props: Prop[], farArm: Limb = arm): Movement {
  const stride = (near: number, far: number): Pose => ({
    hip: [0, 0.5],
    trunk: 1,
    arm,
    farArm,
    leg: { at: [near, near < 0 ? 0.05 : ANKLE] },
    farLeg: { at: [far, far < 0 ? 0.05 : ANKLE] },
    foot: near < 0 ? 118 : 84,
    farFoot: far < 0 ? 118 : 84,
  });
  return { start: stride(0.15, -0.14), end: stride(-0.14, 0.15), props, trace: 'hip', apart: 0.62 };
}

const highChair: Prop = { prop: 'chair', x: -0.27, seat: 0.35, back: 'left' };
const chair: Prop = { prop: 'chair', x: -0.29, seat: 0.265, back: 'left' };
const chairAhead: Prop = { prop: 'chair', x: 0.62, seat: 0.265, back: 'left' };
const sitHigh: Point = [-0.19, 0.39];
const sit: Point = [-0.2, 0.305];
const deep: Point = [-0.19, 0.27];

export const standing: Record<string, Movement> = {
  'squat-high-chair': squat(sitHigh, 22, forward, hang, [highChair]),
  'squat-chair': squat(sit, 26, forward, hang, [chair]),
  'squat-goblet-chair': squat(sit, 24, atChest, atChest, [chair, weightAt]),
  'squat-free': squat(deep, 34, { off: [0.31, 0.06] }, hang, [], 0.4),
  'squat-goblet': squat(deep, 28, atChest, atChest, [weightAt], 0.42),
  'squat-two-dumbbells': squat(deep, 36, hang, hang, [weightAt], 0.44),

  'hinge-wall-tap': {
    ...hinge({ off: [0.13, -0.24] }, { off: [0.13, -0.24] }, [{ prop: 'wall', x: -0.22 }], 55),
    apart: 0.32,
  },
  'hinge-one-dumbbell': hinge(hang, { angles: [170, 172] }, [weightAt]),
  'hinge-band': hinge({ angles: [186, 184] }, { angles: [176, 174] }, [
    { prop: 'line', from: 'hand', to: 'ankle', kind: 'band' },
  ]),
  'hinge-two-dumbbells': hinge(hang, { angles: [174, 172] }, [weightAt]),
  'hinge-barbell': hinge({ angles: [184, 182] }, { angles: [172, 172] }, [{ prop: 'plate', at: 'hand' }]),

  'offset-hinge-held': offset({ at: [0.28, 0.63] }, { at: [0.28, 0.63] }, [{ prop: 'wall', x: 0.31 }], 0),
  'offset-hinge-loaded': offset(hang, { angles: [170, 172] }, [weightAt], 0.5),
  'offset-hinge-single-held': heldHinge(),
  'offset-hinge-single-free': singleLeg({ angles: [168, 170] }, hang, [], 0.62),
  'offset-hinge-single-loaded': singleLeg(hang, { angles: [172, 172] }, [weightAt], 0.62),

  'split-squat-held-short': split(0.38, { at: [0.28, 0.53] }, [{ ...chairAhead, x: 0.44 }], [-0.25, 0.09]),
  'split-squat-full': split(0.3, hang, [], [-0.28, 0.09]),
  'split-squat-loaded': split(0.3, hang, [weightAt], [-0.28, 0.09]),
  'split-squat-goblet': split(0.3, atChest, [weightAt], [-0.28, 0.09]),
  'split-squat-rear-foot': split(
    0.33,
    hang,
    [{ prop: 'chair', x: -0.42, seat: 0.255, back: 'left' }],
    [-0.3, 0.31],
    200,
    14,
  ),
  'split-squat-rear-foot-loaded': split(
    0.33,
    hang,
    [{ prop: 'chair', x: -0.42, seat: 0.255, back: 'left' }, weightAt],
    [-0.3, 0.31],
    200,
    14,
  ),

  'step-up-10-held': stepUp(0.06, { off: [0.28, -0.1] }, [{ prop: 'wall', x: 0.58 }]),
  'step-up-knee-lift-held': {
    start: stand({ at: [0.23, 0.57] }, 0),
    end: stand({ at: [0.23, 0.57] }, 0, { leg: { angles: [98, 184] }, farLeg: { at: [0, ANKLE] } }),
    props: [{ prop: 'counter', x: 0.26, y: 0.53 }],
    trace: 'knee',
  },
  'step-up-20': stepUp(0.12, hang, []),
  'step-up-loaded': stepUp(0.12, hang, [weightAt]),
  'step-up-goblet': stepUp(0.12, atChest, [weightAt]),
  'step-up-30': stepUp(0.18, hang, []),

  'carry-goblet': carry(atChest, [weightAt]),
  'carry-palms': carry(atChest, []),
  'carry-two-hands': carry(hang, [weightAt, { prop: 'weight', at: 'farHand' }]),
  'carry-one-hand': carry(hang, [weightAt], { angles: [196, 170] }),
  'carry-racked': carry(atShoulder, [weightAt]),

  'hip-abduction-banded-steps': {
    view: 'front',
    // Seen from the front: the near leg stands for her left, the far leg for her right.
    start: {
      hip: [0, 0.49],
      trunk: 0,
      arm: { angles: [166, 200] },
      farArm: { angles: [194, 160] },
      leg: { at: [0.09, ANKLE], bend: -1 },
      farLeg: { at: [-0.09, ANKLE], bend: 1 },
      foot: 100,
      farFoot: 260,
    },
    end: {
      hip: [0.06, 0.47],
      trunk: 0,
      arm: { angles: [166, 200] },
      farArm: { angles: [194, 160] },
      leg: { at: [0.26, ANKLE], bend: -1 },
      farLeg: { at: [-0.09, ANKLE], bend: 1 },
      foot: 100,
      farFoot: 260,
    },
    props: [{ prop: 'loop' }],
    trace: 'knee',
  },

  'impact-heel-drop': {
    start: stand(hang, 0, { hip: [0.02, TALL + 0.045], leg: { at: [0.02, 0.075] }, foot: 130 }),
    end: stand(),
    props: [],
    trace: 'ankle',
    apart: 0.42,
  },
  'impact-bounce': bounce({}, {}),
  'impact-hop': bounce(
    { farLeg: { angles: [172, 248] }, farFoot: 190 },
    { farLeg: { angles: [176, 256] }, farFoot: 200 },
  ),

  'pelvic-floor-standing': {
    start: stand(),
    props: [{ prop: 'pelvis', way: 'up', aside: 0.12 }],
    trace: 'hip',
  },
  'breathing-standing': { start: stand({ off: [0.09, -0.16] }), props: [{ prop: 'breath' }], trace: 'hip' },
  'breathing-under-load': {
    start: stand(atChest),
    props: [{ prop: 'breath' }, weightAt],
    trace: 'hip',
  },
  'breathing-sit-to-stand': squat(sit, 26, { off: [0.3, -0.05] }, hang, [chair]),
};
