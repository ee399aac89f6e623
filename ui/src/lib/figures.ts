// Which movement draws which variant of the catalogue. A coach's own has no figure: one of another move would mislead.
import type { Movement } from './figure';
import { floor } from './movements/floor';
import { lunges } from './movements/lunges';
import { mobility } from './movements/mobility';
import { seatedAndHanging } from './movements/seated';
import { standing } from './movements/standing';
import { steady } from './movements/steady';
import { thrusts } from './movements/thrusts';
import { trunk } from './movements/trunk';
import { isOwn } from './words';

export const movements: Record<string, Movement> = {
  ...standing,
  ...floor,
  ...seatedAndHanging,
  ...thrusts,
  ...lunges,
  ...trunk,
  ...steady,
  ...mobility,
};

/** The plainest movement of each ladder, for a variant that this version does not know. */
const PLAIN: Record<string, string> = {
  squat: 'squat-free',
  hinge: 'hinge-one-dumbbell',
  'offset-hinge': 'offset-hinge-loaded',
  bridge: 'bridge-two-legs',
  thrust: 'thrust-two-legs',
  'split-squat': 'split-squat-full',
  lunge: 'lunge-reverse',
  'side-lunge': 'side-lunge-full',
  'step-up': 'step-up-20',
  'step-down': 'step-down-10',
  'push-up': 'push-up-counter',
  'chest-press': 'chest-press-incline-pair',
  'overhead-press': 'overhead-press-standing',
  row: 'row-hinged',
  'vertical-pull': 'vertical-pull-band',
  arms: 'arms-curl-standing',
  carry: 'carry-two-hands',
  balance: 'balance-tandem',
  'front-plank': 'front-plank-counter',
  'side-plank': 'side-plank-kneeling',
  'dead-bug': 'dead-bug-heel-slide',
  'bird-dog': 'bird-dog-opposite',
  'curl-up': 'curl-up-curl',
  'press-out': 'press-out-standing',
  'hip-abduction': 'hip-abduction-side-lying',
  'hip-adduction': 'hip-adduction-squeeze',
  calf: 'calf-two-legs',
  breathing: 'breathing-seated',
  'pelvic-floor': 'pelvic-floor-long',
  mobility: 'mobility-round-seated',
  'mobility-turn': 'mobility-turn-counter',
  'mobility-hip': 'mobility-hip-fold-seated',
  'mobility-ankle': 'mobility-ankle-knees-forward',
  'mobility-shoulder': 'mobility-shoulder-circles-seated',
  impact: 'impact-bounce',
};

/** The movement of a variant; failing that the plainest of its ladder; failing that none. */
export function movementOf(variant: string, ladder?: string): Movement | undefined {
  if (isOwn(variant)) return undefined;
  const own = movements[variant];
  if (own) return own;
  // Built-in ids begin with their ladder's; the longest that fits is the right one (offset-hinge before hinge).
  const guess = Object.keys(PLAIN)
    .filter((id) => variant.startsWith(`${id}-`))
    .sort((a, b) => b.length - a.length)[0];
  const plain = PLAIN[ladder ?? ''] ?? PLAIN[guess ?? ''];
  return plain ? movements[plain] : undefined;
}
