// What there is to say about the programme that is open: asked anew a moment after the last change, never in the way of
// the next one. An answer that comes late, after a newer question, is let go.
import * as bridge from '$lib/bridge';
import type { Advice, AdviceView, LookFor } from '$lib/types';

/** Long enough for a run of changes to be one question, short enough to count as at once. */
const PAUSE_MS = 250;

export class Looked {
  view = $state.raw<AdviceView | null>(null);
  /** A question is under way, or soon will be. */
  asking = $state(false);
  /** As she chose; by itself until then. */
  look = $state.raw<LookFor | null>(null);
  #asked = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** The advice about a slot. */
  of(slot: string): Advice[] {
    return this.view?.advice.filter((a) => a.slot === slot) ?? [];
  }

  /** Asks about a programme once nothing has changed for a moment. */
  soon(programme: string, pause = PAUSE_MS): void {
    clearTimeout(this.#timer);
    this.asking = true;
    this.#asked += 1;
    const asked = this.#asked;
    if (this.view?.programme !== programme) this.view = null;
    this.#timer = setTimeout(() => void this.#ask(programme, asked), pause);
  }

  choose(programme: string, look: LookFor): void {
    this.look = look;
    this.soon(programme, 0);
  }

  stop(): void {
    clearTimeout(this.#timer);
    this.#asked += 1;
    this.asking = false;
  }

  async #ask(programme: string, asked: number): Promise<void> {
    try {
      const view = await bridge.programmeAdvice(programme, this.look);
      if (asked === this.#asked) this.view = view;
    } catch {
      // Advice that could not be had is none; the programme is as safe as it was.
      if (asked === this.#asked) this.view = null;
    } finally {
      if (asked === this.#asked) this.asking = false;
    }
  }
}
