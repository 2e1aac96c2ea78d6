import { type Circuit, formatQuantity, loadingErrors, positionAt } from '@truesweep/core';
import { workingRules as rules, loadingWorkingWords as words } from '@truesweep/wording/working';
import { difference, product, quotient, sum } from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { workOut } from '../workOut.js';
import { checkLegs, findLegs, giveParts, pulledFrom, unmarked } from './legs.js';
import { findOutput } from './output.js';

/**
 * By how much a load bends the reading where it bends it most, and why it is there that it does.
 *
 * @param circuit The right connection of whole parts, with a load; SI units.
 * @returns The answer is the error, unloaded less loaded reading, V.
 * @throws InputError as `loadingErrors` does; `no-working` for a circuit without a load or whose ways don't all meet at the wiper.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: { pullDown: 5000 } };
 * explainLoadingError(circuit).answer.value // => ≈ 0.607926
 */
export function explainLoadingError(circuit: Circuit): Working {
  const { position } = loadingErrors(circuit).fromUnloaded;
  checkLegs(circuit, 'circuit');
  const { sensor } = circuit;
  const isStop = [0, 1].some((travel) => positionAt(sensor, travel) === position);
  const title = words.title(formatQuantity(position, '%', { digits: 3 }));
  return workOut(title, (sheet) => {
    const parts = giveParts(sheet, circuit, unmarked);
    const x = sheet.give({ symbol: 'x', meaning: words.x, value: position, unit: '%' }, 'found');
    const legs = findLegs(sheet, parts, x, unmarked);
    const { source, up, down, track } = legs;
    const load = legs.load ?? refuseWorking('circuit.load', 'is none');
    findOutput(sheet, legs, 'thevenin', unmarked);
    const both = sum(up, down);
    if (!isStop) {
      sheet.find({
        symbol: 'S_0',
        meaning: words.slopeWithout,
        unit: 'V',
        formula: quotient(product(source, track), both),
        rule: rules.divider,
      });
      sheet.find({
        symbol: 'S_w',
        meaning: words.slopeOfResistance,
        unit: 'Ω',
        formula: quotient(product(track, difference(up, down)), both),
        rule: rules.derivative,
      });
      sheet.find({
        symbol: 'S',
        meaning: words.slopeWith,
        unit: 'V',
        formula: quotient(
          sum(product('S_0', load.ohms), product(pulledFrom('V', load), 'S_w')),
          sum('R_w', load.ohms),
        ),
        rule: rules.derivative,
      });
      sheet.compare({
        finds: words.why,
        left: 'S',
        relation: '≈',
        right: 'S_0',
        so: () => words.alike,
        rule: rules.extreme,
      });
    }
    sheet.find({
      symbol: 'ΔV',
      meaning: words.error,
      unit: 'V',
      formula: difference('V_0', 'V'),
      rule: rules.difference,
    });
    return isStop ? { conclusion: words.atStop } : {};
  });
}
