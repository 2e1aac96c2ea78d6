/** Multiplies the number of cases of every property, corpus and soak test; `npm run soak` sets it. */
export const soak = Number(process.env.TRUESWEEP_SOAK ?? 1);
