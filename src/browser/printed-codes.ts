/** The codes on paper that lead back to a page: to the page in the room it was printed for. */
import { printedCode } from '../figures/printed-code.ts';
import type { Language } from '../texts/index.ts';
import { elementOf } from './morph.ts';

export interface PrintedCodes {
  /** Whether they lead to this room already, as the text of an address after its path: `#elevation=1600m`, or nothing. */
  readonly areOf: (room: string) => boolean;
  /** @throws RangeError where the address is longer than a code can hold */
  readonly draw: (room: string) => void;
}

/** Those of a page; none where the site has no address. */
export function printedCodes(root: ParentNode, language: Language): PrintedCodes {
  const codes = [...root.querySelectorAll<HTMLElement>('.printed-code')].map((place) => {
    const words = place.querySelector<HTMLElement>('.printed-address')!;
    return { place, address: place.dataset['address']!, words, said: words.textContent ?? '' };
  });
  let last = '';
  return {
    areOf: (room) => codes.length === 0 || room === last,
    draw: (room) => {
      for (const { place, address, words, said } of codes) {
        place.querySelector('svg')!.replaceWith(elementOf(printedCode(`${address}${room}`, language)));
        words.textContent = `${said}${room}`;
      }
      last = room;
    },
  };
}
