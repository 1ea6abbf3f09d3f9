/** What a reader has set, and the same as text after the # of an address: `elevation=1600m&temperature=18C&humidity=97`. */
import type { Style } from '../tables/display.ts';
import { ROOM_FIELD_TEXTS, ROOM_TEXTS } from '../texts/index.ts';
import { FIELD_NAMES, FIELDS, plainText, readTyped, unitOf, type Field, type FieldName } from './room-fields.ts';

export type Shape = 'cylinder' | 'sphere';

/** Only what differs from the page's own conditions. SI. */
export interface RoomSettings {
  readonly values: Readonly<Partial<Record<FieldName, number>>>;
  readonly shape?: Shape;
  /** Fahrenheit, inches of mercury and feet stand first. */
  readonly customary: boolean;
}

export const NOTHING_SET: RoomSettings = { values: {}, customary: false };

/** Whether nothing differs from the kit's own room, units aside. */
export const isOwnRoom = ({ values, shape }: RoomSettings): boolean => shape === undefined && Object.keys(values).length === 0;

/** Whether two settings say the same room and apparatus, units aside. */
export const isSameRoom = (one: RoomSettings, other: RoomSettings): boolean =>
  one.shape === other.shape && FIELD_NAMES.every((name) => one.values[name] === other.values[name]);

/** The settings as the text of an address, without the #; empty where nothing is set. */
export function writeSettings({ values, shape, customary }: RoomSettings): string {
  const parts = FIELD_NAMES.flatMap((name) => {
    const value = values[name];
    const unit = unitOf(name, customary);
    return value === undefined ? [] : [`${name}=${plainText(value, unit)}${unit.written}`];
  });
  return [...parts, ...(shape === undefined ? [] : [`shape=${shape}`]), ...(customary ? ['units=customary'] : [])].join('&');
}

/** What the text after # says: an anchor of the page, settings, and what in it is not understood. */
export interface AddressText {
  readonly anchor: string;
  /** Undefined where the address names none. */
  readonly settings?: RoomSettings;
  readonly problems: readonly string[];
}

/** Reads the text after #: `step-3`, `elevation=1600m&humidity=45`, `step-3&elevation=1600m`. */
export function readAddress(hash: string, style: Style): AddressText {
  const parts = decoded(hash.replace(/^#/, '')).split('&').filter((part) => part !== '');
  const anchor = parts.find((part) => !part.includes('=')) ?? '';
  const given = parts.filter((part) => part.includes('='));
  const values: Partial<Record<FieldName, number>> = {};
  const problems: string[] = [];
  let shape: Shape | undefined;
  let customary = false;
  for (const part of given) {
    const name = part.slice(0, part.indexOf('='));
    const text = part.slice(part.indexOf('=') + 1);
    if (name === 'shape' && (text === 'cylinder' || text === 'sphere')) shape = text;
    else if (name === 'units' && (text === 'customary' || text === 'metric')) customary = text === 'customary';
    else if (isField(name)) {
      const read = readWritten(name, text, style);
      if ('value' in read) values[name] = read.value;
      else problems.push(read.problem);
    } else problems.push(ROOM_TEXTS[style.language].meansNothing(`${name}=${text}`));
  }
  // Elevation and station pressure say the same thing: the measured one counts.
  if (values.pressure !== undefined) delete values.elevation;
  return given.length === 0 ? { anchor, problems } : { anchor, settings: { values, customary, ...(shape === undefined ? {} : { shape }) }, problems };
}

const isField = (name: string): name is FieldName => Object.hasOwn(FIELDS, name);

function readWritten(name: FieldName, text: string, style: Style): ReturnType<typeof readTyped> {
  const [, number = '', written = ''] = /^([-+−]?[\d.,]+)\s*(.*)$/.exec(text) ?? [];
  const units: Field['units'] = FIELDS[name].units;
  const unit = written === '' || written === '%' ? units[0] : units.find((one) => one?.written === written || one?.symbol === written);
  return unit === undefined ? { problem: ROOM_TEXTS[style.language].noUnit(ROOM_FIELD_TEXTS[style.language][name], text, `${plainText(FIELDS[name].high, units[0])}${units[0].written}`) } : readTyped(name, number === '' ? text : number, unit, style);
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/** The text after # for an anchor and settings. */
export const writeAddress = (anchor: string, settings: RoomSettings): string => {
  const parts = [anchor, writeSettings(settings)].filter((part) => part !== '');
  return parts.length === 0 ? '' : `#${parts.join('&')}`;
};
