/** Findings for people in a terminal and for programs. */
import { formatFinding, type Finding } from '../authoring/index.ts';

/** One line a finding, then how many there are. */
export function describeFindings(findings: readonly Finding[]): string {
  const count = findings.length === 1 ? '1 finding' : `${findings.length} findings`;
  return [...findings.map(formatFinding), '', `${count}. Nothing is published until they are mended.`].join('\n');
}

/** For editors and CI: an array of findings. */
export const findingsAsJson = (findings: readonly Finding[]): string => JSON.stringify(findings, undefined, 1);
