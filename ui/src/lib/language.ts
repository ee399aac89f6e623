// Which language the words come in: the one that was chosen, else the system's if it is here, else English. It is fixed
// while the page is open; another choice loads the page anew.

/** What there is, each by its name in itself and the tag that numbers and dates go by. */
export const LANGUAGES = {
  en: { name: 'English', tag: 'en-GB' },
  es: { name: 'Español', tag: 'es-ES' },
} as const;
export type Language = keyof typeof LANGUAGES;

const KEY = 'newel.language';

const known = (tag: string): Language | null => {
  const language = tag.toLowerCase().split('-')[0] ?? '';
  return language in LANGUAGES ? (language as Language) : null;
};

/** The choice, or the first of the system's languages that is here. */
export function pick(kept: string | null, system: readonly string[]): Language {
  for (const tag of [...(kept ? [kept] : []), ...system]) {
    const found = known(tag);
    if (found) return found;
  }
  return 'en';
}

export function keptLanguage(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

/** Keeps a choice and shows the page in it. */
export function speak(language: Language): void {
  try {
    localStorage.setItem(KEY, language);
  } catch {
    // A barred store: the system's language stays.
  }
  location.reload();
}

export const language: Language = pick(
  keptLanguage(),
  typeof navigator === 'undefined' ? [] : (navigator.languages ?? []),
);
