// Which cues are shown for a variant: the coach's own where she wrote any, the built-in ones otherwise.
import type { VariantId, VariantWords } from './types';
import { has, say } from './words';

/** The built-in cues of a variant, as sentences. */
export function builtInCues(variant: VariantId, count: number): string[] {
  return Array.from({ length: count }, (_, i) => `variant-${variant}.cue${i + 1}`)
    .filter(has)
    .map((id) => say(id));
}

/** Usual slips of a variant and what to do instead, as sentences. */
export function slipsOf(variant: VariantId): string[] {
  return [1, 2]
    .map((n) => `variant-${variant}.slip${n}`)
    .filter(has)
    .map((id) => say(id));
}

/** The cues to show. */
export function cuesOf(of: { variant: VariantId; cues: number; own: VariantWords | null }): string[] {
  return of.own && of.own.cues.length > 0 ? of.own.cues : builtInCues(of.variant, of.cues);
}
