// Whether there is room for so many rem, as the reader's text is: a window of 1280 pixels has 80 of them, or 40 with text
// at twice its size. For what CSS cannot say; look.css and the components ask the container `frame`.

function rems(): number {
  if (typeof window === 'undefined') return 0;
  const size = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  return innerWidth / (size > 0 ? size : 16);
}

class Roomy {
  #rems = $state(rems());

  constructor() {
    if (typeof window === 'undefined') return;
    addEventListener('resize', () => {
      this.#rems = rems();
    });
  }

  /** True when the window is at least so many rem wide. */
  for(least: number): boolean {
    return this.#rems >= least;
  }
}

export const roomy = new Roomy();
