import { type Circuit, formatQuantity, positionAtOutput, type Volts } from '@truesweep/core';
import { inverseWorkingWords as words } from '@truesweep/wording/working';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { workOut } from '../workOut.js';
import { checkLegs, giveParts, unmarked } from './legs.js';
import { findPosition } from './position.js';

/**
 * Where the wiper stands for a reading.
 *
 * @param circuit The right connection of whole parts; SI units.
 * @param volts The reading, V.
 * @returns The answer is the place, a fraction of the track.
 * @throws InputError as `positionAtOutput` does; `no-working` where no single place gives the reading, and for a circuit whose ways don't all
 * meet at the wiper.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 10_000 } };
 * explainPosition(circuit, 1.818182).answer.value // => ≈ 0.5
 */
export function explainPosition(circuit: Circuit, volts: Volts): Working {
  const place = positionAtOutput(circuit, { volts });
  checkLegs(circuit, 'circuit');
  if (place.kind !== 'position')
    refuseWorking('volts', `is ${volts} V, which ${words.noPlace[place.kind]}`);
  return workOut(words.title(formatQuantity(volts, 'V', { digits: 4, trim: true })), (sheet) => {
    const parts = giveParts(sheet, circuit, unmarked);
    const reading = sheet.give({ symbol: 'V', meaning: words.reading, value: volts, unit: 'V' });
    findPosition(sheet, parts, reading, unmarked);
    return {};
  });
}
