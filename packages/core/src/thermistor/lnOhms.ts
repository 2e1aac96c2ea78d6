import type { Celsius } from '../units.js';
import { zero } from './checkLaw.js';
import type { ThermistorLaw, ThermistorRow } from './law.js';

/** Which resistance of a row is meant. */
export type OfRow = (row: ThermistorRow) => number;
const nominal: OfRow = ({ ohms }) => ohms;

/** The logarithm of the resistance at a temperature within the law's range, and its derivative by 1/T, K. */
export function lnOhms(
  law: ThermistorLaw,
  temperature: Celsius,
  ofRow = nominal,
): { readonly value: number; readonly b: number } {
  const inverse = 1 / (temperature + zero);
  if (law.kind === 'b') {
    const value = Math.log(law.ohms) + law.b * (inverse - 1 / (law.from + zero));
    return { value, b: law.b };
  }
  if (law.kind === 'steinhart-hart') {
    const value = cubicRoot(law.b, law.c, inverse - law.a);
    return { value, b: 1 / (law.b + 3 * law.c * value * value) };
  }
  const { rows } = law;
  const next = rows.findIndex((row) => row.temperature >= temperature);
  const [from, to] = [rows[Math.max(next, 1) - 1]!, rows[Math.max(next, 1)]!];
  const start = Math.log(ofRow(from));
  const ends = 1 / (from.temperature + zero);
  const b = (Math.log(ofRow(to)) - start) / (1 / (to.temperature + zero) - ends);
  return { value: start + b * (inverse - ends), b };
}

/**
 * The root of b·x + c·x³ = y that goes through 0, for b above 0, exact for a c of nearly nothing too.
 *
 * Method: the hyperbolic or, of a c below 0, the trigonometric solution of the cubic (F. Viète's; from memory), whose limit for c of 0 is y/b.
 */
function cubicRoot(b: number, c: number, y: number): number {
  // So little of it changes nothing of any resistance.
  if (Math.abs(c) < 1e-20) return y / b;
  const k = Math.sqrt(b / (3 * Math.abs(c)));
  const part = (1.5 * y) / (b * k);
  const root =
    c > 0 ? 2 * k * Math.sinh(Math.asinh(part) / 3) : 2 * k * Math.sin(Math.asin(part) / 3);
  // One step of Newton's takes out what rounding left.
  return root - (b * root + c * root ** 3 - y) / (b + 3 * c * root * root);
}

/** (dR/dT)/R at a temperature within the law's range, per K. */
export function slopeWithin(law: ThermistorLaw, temperature: Celsius): number {
  return -lnOhms(law, temperature).b / (temperature + zero) ** 2;
}
