/** Version of the physics library: raised whenever a number that it computes changes. Editions record it. */
export const ENGINE_VERSION = '1.0.0';
