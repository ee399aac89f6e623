// A programme for several clients at once: which, for whom, and from when.
import { finds } from '$lib/find';
import type { GiveTo, GroupView, RosterEntry } from '$lib/types';

export class GiveDraft {
  programme = $state('');
  find = $state('');
  /** The day that holds for whoever has none of her own. */
  begins = $state('');
  /** Who is chosen, each with a day of her own or none. */
  to = $state<{ person: string; begins: string }[]>([]);
  readonly clients: readonly RosterEntry[];

  constructor(clients: readonly RosterEntry[], person: string | null) {
    this.clients = clients;
    if (person !== null) this.add(person);
  }

  has(person: string): boolean {
    return this.to.some((t) => t.person === person);
  }

  add(person: string): void {
    if (!this.has(person)) this.to.push({ person, begins: '' });
  }

  addGroup(group: GroupView): void {
    for (const person of group.members) this.add(person);
  }

  drop(person: string): void {
    this.to = this.to.filter((t) => t.person !== person);
  }

  nameOf(person: string): string {
    return this.clients.find((c) => c.person === person)?.name ?? '';
  }

  get others(): RosterEntry[] {
    return this.clients.filter((c) => !this.has(c.person) && finds(this.find, c.name));
  }

  get ready(): boolean {
    return this.programme !== '' && this.to.length > 0;
  }

  toForm(): GiveTo[] {
    return this.to.map((t) => ({ person: t.person, begins: t.begins || this.begins || null }));
  }
}
