// How what stands on the safety page is said.
import type {
  CheckOutcome,
  ClearanceView,
  ClearedThing,
  OpenThing,
  ReadinessCheck,
  RuledOutView,
  SafetyView,
  ScreenDue,
  SettableView,
  SettingTarget,
  SettingValue,
  Stage,
} from '$lib/types';
import { conditionName, dayWords, numberWords, say, symptomName } from '$lib/words';
import { choiceOf } from './stage-draft.svelte';

export function openWords(thing: OpenThing): string {
  return say(`open-${thing.slug}`, {
    condition: thing.condition ? conditionName(thing.condition) : '',
    symptom: thing.symptom ? symptomName(thing.symptom) : '',
    day: thing.day ? dayWords(thing.day) : '',
  });
}

/** A stage in the words of the choice that records it. */
export const recordedWords = (stage: Stage): string => {
  const words = say(`stage-choice-${choiceOf(stage)}`);
  const day = stage.stage === 'postpartum' ? stage.birth : stage.stage === 'after_loss' ? stage.on : null;
  return day ? `${words}, ${dayWords(day)}` : words;
};

export function outByWords(out: RuledOutView): string {
  const by = out.by;
  switch (by.by) {
    case 'stage':
      return say('out-by-stage');
    case 'symptom':
      return say('out-by-symptom', { symptom: symptomName(by.symptom) });
    case 'condition':
      return say('out-by-condition', { condition: conditionName(by.condition) });
    case 'coach': {
      const note = say('out-by-coach', { note: by.note });
      return by.until ? `${note} · ${say('out-until', { day: dayWords(by.until) })}` : note;
    }
  }
}

export function dueWords(due: ScreenDue): string {
  if (!due.since) return say('screen-never');
  const number = 'number' in due.why ? due.why.number : 0;
  return say('screen-due', { day: dayWords(due.since), why: due.why.why, number });
}

export function speaksWords(clearance: ClearanceView): string {
  if (clearance.speaks_of.length === 0) return say('clearance-of-all');
  const one = (thing: ClearedThing): string[] =>
    thing.of === 'birth'
      ? [say('clearance-of-birth')]
      : thing.of === 'condition'
        ? [conditionName(thing.condition)]
        : [];
  const what = [...clearance.speaks_of.flatMap(one), ...clearance.symptoms.map(symptomName)];
  return say('clearance-of', { what: what.join(', ') });
}

export function valueWords(value: SettingValue): string {
  switch (value.to) {
    case 'pack':
      return say('rules-back').toLocaleLowerCase();
    case 'number':
      return numberWords(value.value);
    case 'class':
      return say(`rules-class-${value.value}`);
  }
}

/** What can be set, by the sentence of its rule; of several numbers in it the name tells which. */
export function settableWords(s: SettableView): string {
  const sentence = say(s.sentence, s.numbers);
  return s.target.of === 'number' ? `${sentence} (${say(`rules-number-${s.target.name}`)})` : sentence;
}

/** What a setting names: the sentence of its rule as it is now, or the sign. */
export function targetWords(view: SafetyView, target: SettingTarget): string {
  if (target.of === 'class') return symptomName(target.symptom);
  const same = (s: SettableView) =>
    s.target.of === 'number' && s.target.rule === target.rule && s.target.name === target.name;
  const found = view.settable.find(same);
  return found ? settableWords(found) : `${target.rule} (${target.name})`;
}

/** How a check can have gone, the best first. */
export const OUTCOMES: readonly CheckOutcome[] = ['clear', 'not_yet', 'sign'];

/** What is tried, with how many of it. */
export function checkWords(check: ReadinessCheck): string {
  const { count, of } = check;
  const amount = say('impact-count', { count, of, side: check.per_side ? 'yes' : 'no' });
  return `${say(`check-${check.id}`)}: ${amount}`;
}

/** Whether she has lifted before. */
export const beforeWords = (of: { trained: boolean; never: boolean }): string =>
  say(of.trained ? 'screen-trained' : of.never ? 'screen-never-trained' : 'screen-new');
