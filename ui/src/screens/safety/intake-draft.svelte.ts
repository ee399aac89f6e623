// An intake as it is filled in, by the client or by the coach.
import type { Baseline, ConditionId, IntakeForm, IntakeView, SymptomAmount, SymptomId } from '$lib/types';

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

/** What an intake begins with. */
export interface Given {
  conditions: ConditionId[];
  baselines: Baseline[];
  trained: boolean;
  never: boolean;
}

/** Whether she has lifted before. */
export type Before = 'yes' | 'no' | 'never';

export class IntakeDraft {
  conditions = $state<ConditionId[]>([]);
  baselines = $state<Baseline[]>([]);
  before = $state<Before>('no');
  note = $state('');
  /** The client's own intake is set aside, because it was talked over. */
  over = $state(false);
  readonly hers: IntakeView | null;

  constructor(given: Given, hers: IntakeView | null = null) {
    this.conditions = [...given.conditions];
    this.baselines = given.baselines.map((b) => ({ kind: b.kind, amount: { ...b.amount } }));
    this.before = given.trained ? 'yes' : given.never ? 'never' : 'no';
    this.hers = hers;
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

  get lacksNote(): boolean {
    return this.over && this.note.trim() === '';
  }

  toForm(): IntakeForm {
    return {
      conditions: [...this.conditions],
      baselines: this.baselines.map((b) => ({ kind: b.kind, amount: { ...b.amount } })),
      trained: this.before === 'yes',
      never: this.before === 'never',
      note: this.note.trim() || null,
      instead_of: this.over && this.hers ? [this.hers.record] : [],
    };
  }
}
