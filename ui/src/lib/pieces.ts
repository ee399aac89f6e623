// Answers that come in pieces: with hundreds of clients the first says of how many nothing is known yet, and asking again
// brings more of them.

/** An answer that says how many are still to be worked out. */
interface Piece {
  unread: number;
}

/** Asks until the answer is whole. */
export async function whole<T extends Piece>(ask: () => Promise<T>): Promise<T> {
  let view = await ask();
  while (view.unread > 0) view = await ask();
  return view;
}

/** Shows each answer as it comes and asks on while one is not whole. An answer that a newer one has overtaken is dropped. */
export class Onward<T extends Piece> {
  #nth = 0;
  readonly #ask: () => Promise<T>;
  readonly #show: (view: T) => void;

  constructor(ask: () => Promise<T>, show: (view: T) => void) {
    this.#ask = ask;
    this.#show = show;
  }

  /** Takes an answer; done when it is whole, or when a newer one was taken. */
  async take(view: T): Promise<void> {
    const nth = ++this.#nth;
    this.#show(view);
    let last = view;
    while (last.unread > 0) {
      last = await this.#ask();
      if (nth !== this.#nth) return;
      this.#show(last);
    }
  }
}
