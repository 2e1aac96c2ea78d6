import { knownAnyJob } from './parseAnyJob.js';
import type { AnyJob } from './readingsJob.js';

/**
 * The text of a file of a job of any kind: JSON of the newest version, every quantity in SI units, temperatures in °C; a break is written `open`.
 *
 * @throws InputError as {@link parseAnyJob} does.
 *
 * @example
 * const text = writeAnyJob({
 *   version: 3,
 *   title: 'Coil',
 *   sensor: { kind: 'winding', name: 'Coil', low: 0.7, high: 1 },
 *   readings: [{ ohms: Infinity, uncertainty: 0.01, temperature: 20, temperatureUncertainty: 1 }],
 * });
 * readAnyJob(text).readings[0].ohms // => Infinity
 */
export function writeAnyJob(job: AnyJob): string {
  const spelled = (_: string, value: unknown) => (value === Infinity ? 'open' : value);
  return `${JSON.stringify(knownAnyJob(job), spelled, 2)}\n`;
}
