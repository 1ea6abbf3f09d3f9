/** Text of the code's own tables as HTML: what stands in backquotes is code. */
import { escapeHtml } from '../../sheets/html/text.ts';

export const marked = (text: string): string => escapeHtml(text).replace(/`([^`]+)`/g, '<code>$1</code>');
