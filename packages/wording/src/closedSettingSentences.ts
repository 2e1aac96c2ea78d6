import type { ClosedSetting } from '@truesweep/core';
import { number } from './say.js';
import { settingSentences } from './settingSentences.js';
import { whole } from './whole.js';

/**
 * How far to turn a sensor for its closed reading, and what comes then.
 *
 * @example
 * import { closedSetting } from '@truesweep/core';
 * const setting = closedSetting(0.62, 0.5, { kind: 'second-reading', degrees: 2, volts: 0.7 });
 * closedSettingSentences(setting)[0].endsWith('by 3.0°, against the way you turned it.') // => true
 */
export function closedSettingSentences(setting: ClosedSetting): readonly string[] {
  return whole(setting, 'setting', () => {
    if (setting.kind === 'not-determined') {
      return [settingSentences.noChange, settingSentences.again];
    }
    const { degrees, uncertainty } = setting;
    number(degrees, 'setting.degrees');
    number(2 * uncertainty, 'setting.uncertainty');
    return [
      settingSentences.turn({
        degrees: Math.abs(degrees).toFixed(1),
        ...(uncertainty > 0 && { uncertainty: (2 * uncertainty).toFixed(1) }),
        onward: degrees > 0,
      }),
      settingSentences.again,
    ];
  });
}
