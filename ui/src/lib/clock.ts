// Time as deadlines. A tick only says when to look again: a page in the background gets no ticks and is still right.

/** A clock that a hand on the system's clock does not turn back. What was set back is added again; a leap ahead is what
 *  sleep looks like, and is believed: a rest is over a little early then, and says so. */
export class Steady {
  #last = -Infinity;
  #behind = 0;

  /** Milliseconds since 1970, never less than it said before. */
  at(wall: number): number {
    const now = wall + this.#behind;
    if (now < this.#last - TURNED_BACK) this.#behind += this.#last - now;
    this.#last = Math.max(this.#last, wall + this.#behind);
    return this.#last;
  }
}

/** Less than this is the clock being set right by the network, in milliseconds. */
const TURNED_BACK = 1000;
const steady = new Steady();

/** Now, in milliseconds since 1970, on a clock that is not turned back while the page is open. */
export const steadyNow = (): number => steady.at(Date.now());

/** Whole seconds until a deadline, rounded up; 0 once it has passed. Both in milliseconds since 1970. */
export function secondsLeft(deadline: number, now: number): number {
  return Math.max(0, Math.ceil((deadline - now) / 1000));
}

/** Seconds left of a rest that lasts so many. More than that is a clock set back: the rest is over. */
export function restLeft(deadline: number, now: number, whole: number): number {
  const left = secondsLeft(deadline, now);
  return left > whole + 5 ? 0 : left;
}

/** Whole seconds since a start, rounded down; never negative. */
export function secondsSince(start: number, now: number): number {
  return Math.max(0, Math.floor((now - start) / 1000));
}

/** `1:05` */
export function minuteText(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

/** Calls `look` now, four times a second, and when the page comes back into view; returns what ends it. */
export function ticking(look: (now: number) => void): () => void {
  const run = () => {
    look(steadyNow());
  };
  run();
  const timer = setInterval(run, 250);
  document.addEventListener('visibilitychange', run);
  return () => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', run);
  };
}
