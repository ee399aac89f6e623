// Light, dark or as the system says. A matter of this screen alone, so it is kept beside the page and not in the log.

/** What can be chosen. */
export type Scheme = 'auto' | 'light' | 'dark';

const KEY = 'newel.scheme';

/** The choice as kept; anything unreadable counts as `auto`. */
export function keptScheme(): Scheme {
  try {
    const kept = localStorage.getItem(KEY);
    return kept === 'light' || kept === 'dark' ? kept : 'auto';
  } catch {
    return 'auto';
  }
}

/** Applies a choice to the whole page and keeps it. */
export function setScheme(scheme: Scheme): void {
  try {
    if (scheme === 'auto') localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, scheme);
  } catch {
    // Without storage the choice holds until the window closes, which is the best that can be done.
  }
  applyScheme(scheme);
}

/** Sets `data-scheme` on the root element, which the tokens of look.css read. */
export function applyScheme(scheme: Scheme = keptScheme()): void {
  if (scheme === 'auto') delete document.documentElement.dataset.scheme;
  else document.documentElement.dataset.scheme = scheme;
}
