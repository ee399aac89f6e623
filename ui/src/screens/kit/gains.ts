// What a missing piece would open, in words.
import type { Gain } from '$lib/types';
import { ladderName, say } from '$lib/words';

/** The id of a piece's words. */
export const pieceOf = (gain: Gain): string =>
  gain.piece === 'thing' ? `kit-piece-thing-${gain.thing}` : `kit-piece-${gain.piece}`;

/** `Squat 4, 5; Row 2`: ladders in the order of the plan's file, steps counted from 1. */
export function stepsOf(gain: Gain): string {
  const ladders = new Map<string, number[]>();
  for (const [ladder, level] of gain.levels) ladders.set(ladder, [...(ladders.get(ladder) ?? []), level + 1]);
  return [...ladders]
    .map(([ladder, steps]) => say('kit-gain-where', { ladder: ladderName(ladder), steps: steps.join(', ') }))
    .join('; ');
}
