// The only file that talks to the shell. Each function calls one command and gives it a type.
import { invoke } from '@tauri-apps/api/core';

/** What every command answers when it cannot do what was asked. */
export interface CommandError {
  /** Stable; the screens branch on it. */
  code: string;
  /** What happened, in plain words. */
  message: string;
  /** What to do about it. */
  remedy: string;
}

export interface AppVersion {
  version: string;
}

export function appVersion(): Promise<AppVersion> {
  return invoke('app_version');
}
