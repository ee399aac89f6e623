// A finding in words: `desk-<code>` of desk.ftl with its facts. Facts that a code may leave out arrive as "none",
// so that the sentence can do without them.
import type { FindingView } from '$lib/types';
import { factArgs, has, say } from '$lib/words';

/** Every code that the engine gives; a test holds them against desk.ftl. */
export const FINDING_CODES = [
  'red-flag',
  'red-care',
  'clearance-waits',
  'hold-waits',
  'symptom-repeated',
  'symptom-marked',
  'not-settled',
  'next-day-unanswered',
  'silence-after-symptom',
  'silence',
  'own-words',
  'check-in-unwell',
  'effort-over',
  'load-jump',
  'skipped',
  'override-open',
  'gap',
  'stage-moved',
  'near-due',
  'ready-up',
  'kit-limit',
  'question',
] as const;

export function findingWords(finding: FindingView): string {
  const id = `desk-${finding.code}`;
  if (!has(id)) return say('desk-unknown-finding', { code: finding.code });
  return say(id, { symptom: 'none', ladder: 'none', day: 'none', ...factArgs(finding.facts) });
}
