// A movement in time: where between its two poses it is, and which way the breath goes. Pure, so that it can be tested
// and so that figure, tempo and breath cannot drift apart.
import type { Tempo } from './types';

export interface Moment {
  /** 0 at the start pose, 1 at the end pose, eased at both ends as a limb moves. */
  readonly t: number;
  readonly breath: 'in' | 'out';
  /** How full the lungs are, 0 to 1. */
  readonly full: number;
}

/** Seconds of each part of a repetition: the effort, its end, the way back, the pause before the next. */
export interface Beat {
  readonly effort: number;
  readonly top: number;
  readonly back: number;
  readonly pause: number;
}

/** So long a way takes at the least, in seconds: a jump is no movement to learn from. */
const LEAST = 0.6;
const TOP = 0.25;
/** A breath that nothing moves to: in for four seconds, out for six. Common practice, no source. */
const CALM = { in: 4, out: 6 };

export const beatOf = (tempo: Tempo | null): Beat => ({
  effort: Math.max(tempo?.up ?? 1, LEAST),
  top: TOP,
  back: Math.max(tempo?.down ?? 2, LEAST),
  pause: (tempo?.pause ?? 0) + TOP,
});

export const lengthOf = (beat: Beat): number => beat.effort + beat.top + beat.back + beat.pause;

const eased = (share: number): number => (1 - Math.cos(Math.PI * Math.min(1, Math.max(0, share)))) / 2;

/** So many seconds into the movement. Out on the effort, in on the way back; `inward` the other way round. */
export function momentAt(seconds: number, beat: Beat, inward = false): Moment {
  const into = seconds % lengthOf(beat);
  const away = beat.effort + beat.top;
  const t =
    into < beat.effort
      ? eased(into / beat.effort)
      : into < away
        ? 1
        : into < away + beat.back
          ? 1 - eased((into - away) / beat.back)
          : 0;
  const effort = into < away;
  return { t, breath: effort === inward ? 'in' : 'out', full: inward ? t : 1 - t };
}

/** So many seconds into a hold: a calm breath and nothing else. */
export function breathAt(seconds: number): Moment {
  const into = seconds % (CALM.in + CALM.out);
  return into < CALM.in
    ? { t: 0, breath: 'in', full: eased(into / CALM.in) }
    : { t: 0, breath: 'out', full: 1 - eased((into - CALM.in) / CALM.out) };
}
