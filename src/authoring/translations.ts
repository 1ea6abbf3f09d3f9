/** Kits that say another kit in another language: one original, and at most one kit for each other language. */
import { findingAt, type Finding } from './findings.ts';
import type { LoadedFile } from './load.ts';
import type { KitMeta, Site } from './schemas/index.ts';

/** What is wrong with the kits that name an original; a name that no kit has is found with the other references. */
export function translations(files: readonly LoadedFile[]): Finding[] {
  const site = files.find(({ kind }) => kind === 'site')?.data as Site | undefined;
  const kits = new Map(files.flatMap((file) => (file.kind === 'kit' && file.kit !== undefined && file.data !== undefined ? [[file.kit, file] as const] : [])));
  if (site === undefined) return [];
  const metaOf = (file: LoadedFile): KitMeta => file.data as KitMeta;
  const languageOf = (file: LoadedFile): string => metaOf(file).language ?? site.language;
  return [...kits.values()].flatMap((file) => {
    const { translationOf } = metaOf(file);
    const original = translationOf === undefined ? undefined : kits.get(translationOf);
    if (original === undefined) return [];
    const place = file.locate(['translationOf']);
    const first = metaOf(original).translationOf;
    if (first !== undefined || original === file) {
      const what = original === file ? 'this kit is no translation of itself' : `\`${translationOf}\` is itself a translation, of \`${first}\``;
      return [findingAt(file.file, place, { code: 'translation-of-translation', what, instead: original === file || first === file.kit ? 'leave `translationOf` out here' : `write \`translationOf: ${first}\`` })];
    }
    const language = languageOf(file);
    const isOriginals = languageOf(original) === language;
    const other = [...kits.values()].find((one) => one !== file && metaOf(one).translationOf === translationOf && languageOf(one) === language);
    if (!isOriginals && other === undefined) return [];
    const what = isOriginals ? `\`${translationOf}\` is in the same language, \`${language}\`` : `\`${other!.kit}\` translates it into \`${language}\` already`;
    return [findingAt(file.file, place, { code: 'translation-language', what, instead: 'write the language of this kit in `language`, or take one of them away' })];
  });
}
