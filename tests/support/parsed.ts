/** Pages as the browser's own parser reads their files: nothing of them is laid out or run. */
import { readFileSync } from 'node:fs';
import type { BrowserContextOptions, Page } from 'playwright-core';

type Open = (options: BrowserContextOptions, look: (page: Page) => Promise<void>) => Promise<void>;

/** What all elements that a selector finds hold: their text, or one of their attributes. Each file is read once for each. */
export function readerForFile(open: Open): (file: string, selector: string, attribute?: string) => Promise<readonly string[]> {
  const known = new Map<string, Promise<readonly string[]>>();
  const read = async (file: string, selector: string, attribute?: string): Promise<readonly string[]> => {
    let found: readonly string[] = [];
    await open({}, async (page) => {
      found = await page.evaluate(([html, wanted, name]) => {
        const elements = [...new DOMParser().parseFromString(html, 'text/html').querySelectorAll(wanted)];
        return elements.map((element) => (name === undefined ? element.textContent : element.getAttribute(name)) ?? '');
      }, [readFileSync(file, 'utf8'), selector, attribute] as const);
    });
    return found;
  };
  return (file, selector, attribute) => {
    const key = `${file} ${selector} ${attribute ?? ''}`;
    const found = known.get(key) ?? read(file, selector, attribute);
    known.set(key, found);
    return found;
  };
}
