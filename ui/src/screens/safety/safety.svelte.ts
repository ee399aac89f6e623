// The safety page of a client, or of whoever is open (`person` null): each change answers with the page anew.
import * as bridge from '$lib/bridge';
import { Doing } from '$lib/doing.svelte';
import type { ClearanceForm, ImpactForm, IntakeForm, RuleSetting, SafetyView, Stage } from '$lib/types';
import { say } from '$lib/words';

export type Form = 'stage' | 'clearance' | 'screening' | 'rule' | 'impact' | null;

export class SafetyState {
  view = $state.raw<SafetyView | null>(null);
  /** The form that is open in place of its button. */
  form = $state<Form>(null);
  doing = new Doing();

  constructor(
    readonly person: string | null,
    private readonly changed: () => void = () => undefined,
  ) {}

  async read(): Promise<void> {
    this.view = (await this.doing.run('read', () => bridge.safetyView(this.person))) ?? this.view;
  }

  private async change(name: string, work: () => Promise<SafetyView>, words: string): Promise<boolean> {
    const view = await this.doing.run(name, work, () => words);
    if (!view) return false;
    this.view = view;
    this.form = null;
    this.changed();
    return true;
  }

  stage(stage: Stage): Promise<boolean> {
    return this.change('stage', () => bridge.stageRecord(this.person, stage), say('stage-kept'));
  }

  takeStageBack(record: string): Promise<boolean> {
    return this.change('back', () => bridge.stageTakeBack(this.person, record), say('stage-taken-back'));
  }

  takeUp(note: string): Promise<boolean> {
    return this.change('take-up', () => bridge.takeUp(this.person, note.trim()), say('rest-taken-up'));
  }

  clear(form: ClearanceForm): Promise<boolean> {
    return this.change('clear', () => bridge.clearanceRecord(this.person, form), say('clear-kept'));
  }

  impact(form: ImpactForm): Promise<boolean> {
    return this.change('impact', () => bridge.impactRecord(this.person, form), say('impact-kept'));
  }

  rule(setting: RuleSetting): Promise<boolean> {
    return this.change('rule', () => bridge.ruleSet(this.person ?? '', setting), say('rules-kept'));
  }

  screen(form: IntakeForm): Promise<boolean> {
    return this.change('screen', () => bridge.intakeRecord(this.person, form), say('screen-kept'));
  }
}
