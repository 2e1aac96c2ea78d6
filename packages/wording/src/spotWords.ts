/** The entries of a worn spot that is looked for, besides those of the hook-up. */
export type SpotEntry = 'load' | 'travel' | 'width' | 'stroke';

/**
 * What each entry of a worn spot is called.
 *
 * @example
 * spotLabels.width // => 'Width of the spot'
 */
export const spotLabels: Readonly<Record<SpotEntry, string>> = {
  load: 'Deliberate load',
  travel: 'Where the spot is',
  width: 'Width of the spot',
  stroke: 'Time of a stroke',
};

/**
 * What each entry of a worn spot means, in one line.
 *
 * @example
 * spotHints.stroke // => 'How long your hand takes from stop to stop.'
 */
export const spotHints: Readonly<Record<SpotEntry, string>> = {
  load: 'From the signal to common besides the instrument; leave empty for none.',
  travel: 'How far from the closed stop; small where it stumbles off idle.',
  width: 'The narrowest that you want to find, in percent of the travel.',
  stroke: 'How long your hand takes from stop to stop.',
};

/** The entries of a recorder of one's own, to be compared with the usual instruments. */
export type OwnRecorderEntry = 'ownInterval' | 'ownStep' | 'ownRange' | 'ownInput';

/**
 * What each entry of a recorder of one's own is called.
 *
 * @example
 * ownRecorderLabels.ownInterval // => 'Interval between its samples'
 */
export const ownRecorderLabels: Readonly<Record<OwnRecorderEntry, string>> = {
  ownInterval: 'Interval between its samples',
  ownStep: 'Smallest step of its readings',
  ownRange: 'Highest voltage that it shows',
  ownInput: 'Its input resistance',
};

/**
 * What each entry of a recorder of one's own means, in one line.
 *
 * @example
 * ownRecorderHints.ownRange // => 'From 0 V up to this, in the range that you use.'
 */
export const ownRecorderHints: Readonly<Record<OwnRecorderEntry, string>> = {
  ownInterval: 'One over its sample rate; leave empty to compare the usual ones only.',
  ownStep: 'Its range over two to the power of its bits.',
  ownRange: 'From 0 V up to this, in the range that you use.',
  ownInput: 'From its data, with the probe that you use.',
};
