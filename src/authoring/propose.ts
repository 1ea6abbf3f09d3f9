/** What to write for a typed-in quantity: the computed value that it equals, where the kit's own files say so. */
import { apparatusData, kitData, roomData } from './kit-files.ts';
import type { Finding } from './findings.ts';
import type { LoadedFile } from './load.ts';
import { parseQuantity, type WrittenQuantity } from './quantities.ts';
import type { Apparatus, KitMeta, Room } from './schemas/index.ts';
import { MISSPELLINGS, type Dimension } from './unit-table.ts';
import { isUnknownChoice, type RawAttributes, type Vocabulary } from './vocabulary.ts';

/** What the files of a kit state, as far as they could be read. */
interface Stated {
  readonly kit: KitMeta | undefined;
  readonly room: Room | undefined;
  readonly apparatus: Apparatus | undefined;
}

/** A name for `<Value of="…"/>`, the dimension in which it is written, and where the files state it. */
interface Named {
  readonly of: string;
  readonly dimension: Dimension;
  readonly stated: (files: Stated) => WrittenQuantity | undefined;
}

const named = (of: string, dimension: Dimension, stated: Named['stated']): Named => ({ of, dimension, stated });

/** Quantities that the files state, one a line; the first that fits is proposed. */
const NAMED: readonly Named[] = [
  named('startHumidity', 'fraction', ({ kit }) => kit?.start.humidity),
  named('startTemperature', 'temperature', ({ kit }) => kit?.start.temperature),
  named('plannedDrop', 'pressure', ({ kit }) => kit?.drop),
  named('roomTemperature', 'temperature', ({ room }) => room?.temperature),
  named('roomPressure', 'pressure', ({ room }) => room?.stationPressure),
  named('roomHumidity', 'fraction', ({ room }) => room?.humidity),
  named('vesselVolume', 'volume', ({ apparatus }) => apparatus?.vessel.volume),
  named('vesselDiameter', 'length', ({ apparatus }) => apparatus?.vessel.diameter),
  named('ratedLowestGauge', 'pressure', ({ apparatus }) => apparatus?.vessel.lowest),
  named('gaugeResolution', 'pressure', ({ apparatus }) => apparatus?.gauge.resolution),
  named('thermometerResolution', 'temperatureDifference', ({ apparatus }) => apparatus?.thermometer.resolution),
  named('thermometerTimeConstant', 'time', ({ apparatus }) => apparatus?.thermometer.timeConstant),
];

/** Puts the value that fits, if there is one, into the findings about typed-in quantities. */
export function proposeValues(findings: readonly Finding[], files: readonly LoadedFile[], vocabulary: Vocabulary): Finding[] {
  const proposals = new Map<string, string>();
  for (const file of files) {
    for (const { line, column, text } of file.lesson?.typed ?? []) {
      const value = valueFor(text, statedFor(file, files), vocabulary);
      if (value !== undefined) proposals.set(key(file.file, line, column), `write \`${value}\`, which is that here, or \`<Given>${oneLine(text)}</Given>\` if it is a choice or has a source`);
    }
  }
  return findings.map((finding) => {
    const instead = finding.code === 'typed-quantity' ? proposals.get(key(finding.file, finding.line, finding.column)) : undefined;
    return instead === undefined ? finding : { ...finding, instead };
  });
}

function statedFor({ kit: name }: LoadedFile, files: readonly LoadedFile[]): Stated {
  const kit = kitData(files, name);
  return { kit, room: roomData(files, kit), apparatus: apparatusData(files, kit) };
}

function valueFor(text: string, files: Stated, vocabulary: Vocabulary): string | undefined {
  const written = inFieldUnits(text);
  const known = (attributes: RawAttributes): boolean => {
    const spec = vocabulary.components.get('Value');
    return typeof spec?.attributes === 'function' && !isUnknownChoice(spec.attributes(attributes));
  };
  for (const { of, dimension, stated } of NAMED) {
    const there = stated(files);
    const here = parseQuantity(written, dimension);
    if (there === undefined || 'problem' in here || !known({ of })) continue;
    if (same(here.quantity, there.value)) return `<Value of="${of}"/>`;
  }
  // A reading below the room is that of a drop.
  const reading = parseQuantity(written, 'pressure');
  if (files.kit === undefined || 'problem' in reading || reading.quantity.value >= 0 || !known({ of: 'gaugeAtDrop' })) return undefined;
  return `<Value of="gaugeAtDrop" drop="${written.replace(/^[-−]/u, '')}"/>`;
}

/** Equal as far as the digits go that are written. */
function same({ value, uncertainty }: WrittenQuantity, other: number): boolean {
  const halfLastDigit = uncertainty * Math.sqrt(3);
  return Math.abs(value - other) <= halfLastDigit * (1 + 1e-9);
}

/** With the unit as fields spell it, where prose spells it out. */
function inFieldUnits(text: string): string {
  const plain = oneLine(text);
  const parts = /^(?<number>[+\-−]?[\d.,]+)[ -]?(?<unit>.+)$/u.exec(plain)?.groups;
  const unit = parts?.['unit'] ?? '';
  return parts === undefined ? plain : `${parts['number']} ${IN_WORDS[unit] ?? MISSPELLINGS[unit] ?? unit}`;
}

const IN_WORDS: Readonly<Record<string, string>> = {
  'degrees Celsius': '°C',
  'degrees Fahrenheit': '°F',
  'per cent': '%',
  kilopascals: 'kPa',
  hectopascals: 'hPa',
  'inches of mercury': 'inHg',
  centimeters: 'cm',
  milliliters: 'mL',
};

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();
const key = (file: string, line: number, column: number): string => `${file}:${line}:${column}`;
