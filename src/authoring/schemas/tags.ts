/** What can hurt: the tags that things carry and hazard sheets cover. */
import { z } from 'zod';

export const HAZARD_TAGS = [
  'flame',
  'ember',
  'smoke',
  'aerosol',
  'evacuated',
  'pressurised',
  'glass',
  'plastic',
  'solvent',
  'hot-water',
  'lamp',
] as const;

/** A tag that a hazard sheet must cover. */
export type HazardTag = (typeof HAZARD_TAGS)[number];

/** The tags of a thing; `none` for a thing that can hurt nobody, so that nobody forgets to ask. */
export const tags = () =>
  z
    .array(z.enum([...HAZARD_TAGS, 'none']))
    .min(1)
    .max(HAZARD_TAGS.length);
