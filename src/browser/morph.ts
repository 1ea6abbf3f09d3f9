/** Turns a piece of a page into another drawing of itself, leaving in place what is the same: focus, scroll and open parts stay. */

/** Attributes that are the page's own: a booklet names its ids and links in its own way. */
export const KEPT = new Set(['id', 'href', 'aria-labelledby', 'aria-describedby', 'open']);

/** Makes `old` look like `fresh`, node by node: for pieces that may hold the focus or stand open. Returns `old`. */
export function morph(old: Element, fresh: Element): Element {
  if (old.isEqualNode(fresh)) return old;
  for (const { name, value } of [...fresh.attributes]) if (!(KEPT.has(name) && old.hasAttribute(name)) && old.getAttribute(name) !== value) old.setAttribute(name, value);
  for (const { name } of [...old.attributes]) if (!KEPT.has(name) && !fresh.hasAttribute(name)) old.removeAttribute(name);
  const olds = [...old.childNodes];
  const news = [...fresh.childNodes];
  news.forEach((child, at) => {
    const before = olds[at];
    if (before === undefined) old.append(child);
    else if (before instanceof Element && child instanceof Element && before.nodeName === child.nodeName) morph(before, child);
    else if (before.nodeType === Node.TEXT_NODE && child.nodeType === Node.TEXT_NODE) {
      if (before.nodeValue !== child.nodeValue) before.nodeValue = child.nodeValue;
    } else before.replaceWith(child);
  });
  for (const left of olds.slice(news.length)) left.remove();
  return old;
}

const NAMED = '[id], [href], [aria-labelledby], [aria-describedby]';

/** Puts `fresh` in the place of `old`, under its names: several times as fast, for pieces that hold nothing of the reader's. Returns `fresh`. */
export function swap(old: Element, fresh: Element): Element {
  const news = [fresh, ...fresh.querySelectorAll(NAMED)];
  [old, ...old.querySelectorAll(NAMED)].forEach((before, at) => {
    for (const name of KEPT) {
      const value = before.getAttribute(name);
      if (value !== null) news[at]?.setAttribute(name, value);
    }
  });
  old.replaceWith(fresh);
  return fresh;
}

/** The one element that a text of HTML makes. */
export function elementOf(html: string): Element {
  const template = document.createElement('template');
  template.innerHTML = html;
  return template.content.firstElementChild!;
}
