import { type ClosedSetting, closedSetting, parseQuantity } from '@truesweep/core';

/**
 * How far to turn, from two readings as they are typed.
 *
 * @throws InputError for what is no such quantity.
 */
export function settingOf(entries: {
  readonly reading: string;
  readonly wanted: string;
  readonly turned: string;
  readonly then: string;
  readonly uncertainty?: string;
}): ClosedSetting {
  const { reading, wanted, turned, then, uncertainty } = entries;
  return closedSetting(
    parseQuantity(reading, 'V', '--reading'),
    parseQuantity(wanted, 'V', '--wanted'),
    {
      kind: 'second-reading',
      degrees: parseQuantity(turned, '°', '--turned'),
      volts: parseQuantity(then, 'V', '--then'),
    },
    uncertainty === undefined ? 0 : parseQuantity(uncertainty, 'V', '--uncertainty'),
  );
}
