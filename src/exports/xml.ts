/** XML as text. */

const ESCAPES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&apos;' };

/** Text made safe for content and for quoted attributes. */
export const escapeXml = (text: string): string => text.replace(/[&<>"']/g, (character) => ESCAPES[character] ?? character);

/** An element with text. */
export const element = (name: string, text: string): string => `<${name}>${escapeXml(text)}</${name}>`;

export const XML_HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n';
