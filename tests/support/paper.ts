/** Papers: ISO 216 and ANSI/ASME Y14.1, width and height, mm. */
export const PAPERS = { A4: [210, 297], Letter: [215.9, 279.4] } as const;
export type PaperSize = keyof typeof PAPERS;
