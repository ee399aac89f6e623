// Dragging a block or a slot by its grip, with finger or mouse; the arrows beside it do the same by key. Where it would come
// to stand is read off the page: what may take it carries data-drop with its kind and data-into with its id, what stands in
// it data-item.

type Kind = 'block' | 'slot';

/** A line where the thing would come to stand, in pixels of the window. */
interface Line {
  left: number;
  top: number;
  width: number;
}

interface Place {
  into: string;
  to: number;
  line: Line;
}

/** Pixels from the edge of the window at which the page moves along. */
const EDGE = 72;
const STEP = 14;

/** Where a thing would come to stand among the boxes of the others: before the first whose middle lies below. */
export function placeAmong(y: number, others: readonly { top: number; bottom: number }[]): number {
  const at = others.findIndex((box) => y < (box.top + box.bottom) / 2);
  return at < 0 ? others.length : at;
}

export class Drag {
  /** What is dragged. */
  id = $state<string | null>(null);
  line = $state.raw<Line | null>(null);
  #kind: Kind = 'slot';
  #place: Place | null = null;
  #onmove: (kind: Kind, id: string, into: string, to: number) => void;

  constructor(onmove: (kind: Kind, id: string, into: string, to: number) => void) {
    this.#onmove = onmove;
  }

  begin(event: PointerEvent & { currentTarget: HTMLElement }, kind: Kind, id: string): void {
    if (event.button !== 0) return;
    event.preventDefault();
    const grip: HTMLElement = event.currentTarget;
    grip.setPointerCapture(event.pointerId);
    this.#kind = kind;
    this.id = id;
    const gone = new AbortController();
    const { signal } = gone;
    const end = (kept: boolean): void => {
      gone.abort();
      const place = this.#place;
      this.id = this.line = this.#place = null;
      if (kept && place) this.#onmove(kind, id, place.into, place.to);
    };
    grip.addEventListener(
      'pointermove',
      (e) => {
        this.#over(e.clientX, e.clientY);
      },
      { signal },
    );
    grip.addEventListener(
      'pointerup',
      () => {
        end(true);
      },
      { signal },
    );
    grip.addEventListener(
      'pointercancel',
      () => {
        end(false);
      },
      { signal },
    );
    window.addEventListener(
      'keydown',
      (e) => {
        if (e.key === 'Escape') end(false);
      },
      { signal },
    );
  }

  #over(x: number, y: number): void {
    if (y < EDGE) document.getElementById('content')?.scrollBy(0, -STEP);
    else if (y > window.innerHeight - EDGE) document.getElementById('content')?.scrollBy(0, STEP);
    const under = document.elementsFromPoint(x, y);
    const taker = under.map((e) => e.closest(`[data-drop="${this.#kind}"]`)).find((e) => e !== null);
    if (!(taker instanceof HTMLElement) || taker.dataset.into === undefined) {
      this.#place = this.line = null;
      return;
    }
    const items = [...taker.querySelectorAll<HTMLElement>(`:scope > [data-item]`)];
    const others = items.filter((e) => e.dataset.item !== this.id).map((e) => e.getBoundingClientRect());
    const to = placeAmong(y, others);
    const whole = taker.getBoundingClientRect();
    const top = others[to]?.top ?? others.at(-1)?.bottom ?? whole.top;
    this.#place = { into: taker.dataset.into, to, line: { left: whole.left, top, width: whole.width } };
    this.line = this.#place.line;
  }
}
