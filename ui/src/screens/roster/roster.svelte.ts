// The Roster: clients, what screening found, what is ruled out, who cleared her, which programme she has.
import * as bridge from '$lib/bridge';
import { Doing } from '$lib/doing.svelte';
import { Onward } from '$lib/pieces';
import type { ClientForm, GroupView, RestrictionKind, RosterEntry, RosterView } from '$lib/types';
import { say } from '$lib/words';
import { ALL, filtered, groupNames, isAll, namesOf, titlesOf, type Filter } from './filters';
import type { GiveDraft } from './give.svelte';
import type { GroupDraft } from './group.svelte';

/** What a dialog is open for; `client` null adds one. */
export type Asking =
  | { what: 'client'; client: RosterEntry | null }
  | { what: 'restriction' | 'safety'; client: RosterEntry }
  | { what: 'programme'; client: RosterEntry | null }
  | { what: 'groups'; client: null };

/** So many lines are drawn in one frame; more follow as far as they are seen, so that the first stand at once. */
export const PIECE = 6;
/** So many fill a window: those stay drawn while she types. */
const SEEN = 12;
/** So many milliseconds after a key the rest is drawn, so that the next key does not have to wait. */
const PAUSE = 200;

export class RosterState {
  view = $state.raw<RosterView | null>(null);
  filter = $state<Filter>({ ...ALL });
  asking = $state.raw<Asking | null>(null);
  /** The group that was removed last. */
  removed = $state.raw<GroupView | null>(null);
  /** How many lines may be drawn now. */
  drawn = $state(PIECE);
  #quiet = 0;
  doing = new Doing();

  #names = $derived(namesOf([...(this.view?.clients ?? []), ...(this.view?.archived ?? [])]));

  clients = $derived(filtered(this.view?.clients ?? [], this.view?.groups ?? [], this.filter, this.#names));

  /** Those laid aside that are called so. */
  archived = $derived(
    filtered(this.view?.archived ?? [], [], { ...ALL, name: this.filter.name }, this.#names),
  );

  titles = $derived(titlesOf(this.view?.clients ?? []));

  groupsOf = $derived(groupNames(this.view?.groups ?? []));

  get narrowed(): boolean {
    return !isAll(this.filter);
  }

  set(change: Partial<Filter>): void {
    this.filter = { ...this.filter, ...change };
    this.drawn = Math.min(this.drawn, SEEN);
    this.#quiet = performance.now() + PAUSE;
  }

  /** Lets a further piece be drawn, but not between two keys. */
  more(): void {
    if (performance.now() >= this.#quiet) this.drawn += PIECE;
  }

  /** Lets all be drawn. */
  all(): void {
    this.drawn = this.clients.length;
  }

  #list = new Onward(
    () => bridge.rosterView(),
    (view: RosterView) => (this.view = view),
  );

  async read(): Promise<void> {
    const view = await this.doing.run('read', bridge.rosterView);
    if (view) await this.show(view);
  }

  /** Shows the clients, and those that are still to come as they come. */
  private async show(view: RosterView): Promise<void> {
    try {
      await this.#list.take(view);
    } catch (thrown) {
      this.doing.last = 'read';
      this.doing.error = bridge.errorOf(thrown);
    }
  }

  /** Runs one change, takes over the Roster that it answers with, and closes the dialog once it is stored. */
  private async change(name: string, work: () => Promise<RosterView>, words: string): Promise<void> {
    const view = await this.doing.run(name, work, () => words);
    if (!view) return;
    void this.show(view);
    this.asking = null;
  }

  /** Makes a group, or changes its name and members. The dialog stays open. */
  async keepGroup(draft: GroupDraft): Promise<boolean> {
    const name = draft.name.trim();
    const view = await this.doing.run(
      'group',
      async () => {
        if (draft.id === null) return bridge.groupMake(name, draft.members);
        await bridge.groupRename(draft.id, name);
        return bridge.groupMembers(draft.id, draft.members);
      },
      () => say('group-kept', { name }),
    );
    if (!view) return false;
    void this.show(view);
    this.removed = null;
    return true;
  }

  async removeGroup(group: GroupView, back: boolean): Promise<void> {
    const view = await this.doing.run('group-remove', () => bridge.groupRemove(group.id, back));
    if (!view) return;
    void this.show(view);
    this.removed = back ? null : group;
    if (this.filter.group === group.id) this.set({ group: '' });
  }

  archive(client: RosterEntry, back: boolean): Promise<void> {
    return this.change(
      'archive',
      () => bridge.clientsArchive([client.person], back),
      say(back ? 'roster-brought-back' : 'roster-archived', { name: client.name }),
    );
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

  give(draft: GiveDraft): Promise<void> {
    const title = this.view?.programmes.find((p) => p.id === draft.programme)?.title ?? '';
    return this.change(
      'programme',
      () => bridge.programmeGiveTo(draft.programme, draft.toForm()),
      say('roster-given', { title, count: draft.to.length }),
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
    if (done) void this.show(done);
  }
}
