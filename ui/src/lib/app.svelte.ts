// What stands around every screen: the open profile, the screen in view, light or dark.
import * as bridge from './bridge';
import { keptScheme, setScheme, type Scheme } from './scheme';
import type { AppView, ErrorView, Role } from './types';

export type Screen = 'train' | 'path' | 'kit' | 'send' | 'desk' | 'roster' | 'planbook';

const SCREENS: Record<Role, [Screen, ...Screen[]]> = {
  client: ['train', 'path', 'kit', 'send'],
  coach: ['desk', 'roster', 'planbook', 'send'],
};

export class AppState {
  view = $state<AppView | null>(null);
  screen = $state<Screen>('train');
  /** True while a session fills the screen: the navigation steps aside. */
  immersed = $state(false);
  error = $state<ErrorView | null>(null);
  scheme = $state<Scheme>('auto');

  get open() {
    return this.view?.open ?? null;
  }

  get screens(): Screen[] {
    return this.open ? SCREENS[this.open.role] : [];
  }

  /** Asks the shell what is open; called once at the start. */
  async begin(): Promise<void> {
    this.paint(keptScheme());
    await this.ask(bridge.appView);
  }

  /** Runs a command that answers with an AppView and shows what it answered. */
  async ask(command: () => Promise<AppView>): Promise<boolean> {
    this.error = null;
    try {
      this.take(await command());
      return true;
    } catch (thrown) {
      this.error = bridge.errorOf(thrown);
      return false;
    }
  }

  /** Takes over an AppView that a screen got from the shell; another profile or role begins on its first screen. */
  take(view: AppView): void {
    const before = this.open;
    this.view = view;
    const now = view.open;
    if (!now) return;
    if (now.key !== before?.key || now.role !== before.role) {
      this.immersed = false;
      this.screen = SCREENS[now.role][0];
    }
  }

  go(screen: Screen): void {
    this.immersed = false;
    this.screen = screen;
  }

  paint(scheme: Scheme): void {
    this.scheme = scheme;
    setScheme(scheme);
  }
}

export const app = new AppState();
