// Time as deadlines. A tick only says when to look again: a page in the background gets no ticks and is still right.

/** Whole seconds until a deadline, rounded up; 0 once it has passed. Both in milliseconds since 1970. */
export function secondsLeft(deadline: number, now: number): number {
  return Math.max(0, Math.ceil((deadline - now) / 1000));
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
    look(Date.now());
  };
  run();
  const timer = setInterval(run, 250);
  document.addEventListener('visibilitychange', run);
  return () => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', run);
  };
}
