// First start: an empty profile, one from a coach's plan file, the invented people, or a profile that is here already.
import { app } from '$lib/app.svelte';
import * as bridge from '$lib/bridge';
import { Doing } from '$lib/doing.svelte';
import type { AppView, Role } from '$lib/types';

export class StartState {
  role = $state<Role>('client');
  name = $state('');
  /** True once she tried to go on without a name. */
  nameMissing = $state(false);
  doing = new Doing();

  private async take(name: string, command: () => Promise<AppView>): Promise<void> {
    const view = await this.doing.run(name, command);
    if (view) app.take(view);
  }

  async begin(): Promise<void> {
    const name = this.name.trim();
    this.nameMissing = name === '';
    if (!this.nameMissing) await this.take('begin', () => bridge.profileNew(name, this.role));
  }

  async fromPlan(files: File[]): Promise<void> {
    const file = files[0];
    if (file) await this.take('plan', async () => bridge.profileFromPlan(await file.text()));
  }

  /** Adds the invented people and stays here: one of them is chosen next. True once they are there. */
  async demo(): Promise<boolean> {
    await this.take('demo', bridge.demoMake);
    return this.doing.error === null && (app.view?.profiles.some((p) => p.demo) ?? false);
  }

  async open(key: string): Promise<void> {
    await this.take(`open-${key}`, () => bridge.profileOpen(key));
  }
}
