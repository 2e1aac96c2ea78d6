import { type ClosedSetting, closedSetting, InputError, parseQuantity } from '@truesweep/core';

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
      degrees: degreesOf(turned),
      volts: parseQuantity(then, 'V', '--then'),
    },
    uncertainty === undefined ? 0 : parseQuantity(uncertainty, 'V', '--uncertainty'),
  );
}

function degreesOf(text: string): number {
  const degrees = Number(text.trim().replace(/\s*°$/, '').replace(',', '.'));
  if (text.trim() !== '' && Number.isFinite(degrees)) return degrees;
  throw new InputError(
    'not-a-quantity',
    '--turned',
    `--turned is ${JSON.stringify(text)}; it must be an angle in degrees, such as 2 or -1.5.`,
  );
}
