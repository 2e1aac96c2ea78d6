import { InputError } from '../errors.js';
import { finiteBetween } from '../guard.js';
import type { Celsius, Fraction, Pascals } from '../units.js';
import { checkPressureSensor, pressureRange, withinRange } from './checkPressureSensor.js';
import type { PressureSensor } from './pressureSensor.js';

/** The outputs of a sound pressure sensor at one pressure, as ratios to its supply. */
export interface RatioBand {
  /** The lowest. */
  readonly low: Fraction;
  /** The nominal one. */
  readonly nominal: Fraction;
  /** The highest. */
  readonly high: Fraction;
}

/**
 * The output of a pressure sensor, as a ratio to its supply, with the band of a sound one.
 *
 * Method: V/V_s = K₁·P + K₂ ± error·factor·|K₁| (published data sheets of such parts); of a table straight lines between its rows, whose slope is K₁.
 *
 * @param sensor The sensor.
 * @param pressure Pa, by the sensor's reference, within its range.
 * @param temperature °C, for the factor on the error; 25 when left out.
 * @throws InputError at `sensor…`, `pressure` or `temperature`.
 *
 * @example
 * const sensor = {
 *   reference: 'absolute',
 *   response: { kind: 'line', gain: 9e-6, offset: -0.095, lowest: 15000, highest: 115000 },
 *   error: 1500,
 * };
 * pressureRatio(sensor, 96000).nominal * 5 // => ≈ 3.845
 * pressureRatio(sensor, 96000).low * 5 // => ≈ 3.7775
 */
export function pressureRatio(
  sensor: PressureSensor,
  pressure: Pascals,
  temperature: Celsius = 25,
): RatioBand {
  checkPressureSensor(sensor, 'sensor');
  withinRange(sensor, pressure, 'pressure');
  finiteBetween(temperature, -273, 2000, 'temperature', '°C');
  return ratioWithin(sensor, pressure, temperature);
}

/**
 * The pressure that an output stands for.
 *
 * @param sensor The sensor.
 * @param ratio Output over supply, among those of its range.
 * @returns Pa, by the sensor's reference.
 * @throws InputError at `sensor…` or `ratio`.
 *
 * @example
 * const response = { kind: 'line', gain: 9e-6, offset: -0.095, lowest: 15000, highest: 115000 };
 * pressureFromRatio({ reference: 'absolute', response }, 4.0846 / 5) // => ≈ 101324
 */
export function pressureFromRatio(sensor: PressureSensor, ratio: Fraction): Pascals {
  checkPressureSensor(sensor, 'sensor');
  finiteBetween(ratio, -100, 100, 'ratio');
  const { lowest, highest } = pressureRange(sensor);
  const ends = [lowest, highest].map((end) => lineAt(sensor, end).ratio) as [number, number];
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  if (!(ratio >= least && ratio <= most)) {
    throw new InputError(
      'out-of-range',
      'ratio',
      `ratio is ${ratio}; in the sensor's range it is ${least.toPrecision(4)} to ${most.toPrecision(4)}.`,
    );
  }
  const { response } = sensor;
  if (response.kind === 'line') return (ratio - response.offset) / response.gain;
  const { rows } = response;
  const rises = ends[1] > ends[0];
  const next = rows.findIndex((row) => (rises ? row.ratio >= ratio : row.ratio <= ratio));
  const from = rows[Math.max(next, 1) - 1]!;
  const { gain } = lineAt(sensor, rows[Math.max(next, 1)]!.pressure);
  return from.pressure + (ratio - from.ratio) / gain;
}

/** The output over supply at a pressure, and its slope, per Pa. */
export function lineAt(
  { response }: PressureSensor,
  pressure: Pascals,
): { readonly ratio: Fraction; readonly gain: number } {
  if (response.kind === 'line') {
    return { ratio: response.gain * pressure + response.offset, gain: response.gain };
  }
  const { rows } = response;
  const next = Math.max(
    1,
    rows.findIndex((row) => row.pressure >= pressure),
  );
  const [from, to] = [rows[next - 1]!, rows[next]!];
  const gain = (to.ratio - from.ratio) / (to.pressure - from.pressure);
  return { ratio: from.ratio + gain * (pressure - from.pressure), gain };
}

/** The error of a sound sensor at a temperature, Pa. */
export function errorAt(
  { error = 0, errorFactors = [] }: PressureSensor,
  temperature: Celsius,
): Pascals {
  const [first, ...more] = errorFactors;
  if (!first || temperature <= first.temperature) return error * (first?.factor ?? 1);
  let from = first;
  for (const to of more) {
    if (temperature <= to.temperature) {
      const part = (temperature - from.temperature) / (to.temperature - from.temperature);
      return error * (from.factor + part * (to.factor - from.factor));
    }
    from = to;
  }
  return error * from.factor;
}

/** {@link pressureRatio} of what was checked already. */
export function ratioWithin(
  sensor: PressureSensor,
  pressure: Pascals,
  temperature: Celsius,
): RatioBand {
  const { ratio, gain } = lineAt(sensor, pressure);
  const reach = Math.abs(gain) * errorAt(sensor, temperature);
  return { low: ratio - reach, nominal: ratio, high: ratio + reach };
}
