// The Desk: whom to look at, one client's story, and what the coach answers, writes and sets.
import * as bridge from '$lib/bridge';
import { Doing } from '$lib/doing.svelte';
import { Onward } from '$lib/pieces';
import { readFiles } from '$lib/takein';
import type {
  ClientView,
  DeskView,
  ErrorView,
  FileReport,
  HoldAnswer,
  OverrideForm,
  RevisionView,
  WrittenView,
} from '$lib/types';
import { say } from '$lib/words';

/** The name that the system's dialog suggests: her name in letters, digits and hyphens, as the shell does it. */
export function planFileName(name: string): string {
  const slug = name
    .toLocaleLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return `${slug || 'client'}-plan.newel.json`;
}

export class DeskState {
  view = $state.raw<DeskView | null>(null);
  /** The client whose story is in view. */
  person = $state<string | null>(null);
  client = $state.raw<ClientView | null>(null);
  /** The ladder whose trend is in view. */
  ladder = $state<string | null>(null);
  written = $state.raw<WrittenView | null>(null);
  /** What her plan file would change, while it waits for a yes. */
  preview = $state.raw<{ views: RevisionView[]; elsewhere: boolean } | null>(null);
  report = $state.raw<FileReport[] | null>(null);
  storyError = $state<ErrorView | null>(null);
  doing = new Doing();

  #list = new Onward(
    () => bridge.deskView(),
    (view: DeskView) => (this.view = view),
  );

  async read(): Promise<void> {
    const view = await this.doing.run('read', bridge.deskView);
    if (view) await this.show(view);
  }

  /** Shows the list, and what is still to come of it as it comes. */
  private async show(view: DeskView): Promise<void> {
    try {
      await this.#list.take(view);
    } catch (thrown) {
      this.doing.last = 'read';
      this.doing.error = bridge.errorOf(thrown);
    }
  }

  /** Opens a client's story. An answer that comes after another was chosen is dropped. */
  async choose(person: string): Promise<void> {
    this.person = person;
    this.client = null;
    this.ladder = null;
    this.written = null;
    this.preview = null;
    this.storyError = null;
    try {
      const client = await bridge.clientView(person);
      if (this.person === person) this.take(client);
    } catch (thrown) {
      if (this.person === person) this.storyError = bridge.errorOf(thrown);
    }
  }

  leave(): void {
    this.person = null;
    this.client = null;
    this.written = null;
  }

  /** Shows a story; the trend stays on its ladder, or begins where something waits. */
  private take(client: ClientView): void {
    this.client = client;
    if (this.ladder && client.ladders.some((l) => l.ladder === this.ladder)) return;
    const held = client.holds.find((h) => h.ladder !== null)?.ladder;
    const named = client.findings.map((f) => f.facts['ladder']).find((fact) => fact?.is === 'ladder');
    const first = client.ladders.find((l) => l.trend && l.trend.points.length > 0) ?? client.ladders[0];
    const wanted = held ?? (named?.is === 'ladder' ? named.value : undefined);
    this.ladder = client.ladders.some((l) => l.ladder === wanted)
      ? (wanted ?? null)
      : (first?.ladder ?? null);
  }

  /** One change of a story: the answer is shown, and the list is read again, since it may have moved. */
  private async change(
    name: string,
    work: (person: string) => Promise<ClientView>,
    words: string,
  ): Promise<boolean> {
    const person = this.person;
    if (person === null) return false;
    const client = await this.doing.run(
      name,
      async () => {
        const changed = await work(person);
        void this.show(await bridge.deskView());
        return changed;
      },
      () => words,
    );
    if (!client) return false;
    // What is set now is not in a file written before.
    this.written = null;
    if (this.person === person) this.take(client);
    return true;
  }

  note(text: string): Promise<boolean> {
    return this.change('note', (p) => bridge.noteWrite(p, text.trim()), say('desk-note-kept'));
  }

  answer(hold: string, answer: HoldAnswer, note: string): Promise<boolean> {
    return this.change('hold', (p) => bridge.holdAnswer(p, hold, answer, note.trim()), say('desk-answered'));
  }

  override(form: OverrideForm): Promise<boolean> {
    return this.change('override', (p) => bridge.overrideWrite(p, form), say('desk-override-kept'));
  }

  /** The safety page of the client has changed something. */
  async refresh(): Promise<void> {
    const person = this.person;
    if (person === null) return;
    await this.doing.run('refresh', async () => {
      const client = await bridge.clientView(person);
      void this.show(await bridge.deskView());
      // What is set now is not in a file written before.
      this.written = null;
      if (this.person === person) this.take(client);
    });
  }

  takeBack(record: string): Promise<boolean> {
    return this.change('take-back', (p) => bridge.recordWithdrawFor(p, record), say('roster-taken-back'));
  }

  /** Writes her plan file; `elsewhere` asks for the place first, and closing that dialog writes nothing. */
  async writePlan(elsewhere: boolean, read = false): Promise<void> {
    const person = this.person;
    if (person === null) return;
    // What a revision changes for her is read first.
    if (!read && this.client?.client.files.plan === 'older') {
      const views = await this.doing.run('preview', () => bridge.revisions([person]));
      this.preview = views ? { views, elsewhere } : null;
      return;
    }
    this.preview = null;
    await this.doing.run('plan', async () => {
      let path: string | null = null;
      if (elsewhere) {
        path = await bridge.chooseSavePath(planFileName(this.client?.client.name ?? ''));
        if (path === null) return;
      }
      const written = await bridge.planWrite(person, path);
      const client = await bridge.clientView(person);
      void this.show(await bridge.deskView());
      if (this.person !== person) return;
      this.written = written;
      this.take(client);
    });
  }

  async takeIn(files: File[]): Promise<void> {
    await this.doing.run('take-in', async () => {
      // The old report goes first, so that it is never read as the new one.
      this.report = null;
      this.report = (await bridge.takeIn(await readFiles(files))).files;
      void this.show(await bridge.deskView());
      const person = this.person;
      if (person === null) return;
      const client = await bridge.clientView(person);
      if (this.person === person) this.take(client);
    });
  }
}
