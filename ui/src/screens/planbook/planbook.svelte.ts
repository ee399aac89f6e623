// The Planbook's state: which programme is open, and changes one after the other. What a change does is the core's
// business; each one is on disk before the next is sent, so keys may come faster than answers.
import * as bridge from '$lib/bridge';
import { Doing } from '$lib/doing.svelte';
import type { Edit, PlanbookView, ProgrammeView } from '$lib/types';

export class Planbook {
  readonly doing = new Doing();
  view = $state.raw<PlanbookView | null>(null);
  /** The programme that is written on. */
  open = $state<string | null>(null);
  #line: Promise<unknown> = Promise.resolve();

  get programme(): ProgrammeView | null {
    return this.view?.programmes.find((p) => p.programme.id === this.open) ?? null;
  }

  async read(): Promise<void> {
    this.view = (await this.doing.run('read', bridge.planbookView)) ?? this.view;
  }

  /** One after the other: none is lost, and none overtakes. */
  #next<T>(name: string, work: () => Promise<T>): Promise<T | undefined> {
    const turn = this.#line.then(() => this.doing.run(name, work));
    this.#line = turn;
    return turn;
  }

  async begin(title: string, from: string | null): Promise<boolean> {
    const id = await this.#next('new', () => bridge.programmeNew(title, from));
    if (id === undefined) return false;
    await this.#next('read', bridge.planbookView).then((view) => (this.view = view ?? this.view));
    this.open = id;
    return true;
  }

  async edit(edit: Edit): Promise<boolean> {
    const id = this.open;
    if (id === null) return false;
    const view = await this.#next('edit', () => bridge.programmeEdit(id, edit));
    this.view = view ?? this.view;
    return view !== undefined;
  }

  async turn(back: boolean): Promise<void> {
    const id = this.open;
    if (id === null) return;
    this.view = (await this.#next('turn', () => bridge.programmeTurn(id, back))) ?? this.view;
  }

  async away(id: string, away: boolean): Promise<void> {
    this.view = (await this.#next('away', () => bridge.programmeAway(id, away))) ?? this.view;
    if (away && this.open === id) this.open = null;
  }

  /** Undo and redo as everywhere: Ctrl or Cmd with Z, with Shift to redo, or Y. Inside a field the field's own undo holds. */
  key(event: KeyboardEvent): void {
    const field = event.target instanceof HTMLElement && event.target.matches('input[type=text], textarea');
    if (!(event.ctrlKey || event.metaKey) || field || this.open === null) return;
    const key = event.key.toLowerCase();
    if (key !== 'z' && key !== 'y') return;
    event.preventDefault();
    void this.turn(key === 'z' && !event.shiftKey);
  }
}
