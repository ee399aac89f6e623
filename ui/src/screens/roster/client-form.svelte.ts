// What the coach fills in for a client, and how it becomes a form for the shell. It checks what is missing and
// nothing else: whether a date makes sense, and what follows from a stage, the engine says.
import type { ClientForm, IntakeView, RosterEntry } from '$lib/types';
import { IntakeDraft } from '../safety/intake-draft.svelte';
import { StageDraft } from '../safety/stage-draft.svelte';

/** What keeps the form from being sent. */
export type Lack = 'name' | 'date' | 'note';

export class ClientDraft {
  name = $state('');
  readonly stage: StageDraft;
  readonly intake: IntakeDraft;

  constructor(from?: RosterEntry, hers: IntakeView | null = null) {
    this.name = from?.name ?? '';
    this.stage = new StageDraft(from?.stage_recorded ?? null);
    this.intake = new IntakeDraft(
      from ?? { conditions: [], baselines: [], trained: false, never: false },
      hers,
    );
  }

  get lacks(): Lack[] {
    const lacks: Lack[] = [];
    if (this.name.trim() === '') lacks.push('name');
    if (this.stage.lacksDate) lacks.push('date');
    if (this.intake.lacksNote) lacks.push('note');
    return lacks;
  }

  /** The form for the shell; only when nothing is lacking. */
  toForm(): ClientForm | null {
    if (this.lacks.length > 0) return null;
    return { name: this.name.trim(), stage: this.stage.toStage(), intake: this.intake.toForm() };
  }
}
