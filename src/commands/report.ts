/** Findings for people in a terminal and for programs. */
import { formatFinding, type Finding } from '../authoring/index.ts';

/** `1 kit`, `2 kits`. */
export const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? '' : 's'}`;

/** One line a finding, then how many there are. */
export function describeFindings(findings: readonly Finding[]): string {
  return [...findings.map(formatFinding), '', `${counted(findings.length, 'finding')}. Nothing is published until they are mended.`].join('\n');
}

/** For editors and CI: an array of findings. */
export const findingsAsJson = (findings: readonly Finding[]): string => JSON.stringify(findings, undefined, 1);
