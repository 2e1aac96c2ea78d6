import { type DropReadings, type Fraction, supplyAndGroundDrop } from '@truesweep/core';
import { workingRules as rules, dropWorkingWords as words } from '@truesweep/wording/working';
import { call, difference, negative, quotient } from '../expression.js';
import type { Working } from '../working.js';
import { workOut } from '../workOut.js';

/**
 * What voltage drops in a sensor's supply and ground do to its reading, and whether that matters.
 *
 * @param readings The voltages, V.
 * @param criterion Largest error that doesn't matter, as a fraction of the reference; 0.01 when left out (common practice, no source).
 * @returns The answer is the larger of the errors at both ends of the track, a fraction of the reference.
 * @throws InputError as `supplyAndGroundDrop` does.
 *
 * @example
 * explainSupplyDrop({ reference: 5, referenceAtSensor: 4.85, sensorGround: 0.1 }).answer.value // => ≈ 0.02
 */
export function explainSupplyDrop(readings: DropReadings, criterion: Fraction = 0.01): Working {
  supplyAndGroundDrop(readings, criterion);
  return workOut(words.title, (sheet) => {
    const given = [
      ['U_ref', readings.reference],
      ['U_sen', readings.referenceAtSensor],
      ['U_gnd', readings.sensorGround],
    ] as const;
    for (const [symbol, value] of given)
      sheet.give({ symbol, meaning: words.given[symbol], value, unit: 'V' });
    sheet.give({ symbol: 'e_max', meaning: words.given.most, value: criterion, unit: '%' });
    sheet.find({
      symbol: 'U_d',
      meaning: words.supply,
      unit: 'V',
      formula: difference('U_ref', 'U_sen', 'U_gnd'),
      rule: rules.kirchhoffVoltage,
    });
    const part = (symbol: string, meaning: string, formula: ReturnType<typeof quotient>) =>
      sheet.find({ symbol, meaning, unit: '%', formula, rule: rules.ratio });
    part('e_b', words.bottom, quotient('U_gnd', 'U_ref'));
    part('e_t', words.top, quotient(negative('U_d'), 'U_ref'));
    part('e', words.worst, call('max', call('abs', 'e_b'), call('abs', 'e_t')));
    sheet.compare({
      finds: words.matters,
      left: 'e',
      relation: '>',
      right: 'e_max',
      so: (holds) => (holds ? words.does : words.doesNot),
      rule: rules.criterion,
    });
    return {};
  });
}
