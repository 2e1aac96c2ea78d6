import { type AnglePerVolt, closedSetting, formatQuantity, type Volts } from '@truesweep/core';
import { workingRules as rules, settingWorkingWords as words } from '@truesweep/wording/working';
import { call, difference, power, product, quotient, root, sum } from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { workOut } from '../workOut.js';

/**
 * How far to turn a sensor for a wanted closed reading.
 *
 * @param reading The closed reading now, V.
 * @param wanted The wanted closed reading, V.
 * @param anglePerVolt Two readings at two angles, or degrees of travel and slope.
 * @param uncertainty Standard uncertainty of each reading, V; 0 when left out.
 * @returns The answer is the turn, degrees, signed as `closedSetting` says.
 * @throws InputError as `closedSetting` does; `no-working` where the readings tell no slope.
 *
 * @example
 * explainClosedSetting(0.62, 0.5, { kind: 'second-reading', degrees: 2, volts: 0.7 }).answer.value // => ≈ -3
 */
export function explainClosedSetting(
  reading: Volts,
  wanted: Volts,
  anglePerVolt: AnglePerVolt,
  uncertainty: Volts = 0,
): Working {
  const setting = closedSetting(reading, wanted, anglePerVolt, uncertainty);
  if (setting.kind === 'not-determined') refuseWorking('anglePerVolt', words.notDetermined);
  const isSecond = anglePerVolt.kind === 'second-reading';
  return workOut(words.title(formatQuantity(wanted, 'V', { digits: 4, trim: true })), (sheet) => {
    const give = (symbol: keyof typeof words.given, value: number, unit: 'V' | '°') =>
      sheet.give({ symbol, meaning: words.given[symbol], value, unit });
    give('U', reading, 'V');
    give('U_w', wanted, 'V');
    if (isSecond) {
      give('φ_2', anglePerVolt.degrees, '°');
      give('U_2', anglePerVolt.volts, 'V');
    } else {
      give('φ', anglePerVolt.degreesOfTravel, '°');
      give('S', anglePerVolt.voltsPerTravel, 'V');
    }
    sheet.find({
      symbol: 'k',
      meaning: words.perVolt,
      unit: '°/V',
      formula: isSecond ? quotient('φ_2', difference('U_2', 'U')) : quotient('φ', 'S'),
      rule: rules.straightLine,
    });
    sheet.find({
      symbol: 'α',
      meaning: words.turn,
      unit: '°',
      formula: product('k', difference('U_w', 'U')),
      rule: rules.straightLine,
    });
    const conclusion = isSecond ? words.second : words.slope;
    if (uncertainty === 0) return { answer: 'α', conclusion };
    give('u', uncertainty, 'V');
    const spread = product(call('abs', 'k'), 'u');
    if (isSecond)
      sheet.find({
        symbol: 's',
        meaning: words.share,
        unit: '1',
        formula: quotient(difference('U_w', 'U'), difference('U_2', 'U')),
        rule: rules.ratio,
      });
    sheet.find({
      symbol: 'u_α',
      meaning: words.uncertainty,
      unit: '°',
      formula: isSecond
        ? product(spread, root(sum(power(difference(1, 's'), 2), power('s', 2))))
        : spread,
      rule: rules.rootSumOfSquares,
    });
    sheet.find({
      symbol: 'U_α',
      meaning: words.expanded,
      unit: '°',
      formula: product(2, 'u_α'),
      rule: rules.coverageFactor,
    });
    return { answer: 'α', conclusion };
  });
}
