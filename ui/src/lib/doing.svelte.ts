// One thing that a screen is doing: whether it is under way, what came of it, what went wrong. A second start while
// one is under way is refused, so that a double tap never writes twice.
import { errorOf } from './bridge';
import type { ErrorView } from './types';

export class Doing {
  /** Name of what is under way, empty when nothing is. */
  now = $state('');
  /** What went wrong last, until the next start. */
  error = $state<ErrorView | null>(null);
  /** What came of it, in words for the screen and for a live region. */
  said = $state('');
  /** Name of what `said` or `error` belongs to, so that it can stand beside its button. */
  last = $state('');

  get busy(): boolean {
    return this.now !== '';
  }

  /** Runs `work` and returns its result, or `undefined` if it was refused or went wrong. */
  async run<T>(name: string, work: () => Promise<T>, words?: (result: T) => string): Promise<T | undefined> {
    if (this.busy) return undefined;
    this.now = name;
    this.last = name;
    this.error = null;
    this.said = '';
    try {
      const result = await work();
      if (words) this.said = words(result);
      return result;
    } catch (thrown) {
      this.error = errorOf(thrown);
      return undefined;
    } finally {
      this.now = '';
    }
  }

  /** What came of the action of this name, if it was the last one. */
  saidOf(name: string): string {
    return this.last === name ? this.said : '';
  }
}
