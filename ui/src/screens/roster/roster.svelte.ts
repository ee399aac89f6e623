// The Roster: clients, what screening found, what is ruled out, who cleared her, which programme she has.
import * as bridge from '$lib/bridge';
import { Doing } from '$lib/doing.svelte';
import type { ClientForm, RestrictionKind, RosterEntry, RosterView } from '$lib/types';
import { say } from '$lib/words';

/** What a dialog is open for; `person` null adds a client. */
export type Asking =
  | { what: 'client'; client: RosterEntry | null }
  | { what: 'restriction' | 'safety' | 'programme'; client: RosterEntry };

export class RosterState {
  view = $state.raw<RosterView | null>(null);
  find = $state('');
  asking = $state.raw<Asking | null>(null);
  doing = new Doing();

  get clients(): RosterEntry[] {
    const wanted = this.find.trim().toLocaleLowerCase();
    const all = this.view?.clients ?? [];
    return wanted ? all.filter((c) => c.name.toLocaleLowerCase().includes(wanted)) : all;
  }

  async read(): Promise<void> {
    this.view = (await this.doing.run('read', bridge.rosterView)) ?? this.view;
  }

  /** Runs one change, takes over the Roster that it answers with, and closes the dialog once it is stored. */
  private async change(name: string, work: () => Promise<RosterView>, words: string): Promise<void> {
    const view = await this.doing.run(name, work, () => words);
    if (!view) return;
    this.view = view;
    this.asking = null;
  }

  saveClient(client: RosterEntry | null, form: ClientForm): Promise<void> {
    return client
      ? this.change('client', () => bridge.clientSave(client.person, form), say('roster-saved'))
      : this.change('client', () => bridge.clientAdd(form), say('roster-added'));
  }

  restrict(client: RosterEntry, what: RestrictionKind, until: string, note: string): Promise<void> {
    return this.change(
      'restriction',
      () => bridge.restrictionAdd(client.person, what, until || null, note.trim()),
      say('roster-restricted'),
    );
  }

  give(client: RosterEntry, programme: string): Promise<void> {
    const title = this.view?.programmes.find((p) => p.id === programme)?.title ?? '';
    return this.change(
      'programme',
      () => bridge.programmeGive(client.person, programme),
      say('roster-given', { title }),
    );
  }

  async takeBack(client: RosterEntry, record: string): Promise<void> {
    const done = await this.doing.run(
      'take-back',
      async () => {
        await bridge.recordWithdrawFor(client.person, record);
        return bridge.rosterView();
      },
      () => say('roster-taken-back'),
    );
    if (done) this.view = done;
  }
}
