// A long list is drawn as far as it is seen and a little further.

/** So far below what is seen, lines are drawn already. */
const AHEAD = '400px';

/** What the node scrolls in; a margin is only added to that. */
function scroller(node: Element): Element | null {
  for (let at = node.parentElement; at; at = at.parentElement) {
    if (/auto|scroll/.test(getComputedStyle(at).overflowY)) return at;
  }
  return null;
}

/** Calls while the node stands within sight or soon will, once a frame: each call may push it further down. */
export function near(node: Element, reached: () => void): { destroy: () => void } {
  let here = false;
  let frame = 0;
  const on = (): void => {
    frame = 0;
    if (!here) return;
    reached();
    // Where it still stands near after more was drawn, the observer says nothing anew.
    frame = requestAnimationFrame(on);
  };
  const observer = new IntersectionObserver(
    (seen) => {
      here = seen.at(-1)?.isIntersecting ?? false;
      if (here && frame === 0) frame = requestAnimationFrame(on);
    },
    { root: scroller(node), rootMargin: AHEAD },
  );
  observer.observe(node);
  return {
    destroy: () => {
      observer.disconnect();
      cancelAnimationFrame(frame);
    },
  };
}
