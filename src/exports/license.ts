/** Licenses by the names that schools write. */

const CREATIVE_COMMONS = /^CC[ -]BY((?:-(?:NC|SA|ND))*)[ -](\d\.\d)$/i;

/**
 * The address of a license's text.
 * @param license - as in site.yaml: "CC-BY-4.0", "CC BY-SA 4.0"
 * @returns the address; undefined where the license is none of Creative Commons
 */
export function licenseAddress(license: string): string | undefined {
  if (/^CC0[ -]1\.0$/i.test(license)) return 'https://creativecommons.org/publicdomain/zero/1.0/';
  const [, terms, version] = CREATIVE_COMMONS.exec(license) ?? [];
  return version === undefined ? undefined : `https://creativecommons.org/licenses/by${(terms ?? '').toLowerCase()}/${version}/`;
}
