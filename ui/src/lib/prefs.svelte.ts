// What suits the person at this device and is no training: sounds, hand, how effort is asked, the figure's outline.
// It stays on the device; losing it means choosing once more.

export interface Prefs {
  /** Short tones at the end of a rest or a timed set. Off until they are asked for. */
  sound: boolean;
  /** A figure with a belly. */
  belly: boolean;
  /** The hand that holds the phone: what is tapped most lies on its side. */
  hand: 'right' | 'left';
  /** Effort as reps left, or as a rating from 1 to 10. */
  effort: 'left' | 'rating';
  /** The sheet that is printed on. */
  sheet: 'a4' | 'letter';
}

const KEY = 'newel.prefs';
const USUAL: Prefs = { sound: false, belly: false, hand: 'right', effort: 'left', sheet: 'a4' };

/** What is kept, with the usual in place of what is not there or is not one of the choices. */
export function read(text: string | null): Prefs {
  try {
    const kept = JSON.parse(text ?? '{}') as Partial<Record<keyof Prefs, unknown>>;
    return {
      sound: kept.sound === true,
      belly: kept.belly === true,
      hand: kept.hand === 'left' ? 'left' : 'right',
      effort: kept.effort === 'rating' ? 'rating' : 'left',
      sheet: kept.sheet === 'letter' ? 'letter' : 'a4',
    };
  } catch {
    return { ...USUAL };
  }
}

function kept(): Prefs {
  try {
    return read(localStorage.getItem(KEY));
  } catch {
    return { ...USUAL };
  }
}

export const prefs: Prefs = $state(kept());

/** Changes one of them, now and for the next time. */
export function prefer<K extends keyof Prefs>(name: K, value: Prefs[K]): void {
  prefs[name] = value;
  try {
    localStorage.setItem(KEY, JSON.stringify(prefs));
  } catch {
    // A full or barred store: it holds until the page closes.
  }
}
