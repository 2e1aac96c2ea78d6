import { type Ohms, preferredValues } from '@truesweep/core';

const decades: readonly number[] = [1, 10, 100, 1000, 10_000, 100_000, 1e6];

/** The values of the E12 series between two bounds, Ω, both included. */
export function ohmsBetween(from: Ohms, to: Ohms): readonly Ohms[] {
  return decades
    .flatMap((ten) => preferredValues('E12').map((figures) => figures * ten))
    .filter((ohms) => ohms >= from && ohms <= to);
}
