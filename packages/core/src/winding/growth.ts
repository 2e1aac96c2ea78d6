import type { Celsius } from '../units.js';
import { type Conductor, constantOf } from './conductor.js';

/** How many times the resistance that it has at one temperature a conductor has at another; neither is checked. */
export function growth(
  { at = 20, conductor }: { readonly at?: Celsius; readonly conductor?: Conductor },
  temperature: Celsius,
): number {
  const k = constantOf(conductor);
  return (k + temperature) / (k + at);
}
