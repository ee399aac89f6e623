// A class: who comes, who does what, what the room needs. What each is proposed is the core's business.
import * as bridge from '$lib/bridge';
import { Doing } from '$lib/doing.svelte';
import { whole } from '$lib/pieces';
import type {
  Block,
  ClassForm,
  ClassRowView,
  ClassView,
  Band,
  GroupView,
  Kit,
  Laid,
  Offer,
  OverrideForm,
  Prescription,
  Proposal,
  RoomsView,
  RoomThing,
  RoomView,
} from '$lib/types';

export interface Comer {
  person: string;
  name: string;
}

/** The proposal for a slot of one row. */
export const proposalOf = (row: ClassRowView, slot: string): Proposal | null =>
  row.proposal.slots.find((p) => p.slot === slot) ?? null;

export const trained = (proposal: Proposal | null): Prescription | null =>
  proposal?.outcome.do === 'train' ? proposal.outcome : null;

/** Her first round, if she comes late. */
export const lateOf = (row: ClassRowView, slot: string): Offer | null =>
  row.late.find((l) => l.slot === slot)?.first ?? null;

/** `A`, `B`; within a block of several slots `A1`, `A2`. */
export function markOf(blocks: readonly Block[], block: Block, place: number): string {
  const letter = String.fromCharCode(65 + blocks.indexOf(block));
  return block.slots.length > 1 ? `${letter}${place + 1}` : letter;
}

/** Names of who needs a thing in the block that needs the most of it. */
export function needers(view: ClassView, thing: RoomThing): string[] {
  const block = [...thing.need.blocks].sort((a, b) => b.count - a.count)[0];
  return (block?.who ?? []).map((p) => view.rows.find((r) => r.person === p)?.name ?? '').filter(Boolean);
}

export class ClassState {
  readonly doing = new Doing();
  readonly programme: string;
  readonly session: string;
  comers = $state.raw<Comer[]>([]);
  groups = $state.raw<GroupView[]>([]);
  people = $state.raw<string[]>([]);
  rooms = $state.raw<RoomView[]>([]);
  presets = $state.raw<Band[]>([]);
  /** The room whose kit is at hand; each has her own if there is none. */
  at = $state<string | null>(null);
  view = $state.raw<ClassView | null>(null);
  /** Who came late, while the room is shown. */
  late = $state.raw<readonly string[]>([]);
  #line: Promise<unknown> = Promise.resolve();

  constructor(programme: string, session: string) {
    this.programme = programme;
    this.session = session;
  }

  get form(): ClassForm {
    return { programme: this.programme, session: this.session, people: this.people, room: this.at };
  }

  async read(): Promise<void> {
    await this.doing.run('read', async () => {
      const roster = await whole(bridge.rosterView);
      this.comers = roster.clients.map(({ person, name }) => ({ person, name }));
      this.groups = roster.groups;
      this.#take(await bridge.roomsView());
    });
  }

  #take(view: RoomsView): void {
    this.rooms = view.rooms;
    this.presets = view.band_presets;
  }

  /** One after the other, so that the table shows the last choice and not the slowest answer. */
  #ask(name: string, work: () => Promise<ClassView>): Promise<boolean> {
    const turn = this.#line.then(async () => {
      const view = await this.doing.run(name, work);
      this.view = view ?? this.view;
      return view !== undefined;
    });
    this.#line = turn;
    return turn;
  }

  async choose(people: string[]): Promise<void> {
    this.people = people;
    if (people.length === 0) {
      this.view = null;
      return;
    }
    const form = this.form;
    await this.#ask('class', () => bridge.classView(form));
    if (this.people.length === 0) this.view = null;
  }

  /** With the kit of a room, or each with her own. */
  async useKit(room: string | null): Promise<void> {
    this.at = room;
    await this.choose(this.people);
  }

  /** Writes down what stands in a room; what is proposed is asked anew. True once it is on disk. */
  async saveRoom(room: string | null, name: string, kit: Kit): Promise<boolean> {
    const known = this.rooms.map((r) => r.id);
    const view = await this.doing.run('room-save', () => bridge.roomSave(room, name, kit));
    if (!view) return false;
    this.#take(view);
    await this.useKit(room ?? view.rooms.find((r) => !known.includes(r.id))?.id ?? this.at);
    return true;
  }

  async removeRoom(room: string): Promise<boolean> {
    const view = await this.doing.run('room-remove', () => bridge.roomRemove(room));
    if (!view) return false;
    this.#take(view);
    if (this.at === room) await this.useKit(null);
    return true;
  }

  toggle(person: string): Promise<void> {
    const without = this.people.filter((p) => p !== person);
    return this.choose(without.length < this.people.length ? without : [...this.people, person]);
  }

  /** Chosen, all of a group come; chosen again, they go. */
  group(group: GroupView): Promise<void> {
    const rest = this.people.filter((p) => !group.members.includes(p));
    return this.choose(this.whole(group) ? rest : [...rest, ...group.members]);
  }

  whole(group: GroupView): boolean {
    return group.members.length > 0 && group.members.every((p) => this.people.includes(p));
  }

  room(what: Laid, count: number | null): Promise<boolean> {
    const form = this.form;
    return this.#ask('room', () => bridge.roomSet(form, what, count));
  }

  change(person: string, change: OverrideForm): Promise<boolean> {
    const form = this.form;
    return this.#ask('change', () => bridge.classSet(form, person, change));
  }

  comesLate(person: string): void {
    this.late = this.late.includes(person) ? this.late.filter((p) => p !== person) : [...this.late, person];
  }
}
