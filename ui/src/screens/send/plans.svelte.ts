// Plan files for one client, several, or all: what a revision changes is read before it is written, and a receipt says what
// became of each.
import * as bridge from '$lib/bridge';
import { Doing } from '$lib/doing.svelte';
import { finds } from '$lib/find';
import { language } from '$lib/language';
import { whole } from '$lib/pieces';
import type { ReceiptView, RevisionView, RosterEntry, RosterView } from '$lib/types';
import { planDue } from '../roster/filters';

/** So many lines are drawn; typing finds the rest. */
export const DRAWN = 40;

export class PlansOut {
  roster = $state.raw<RosterView | null>(null);
  find = $state('');
  chosen = $state<string[]>([]);
  /** What would change, while it waits for a yes. */
  previews = $state.raw<RevisionView[] | null>(null);
  /** For whom the yes is: these, or null for all that are due. */
  #asked: string[] | null = null;
  #folder: string | null = null;
  receipt = $state.raw<ReceiptView | null>(null);
  doing = new Doing();

  clients = $derived((this.roster?.clients ?? []).filter((c) => finds(this.find, c.name)));
  due = $derived((this.roster?.clients ?? []).filter(planDue));

  async read(): Promise<void> {
    this.roster = (await this.doing.run('read', () => whole(bridge.rosterView))) ?? this.roster;
  }

  toggle(person: string): void {
    this.chosen = this.chosen.includes(person)
      ? this.chosen.filter((p) => p !== person)
      : [...this.chosen, person];
  }

  /** All of a group, with who is chosen already. */
  chooseGroup(id: string): void {
    const members = this.roster?.groups.find((g) => g.id === id)?.members ?? [];
    this.chosen = [...this.chosen, ...members.filter((p) => !this.chosen.includes(p))];
  }

  /** Shows what changes for whom if somebody's plan is a revision; else the files are written at once. */
  async begin(people: string[] | null, elsewhere: boolean): Promise<void> {
    this.receipt = null;
    let folder: string | null = null;
    if (elsewhere) {
      folder = (await this.doing.run('folder', bridge.chooseFolder)) ?? null;
      if (folder === null) return;
    }
    const whom = people ?? this.due.map((c) => c.person);
    this.#asked = people;
    this.#folder = folder;
    const revised = (c: RosterEntry): boolean => whom.includes(c.person) && c.files.plan === 'older';
    if (!this.roster?.clients.some(revised)) return this.write();
    this.previews = (await this.doing.run('preview', () => bridge.revisions(whom))) ?? null;
  }

  /** Writes what was asked for. */
  async write(): Promise<void> {
    const receipt = await this.doing.run('write', () =>
      bridge.plansWrite(this.#asked, this.#folder, language),
    );
    this.previews = null;
    if (!receipt) return;
    this.receipt = receipt;
    this.chosen = [];
    await this.read();
  }
}
