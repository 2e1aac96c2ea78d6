import { explainThermistor } from '@truesweep/explain';
import { dividerOf, type temperatureNow } from '../calculators/temperatureNow.js';
import { lawOf } from '../calculators/thermistorLaw.js';
import { type Written, written } from './written.js';

/** Resistance, and on a pull-up the voltage, at the temperature. */
export function workings(values: Parameters<typeof temperatureNow>[0]): readonly Written[] {
  const { law } = lawOf(values);
  return written(() => explainThermistor(dividerOf(values), law, values.now));
}
