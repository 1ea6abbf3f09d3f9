/** What a reader's system asks of every page: its own few colors, in which nothing drawn may vanish, and no motion. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, pageForTests, type BuiltPage } from '../support/browsing.ts';
import { contrastOf } from '../support/contrast.ts';

browserForFile();

const SHEETS = ['run', 'student', 'background', 'numbers', 'questions', 'safety', 'board', 'readings'];

/** One page of each kind, of the public site. */
const KINDS: readonly BuiltPage[] = (() => {
  const pages = builtPages().filter(({ served, path }) => served.name === 'public' && path.endsWith('index.html'));
  const first = (fits: RegExp): BuiltPage[] => pages.filter(({ path }) => fits.test(path)).slice(0, 1);
  return [
    /^index\.html$/, /^kits\/[^/]+\/[^/]+\/index\.html$/, ...SHEETS.map((sheet) => new RegExp(`^kits/[^/]+/[^/]+/${sheet}/index\\.html$`)),
    /^room\//, /^search\//, /^checks\//, /^safety\//, /^sources\//, /^contribute\/index\.html$/, /^contribute\/text\//,
  ].flatMap(first);
})();

it('finds a page of each kind', () => expect(KINDS.length).toBeGreaterThanOrEqual(SHEETS.length + 8));

/** WCAG 2.2: 1.4.3 Contrast (Minimum) for text, 1.4.11 Non-text Contrast for lines. */
const LEAST = { text: 4.5, line: 3 };

/** The run chart stands upright in a narrow window, the other way in a wide one. */
const LOOKS = [{ colorScheme: 'light', width: 360 }, { colorScheme: 'dark', width: 1280 }] as const;

describe.each(KINDS)('$path', ({ address }) => {
  const shown = pageForTests(address, { forcedColors: 'active', reducedMotion: 'reduce' });

  it.each(LOOKS)('draws lines and labels that can be seen in the colors of the system ($colorScheme, $width px)', async ({ colorScheme, width }) => {
    if ((await shown().locator('main svg:not(.sign):visible').count()) === 0) return;
    await shown().emulateMedia({ colorScheme });
    await shown().setViewportSize({ width, height: 900 });
    const painted = await paintedOn(shown());
    expect(painted.length).toBeGreaterThan(0);
    const faint = painted.map((one) => ({ ...one, contrast: contrastOf(one.paint, one.behind, one.opacity) })).filter(({ isText, contrast }) => contrast < (isText ? LEAST.text : LEAST.line));
    expect([...new Set(faint.map(({ contrast, behind, html }) => `${contrast.toFixed(2)} on ${behind}: ${html}`))]).toEqual([]);
  });

  it('shows in them where the focus is', async () => {
    const focused = await focusedOn(shown());
    expect(focused.length).toBeGreaterThan(0);
    expect(focused.filter(({ width, paint, behind }) => width < 2 || contrastOf(paint, behind) < LEAST.line)).toEqual([]);
  });

  it('moves nothing where less motion is asked for', async () => expect(await motionsOn(shown())).toEqual([]));
});

describe('safety signs', () => {
  const page = pageForTests(KINDS.find(({ path }) => path.endsWith('/safety/index.html'))!.address, { forcedColors: 'active', reducedMotion: 'reduce' });

  it('keep their colors, which mean something (ISO 3864-1)', async () => {
    const colors = (): Promise<string[]> => page().locator('svg.sign :is(path, circle, rect, line, polygon)').evaluateAll((all) => all.map((one) => [getComputedStyle(one).fill, getComputedStyle(one).stroke].join()));
    const forced = await colors();
    await page().emulateMedia({ forcedColors: 'none' });
    const own = await colors();
    await page().emulateMedia({ forcedColors: 'active' });
    expect(own.length).toBeGreaterThan(5);
    expect(forced).toEqual(own);
  });
});

/** One text, line or area of a drawing. */
interface Painted {
  readonly html: string;
  readonly isText: boolean;
  readonly paint: string;
  readonly opacity: number;
  readonly behind: string;
}

/** All that is drawn in the figures of a page, with the color behind the middle of each; signs have colors of their own. */
function paintedOn(page: Page): Promise<Painted[]> {
  return page.evaluate(() => {
    const isOpaque = (color: string): boolean => /^rgb\(|^color\([^/]*\)$/.test(color);
    const groundOf = (element: Element): string => {
      for (let at: Element | null = element; at !== null; at = at.parentElement) {
        const color = getComputedStyle(at).backgroundColor;
        if (isOpaque(color)) return color;
      }
      return getComputedStyle(document.documentElement).backgroundColor;
    };
    /** Painted like the ground, to hide what lies behind: the inside of a tube, an area to click on. */
    const UNSEEN = '.tube-inside, .target';
    const HOLLOW = '.outline';
    return [...document.querySelectorAll('main svg:not(.sign)')].filter((svg) => svg.checkVisibility() && svg.getBoundingClientRect().width > 0).flatMap((svg) => {
      const ground = groundOf(svg);
      const filled: { readonly box: DOMRect; readonly color: string }[] = [];
      return [...svg.querySelectorAll('text, path, line, polyline, polygon, rect, circle, ellipse')].flatMap((element): Painted[] => {
        if (!element.checkVisibility() || element.closest('defs, clipPath, mask, marker') !== null) return [];
        const style = getComputedStyle(element);
        const box = element.getBoundingClientRect();
        const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
        const behind = filled.findLast((one) => one.box.left <= x && x <= one.box.right && one.box.top <= y && y <= one.box.bottom)?.color ?? ground;
        const seen = (paint: string, opacity: string): Painted => ({ html: element.outerHTML.slice(0, 140), isText: element.tagName === 'text', paint, opacity: Number(opacity) * Number(style.opacity), behind });
        if (element.tagName === 'text') return element.textContent!.trim() === '' ? [] : [seen(style.fill, style.fillOpacity)];
        const hasFill = isOpaque(style.fill) && Number(style.fillOpacity) === 1;
        const hasStroke = style.stroke !== 'none' && parseFloat(style.strokeWidth) > 0;
        if (hasFill) filled.push({ box, color: style.fill });
        if (element.matches(UNSEEN)) return [];
        if (hasStroke) return [seen(style.stroke, style.strokeOpacity)];
        return hasFill && !element.matches(HOLLOW) ? [seen(style.fill, style.fillOpacity)] : [];
      });
    });
  });
}

/** How each element looks that the keyboard has reached: the width and color of what is drawn around it, and the color behind. */
async function focusedOn(page: Page): Promise<{ readonly html: string; readonly width: number; readonly paint: string; readonly behind: string }[]> {
  // After a key the browser shows the focus wherever it goes.
  await page.keyboard.press('Tab');
  return page.evaluate(() => {
    const groundOf = (element: Element): string => {
      for (let at = element.parentElement; at !== null; at = at.parentElement) {
        const color = getComputedStyle(at).backgroundColor;
        if (/^rgb\(/.test(color)) return color;
      }
      return getComputedStyle(document.documentElement).backgroundColor;
    };
    const MOST = 60;
    const reachable = [...document.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, summary, [tabindex="0"]')].filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.matches(':disabled'));
    return reachable.slice(0, MOST).map((element) => {
      element.focus();
      // A step in the run chart is outlined by the area that it is clicked on.
      const target = element.querySelector('.target');
      const style = getComputedStyle(target ?? element);
      const [width, paint] = target === null ? [style.outlineStyle === 'none' ? '0' : style.outlineWidth, style.outlineColor] : [style.strokeWidth, style.stroke];
      return { html: element.outerHTML.slice(0, 120), width: parseFloat(width), paint, behind: groundOf(element) };
    });
  });
}

/** Longest that may pass for no motion at all, s. */
const INSTANT = 1e-5;

/** What moves on a page, or would when it is pointed at, focused, or jumped to. */
function motionsOn(page: Page): Promise<string[]> {
  return page.evaluate((instant) => {
    const longest = (text: string): number => Math.max(0, ...text.split(',').map((one) => parseFloat(one) * (one.trim().endsWith('ms') ? 1e-3 : 1)));
    const running = document.getAnimations().filter((one) => Number(one.effect?.getComputedTiming().duration ?? 0) > instant * 1000).map((one) => `runs: ${one.constructor.name}`);
    const styled = [...document.querySelectorAll('*')].flatMap((element) => [undefined, '::before', '::after'].flatMap((part) => {
      const { transitionDuration, animationName, animationDuration, scrollBehavior } = getComputedStyle(element, part);
      const moves = longest(transitionDuration) > instant || (animationName !== 'none' && longest(animationDuration) > instant) || scrollBehavior === 'smooth';
      return moves ? [`${element.outerHTML.slice(0, 100)} ${part ?? ''} ${transitionDuration} ${animationName} ${scrollBehavior}`] : [];
    }));
    return [...running, ...styled];
  }, INSTANT);
}
