/** Kits that say another kit in another language: one original, and at most one kit for each other language. */
import { findingAt, type Finding } from './findings.ts';
import { filesOf } from './kit-files.ts';
import type { LoadedFile } from './load.ts';
import type { KitMeta } from './schemas/index.ts';

/** A kit whose fields could be read. */
type ReadKit = LoadedFile<'kit'> & { readonly kit: string; readonly data: KitMeta };
const isRead = (file: LoadedFile<'kit'>): file is ReadKit => file.kit !== undefined && file.data !== undefined;

/** What is wrong with the kits that name an original; a name that no kit has is found with the other references. */
export function translations(files: readonly LoadedFile[]): Finding[] {
  const site = filesOf(files, 'site')[0]?.data;
  const kits = new Map(filesOf(files, 'kit').filter(isRead).map((file) => [file.kit, file]));
  if (site === undefined) return [];
  const languageOf = ({ data }: ReadKit): string => data.language ?? site.language;
  return [...kits.values()].flatMap((file) => {
    const { translationOf } = file.data;
    const original = translationOf === undefined ? undefined : kits.get(translationOf);
    if (original === undefined) return [];
    const place = file.locate(['translationOf']);
    const first = original.data.translationOf;
    if (first !== undefined || original === file) {
      const what = original === file ? 'this kit is no translation of itself' : `\`${translationOf}\` is itself a translation, of \`${first}\``;
      return [findingAt(file.file, place, { code: 'translation-of-translation', what, instead: original === file || first === file.kit ? 'leave `translationOf` out here' : `write \`translationOf: ${first}\`` })];
    }
    const language = languageOf(file);
    const isOriginals = languageOf(original) === language;
    const other = [...kits.values()].find((one) => one !== file && one.data.translationOf === translationOf && languageOf(one) === language);
    if (!isOriginals && other === undefined) return [];
    const what = isOriginals ? `\`${translationOf}\` is in the same language, \`${language}\`` : `\`${other?.kit}\` translates it into \`${language}\` already`;
    return [findingAt(file.file, place, { code: 'translation-language', what, instead: 'write the language of this kit in `language`, or take one of them away' })];
  });
}
