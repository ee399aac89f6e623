// What leads up from where she stands, in one sentence.
import type { Ahead } from '$lib/types';
import { numberWords, say, symptomName, variantName } from '$lib/words';

export function nextWords(next: Ahead): string {
  switch (next.ahead) {
    case 'top':
      return say('next-top');
    case 'rests':
      return say('next-rests');
    case 'back':
      return say('next-back', {
        step: next.to + 1,
        of: next.of,
        done: next.done,
        symptom: symptomName(next.symptom),
      });
    case 'earn':
      return say('next-earn', {
        to: variantName(next.to),
        of: next.of,
        done: next.done,
        count: next.count,
        by: next.timed ? 'seconds' : 'reps',
        reserve: numberWords(next.reserve),
        mark: next.mark.by === 'load' && next.mark.kg > 0 ? 'load' : 'none',
        kg: next.mark.by === 'load' ? numberWords(next.mark.kg) : '',
      });
  }
}
