/** References: CSL-JSON fields to a short citation and to a full entry. */
import type { Source } from '../authoring/index.ts';
import { CITATION_TEXTS, type Language } from '../texts/index.ts';
import type { SourceView } from './book.ts';
import { html, NOTHING, raw, type Raw } from './html/text.ts';

type Person = NonNullable<Source['author']>[number];

const surname = (person: Person): string => ('literal' in person ? person.literal : person.family);
const fullName = (person: Person): string => ('literal' in person ? person.literal : [initials(person.given), person.family].filter(Boolean).join(' '));
const initials = (given: string | undefined): string =>
  (given ?? '').split(/[\s.]+/).filter(Boolean).map((part) => part.split('-').filter(Boolean).map((name) => `${name[0]}.`).join('-')).join(' ');
/** A title that asks or exclaims ends its sentence by itself. */
const stopAfter = (title: string): string => (/[?!.]$/.test(title) ? '' : '.');
const year = (source: Source, language: Language): string => String(source.issued?.['date-parts'][0]?.[0] ?? CITATION_TEXTS[language].noDate);

/** `Murphy and Koop 2005`; three and more authors as `Crouch et al. 2004`; without authors, the publisher's number or title, with its year if it does not end in it. */
export function shortCitation(source: Source, language: Language): string {
  const people = source.author ?? source.editor;
  if (people === undefined) {
    const name = source.number ?? source.title;
    return source.issued === undefined || name.endsWith(year(source, language)) ? name : `${name} ${year(source, language)}`;
  }
  const [first, second] = people.map(surname);
  const names = people.length === 1 ? first : people.length === 2 ? `${first} ${CITATION_TEXTS[language].and} ${second}` : `${first} et al.`;
  return `${names} ${year(source, language)}`;
}

/** A full entry for a list of references. */
export function fullReference(source: Source, language: Language): Raw {
  const people = source.author ?? source.editor;
  const parts: Raw[] = [
    people === undefined ? NOTHING : html`${listPeople(people.map(fullName), CITATION_TEXTS[language].and)} (${year(source, language)}). `,
    source['container-title'] === undefined ? html`<cite>${source.title}</cite>` : html`${source.title}${stopAfter(source.title)} <cite>${source['container-title']}</cite>`,
    source.volume === undefined ? NOTHING : html` ${source.volume}`,
    source.issue === undefined ? NOTHING : html` (${source.issue})`,
    source.page === undefined ? NOTHING : html`, ${source.page.replace('-', '–')}`,
    source.edition === undefined ? NOTHING : html`, ${CITATION_TEXTS[language].edition(String(source.edition))}`,
    source.number === undefined ? NOTHING : html`, ${source.number}`,
    source.publisher === undefined ? NOTHING : html`. ${source.publisher}`,
    people === undefined && source.issued !== undefined ? html`, ${year(source, language)}` : NOTHING,
    raw('.'),
    addressOf(source),
  ];
  return html`${parts}`;
}

function addressOf({ DOI, URL: url }: Source): Raw {
  const address = DOI === undefined ? url : `https://doi.org/${DOI}`;
  return address === undefined ? NOTHING : html` <a href="${address}" rel="external">${DOI === undefined ? address.replace(/^https?:\/\//, '') : `doi:${DOI}`}</a>`;
}

const listPeople = (names: readonly string[], and: string): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} ${and} ${names.at(-1)}`;

/** A source for the lists of a site. */
export const sourceView = (source: Source, language: Language): SourceView => ({ id: source.id, html: fullReference(source, language).html });
