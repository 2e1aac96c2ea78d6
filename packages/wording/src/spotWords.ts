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
