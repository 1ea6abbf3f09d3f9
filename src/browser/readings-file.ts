/** Readings from a file of the reader's own, and into one. */

/** The text of a file. Rejects where it cannot be read. */
export async function textOf(file: File): Promise<string> {
  const bytes = await file.arrayBuffer();
  const text = new TextDecoder().decode(bytes);
  // Older spreadsheets write the degree sign as Windows does.
  return text.includes('\ufffd') ? new TextDecoder('windows-1252').decode(bytes) : text;
}

/** Hands the reader a file. */
export function saveAs(name: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/csv;charset=utf-8' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
