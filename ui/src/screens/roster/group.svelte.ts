// A group as the coach fills it in: its name, and who is in it, in her order.
import { finds } from '$lib/find';
import type { GroupView, RosterEntry } from '$lib/types';

/** So many names to choose from are drawn; typing finds the rest. */
export const DRAWN = 40;

export class GroupDraft {
  name = $state('');
  find = $state('');
  members = $state<string[]>([]);
  readonly id: string | null;
  readonly clients: readonly RosterEntry[];

  constructor(clients: readonly RosterEntry[], group: GroupView | null) {
    this.clients = clients;
    this.id = group?.id ?? null;
    this.name = group?.name ?? '';
    this.members = [...(group?.members ?? [])];
  }

  nameOf(person: string): string {
    return this.clients.find((c) => c.person === person)?.name ?? '';
  }

  /** Those who are not in it and are called so. */
  get others(): RosterEntry[] {
    return this.clients.filter((c) => !this.members.includes(c.person) && finds(this.find, c.name));
  }

  add(person: string): void {
    if (!this.members.includes(person)) this.members.push(person);
  }

  drop(person: string): void {
    this.members = this.members.filter((p) => p !== person);
  }

  /** One place up or down. */
  move(person: string, by: -1 | 1): void {
    const at = this.members.indexOf(person);
    const to = at + by;
    if (at < 0 || to < 0 || to >= this.members.length) return;
    const [moved] = this.members.splice(at, 1);
    if (moved !== undefined) this.members.splice(to, 0, moved);
  }

  get lacksName(): boolean {
    return this.name.trim() === '';
  }
}
