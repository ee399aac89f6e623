// What the coach writes for one variant before it is kept. No rule lives here: the core says what is too long.
import { madeSmall } from '$lib/picture';
import type { VariantWordsView, WordsForm } from '$lib/types';

/** As many places for cues as the core takes. */
export const PLACES = 4;

export class WordsDraft {
  readonly variant: string;
  cues = $state<string[]>([]);
  keep = $state(false);
  /** A new picture, in base64. */
  fresh = $state<string | null>(null);
  /** A file was chosen that is no picture. */
  refused = $state(false);

  constructor(of: Pick<VariantWordsView, 'variant' | 'cues' | 'own'>) {
    this.variant = of.variant;
    const own = of.own?.cues ?? [];
    this.cues = Array.from({ length: PLACES }, (_, i) => own[i] ?? '');
    this.keep = Boolean(of.own?.picture);
  }

  async take(file: Blob): Promise<void> {
    const small = await madeSmall(file);
    this.refused = small === null;
    if (small !== null) this.fresh = small;
  }

  takeAway(): void {
    this.fresh = null;
    this.keep = false;
    this.refused = false;
  }

  toForm(): WordsForm {
    return {
      variant: this.variant,
      cues: this.cues.map((cue) => cue.trim()).filter((cue) => cue !== ''),
      keep_picture: this.keep,
      new_picture: this.fresh,
    };
  }
}
