/** Addresses that a lesson may point at. */
import type { Problem } from '../findings.ts';

const SCHEME = /^([a-z][a-z0-9+.-]*):/i;

/** What is wrong with the address of a link: relative, `https:` and `mailto:` are right. */
export function linkProblem(address: string): Problem | undefined {
  const refuse = (what: string, instead: string): Problem => ({ code: 'unsafe-link', what, instead });
  const plain = decoded(address);
  // Browsers drop control characters and read a backslash as a slash.
  if (/[\u0000-\u0020\u007f\\{}<>\ufffd]/.test(address))
    return refuse(
      `the address \`${shown(address)}\` holds a sign that addresses cannot hold`,
      'write it without spaces, braces and backslashes',
    );
  const scheme = SCHEME.exec(plain)?.[1]?.toLowerCase();
  if (scheme === 'http')
    return refuse(`\`${shown(address)}\` is not encrypted`, `write \`${shown(address.replace(/^http:/i, 'https:'))}\``);
  if (scheme !== undefined && scheme !== 'https' && scheme !== 'mailto')
    return refuse(`addresses with \`${scheme}:\` are refused`, 'write a relative address, `https:` or `mailto:`');
  if (scheme !== undefined && !SCHEME.test(address))
    return refuse(`the address \`${shown(address)}\` hides its scheme`, 'write it plainly');
  if (/^\/(?!\/)/.test(plain))
    return refuse(`\`${shown(address)}\` begins at the root of the server`, 'write an address relative to this page: the site may stand in a folder');
  if (/^\/\//.test(plain)) return refuse('the address leaves its scheme open', `write \`https:${shown(address)}\``);
  return undefined;
}

/** Whether an address that nothing is wrong with leads to a page or file of the site. */
export const isRelative = (address: string): boolean => linkProblem(address) === undefined && !SCHEME.test(address);

/** What is wrong with the address of a picture: a file beside the sheet is right. */
export function imageProblem(address: string, alt: string): Problem | undefined {
  const refuse = (what: string, instead: string): Problem => ({ code: 'image-address', what, instead });
  if (!IMAGE_FILE.test(address))
    return refuse(
      `the picture \`${shown(address)}\` is not a file of the kit`,
      'put a .png, .jpg or .webp file beside the sheet and write its name, in lowercase letters, digits and hyphens',
    );
  if (alt.trim() === '')
    return refuse('the picture has no description', 'describe it between the brackets, for those who cannot see it');
  return undefined;
}

/** Names of picture files; no SVG, which can hold scripts. */
export const IMAGE_FILE = /^[a-z0-9]+(?:-[a-z0-9]+)*\.(?:png|jpg|webp)$/;

/** With percent signs resolved as often as they are nested, and what browsers ignore left out. */
function decoded(address: string): string {
  let plain = address;
  for (let i = 0; i < 5 && /%[0-9a-f]{2}/i.test(plain); i++)
    plain = plain.replace(/%([0-9a-f]{2})/gi, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)));
  return plain.replace(/[\u0000-\u0020\u007f-\u009f\u00ad\u200b-\u200f\u2028-\u202e\ufeff]/g, '');
}

const shown = (address: string): string => (address.length > 60 ? `${address.slice(0, 57)}…` : address);
