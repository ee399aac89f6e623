// How what a revision changes is said, and why somebody got no file.
import type { Change, LeftOut, Offered } from './types';
import { doseWords, errorWords, factArgs, has, say, variantName } from './words';

const large = (text: string): string => text.charAt(0).toLocaleUpperCase() + text.slice(1);

export const changeWords = (change: Change): string =>
  large(say(`change-${change.code}`, factArgs(change.facts)));

export function offeredWords(offered: Offered | null): string {
  if (!offered) return say('revision-new');
  if (offered.do === 'rest') return say('revision-rest');
  return say('revision-offered', {
    variant: variantName(offered.variant),
    sets: offered.sets,
    dose: doseWords(offered.target, offered.load),
  });
}

export function leftOutWords(out: LeftOut): string {
  const id = `left-out-${out.why}`;
  return has(id) ? say(id) : errorWords({ code: out.why, message: out.why, remedy: '' }).what;
}
