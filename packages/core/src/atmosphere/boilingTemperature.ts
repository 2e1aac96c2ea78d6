import { finiteBetween } from '../guard.js';
import type { Celsius, Pascals } from '../units.js';

/** Coefficients of IAPWS-IF97, table 34. */
const n = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5,
  -0.32325550322333e7, 0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6,
  -0.23855557567849, 0.65017534844798e3,
] as const;

/**
 * The temperature at which pure water boils. Salt and glycol raise it; so does a lid.
 *
 * Method: the backward equation of region 4 of IAPWS-IF97 (R7-97), equation 31.
 *
 * @param pressure Absolute pressure of the air at the bench, Pa, 611.3 to 22.064 million; see `stationPressure`.
 * @returns °C.
 * @throws InputError at `pressure`.
 *
 * @example
 * boilingTemperature(101325) // => ≈ 99.974
 * boilingTemperature(84556) // => ≈ 94.98
 */
export function boilingTemperature(pressure: Pascals): Celsius {
  finiteBetween(pressure, 611.3, 22.064e6, 'pressure', 'Pa');
  const b = (pressure / 1e6) ** 0.25;
  const e = b * b + n[2] * b + n[5];
  const f = n[0] * b * b + n[3] * b + n[6];
  const g = n[1] * b * b + n[4] * b + n[7];
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const sum = n[9] + d;
  return (sum - Math.sqrt(sum * sum - 4 * (n[8] + n[9] * d))) / 2 - 273.15;
}
