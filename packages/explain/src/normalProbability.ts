import { createErf } from 'mathjs';

/** Takes the variant for numbers out of a function of mathjs. */
const forNumbers = Object.assign(
  (_: string, variants: { readonly number: (x: number) => number }) => variants.number,
  { referToSelf: () => undefined },
);

// Its own declarations leave this out.
declare module 'mathjs' {
  const createErf: (parts: object) => (x: number) => number;
}

const erf = createErf({ typed: forNumbers });

/** The probability that a standard normal variable lies below a value, by mathjs's error function (W. J. Cody's approximations). */
export function normalProbability(z: number): number {
  return (1 + erf(z / Math.SQRT2)) / 2;
}
