import { bisection } from '../bisection.js';
import { InputError } from '../errors.js';
import { positive } from '../guard.js';
import type { Celsius, Kelvins, Ohms, Volts, Watts } from '../units.js';
import { checkLaw, rangeOf, withinLaw } from './checkLaw.js';
import { checkDivider, type PullUpDivider, voltsAcross } from './divider.js';
import type { ThermistorLaw } from './law.js';
import { lnOhms } from './lnOhms.js';

/** A thermistor that the current through it warms. */
export interface SelfHeating {
  /** How much warmer than its surroundings it gets, K, 0 or more. */
  readonly rise: Kelvins;
  /** Its own temperature, °C. */
  readonly temperature: Celsius;
  /** Its resistance then, Ω. */
  readonly ohms: Ohms;
  /** The voltage across it then, V. */
  readonly volts: Volts;
  /** The heat in it, W. */
  readonly watts: Watts;
}

/**
 * How far the measuring current warms a thermistor: it then reads too hot by so much.
 *
 * Method: the fixed point of T = T₀ + P(T)/δ with P = V²/R, by bisection; the lowest where there are several.
 *
 * @param law The sensor's law.
 * @param divider What feeds it.
 * @param surroundings The temperature around it, °C, within the range of the law.
 * @param dissipation Its dissipation constant δ in this medium, W/K, above 0: in oil or water it is several times that in still air.
 * @throws InputError at `law…`, `divider…`, `surroundings` or `dissipation`; `out-of-range` where it warms beyond the range of its law.
 *
 * @example
 * const law = { kind: 'b', b: 3640, ohms: 2502, from: 20, to: 100 };
 * selfHeating(law, { supply: 5, pullUp: 1000 }, 20, 0.004).rise // => ≈ 1.305
 */
export function selfHeating(
  law: ThermistorLaw,
  divider: PullUpDivider,
  surroundings: Celsius,
  dissipation: number,
): SelfHeating {
  checkLaw(law, 'law');
  checkDivider(divider, 'divider');
  withinLaw(law, surroundings, 'surroundings');
  positive(dissipation, 'dissipation', 'W/K');
  const heated = heatedWithin(law, divider, surroundings, dissipation);
  if (heated) return heated;
  const { highest } = rangeOf(law);
  throw new InputError(
    'out-of-range',
    'dissipation',
    `dissipation is ${dissipation} W/K, by which the sensor warms beyond ${highest} °C, where its law ends; it must be more, or the current less.`,
  );
}

/** {@link selfHeating} of what was checked already; nothing where it warms beyond the range of its law. */
export function heatedWithin(
  law: ThermistorLaw,
  divider: PullUpDivider,
  surroundings: Celsius,
  dissipation: number,
): SelfHeating | undefined {
  const at = (temperature: Celsius) => {
    const ohms = Math.exp(lnOhms(law, temperature).value);
    const volts = voltsAcross(divider, ohms);
    return { ohms, volts, watts: volts ** 2 / ohms };
  };
  const warmsOn = (temperature: Celsius): boolean =>
    at(temperature).watts > dissipation * (temperature - surroundings);
  const { highest } = rangeOf(law);
  // Step by step from below, so that of several fixed points the lowest is found.
  const steps = 200;
  const reach = Math.min(
    highest - surroundings,
    divider.supply ** 2 / (4 * divider.pullUp * dissipation),
  );
  let from = surroundings;
  for (let step = 1; step <= steps; step++) {
    const to = step === steps ? surroundings + reach : surroundings + (reach * step) / steps;
    if (!warmsOn(to)) {
      const [temperature] = bisection(warmsOn, from, to);
      return { rise: temperature - surroundings, temperature, ...at(temperature) };
    }
    from = to;
  }
  return undefined;
}
