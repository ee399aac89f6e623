// Words on screen: one Fluent bundle over all files of a language, and how loads, doses, days and reasons are said.
import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';
import { language, LANGUAGES } from './language';
import type {
  Age,
  ErrorView,
  Fact,
  Load,
  Reason,
  Reserve,
  Side,
  StageOn,
  SymptomAmount,
  Target,
  Tempo,
  Weight,
} from './types';

/** The tag that numbers and dates go by. */
export const LANGUAGE = LANGUAGES[language].tag;

const files = import.meta.glob<string>('../../../locales/*/*.ftl', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const ids: string[] = [];
const bundle = new FluentBundle(LANGUAGE, { useIsolating: false });
for (const [path, text] of Object.entries(files)) {
  if (!path.includes(`/${language}/`)) continue;
  const resource = new FluentResource(text);
  for (const message of resource.body) ids.push(message.id);
  for (const trouble of bundle.addResource(resource)) console.error(`${path}: ${trouble.message}`);
}

/** What follows a prefix in the ids of the words, in the order of the file: the places of `where-`. */
export const tails = (prefix: string): string[] =>
  ids.filter((id) => id.startsWith(prefix)).map((id) => id.slice(prefix.length));

export type Args = Record<string, FluentVariable>;

/** Splits `id.attribute`. Ids of the catalogue hold no dots. */
function pattern(id: string) {
  const [name = '', attribute] = id.split('.');
  const message = bundle.getMessage(name);
  return attribute ? message?.attributes[attribute] : message?.value;
}

/** The words of a coach's own ladders and variants, by the ids of messages. They stand in her language alone. */
let own: Readonly<Record<string, string>> = {};

export function setOwnNames(names: Readonly<Record<string, string>>): void {
  own = names;
}

/** A UUID: what a coach made herself. Built-in ids are words. */
export const isOwn = (id: string): boolean =>
  /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/.test(id);

/** What is said of something of a coach's own: her words, nothing where she wrote none; undefined for all else. */
function ownWords(id: string): string | undefined {
  const said = own[id];
  if (said !== undefined) return said;
  const [name = '', attribute] = id.split('.');
  const kind = ['variant', 'ladder'].find((k) => name.startsWith(`${k}-`) && isOwn(name.slice(k.length + 1)));
  if (!kind) return undefined;
  return attribute ? '' : say(`own-unknown-${kind}`);
}

export const has = (id: string): boolean => id in own || Boolean(pattern(id));

/** The sentence of an id (`id` or `id.attribute`). A missing one shows its id: seen at once, and no crash in a session. */
export function say(id: string, args: Args = {}): string {
  const hers = ownWords(id);
  if (hers !== undefined) return hers;
  const found = pattern(id);
  if (!found) {
    console.error(`no words for ${id}`);
    return id;
  }
  const troubles: Error[] = [];
  const text = bundle.formatPattern(found, args, troubles);
  for (const trouble of troubles) console.error(`${id}: ${trouble.message}`);
  return text;
}

// --- the trade's words ---

export const ladderName = (id: string): string => say(`ladder-${id}`);
export const variantName = (id: string): string => say(`variant-${id}`);

/** How a variant is set up and how she breathes, as far as it is said. */
export const howOf = (variant: string): string =>
  ['setup', 'breath']
    .map((part) => say(`variant-${variant}.${part}`).trim())
    .filter((text) => text !== '')
    .map((text) => (/[.!?…]$/.test(text) ? text : `${text}.`))
    .join(' ');
export const symptomName = (id: string): string => say(`symptom-${id}`);
export const conditionName = (id: string): string => say(`condition-${id}`);

// --- numbers ---

/** At most two decimals, and no trailing zeros: 12, 7.5, 2.25. */
export function numberWords(value: number): string {
  return new Intl.NumberFormat(LANGUAGE, { maximumFractionDigits: 2 }).format(value);
}

export const weightWords = (weight: Weight): string =>
  say('load-weight', { value: numberWords(weight.value), unit: say(`unit-${weight.unit}`) });

/** A load in full: `12 kg`, `two of 8 kg`, `no load`. */
export function loadWords(load: Load): string {
  switch (load.make) {
    case 'nothing':
      return say('load-nothing');
    case 'one':
      return weightWords(load.weight);
    case 'pair':
      return say('load-pair', { each: weightWords(load.weight) });
    case 'barbell':
      return load.plates.length === 0
        ? say('load-bar-empty', { bar: weightWords(load.bar) })
        : say('load-bar', { bar: weightWords(load.bar), side: load.plates.map(weightWords).join(' + ') });
    case 'bands':
      return say('load-bands', { bands: load.bands.map((b) => b.name).join(' + ') });
    case 'assist':
      return say('load-assist', { bands: load.bands.map((b) => b.name).join(' + ') });
  }
}

/** The same load for a large numeral: the number, and what stands small beside it. Without a number, the words. */
export function loadParts(load: Load): { big: string; small: string } {
  switch (load.make) {
    case 'nothing':
      return { big: say('load-none-short'), small: '' };
    case 'one':
      return { big: numberWords(load.weight.value), small: say(`unit-${load.weight.unit}`) };
    case 'pair':
      return {
        big: numberWords(load.weight.value),
        small: say('load-each', { unit: say(`unit-${load.weight.unit}`) }),
      };
    case 'barbell': {
      // Both sides bear the same plates. Mixed units are summed in the bar's own unit only when all agree.
      const same = load.plates.every((p) => p.unit === load.bar.unit);
      if (!same) return { big: loadWords(load), small: '' };
      const total = load.plates.reduce((sum, p) => sum + 2 * p.value, load.bar.value);
      return { big: numberWords(total), small: say('load-total', { unit: say(`unit-${load.bar.unit}`) }) };
    }
    case 'bands':
    case 'assist':
      return { big: load.bands.map((b) => b.name).join(' + '), small: say(`load-${load.make}-short`) };
  }
}

/** Two loads are the same thing to hold. The shell builds both, so their fields come in one order. */
export const sameLoad = (a: Load, b: Load): boolean => JSON.stringify(a) === JSON.stringify(b);

export function targetWords(target: Target, perSide = false): string {
  return say(perSide ? `target-${target.by}-side` : `target-${target.by}`, { count: target.count });
}

/** The side of a set, where one side works at a time: `left side`. */
export const sideWords = (side: Side): string => say(`side-${side}`);

/** Reps or seconds with the load, as one phrase: `10 reps, 12 kg`. */
export function doseWords(target: Target, load: Load, perSide = false): string {
  const amount = targetWords(target, perSide);
  return load.make === 'nothing' ? amount : say('dose', { amount, load: loadWords(load) });
}

export const tempoWords = (tempo: Tempo): string =>
  say(tempo.pause > 0 ? 'tempo-pause' : 'tempo', { down: tempo.down, pause: tempo.pause, up: tempo.up });

export function reserveWords(reserve: Reserve): string {
  return say(reserve.said === 'exactly' ? 'reserve-exactly' : 'reserve-at-least', { count: reserve.reps });
}

export function amountWords(amount: SymptomAmount): string {
  return amount.form === 'pain' ? say('amount-pain', { value: amount.value }) : say(`amount-${amount.form}`);
}

// --- days ---

/** A local day (`2026-03-05`) as a Date at noon, so that no zone moves it to another day. */
export const dayOf = (iso: string): Date => new Date(`${iso.slice(0, 10)}T12:00:00`);

/** `Thursday 5 March`, with the year when it is not the year of `today`. */
export function dayWords(iso: string, today?: string): string {
  const day = dayOf(iso);
  const now = today ? dayOf(today) : new Date();
  const days = Math.round((now.getTime() - day.getTime()) / 86_400_000);
  if (today && days === 0) return say('day-today');
  if (today && days === 1) return say('day-yesterday');
  const sameYear = day.getFullYear() === now.getFullYear();
  return day.toLocaleDateString(LANGUAGE, {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    ...(sameYear ? {} : { year: 'numeric' }),
  });
}

/** `5 Mar`, for lists and axes. */
export const dayShort = (iso: string): string =>
  dayOf(iso).toLocaleDateString(LANGUAGE, { day: 'numeric', month: 'short' });

const ageArgs = (age: Age): Args => ({ weeks: age.weeks, days: age.days });

export function stageWords(stage: StageOn): string {
  switch (stage.stage) {
    case 'pregnant':
      if (!stage.age) return say('stage-pregnant');
      return say(stage.age.days ? 'stage-pregnant-days' : 'stage-pregnant-weeks', ageArgs(stage.age));
    case 'postpartum':
      return say('stage-postpartum', ageArgs(stage.age));
    case 'after_loss':
      return say('stage-after-loss', ageArgs(stage.age));
    case 'neither':
      return say('stage-neither');
  }
}

// --- reasons and errors ---

export function factArg(fact: Fact): FluentVariable {
  switch (fact.is) {
    case 'number':
      return fact.value;
    case 'load':
      return loadWords(fact.value);
    case 'day':
      return dayWords(fact.value);
    case 'ladder':
      return ladderName(fact.value);
    case 'variant':
      return variantName(fact.value);
    case 'symptom':
      return symptomName(fact.value);
    case 'condition':
      return conditionName(fact.value);
    case 'words':
      return fact.value;
  }
}

export const factArgs = (facts: Record<string, Fact>): Args =>
  Object.fromEntries(Object.entries(facts).map(([name, fact]) => [name, factArg(fact)]));

export const reasonWords = (reason: Reason): string =>
  large(say(`reason-${reason.code}`, factArgs(reason.facts)));

/** A sentence begins large, also where its first word is a load. */
const large = (text: string): string => text.charAt(0).toLocaleUpperCase() + text.slice(1);

/** What happened and what to do, in the language of the screen if it knows the code, else as the shell said it. */
export function errorWords(error: ErrorView): { what: string; remedy: string } {
  const id = error.code === 'unexpected' ? 'error-unexpected' : error.code;
  return {
    what: has(id) ? say(id, { detail: error.message }) : error.message,
    remedy: has(`${id}.remedy`) ? say(`${id}.remedy`, { detail: error.remedy }) : error.remedy,
  };
}
