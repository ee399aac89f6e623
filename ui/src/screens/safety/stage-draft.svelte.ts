// A stage as it is filled in. What is missing is looked at here, and nothing else: whether a date can be, and what
// follows from it, the engine says.
import type { BirthMode, EmbryoAge, Stage } from '$lib/types';

export type StageChoice =
  | 'due'
  | 'period'
  | 'transfer'
  | 'ovulation'
  | 'insemination'
  | 'postpartum'
  | 'after_loss'
  | 'neither'
  | 'unsaid';

export const STAGES: readonly StageChoice[] = [
  'due',
  'period',
  'transfer',
  'ovulation',
  'insemination',
  'postpartum',
  'after_loss',
  'neither',
];
export const MODES: readonly BirthMode[] = ['vaginal', 'assisted', 'caesarean', 'unsaid'];
/** A tear as a choice: nothing is chosen for her. */
export type Tear = 'no' | 'yes' | 'unsaid';
export const TEARS: readonly Tear[] = ['no', 'yes', 'unsaid'];
export const EMBRYOS: readonly EmbryoAge[] = ['day3', 'day5'];

/** The choice that a recorded stage is shown as. */
export function choiceOf(stage: Stage | null): StageChoice {
  if (!stage) return 'unsaid';
  if (stage.stage !== 'pregnant') return stage.stage;
  if (stage.due) return 'due';
  return stage.conceived ? stage.conceived.by : 'period';
}

export class StageDraft {
  choice = $state<StageChoice | null>(null);
  /** The date that the choice asks for, `YYYY-MM-DD`. */
  date = $state('');
  who = $state('');
  toldOn = $state('');
  embryo = $state<EmbryoAge>('day5');
  mode = $state<BirthMode | null>(null);
  tear = $state<Tear | null>(null);
  /** What was recorded of a pregnancy stays beside a clinician's date: nothing that dates it is lost. */
  private readonly before: Stage | null;

  constructor(from: Stage | null, blank = false) {
    this.before = from;
    if (blank) return;
    this.choice = choiceOf(from);
    if (from?.stage === 'pregnant') {
      this.date = from.due ?? from.conceived?.on ?? from.last_period ?? '';
      this.who = from.told?.who ?? '';
      this.toldOn = from.told?.on ?? '';
      if (from.conceived?.by === 'transfer') this.embryo = from.conceived.embryo;
    } else if (from?.stage === 'postpartum') {
      this.date = from.birth;
      this.mode = from.mode;
      this.tear = from.severe_tear === null ? 'unsaid' : from.severe_tear ? 'yes' : 'no';
    } else if (from?.stage === 'after_loss') {
      this.date = from.on;
    }
  }

  get asksDate(): boolean {
    return this.choice !== null && this.choice !== 'neither' && this.choice !== 'unsaid';
  }

  get lacksDate(): boolean {
    return this.asksDate && this.date === '';
  }

  get whole(): boolean {
    return this.choice !== null && !this.lacksDate;
  }

  /** The stage, or null while it is not said. */
  toStage(): Stage | null {
    if (!this.whole) return null;
    const kept = this.before?.stage === 'pregnant' ? this.before : null;
    const dated = {
      stage: 'pregnant' as const,
      due: kept?.due ?? null,
      told: kept?.told ?? null,
      last_period: kept?.last_period ?? null,
      conceived: kept?.conceived ?? null,
    };
    const on = this.date;
    switch (this.choice) {
      case 'due': {
        const who = this.who.trim();
        const told = who || this.toldOn ? { who, on: this.toldOn || null } : null;
        return { ...dated, due: on, told };
      }
      case 'period':
        return { ...dated, last_period: on };
      case 'transfer':
        return { ...dated, conceived: { by: 'transfer', on, embryo: this.embryo } };
      case 'ovulation':
        return { ...dated, conceived: { by: 'ovulation', on } };
      case 'insemination':
        return { ...dated, conceived: { by: 'insemination', on } };
      case 'postpartum':
        return {
          stage: 'postpartum',
          birth: on,
          mode: this.mode ?? 'unsaid',
          severe_tear: this.tear === 'yes' ? true : this.tear === 'no' ? false : null,
        };
      case 'after_loss':
        return { stage: 'after_loss', on };
      case 'neither':
        return { stage: 'neither' };
      case 'unsaid':
      case null:
        return null;
    }
  }
}
