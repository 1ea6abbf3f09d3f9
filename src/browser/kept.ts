/** The reader's room on the reader's own device, and nowhere else. Opened from a disk or in private windows there may be no store: then nothing is kept. */

const KEY = 'lapsebook.room';

/** The settings last kept, as the text of an address; empty where there are none. */
export function kept(): string {
  try {
    return localStorage.getItem(KEY) ?? '';
  } catch {
    return '';
  }
}

/** Keeps the settings; empty text forgets them. */
export function keep(text: string): void {
  try {
    if (text === '') localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, text);
  } catch {
    // The page works without a memory.
  }
}
