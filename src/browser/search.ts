/** Finds as you type. The page lists everything without this script; it adds the field, from which arrow keys lead through what was found. */
import MiniSearch, { type AsPlainObject } from 'minisearch';
import { INDEX_NAME, INDEX_OPTIONS, SEARCH_OPTIONS, type SearchDocument } from '../exports/search-options.ts';
import { languageOfPage } from './page-language.ts';
import { FOUND_TEXTS } from '../texts/index.ts';
import { moveAmong } from './search-keys.ts';

type Found = Pick<SearchDocument, 'kind' | 'title' | 'lang' | 'place' | 'path'>;

const SAID = FOUND_TEXTS[languageOfPage()];
/** More than this nobody reads through. */
const MOST_SHOWN = 30;

const place = document.getElementById('find');
const everything = document.getElementById('everything');
const stored = (window as unknown as Record<string, AsPlainObject | undefined>)[INDEX_NAME];
if (place !== null && everything !== null && stored !== undefined) offerSearch(place, everything, MiniSearch.loadJS<SearchDocument>(stored, INDEX_OPTIONS));

function offerSearch(find: HTMLElement, all: HTMLElement, index: MiniSearch<SearchDocument>): void {
  const root = find.dataset.root ?? '';
  const field = document.createElement('input');
  field.type = 'search';
  field.placeholder = SAID.example;
  field.setAttribute('aria-labelledby', 'search');
  field.setAttribute('aria-describedby', 'found');
  field.autocomplete = 'off';
  field.spellcheck = false;
  const count = document.createElement('p');
  count.id = 'found';
  count.className = 'count';
  count.setAttribute('role', 'status');
  const list = document.createElement('ol');
  find.hidden = false;
  find.append(field, count, list);

  const show = (): void => {
    const words = field.value.trim();
    const found = words === '' ? [] : search(index, words);
    all.hidden = words !== '';
    count.textContent = words === '' ? '' : countText(found.length);
    list.replaceChildren(...found.slice(0, MOST_SHOWN).map((one) => itemOf(one, root)));
  };
  field.addEventListener('input', show);
  find.addEventListener('keydown', (event) => {
    const stops: HTMLElement[] = [field, ...list.querySelectorAll('a')];
    const at = stops.indexOf(event.target as HTMLElement);
    if (event.key === 'Enter' && at === 0 && stops.length > 1) {
      event.preventDefault();
      stops[1]?.click();
      return;
    }
    if (event.key === 'Escape' && field.value !== '') {
      event.preventDefault();
      field.value = '';
      show();
      field.focus();
      return;
    }
    const next = moveAmong(event.key, at, stops.length);
    if (next === undefined) return;
    event.preventDefault();
    stops[next]?.focus();
  });
  // The browser may have kept what was typed before.
  if (field.value !== '') show();
}

/** All words; where nothing has them all, any of them. */
function search(index: MiniSearch<SearchDocument>, words: string): Found[] {
  const all = index.search(words, SEARCH_OPTIONS);
  return (all.length > 0 ? all : index.search(words, { ...SEARCH_OPTIONS, combineWith: 'OR' })) as unknown as Found[];
}

function countText(count: number): string {
  if (count === 0) return SAID.nothing;
  return count > MOST_SHOWN ? SAID.first(count, MOST_SHOWN) : SAID.count(count);
}

function itemOf({ kind, title, lang, place: where, path }: Found, root: string): HTMLElement {
  const item = document.createElement('li');
  const link = document.createElement('a');
  // What stands after # of the own address is the reader's room; the address of a result has its own anchor.
  link.href = `${root}${path}`;
  const name = document.createElement('span');
  name.textContent = title;
  if (lang !== undefined) name.lang = lang;
  link.append(name);
  const about = document.createElement('span');
  about.className = 'aside';
  about.textContent = ` ${SAID.kinds[kind]}`;
  if (where !== '') {
    const at = document.createElement('span');
    at.textContent = where;
    if (lang !== undefined) at.lang = lang;
    about.append(' · ', at);
  }
  link.append(about);
  item.append(link);
  return item;
}
