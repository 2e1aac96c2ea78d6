import {
  type Circuit,
  dirtEffect,
  formatQuantity,
  type Ohms,
  positionAt,
  type Travel,
} from '@truesweep/core';
import { workingRules as rules, dirtWorkingWords as words } from '@truesweep/wording/working';
import { product, quotient, sum } from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { workOut } from '../workOut.js';
import { checkLegs, findLegs, giveParts, pulledFrom, unmarked } from './legs.js';
import { findOutput } from './output.js';

/**
 * What dirt in the wiper's contact does to the reading.
 *
 * @param circuit The right connection of whole parts, with a load; SI units.
 * @param travel Where the throttle stands, 0 closed to 1 open.
 * @param ohms Resistance of the dirt, Ω, above 0.
 * @returns The answer is the change of the reading, V, negative where it falls.
 * @throws InputError as `dirtEffect` does; `no-working` without a load, for a wiper that touches nothing, and for a circuit whose ways don't all
 * meet at the wiper.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * explainDirt(circuit, 0.5, 10e3).answer.value // => ≈ -0.002496879
 */
export function explainDirt(circuit: Circuit, travel: Travel, ohms: Ohms): Working {
  dirtEffect(circuit, travel, ohms);
  checkLegs(circuit, 'circuit');
  if (ohms === Infinity) refuseWorking('ohms', 'is Infinity');
  const position = positionAt(circuit.sensor, travel);
  return workOut(words.title(formatQuantity(ohms, 'Ω', { trim: true })), (sheet) => {
    const parts = giveParts(sheet, circuit, unmarked);
    const x = sheet.give({ symbol: 'x', meaning: words.x, value: position, unit: '%' });
    sheet.give({ symbol: 'R_D', meaning: words.dirt, value: ohms, unit: 'Ω' });
    const legs = findLegs(sheet, parts, x, unmarked);
    const load = legs.load ?? refuseWorking('circuit.load', 'is none');
    findOutput(sheet, legs, 'thevenin', unmarked);
    sheet.find({
      symbol: 'ΔV',
      meaning: words.change,
      unit: 'V',
      formula: quotient(product(pulledFrom('V', load), 'R_D'), sum('R_w', 'R_D', load.ohms)),
      rule: rules.divider,
    });
    return {};
  });
}
