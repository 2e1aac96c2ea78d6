/** Of this and every other package of truesweep: what another version judged is judged again. */
export const version = '0.1.0';
