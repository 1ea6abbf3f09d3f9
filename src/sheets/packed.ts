/** Long texts kept as UTF-8 until they are asked for: a book of a thousand sheets then takes half the memory. */

/** Letters from which on it is worth it. */
const LONG = 2000;

const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** The same plain data, each long text in it behind a getter; a text that stands in several places is kept once. */
export function packed<T extends object>(data: T, kept = new Map<string, Uint8Array>()): T {
  const copy = (Array.isArray(data) ? [] : {}) as T;
  for (const [key, value] of Object.entries(data)) {
    if (typeof value !== 'string' || value.length < LONG) {
      Object.assign(copy, { [key]: typeof value === 'object' && value !== null ? packed(value as object, kept) : value });
      continue;
    }
    const bytes = kept.get(value) ?? encoder.encode(value);
    kept.set(value, bytes);
    Object.defineProperty(copy, key, { enumerable: true, get: () => decoder.decode(bytes) });
  }
  return copy;
}
