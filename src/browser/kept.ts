/** What a reader has written, on the reader's own device and nowhere else. Opened from a disk or in private windows there may be no store: then nothing is kept. */

/** The key of the reader's room. */
export const ROOM = 'lapsebook.room';
/** The key of a kit's readings. */
export const readingsOf = (kit: string): string => `lapsebook.readings.${kit}`;

/** The text last kept under a key; empty where there is none. */
export function kept(key: string): string {
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    return '';
  }
}

/** Keeps a text; an empty one is forgotten. */
export function keep(key: string, text: string): void {
  try {
    if (text.trim() === '') localStorage.removeItem(key);
    else localStorage.setItem(key, text);
  } catch {
    // The page works without a memory.
  }
}
