/** The entries that the pressure of the air at the bench comes from. */
export type AirEntry = 'air' | 'altitude' | 'barometer' | 'setting' | 'airUncertainty';

/**
 * What each entry of the air at the bench is called.
 *
 * @example
 * airLabels.setting // => 'Altimeter setting (QNH)'
 */
export const airLabels: Readonly<Record<AirEntry, string>> = {
  air: 'Its pressure is known from',
  altitude: 'Height of the bench above the sea',
  barometer: 'Barometer on the bench',
  setting: 'Altimeter setting (QNH)',
  airUncertainty: 'Uncertainty of barometer or setting',
};

/**
 * What each entry of the air at the bench means, in one line.
 *
 * @example
 * airHints.altitude // => 'With its unit: 350 m or 1150 ft.'
 */
export const airHints: Readonly<Record<AirEntry, string>> = {
  air: 'From the height alone the weather leaves ±3 kPa unknown.',
  altitude: 'With its unit: 350 m or 1150 ft.',
  barometer: 'The pressure there, not one that is set to sea level: 1009 hPa or 29.8 inHg.',
  setting: 'Of an airfield near by; a weather map’s pressure at sea level is none.',
  airUncertainty: 'Standard uncertainty, with its unit: 1 hPa.',
};

/**
 * Words of the entries of the air at the bench.
 *
 * @example
 * airWords.kinds.altitude // => 'height alone'
 */
export const airWords = {
  title: 'The air at the bench',
  kinds: {
    barometer: 'barometer',
    'altimeter-setting': 'QNH and height',
    altitude: 'height alone',
  },
  needsBarometer: 'Enter what the barometer shows, or choose the height.',
  needsSetting: 'Enter the setting, or choose the height alone.',
  needsAltitude: 'Enter the height of the bench above the sea with its unit.',
} as const;
