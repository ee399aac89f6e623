// What the coach fills in for a client, and how it becomes a form for the shell. It checks what is missing and
// nothing else: whether a date makes sense, and what follows from a stage, the engine says.
import type {
  Baseline,
  BirthMode,
  ClientForm,
  ConditionId,
  RosterEntry,
  Stage,
  SymptomAmount,
  SymptomId,
} from '$lib/types';

/** The stages as the screen offers them. Two ways lead to a gestational age; a clinician's date always wins. */
export type StageChoice = 'due' | 'period' | 'postpartum' | 'after_loss' | 'neither' | 'unsaid';

export const STAGES: readonly StageChoice[] = [
  'due',
  'period',
  'postpartum',
  'after_loss',
  'neither',
  'unsaid',
];
export const MODES: readonly BirthMode[] = ['vaginal', 'assisted', 'caesarean', 'unsaid'];

/** What keeps the form from being sent. */
export type Lack = 'name' | 'date';

/** A usual amount as one value of a choice: `little`, `clearly`, `lot`, or `pain-1` to `pain-10`. */
export type AmountKey = string;

export function amountKey(amount: SymptomAmount): AmountKey {
  return amount.form === 'pain' ? `pain-${amount.value}` : amount.form;
}

export function amountOf(key: AmountKey): SymptomAmount {
  if (key.startsWith('pain-')) return { form: 'pain', value: Number(key.slice('pain-'.length)) };
  if (key === 'little' || key === 'lot') return { form: key };
  return { form: 'clearly' };
}

export class ClientDraft {
  name = $state('');
  stage = $state<StageChoice>('unsaid');
  /** The date that the stage asks for, `YYYY-MM-DD`. */
  date = $state('');
  mode = $state<BirthMode>('unsaid');
  severeTear = $state(false);
  conditions = $state<ConditionId[]>([]);
  baselines = $state<Baseline[]>([]);
  trained = $state(false);

  constructor(from?: RosterEntry) {
    if (!from) return;
    this.name = from.name;
    this.trained = from.trained;
    this.conditions = [...from.conditions];
    this.baselines = from.baselines.map((b) => ({ kind: b.kind, amount: { ...b.amount } }));
    this.takeStage(from.stage_recorded);
  }

  private takeStage(stage: Stage | null): void {
    switch (stage?.stage) {
      case undefined:
        return;
      case 'pregnant':
        this.stage = stage.due ? 'due' : 'period';
        this.date = stage.due ?? stage.last_period ?? '';
        return;
      case 'postpartum':
        this.stage = 'postpartum';
        this.date = stage.birth;
        this.mode = stage.mode;
        this.severeTear = stage.severe_tear;
        return;
      case 'after_loss':
        this.stage = 'after_loss';
        this.date = stage.on;
        return;
      case 'neither':
        this.stage = 'neither';
    }
  }

  get asksDate(): boolean {
    return this.stage !== 'neither' && this.stage !== 'unsaid';
  }

  get lacks(): Lack[] {
    const lacks: Lack[] = [];
    if (this.name.trim() === '') lacks.push('name');
    if (this.asksDate && this.date === '') lacks.push('date');
    return lacks;
  }

  toggleCondition(id: ConditionId): void {
    this.conditions = this.conditions.includes(id)
      ? this.conditions.filter((c) => c !== id)
      : [...this.conditions, id];
  }

  /** Adds a usual symptom, or changes the amount of one that is there. */
  setBaseline(kind: SymptomId, key: AmountKey): void {
    const amount = amountOf(key);
    const found = this.baselines.find((b) => b.kind === kind);
    if (found) found.amount = amount;
    else this.baselines.push({ kind, amount });
  }

  removeBaseline(kind: SymptomId): void {
    this.baselines = this.baselines.filter((b) => b.kind !== kind);
  }

  private toStage(): Stage | null {
    switch (this.stage) {
      case 'due':
        return { stage: 'pregnant', due: this.date, last_period: null };
      case 'period':
        return { stage: 'pregnant', due: null, last_period: this.date };
      case 'postpartum':
        return { stage: 'postpartum', birth: this.date, mode: this.mode, severe_tear: this.severeTear };
      case 'after_loss':
        return { stage: 'after_loss', on: this.date };
      case 'neither':
        return { stage: 'neither' };
      case 'unsaid':
        return null;
    }
  }

  /** The form for the shell; only when nothing is lacking. */
  toForm(): ClientForm | null {
    if (this.lacks.length > 0) return null;
    return {
      name: this.name.trim(),
      stage: this.toStage(),
      conditions: [...this.conditions],
      baselines: this.baselines.map((b) => ({ kind: b.kind, amount: { ...b.amount } })),
      trained: this.trained,
    };
  }
}
