/**
 * The safety signs lessons may use, by their number in ISO 7010.
 * Source: ISO 7010:2019, Registered safety signs; shapes and colors ISO 3864-1:2011.
 * What they mean stands in the texts.
 */
import type { SignNumber } from '../texts/index.ts';

export type SignKind = 'warning' | 'prohibition' | 'mandatory' | 'safe-condition' | 'fire-equipment';

export interface Sign {
  readonly kind: SignKind;
  /** What is drawn on the sign's ground, in a square of 100 by 100; `currentColor` is the symbol's color. */
  readonly symbol: string;
}

const stroke = (d: string, width = 6): string => `<path d="${d}" fill="none" stroke="currentColor" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`;
const fill = (d: string): string => `<path d="${d}" fill="currentColor"/>`;
const disc = (x: number, y: number, r: number): string => `<circle cx="${x}" cy="${y}" r="${r}" fill="currentColor"/>`;

const FLAME = 'M51 34c1 9 13 13 13 25a14 14 0 0 1-28 0c0-7 4-10 6-15 2 4 3 6 5 7 4-5 5-11 4-17z';
const HEAD = 'M32 62c-4-6-6-12-6-19a24 24 0 0 1 48 0c0 7-2 13-6 19l-6 12H38z';
const EXCLAMATION = fill('M44 34h12l-3 28h-6z') + disc(50, 72, 5.5);

export const SIGNS: Readonly<Record<SignNumber, Sign>> = {
  W001: { kind: 'warning', symbol: EXCLAMATION },
  W002: { kind: 'warning', symbol: disc(48, 66, 9) + stroke('M50 54V38M61 57l11-11M36 57 27 46M64 69l13 3M35 70l-13 2', 5) },
  W010: { kind: 'warning', symbol: stroke('M50 36v44M31 47l38 22M69 47 31 69M44 40l6 6 6-6M44 76l6-6 6 6', 4.5) },
  W011: { kind: 'warning', symbol: disc(54, 38, 6) + stroke('M51 46 42 60l16 4 6 12M49 50l14 6M48 50 37 52M42 60 30 70M24 80h52', 5.5) },
  W012: { kind: 'warning', symbol: fill('M54 32 36 60h12l-6 22 22-30H51l8-20z') },
  W017: { kind: 'warning', symbol: stroke('M26 78h48M36 68c-6-8 6-12 0-22M50 68c-6-8 6-12 0-26M64 68c-6-8 6-12 0-22', 5.5) },
  W021: { kind: 'warning', symbol: fill(FLAME) + stroke('M30 80h40', 6) },
  W023: { kind: 'warning', symbol: stroke('M28 46l18-8M54 38l18 8M24 76h20M56 76h20', 6) + disc(44, 54, 3.5) + disc(40, 64, 3.5) + disc(57, 54, 3.5) + disc(61, 64, 3.5) },
  W027: { kind: 'warning', symbol: disc(50, 62, 8) + stroke('M50 46v-8M62 50l6-7M38 50l-6-7M66 62h9M34 62h-9M61 73l6 6M39 73l-6 6', 5) },
  W029: { kind: 'warning', symbol: fill('M40 50c0-6 4-9 7-10v-6h6v6c3 1 7 4 7 10v30H40z') + stroke('M68 52l8-6M68 62h10M32 52l-8-6M32 62H22', 5) },
  P001: { kind: 'prohibition', symbol: '' },
  P002: { kind: 'prohibition', symbol: stroke('M24 58h40M70 58h6', 8) + stroke('M72 48c0-8-10-4-10-14', 4) },
  P003: { kind: 'prohibition', symbol: stroke('M50 80V58', 7) + fill('M51 22c1 8 12 12 12 22a12 12 0 0 1-25 0c0-6 3-9 5-13 2 3 3 5 4 6 4-5 4-9 4-15z') },
  P010: { kind: 'prohibition', symbol: fill('M36 50V30a4 4 0 0 1 8 0v14-20a4 4 0 0 1 8 0v20-17a4 4 0 0 1 8 0v20l6-6c3-3 8 1 6 5L60 74H42c-4-6-6-14-6-24z') },
  M001: { kind: 'mandatory', symbol: fill('M43 22h14l-4 38h-6z') + disc(50, 74, 6.5) },
  M002: { kind: 'mandatory', symbol: disc(36, 28, 8) + stroke('M36 40v22h14v18M36 62v18M36 46l18 6', 7) + fill('M54 42l10-4v18l-10 4zM66 38l10 4v18l-10-4z') },
  M003: { kind: 'mandatory', symbol: fill(HEAD) + stroke('M24 48a26 26 0 0 1 52 0', 5) + fill('M18 44h10v18H18zM72 44h10v18H72z') },
  M004: { kind: 'mandatory', symbol: `<path d="${HEAD}" fill="currentColor"/><path class="sign-ground" d="M28 42h44v6H54v5a9 6 0 0 1-0 0H54l-2-5h-4l-2 5h-18z" fill="#005387"/><circle cx="39" cy="48" r="9" fill="#005387"/><circle cx="61" cy="48" r="9" fill="#005387"/><circle cx="39" cy="48" r="5" fill="currentColor"/><circle cx="61" cy="48" r="5" fill="currentColor"/>` },
  M009: { kind: 'mandatory', symbol: fill('M34 48V30a4 4 0 0 1 8 0v12-18a4 4 0 0 1 8 0v18-16a4 4 0 0 1 8 0v20l7-7c4-3 8 1 6 5L60 66v8H40v-8c-4-5-6-10-6-18zM40 77h20v6H40z') },
  M010: { kind: 'mandatory', symbol: fill('M40 20h20l18 12-6 16-8-3v36H36V45l-8 3-6-16z') },
  M011: { kind: 'mandatory', symbol: stroke('M22 30h20v8M30 30v-8', 6) + disc(42, 48, 3.5) + disc(42, 58, 3.5) + fill('M26 66h30l14-8c5-2 8 4 4 7L58 78H26z') },
  M013: { kind: 'mandatory', symbol: fill(HEAD) + `<path d="M30 38h40v24c0 8-10 14-20 14s-20-6-20-14z" fill="#005387"/>` + stroke('M30 38h40v24c0 8-10 14-20 14s-20-6-20-14z', 4) },
  E003: { kind: 'safe-condition', symbol: fill('M40 20h20v20h20v20H60v20H40V60H20V40h20z') },
  E004: { kind: 'safe-condition', symbol: fill('M30 22l10-4 8 18-7 6c3 8 9 14 17 17l6-7 18 8-4 10c-2 5-8 8-14 6C44 70 30 56 24 36c-2-6 1-12 6-14z') },
  E011: { kind: 'safe-condition', symbol: stroke('M20 36c12-16 36-16 48 0-12 16-36 16-48 0z', 5) + disc(44, 36, 7) + stroke('M78 50v32M78 62H44M58 62v-6M50 82h32', 5) },
  F001: { kind: 'fire-equipment', symbol: fill('M40 40c0-5 4-8 8-9v-7h8v7c4 1 8 4 8 9v42H40z') + stroke('M48 24H36M34 24c-8 4-10 18-8 32', 5) },
  F004: { kind: 'fire-equipment', symbol: fill(FLAME) + stroke('M26 80h48', 6) },
  F005: { kind: 'fire-equipment', symbol: disc(50, 42, 9) + stroke('M28 28h44v30H28zM50 82V64', 5) },
};
