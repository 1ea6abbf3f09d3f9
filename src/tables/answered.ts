/** What physics has no answer for is told as nothing, not as a failure of the page. */

/** What is computed; null outside the range in which the physics has an answer. */
export function answered<T extends number | boolean>(compute: () => T): T | null {
  try {
    const value = compute();
    return typeof value === 'boolean' || Number.isFinite(value) ? value : null;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
