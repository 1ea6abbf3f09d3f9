/** Where the keyboard leads on a page. */
import type { Page } from 'playwright-core';

declare global {
  interface Window {
    focused?: Focused[];
  }
}

/** Where the focus came, and whether that can be seen. */
export interface Focused {
  readonly control: string;
  readonly marked: boolean;
}

/** Keys sent before the page is asked where the focus has been. */
const AT_ONCE = 50;

/** Names all controls that can be seen, and writes down from now on which of all elements has the focus. */
export const nameControls = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const focused: Focused[] = (window.focused = []);
    document.addEventListener('focusin', ({ target }) => {
      if (!(target instanceof Element)) return;
      const { outlineStyle, boxShadow } = getComputedStyle(target);
      const marked = outlineStyle !== 'none' || boxShadow !== 'none' || target.querySelector(':scope > *') !== null;
      focused.push({ control: target.getAttribute('data-tried') ?? target.outerHTML.slice(0, 100), marked });
    });
    // Tab stops once at a group of radio buttons; arrow keys lead on in it.
    const isLaterOfGroup = (element: Element): boolean => element instanceof HTMLInputElement && element.type === 'radio' && !element.checked && document.querySelector(`input[type=radio][name="${element.name}"]`) !== element;
    const shown = [...document.querySelectorAll('a[href], button, input, select, textarea, summary')].filter((element) => element.checkVisibility({ visibilityProperty: true }) && !element.matches(':disabled') && !isLaterOfGroup(element));
    return shown.map((element, at) => {
      const name = `${at} ${element.outerHTML.slice(0, 100)}`;
      element.setAttribute('data-tried', name);
      return name;
    });
  });

/** Presses Tab until the focus has gone round, or no longer moves. */
export async function walk(page: Page): Promise<readonly Focused[]> {
  let focused: readonly Focused[] = [];
  for (let before = -1; before < focused.length && !focused.slice(1).some(({ control }) => control === focused[0]?.control); ) {
    before = focused.length;
    await Promise.all(Array.from({ length: AT_ONCE }, () => page.keyboard.press('Tab')));
    focused = await page.evaluate(() => window.focused ?? []);
  }
  return focused;
}
