import { type ClosedSetting, closedSetting, parseQuantity } from '@truesweep/core';

/** Two readings and the turn between them, as they are typed. */
interface SettingEntries {
  readonly reading: string;
  readonly wanted: string;
  readonly turned: string;
  readonly then: string;
  readonly uncertainty?: string;
}

/** How far to turn. */
export const settingOf = (entries: SettingEntries): ClosedSetting =>
  closedSetting(...enteredSetting(entries));

/**
 * What is typed as numbers.
 *
 * @throws InputError for what is no such quantity.
 */
export function enteredSetting(entries: SettingEntries): Parameters<typeof closedSetting> {
  const { reading, wanted, turned, then, uncertainty } = entries;
  return [
    parseQuantity(reading, 'V', '--reading'),
    parseQuantity(wanted, 'V', '--wanted'),
    {
      kind: 'second-reading',
      degrees: parseQuantity(turned, '°', '--turned'),
      volts: parseQuantity(then, 'V', '--then'),
    },
    uncertainty === undefined ? 0 : parseQuantity(uncertainty, 'V', '--uncertainty'),
  ];
}
