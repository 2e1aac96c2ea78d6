/** The three leads between bench and sensor. */
export type Lead = 'supply' | 'ground' | 'signal';

/** The three terminals of the sensor. */
export type Terminal = 'bottom' | 'wiper' | 'top';
