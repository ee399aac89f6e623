// A programme's dose in words.
import type { Amount, Slot } from '$lib/types';
import { numberWords, say } from '$lib/words';

export function amountRange(amount: Amount): string {
  const id = `planbook-${amount.by}${amount.low === amount.high ? '-one' : ''}`;
  return say(id, { low: amount.low, high: amount.high });
}

/** The levels that the coach allows in a slot, counted from 1 as everywhere on screen. */
export function levelSpan(slot: Slot): string {
  return slot.levels
    ? say('planbook-levels', { low: slot.levels.low + 1, high: slot.levels.high + 1 })
    : say('planbook-levels-all');
}

export const leftWords = (slot: Slot): string =>
  say('planbook-left', { count: numberWords(slot.dose.target_rir) });
