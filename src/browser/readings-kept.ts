/** A reader's readings on the reader's own device, and nowhere else. Where there is no store nothing is kept. */

const keyOf = (kit: string): string => `lapsebook.readings.${kit}`;

/** The text last kept for a kit; empty where there is none. */
export function keptReadings(kit: string): string {
  try {
    return localStorage.getItem(keyOf(kit)) ?? '';
  } catch {
    return '';
  }
}

/** Keeps the text; empty text forgets it. */
export function keepReadings(kit: string, text: string): void {
  try {
    if (text.trim() === '') localStorage.removeItem(keyOf(kit));
    else localStorage.setItem(keyOf(kit), text);
  } catch {
    // The page works without a memory.
  }
}
