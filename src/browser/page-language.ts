/** The language of the page that a script runs on. */
import { LANGUAGES, type Language } from '../texts/index.ts';

/** As the page says it; English where it says another than there are texts for. */
export const languageOfPage = (): Language => LANGUAGES.find((language) => language === document.documentElement.lang) ?? 'en';
