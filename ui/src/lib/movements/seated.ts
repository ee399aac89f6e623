// Movements on a chair, on the knees, standing presses and pulls, and those that hang.
import type { Limb, Movement, Point, Pose, Prop } from '../figure';
import { atChest, atShoulder, hang, stand } from './standing';

const chair: Prop = { prop: 'chair', x: -0.03, seat: 0.265, back: 'left' };
const weight: Prop = { prop: 'weight', at: 'hand' };
const overhead: Limb = { off: [0.03, 0.325] };
const pressedOut: Limb = { off: [0.325, -0.04] };

function sit(arm: Limb, extra: Partial<Pose> = {}): Pose {
  return { hip: [0, 0.305], trunk: 0, arm, leg: { at: [0.26, 0.03] }, ...extra };
}

function seated(arm: Limb, end: Limb, props: Prop[] = [], extra: Partial<Pose> = {}): Movement {
  return { start: sit(arm, extra), end: sit(end, extra), props: [chair, ...props], trace: 'hand' };
}

function upright(arm: Limb, end: Limb, props: Prop[], extra: Partial<Pose> = {}): Movement {
  return { start: stand(arm, 0, extra), end: stand(end, 0, extra), props, trace: 'hand' };
}

const band = (to: Point): Prop => ({ prop: 'line', from: 'hand', to, kind: 'band' });
const side: Point = [-0.42, 0.72];

/** Hips folded and still, the arms work. */
function row(props: Prop[], start: Limb, end: Limb, extra: Partial<Pose> = {}): Movement {
  const base = {
    hip: [-0.12, 0.475] as Point,
    trunk: 60,
    head: 48,
    leg: { at: [0, 0.03] } as Limb,
    ...extra,
  };
  return { start: { ...base, arm: start }, end: { ...base, arm: end }, props, trace: 'hand' };
}

const BAR: Point = [0, 1.16];
const onBar: Prop = { prop: 'bar', x: BAR[0], y: BAR[1] };
const gripped: Limb = { at: BAR };
const low: Pose = { hip: [0, 0.545], trunk: 0, arm: gripped, leg: { angles: [176, 214] }, foot: 180 };
const high: Pose = {
  hip: [-0.05, 0.79],
  trunk: -3,
  head: 0,
  arm: gripped,
  leg: { angles: [172, 210] },
  foot: 176,
};

const kneel = (arm: Limb): Pose => ({
  hip: [0, 0.277],
  trunk: 0,
  arm,
  leg: { angles: [180, 278] },
  foot: 226,
});

const splitStance: Partial<Pose> = {
  hip: [0, 0.485],
  leg: { at: [0.17, 0.03] },
  farLeg: { at: [-0.19, 0.05] },
  foot: 90,
  farFoot: 122,
};

export const seatedAndHanging: Record<string, Movement> = {
  'chest-press-seated-band': seated({ off: [0.12, -0.1] }, pressedOut, [
    { prop: 'line', from: 'hand', to: [-0.035, 0.5], kind: 'band' },
  ]),
  'chest-press-palms': seated({ off: [0.13, -0.1] }, pressedOut),

  'overhead-press-seated-one-arm': seated(atShoulder, overhead, [weight], { farArm: { off: [0.13, -0.24] } }),
  'overhead-press-seated-band': seated(
    atShoulder,
    overhead,
    [{ prop: 'line', from: 'hand', to: [0.03, 0.275], kind: 'band' }],
    { farArm: { off: [0.13, -0.24] } },
  ),
  'overhead-press-seated-reach': seated(atShoulder, overhead),
  'overhead-press-seated-two-arms': seated(atShoulder, overhead, [weight]),
  'overhead-press-seated-one-weight': seated(atChest, overhead, [weight]),
  'overhead-press-standing': upright(atShoulder, overhead, [weight]),
  'overhead-press-standing-one': upright(atChest, overhead, [weight]),
  'overhead-press-barbell': upright({ off: [0.1, -0.02] }, overhead, [{ prop: 'plate', at: 'hand' }]),

  'row-seated-band': seated({ off: [0.32, -0.08] }, { off: [0.07, -0.15] }, [
    band([0.78, 0.5]),
    { prop: 'wall', x: 0.8 },
  ]),
  'row-seated-towel': seated(
    { off: [0.28, -0.16] },
    { off: [0.07, -0.16] },
    [{ prop: 'line', from: 'hand', to: 'toe', kind: 'strap' }],
    { leg: { at: [0.47, 0.17] }, farLeg: { at: [0.26, 0.03] }, foot: 20, farFoot: 90 },
  ),
  'row-chair-supported': row(
    [{ prop: 'chair', x: 0.5, seat: 0.265, back: 'left' }, weight],
    hang,
    { angles: [256, 176] },
    { farArm: { at: [0.36, 0.53] }, leg: { at: [0.06, 0.03] }, farLeg: { at: [-0.2, 0.04] }, farFoot: 100 },
  ),
  'row-hinged': row([weight], hang, { angles: [254, 176] }),
  'row-hinged-one': row([weight], hang, { angles: [250, 158] }),
  'row-hinged-barbell': row([{ prop: 'plate', at: 'hand' }], hang, { angles: [250, 168] }),
  'row-hinged-band': row([{ prop: 'line', from: 'hand', to: 'ankle', kind: 'band' }], hang, {
    angles: [254, 170],
  }),
  'row-suspended': {
    start: {
      hip: [0.021, 0.395],
      trunk: -42,
      head: -34,
      arm: { at: [0.1, 0.8] },
      leg: { at: [0.35, 0.03] },
      foot: 50,
    },
    end: {
      hip: [0.12, 0.465],
      trunk: -28,
      head: -22,
      arm: { at: [0.12, 0.69] },
      leg: { at: [0.35, 0.03] },
      foot: 62,
    },
    props: [{ prop: 'line', from: 'hand', to: [0.5, 1.12], kind: 'strap' }],
    trace: 'hand',
  },

  'vertical-pull-band': seated({ off: [0.13, 0.3] }, { off: [0.11, -0.02] }, [band([0.34, 1.1])]),
  'vertical-pull-towel': {
    view: 'front',
    // Seen from the front, so that the towel is seen between the hands.
    start: sit(
      { angles: [28, 8] },
      {
        farArm: { angles: [-28, -8] },
        leg: { angles: [150, 180] },
        farLeg: { angles: [210, 180] },
        hip: [0, 0.488],
        foot: 110,
        farFoot: 250,
      },
    ),
    end: sit(
      { angles: [128, 8] },
      {
        farArm: { angles: [-128, -8] },
        leg: { angles: [150, 180] },
        farLeg: { angles: [210, 180] },
        hip: [0, 0.488],
        foot: 110,
        farFoot: 250,
      },
    ),
    props: [
      { prop: 'stool', x: 0, seat: 0.45 },
      { prop: 'line', from: 'farHand', to: 'hand', kind: 'strap' },
    ],
    trace: 'hand',
  },
  'vertical-pull-feet-assisted': {
    start: { hip: [-0.04, 0.45], trunk: 3, arm: { at: [0, 1.05] }, leg: { at: [0.2, 0.3] } },
    end: { hip: [-0.06, 0.66], trunk: 0, arm: { at: [0, 1.05] }, leg: { at: [0.2, 0.3] } },
    props: [
      { prop: 'bar', x: 0, y: 1.05 },
      { prop: 'chair', x: 0.27, seat: 0.265, back: 'right' },
    ],
    trace: 'head',
  },
  'vertical-pull-band-assisted': {
    start: low,
    end: high,
    props: [onBar, { prop: 'line', from: BAR, to: 'knee', kind: 'band' }],
    trace: 'head',
    apart: 0.5,
  },
  'vertical-pull-lowering': {
    start: high,
    end: low,
    props: [onBar, { prop: 'chair', x: -0.4, seat: 0.265, back: 'left' }],
    trace: 'head',
    apart: 0.5,
  },
  'vertical-pull-full': { start: low, end: high, props: [onBar], trace: 'head', apart: 0.5 },

  'dead-bug-leg-reach-seated': {
    start: sit({ at: [-0.1, 0.32], bend: 1 }, { trunk: -16, farLeg: { at: [0.26, 0.03] } }),
    end: sit(
      { at: [-0.1, 0.32], bend: 1 },
      { trunk: -16, leg: { angles: [112, 112] }, farLeg: { at: [0.26, 0.03] }, foot: 40, farFoot: 90 },
    ),
    props: [{ ...chair, x: -0.1 }],
    trace: 'ankle',
  },
  'dead-bug-opposite-seated': {
    start: sit({ angles: [84, 84] }, { trunk: -16 }),
    end: sit(
      { angles: [84, 84] },
      {
        trunk: -16,
        farArm: { angles: [8, 8] },
        leg: { angles: [112, 112] },
        farLeg: { at: [0.26, 0.03] },
        foot: 40,
        farFoot: 90,
      },
    ),
    props: [{ ...chair, x: -0.1 }],
    trace: 'ankle',
  },

  'press-out-seated': seated({ off: [0.11, -0.1] }, pressedOut, [band([-0.42, 0.5])]),
  'press-out-hands-seated': seated({ off: [0.11, -0.1] }, pressedOut),
  'press-out-kneeling': {
    start: kneel({ off: [0.11, -0.1] }),
    end: kneel(pressedOut),
    props: [band([-0.42, 0.47])],
    trace: 'hand',
  },
  'press-out-standing': upright({ off: [0.11, -0.1] }, pressedOut, [band(side)]),
  'press-out-split': upright({ off: [0.11, -0.1] }, pressedOut, [band(side)], splitStance),

  'hip-abduction-seated-hands': kneesOut([], { angles: [150, 176] }),
  'hip-abduction-seated-band': kneesOut([{ prop: 'loop' }], { angles: [150, 200] }),

  'pelvic-floor-long': {
    start: sit({ at: [0.21, 0.36] }),
    props: [chair, { prop: 'pelvis', way: 'up' }],
    trace: 'hip',
  },
  'mobility-side-bend-seated': sideBend(),
  'mobility-round-seated': {
    start: sit({ at: [0.21, 0.36] }, { trunk: 8, head: 4 }),
    end: sit({ at: [0.17, 0.37] }, { hip: [-0.02, 0.305], trunk: -12, head: 42 }),
    props: [chair],
    trace: 'head',
    apart: 0.62,
  },
  'mobility-hip-half-kneeling': {
    start: halfKneel([0, 0.277], 180),
    end: halfKneel([0.08, 0.262], 199),
    props: [],
    trace: 'hip',
    apart: 0.66,
  },
  'breathing-seated': { start: sit({ off: [0.1, -0.17] }), props: [chair, { prop: 'breath' }], trace: 'hip' },
};

/** One knee down, the other foot in front; hands on the front thigh. */
function halfKneel(hip: Point, thigh: number): Pose {
  return {
    hip,
    trunk: 0,
    arm: { at: [0.19, 0.35] },
    leg: { at: [0.29, 0.03] },
    farLeg: { angles: [thigh, 278] },
    farFoot: 226,
  };
}

/** Seen from the front, on a seat: one arm up and over, the other hand on the seat. */
function sideBend(): Movement {
  const base: Pose = {
    hip: [0, 0.488],
    trunk: 0,
    arm: { angles: [4, 2] },
    farArm: { angles: [192, 168] },
    leg: { at: [0.12, 0.03], bend: -1 },
    farLeg: { at: [-0.12, 0.03], bend: 1 },
    foot: 112,
    farFoot: 248,
  };
  return {
    view: 'front',
    inward: true,
    start: base,
    end: { ...base, trunk: -22, head: -26, arm: { angles: [-16, -52] }, farArm: { angles: [196, 182] } },
    props: [{ prop: 'stool', x: 0, seat: 0.43 }],
    trace: 'hand',
  };
}

/** Seen from the front: on a seat, the knees open while the feet stay. */
function kneesOut(props: Prop[], arm: Limb): Movement {
  const mirrored: Limb = 'angles' in arm ? { angles: [360 - arm.angles[0], 360 - arm.angles[1]] } : arm;
  const base = { trunk: 0, arm, farArm: mirrored, foot: 112, farFoot: 248 };
  return {
    view: 'front',
    start: {
      ...base,
      hip: [0, 0.488],
      leg: { at: [0.12, 0.03], bend: -1 },
      farLeg: { at: [-0.12, 0.03], bend: 1 },
    },
    end: {
      ...base,
      hip: [0, 0.42],
      leg: { at: [0.12, 0.03], bend: -1 },
      farLeg: { at: [-0.12, 0.03], bend: 1 },
    },
    props: [{ prop: 'stool', x: 0, seat: 0.4 }, ...props],
    trace: 'knee',
  };
}
