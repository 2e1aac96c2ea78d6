/** Of this and every other package of truesweep: a result of another version is judged again. */
export const version = '0.1.0';
