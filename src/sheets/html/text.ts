/** HTML as text: the one place that escapes it; drawings escape their own. */

const ESCAPES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Text made safe for content and for quoted attributes. */
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (character) => ESCAPES[character]!);

/** A template of HTML: every placeholder is escaped, save what {@link raw} marks as HTML already. */
export function html(strings: TemplateStringsArray, ...values: readonly (string | number | Raw | readonly Raw[] | undefined)[]): Raw {
  const text = strings.reduce((result, part, i) => result + part + (i < values.length ? fill(values[i]) : ''), '');
  return { html: text };
}

/** HTML that is what it should be, made by our own code. */
export interface Raw {
  readonly html: string;
}

export const raw = (text: string): Raw => ({ html: text });
export const NOTHING: Raw = raw('');

function fill(value: string | number | Raw | readonly Raw[] | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'string') return escapeHtml(value);
  if (typeof value === 'number') return String(value);
  return 'html' in value ? value.html : value.map((one) => one.html).join('');
}
