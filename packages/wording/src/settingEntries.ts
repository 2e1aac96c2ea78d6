/** The entries for setting the closed position. */
export type SettingEntry =
  | 'readingNow'
  | 'readingWanted'
  | 'turned'
  | 'readingThen'
  | 'readingUncertainty';

/**
 * What each entry for setting the closed position is called.
 *
 * @example
 * settingLabels.turned // => 'Then turned by'
 */
export const settingLabels: Readonly<Record<SettingEntry, string>> = {
  readingNow: 'Closed reading now',
  readingWanted: 'Closed reading wanted',
  turned: 'Then turned by',
  readingThen: 'Closed reading after that turn',
  readingUncertainty: 'Uncertainty of a reading',
};

/**
 * What each entry for setting the closed position means, in one line.
 *
 * @example
 * settingHints.readingThen // => 'Read again with the throttle closed, the sensor held in its new place.'
 */
export const settingHints: Readonly<Record<SettingEntry, string>> = {
  readingNow: 'With the throttle closed, before the sensor is turned.',
  readingWanted: "From the machine's service manual.",
  turned: 'How far the loosened sensor was turned in its slots, by mark or protractor.',
  readingThen: 'Read again with the throttle closed, the sensor held in its new place.',
  readingUncertainty: 'Standard uncertainty of each voltage; a last digit of 10 mV has 3 mV.',
};

/**
 * Headings of the form that sets the closed position, and of its numbers.
 *
 * @example
 * settingWords.turn // => 'Turn from the first place'
 */
export const settingWords = {
  readings: 'Two readings, the throttle closed',
  numbers: 'The turn in numbers',
  what: 'What',
  value: 'Value',
  sheet: 'Closed reading after setting',
  turn: 'Turn from the first place',
  turnFromHere: 'Turn from where it is now',
  perDegree: 'Reading for each degree',
  uncertainty: 'Uncertainty of the turn (twice the standard uncertainty)',
} as const satisfies Record<string, string>;
