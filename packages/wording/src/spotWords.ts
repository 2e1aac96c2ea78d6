/** The entries of a worn spot that is looked for, and of the hook-up that it is looked for on. */
export type SpotEntry =
  | 'spotSource'
  | 'spotLimiter'
  | 'spotTrack'
  | 'spotClosed'
  | 'spotOpen'
  | 'spotLoad'
  | 'spotTravel'
  | 'spotWidth'
  | 'spotStroke';

/**
 * What each entry of a worn spot is called.
 *
 * @example
 * spotLabels.spotWidth // => 'Width of the spot'
 */
export const spotLabels: Readonly<Record<SpotEntry, string>> = {
  spotSource: 'Source voltage',
  spotLimiter: 'Limiting resistor',
  spotTrack: 'Track resistance',
  spotClosed: 'Wiper with the throttle closed',
  spotOpen: 'Wiper with the throttle open',
  spotLoad: 'Deliberate load',
  spotTravel: 'Where the spot is',
  spotWidth: 'Width of the spot',
  spotStroke: 'Time of a stroke',
};

/**
 * What each entry of a worn spot means, in one line.
 *
 * @example
 * spotHints.spotStroke // => 'How long your hand takes from stop to stop.'
 */
export const spotHints: Readonly<Record<SpotEntry, string>> = {
  spotSource: 'What the bench supply gives, measured at its terminals.',
  spotLimiter: 'In series between the supply and the sensor.',
  spotTrack: 'Between the two end terminals, with the sensor unplugged.',
  spotClosed: 'How far up the track the wiper stands at the closed stop.',
  spotOpen: 'How far up the track the wiper stands at the open stop.',
  spotLoad: 'From the signal to common besides the instrument; leave empty for none.',
  spotTravel: 'How far from the closed stop; small where it stumbles off idle.',
  spotWidth: 'The narrowest that you want to find, in percent of the travel.',
  spotStroke: 'How long your hand takes from stop to stop.',
};
