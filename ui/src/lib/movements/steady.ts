// Small movements of one joint, and standing still: legs drawn in, calf raises, curls, balance.
import type { Limb, Movement, Pose, Prop } from '../figure';
import { atChest, hang, stand, TALL } from './standing';

const ANKLE = 0.03;
const weight: Prop = { prop: 'weight', at: 'hand' };
const chair: Prop = { prop: 'chair', x: -0.03, seat: 0.265, back: 'left' };
const counter: Prop = { prop: 'counter', x: 0.25, y: 0.56 };
const onCounter: Limb = { at: [0.22, 0.6] };
const far: Prop = { prop: 'counter', x: 0.44, y: 0.53 };

function sit(arm: Limb, extra: Partial<Pose> = {}): Pose {
  return { hip: [0, 0.305], trunk: 0, arm, leg: { at: [0.26, ANKLE] }, ...extra };
}

/** Seen from the front, on a seat, a pillow between the knees. */
function squeeze(arm: Limb, farArm: Limb): Movement {
  const base = { trunk: 0, arm, farArm, foot: 112, farFoot: 248 };
  const feet = {
    leg: { at: [0.06, ANKLE], bend: -1 } as Limb,
    farLeg: { at: [-0.06, ANKLE], bend: 1 } as Limb,
  };
  return {
    view: 'front',
    start: { ...base, ...feet, hip: [0, 0.475] },
    end: { ...base, ...feet, hip: [0, 0.5] },
    props: [{ prop: 'stool', x: 0, seat: 0.44 }, { prop: 'pillow' }],
    trace: 'knee',
  };
}

/** Heels up and down. */
function calf(arm: Limb, props: Prop[], apart: number, extra: Partial<Pose> = {}): Movement {
  return {
    start: stand(arm, 0, extra),
    end: stand(arm, 0, { hip: [0.02, TALL + 0.045], leg: { at: [0.02, 0.075] }, foot: 130, ...extra }),
    props,
    trace: 'ankle',
    apart,
  };
}

function seatedCalf(arm: Limb, props: Prop[]): Movement {
  return {
    start: sit(arm),
    end: sit(arm, { leg: { at: [0.28, 0.092] }, foot: 128 }),
    props: [chair, ...props],
    trace: 'ankle',
  };
}

const low: Limb = { angles: [178, 172] };
const bent: Limb = { angles: [178, 26] };

function seatedCurl(start: Limb, end: Limb, props: Prop[], extra: [Partial<Pose>, Partial<Pose>]): Movement {
  return { start: sit(start, extra[0]), end: sit(end, extra[1]), props: [chair, ...props], trace: 'hand' };
}

function standingCurl(start: Limb, end: Limb): Movement {
  return { start: stand(start), end: stand(end), props: [weight], trace: 'hand' };
}

const tandem = { hip: [0, 0.512], leg: { at: [0.06, ANKLE] }, farLeg: { at: [-0.055, ANKLE] } } as const;
const onOne = { farLeg: { angles: [152, 218] }, farFoot: 128 } as const;

function still(start: Pose, props: Prop[]): Movement {
  return { start, props, trace: 'hip' };
}

export const steady: Record<string, Movement> = {
  'hip-adduction-squeeze': squeeze({ angles: [158, 188] }, { angles: [202, 172] }),
  'hip-adduction-squeeze-long': squeeze({ angles: [142, 196] }, { angles: [218, 164] }),
  'hip-adduction-side-lying': {
    view: 'front',
    start: lyingAside([93, 97]),
    end: lyingAside([80, 82]),
    props: [
      {
        prop: 'cushions',
        points: [
          [-0.36, 0],
          [-0.36, 0.05],
          [-0.5, 0.055],
          [-0.5, 0],
        ],
      },
    ],
    trace: 'farAnkle',
  },
  'hip-adduction-band': {
    view: 'front',
    // Seen from the front: the leg on the right is drawn in, the hand on the left holds the chair.
    start: bandStand({ at: [0.165, 0.07], bend: -1 }),
    end: bandStand({ at: [0.03, 0.05], bend: -1 }),
    props: [
      { prop: 'chair', x: -0.37, seat: 0.265, back: 'right' },
      { prop: 'wall', x: 0.6 },
      { prop: 'line', from: 'ankle', to: [0.58, 0.06], kind: 'band' },
    ],
    trace: 'ankle',
  },
  'hip-adduction-band-seated': {
    view: 'front',
    start: bandSit({ angles: [144, 178] }),
    end: bandSit({ angles: [166, 180] }),
    props: [
      { prop: 'stool', x: 0, seat: 0.43 },
      { prop: 'wall', x: 0.6 },
      { prop: 'line', from: 'knee', to: [0.58, 0.27], kind: 'band' },
    ],
    trace: 'knee',
  },

  'calf-seated': seatedCalf({ at: [0.2, 0.36] }, []),
  'calf-two-legs': calf(onCounter, [counter], 0),
  'calf-loaded': calf(hang, [weight], 0.42),
  'calf-loaded-one': calf(atChest, [weight], 0.46),
  'calf-loaded-seated': seatedCalf({ at: [0.2, 0.36] }, [{ prop: 'weight', at: 'knee', lift: 0.05 }]),
  'calf-single-leg': calf(onCounter, [counter], 0, { farLeg: { angles: [172, 248] }, farFoot: 190 }),

  'arms-curl-band': seatedCurl(
    { angles: [172, 150] },
    bent,
    [{ prop: 'line', from: 'hand', to: 'ankle', kind: 'band' }],
    [{}, {}],
  ),
  'arms-curl-hands': seatedCurl(
    { angles: [176, 104] },
    { angles: [176, 38] },
    [],
    [{ farArm: { off: [0.17, -0.14] } }, { farArm: { off: [0.15, -0.02] } }],
  ),
  'arms-curl-seated': seatedCurl(low, bent, [weight], [{}, {}]),
  'arms-curl-seated-one': seatedCurl({ angles: [168, 140] }, { angles: [172, 36] }, [weight], [{}, {}]),
  'arms-curl-standing': standingCurl(low, bent),
  'arms-curl-standing-one': standingCurl({ angles: [174, 162] }, { angles: [174, 36] }),

  'balance-tandem-held': still(stand(onCounter, 0, tandem), [counter]),
  'balance-seated': still(
    sit(
      { off: [0.11, -0.08] },
      { leg: { at: [0.3, 0.1] }, foot: 82, farLeg: { at: [0.26, ANKLE] }, farFoot: 90 },
    ),
    [{ ...chair, x: -0.1 }],
  ),
  'balance-single-held': still(stand(onCounter, 0, onOne), [counter]),
  'balance-tandem': still(stand(hang, 0, tandem), [far]),
  'balance-single': still(stand({ angles: [166, 150] }, 0, onOne), [far]),
  'balance-tandem-reach': {
    start: stand({ angles: [178, 176] }, 0, { ...tandem, farArm: hang }),
    end: stand({ angles: [92, 90] }, 0, { ...tandem, farArm: hang }),
    props: [far],
    trace: 'hand',
  },
};

/** On the side, seen from the front: the upper foot stands on the floor in front, the lower leg is long. */
function lyingAside(lower: [number, number]): Pose {
  return {
    hip: [0, 0.085],
    trunk: -90,
    head: -84,
    arm: { angles: [72, 128] },
    farArm: { angles: [-70, -100] },
    leg: { angles: [52, 150] },
    farLeg: { angles: lower },
    foot: 95,
    farFoot: 60,
  };
}

function bandStand(leg: Limb): Pose {
  return {
    hip: [-0.04, 0.515],
    trunk: 0,
    arm: { angles: [164, 196] },
    farArm: { at: [-0.22, 0.54], bend: 1 },
    leg,
    farLeg: { at: [-0.06, ANKLE], bend: 1 },
    foot: 110,
    farFoot: 250,
  };
}

function bandSit(leg: Limb): Pose {
  return {
    hip: [0, 0.5],
    trunk: 0,
    arm: { angles: [158, 188] },
    farArm: { angles: [202, 172] },
    leg,
    farLeg: { at: [-0.08, ANKLE], bend: 1 },
    foot: 110,
    farFoot: 250,
  };
}
