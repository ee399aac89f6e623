// What a variant of the catalogue asks for, in words. The numbers are the catalogue's; no rule lives here.
import type { VariantWordsView } from '$lib/types';
import { numberWords, say, weightWords } from '$lib/words';

export interface MoveFact {
  name: string;
  what: string;
  more?: string;
}

/** A weight as it is held: half of it in each hand where two are. */
function held(of: VariantWordsView, kg: number): string {
  const each = weightWords({ value: of.loading.with === 'pair' ? kg / 2 : kg, unit: 'kg' });
  return of.loading.with === 'pair' ? say('load-pair', { each }) : each;
}

function range(of: VariantWordsView, from: number, to: number): string {
  const share = of.loading.with === 'pair' ? 0.5 : 1;
  const each = say('moves-range', {
    from: numberWords(from * share),
    to: weightWords({ value: to * share, unit: 'kg' }),
  });
  return of.loading.with === 'pair' ? say('load-pair', { each }) : each;
}

function readyAt(of: VariantWordsView): string {
  switch (of.ready.by) {
    case 'load':
      return of.ready.kg < 0
        ? say('moves-ready-help', { load: weightWords({ value: -of.ready.kg, unit: 'kg' }) })
        : say('moves-ready-load', { load: held(of, of.ready.kg) });
    case 'reps':
      return say('moves-ready-reps', { count: of.ready.reps });
    case 'seconds':
      return say('moves-ready-seconds', { count: of.ready.seconds });
  }
}

/** The facts in the order in which they are read. */
export function factsOf(of: VariantWordsView, top: boolean): MoveFact[] {
  const facts: MoveFact[] = [
    { name: say('moves-position'), what: say(`position-${of.position}`) },
    { name: say('moves-held'), what: say(`moves-held-${of.loading.with}`) },
  ];
  if (of.needs.length > 0) {
    const needs = of.needs.map((thing) => say(`kit-piece-thing-${thing}`));
    facts.push({ name: say('moves-needs'), what: needs.join(', ') });
  }
  if (of.cautions.length > 0) {
    const cautions = of.cautions.map((caution) => say(`caution-${caution}`));
    facts.push({ name: say('moves-mind'), what: cautions.join(', ') });
  }
  if (of.usual_start) {
    const what = range(of, of.usual_start.from, of.usual_start.to);
    facts.push({ name: say('moves-usual'), what, more: say('moves-usual-what') });
  }
  facts.push({ name: say('moves-ready'), what: top ? say('moves-top') : readyAt(of) });
  return facts;
}
