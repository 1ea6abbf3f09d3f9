/** Which places of a page are in sight or near it. The browser tells of changes: to ask it where they are, the moment something has been typed, would lay the whole page out. */

/** Says of each of the places whether it stands within one more screen above and below. */
export function nearness(places: Iterable<Element>): (place: Element) => boolean {
  const told = new Map<Element, boolean>();
  const observer = new IntersectionObserver((entries) => {
    for (const { target, isIntersecting } of entries) told.set(target, isIntersecting);
  }, { rootMargin: '100% 0px' });
  for (const place of places) observer.observe(place);
  return (place) => told.get(place) ?? isNearNow(place);
}

function isNearNow(place: Element): boolean {
  const { top, bottom } = place.getBoundingClientRect();
  return bottom > -innerHeight && top < 2 * innerHeight;
}
