// Short tones, made by an oscillator: nothing is loaded, and nothing is heard that was not asked for.

/** What is told: a second of the last three, the end, one repetition. */
export type Tone = 'tick' | 'end' | 'rep';

/** Pitch in hertz and length in seconds of each beep. */
const SOUNDS: Record<Tone, readonly (readonly [pitch: number, seconds: number])[]> = {
  tick: [[660, 0.07]],
  end: [
    [880, 0.16],
    [1175, 0.24],
  ],
  rep: [[520, 0.05]],
};
/** Far from the full volume of the device. */
const LOUD = 0.18;
const BETWEEN = 0.05;

let context: AudioContext | null = null;

/** A system without sound, or one that refuses, stays silent. */
function sounding(): AudioContext | null {
  try {
    context ??= new AudioContext();
    if (context.state === 'suspended') void context.resume();
    return context;
  } catch {
    return null;
  }
}

/** Plays a tone; true if it was handed to the system. */
export function play(tone: Tone): boolean {
  const audio = sounding();
  if (!audio) return false;
  let at = audio.currentTime + 0.01;
  for (const [pitch, seconds] of SOUNDS[tone]) {
    const source = audio.createOscillator();
    const loud = audio.createGain();
    source.frequency.value = pitch;
    // In and out over a few milliseconds, or it clicks.
    loud.gain.setValueAtTime(0, at);
    loud.gain.linearRampToValueAtTime(LOUD, at + 0.012);
    loud.gain.setValueAtTime(LOUD, at + Math.max(seconds - 0.03, 0.02));
    loud.gain.linearRampToValueAtTime(0, at + seconds);
    source.connect(loud).connect(audio.destination);
    source.start(at);
    source.stop(at + seconds + 0.02);
    at += seconds + BETWEEN;
  }
  return true;
}

/** What to tell when so many seconds are left, seen the last time at another number: each second once, and the end even
 *  if the seconds before it were slept through. */
export function dueTone(left: number, before: number): Tone | null {
  if (left === before) return null;
  if (left === 0) return before > 0 ? 'end' : null;
  return left <= 3 && left < before ? 'tick' : null;
}
