// Send: writing the log file, taking in files; the coach's plan files are in plans.svelte.ts.
import { app } from '$lib/app.svelte';
import * as bridge from '$lib/bridge';
import { Doing } from '$lib/doing.svelte';
import { readFiles } from '$lib/takein';
import type { FileReport, SendView, WrittenView } from '$lib/types';

export class SendState {
  view = $state.raw<SendView | null>(null);
  written = $state.raw<WrittenView | null>(null);
  /** How often files were taken in: what is due to clients may be otherwise after each. */
  taken = $state(0);
  report = $state.raw<FileReport[] | null>(null);
  doing = new Doing();

  get coach(): boolean {
    return app.open?.role === 'coach';
  }

  async read(): Promise<void> {
    await this.doing.run('read', async () => {
      this.view = await bridge.sendView();
    });
  }

  /** Writes the log file to the usual folder, or to a place that she chooses; closing the dialog writes nothing. */
  async writeLog(elsewhere: boolean): Promise<void> {
    await this.doing.run('write', async () => {
      let path: string | null = null;
      if (elsewhere) {
        path = await bridge.chooseSavePath(this.view?.file_name ?? '');
        if (path === null) return;
      }
      this.written = await bridge.logWrite(path);
      this.view = await bridge.sendView();
    });
  }

  async takeIn(files: File[]): Promise<void> {
    await this.doing.run('take-in', async () => {
      // The old report goes first, so that it is never read as the new one.
      this.report = null;
      this.report = (await bridge.takeIn(await readFiles(files))).files;
      this.view = await bridge.sendView();
      this.taken += 1;
    });
  }
}
