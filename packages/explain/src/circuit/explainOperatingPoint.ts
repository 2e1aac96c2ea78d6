import { type Circuit, formatQuantity, operatingPoint, type Position } from '@truesweep/core';
import { circuitWorkingWords as words } from '@truesweep/wording/working';
import type { Working } from '../working.js';
import { workOut } from '../workOut.js';
import { checkLegs, findLegs, giveParts, unmarked } from './legs.js';
import { type CircuitMethod, findOutput } from './output.js';

/**
 * How the reading of a bench circuit comes about with its wiper at a place.
 *
 * @param circuit The right connection of whole parts; SI units.
 * @param position Where the wiper stands: fraction of the track, 0 to 1.
 * @param method By Thévenin's theorem (the hook-up as one source behind one resistance; when left out) or by Millman's (the mean of what is
 * behind the ways that meet at the wiper). Without a load, and at an end of the track without a residual, both are the plain divider.
 * @returns The answer is the reading, V.
 * @throws InputError as `operatingPoint` does; `no-working` for a circuit whose ways don't all meet at the wiper.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 10_000 } };
 * explainOperatingPoint(circuit, 0.5).answer.value // => ≈ 1.818182
 * explainOperatingPoint(circuit, 0.5, 'millman').steps.length // => 3
 */
export function explainOperatingPoint(
  circuit: Circuit,
  position: Position,
  method: CircuitMethod = 'thevenin',
): Working {
  operatingPoint(circuit, position);
  checkLegs(circuit, 'circuit');
  const title = words.title(formatQuantity(position, '%', { trim: true }));
  return workOut(title, (sheet) => {
    const parts = giveParts(sheet, circuit, unmarked);
    const x = sheet.give({ symbol: 'x', meaning: words.given.x, value: position, unit: '%' });
    findOutput(sheet, findLegs(sheet, parts, x, unmarked), method, unmarked);
    return {};
  });
}
