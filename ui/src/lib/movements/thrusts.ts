// Hips pushed up, shoulders on the edge of a sofa, or forward from the knees.
import { away, LENGTH, type Limb, type Movement, type Point, type Pose, type Prop } from '../figure';
import { atChest } from './standing';

const sofa: Prop = { prop: 'block', x: -0.45, y: 0.23, width: 0.36 };
const SHOULDER: Point = [-0.3, 0.28];
const onHips: Limb = { off: [0.06, -0.26] };

/** The shoulders rest, the hips hang from them; `trunk` from upright. */
function thrust(props: Prop[], singleLeg = false): Movement {
  const foot: Point = [0.235, 0.03];
  const pose = (trunk: number, head: number, lifted: number): Pose => ({
    hip: away(SHOULDER, trunk + 180, LENGTH.trunk),
    trunk,
    head,
    arm: onHips,
    ...(singleLeg
      ? { leg: { angles: [lifted, lifted] }, foot: lifted - 70, farLeg: { at: foot }, farFoot: 90 }
      : { leg: { at: foot } }),
  });
  return { start: pose(-50, -36, 58), end: pose(-84, -58, 76), props: [sofa, ...props], trace: 'hip' };
}

/** On the knees: back towards the heels, then tall. */
function kneeling(arm: Limb, props: Prop[]): Movement {
  const pose = (back: number, trunk: number): Pose => ({
    hip: away([0, 0.04], -back, LENGTH.thigh),
    trunk,
    head: trunk * 0.5,
    arm,
    leg: { angles: [180 - back, 278] },
    foot: 226,
  });
  return { start: pose(48, 34), end: pose(0, 0), props, trace: 'hip' };
}

const ahead: Limb = { at: [0.27, 0.53] };
const chairAhead: Prop = { prop: 'chair', x: 0.43, seat: 0.265, back: 'left' };

export const thrusts: Record<string, Movement> = {
  'thrust-two-legs': thrust([]),
  'thrust-kneeling': kneeling(ahead, [chairAhead]),
  'thrust-paused': thrust([]),
  'thrust-kneeling-paused': kneeling(ahead, [chairAhead]),
  'thrust-loaded': thrust([{ prop: 'weight', at: 'hip', lift: 0.065 }]),
  'thrust-kneeling-loaded': kneeling(atChest, [{ prop: 'weight', at: 'hand' }]),
  'thrust-single-leg': thrust([], true),
};
