import { type DeliberateTest, listOf } from '@truesweep/core';
import { codeOf, texts } from './rules.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Said of the movement in a recording through a capacitor.
 *
 * @example
 * movementUnknownSentence.includes('capacitor') // => true
 */
export const movementUnknownSentence = 'Not to be told through a capacitor.';

/**
 * Said of findings that bear no place.
 *
 * @example
 * openTrackSentence.includes('two levels') // => true
 */
export const openTrackSentence =
  'The signal knows two levels only, those of a track that is open somewhere along its way: on one side of the crack the wiper meets the ground end alone, on the other the supply end alone. Where the crack lies, the readings do not tell; the resistance between the end terminals, measured with the sensor unplugged, would be far too high.';

/**
 * What a recording through a capacitor could have shown.
 *
 * @example
 * onlyLeapsSentence.includes('faster') // => true
 */
export const onlyLeapsSentence =
  'Only leaps faster and larger than any movement of a throttle show: deep dropouts, but no shallow or slow ones, no readings of the ends.';

/**
 * What a recording through a capacitor shows of departures.
 *
 * @param listed Those that are named, each with its time, length and depth.
 * @param more How many others there are.
 *
 * @example
 * abruptSentence(['0.75 s for 16 ms by −617 mV'], 0).startsWith('Departures at 0.75 s for 16 ms by −617 mV.') // => true
 */
export function abruptSentence(listed: readonly string[], more: number): string {
  const rest = more > 0 ? say` and ${more} more` : '';
  return say`Departures at ${listed.join('; ')}${rest}. The recorder is coupled through a capacitor, so neither their travel nor the level that they went to can be told, and the cause stays open.`;
}

/**
 * How sure a pass is, and what that rests on.
 *
 * @example
 * surePassSentence('97 %').startsWith('97 %, reckoned with modelled recordings') // => true
 */
export function surePassSentence(confidence: string): string {
  return say`${confidence}, reckoned with modelled recordings, that no visible fault was missed. It rests on how narrow a spot could hide, how often each place was seen, and how far the closed readings scatter.`;
}

/**
 * What a pass says that rests on less than is asked of a recording.
 *
 * @example
 * shortPassSentence({ looks: 2, looksAskedFor: 6, snaps: 0, snapsAskedFor: 3 }).includes('no snap (3 are asked for)') // => true
 */
export function shortPassSentence(rests: {
  readonly looks: number;
  readonly looksAskedFor: number;
  readonly snaps: number;
  readonly snapsAskedFor: number;
}): string {
  return whole(rests, 'rests', () => {
    const { looks, looksAskedFor, snaps, snapsAskedFor } = rests;
    const seen = looks === 1 ? '1 clean look' : say`${looks} clean looks`;
    const snapped = snaps === 0 ? 'no snap' : snaps === 1 ? '1 snap' : say`${snaps} snaps`;
    const short = [
      ...(looks < looksAskedFor
        ? [say`${seen} at the place seen least (${looksAskedFor} are asked for)`]
        : []),
      ...(snaps < snapsAskedFor ? [say`${snapped} (${snapsAskedFor} are asked for)`] : []),
    ];
    return say`Nothing in this recording speaks against the sensor, but it rests on ${short.join(' and ')}: record the rest before it goes back.`;
  });
}

/**
 * What may have been missed.
 *
 * @example
 * missedSentence('25 %').includes('25 %') // => true
 */
export function missedSentence(chance: string): string {
  return say`A spot that lifts on half of its passes only would have shown on none of the clean looks with a chance of ${chance}.`;
}

/**
 * How sure it is that something is amiss, and what that rests on.
 *
 * @param reasons The checks that say so.
 *
 * @example
 * sureReasonSentence('93 %', ['departures']).endsWith('that a reason for it is real: departures.') // => true
 */
export function sureReasonSentence(confidence: string, reasons: readonly string[]): string {
  texts(reasons, 'reasons');
  return say`${confidence}, reckoned with modelled recordings, that a reason for it is real: ${reasons.join(', ')}.`;
}

/**
 * How often the passes over a place showed something there.
 *
 * @example
 * spotSentence({ travel: '6 %', seen: '3', passes: '4' }) // => 'At 6 % of the travel: shown by 3 of 4 passes.'
 */
export function spotSentence(spot: {
  readonly travel: string;
  readonly seen: string;
  readonly passes: string;
}): string {
  return whole(spot, 'spot', () => {
    return say`At ${spot.travel} of the travel: shown by ${spot.seen} of ${spot.passes} passes.`;
  });
}

/**
 * How many more passes would part the track from a connection.
 *
 * @example
 * morePassesSentence('4').startsWith('4 more passes') // => true
 */
export function morePassesSentence(passes: string): string {
  return say`${passes} more passes like these would very likely settle whether it is the track or a connection.`;
}

/**
 * The narrowest worn spot that cannot have been missed.
 *
 * @example
 * narrowestSpotSentence('0.4 %').includes('0.4 % of the travel') // => true
 */
export function narrowestSpotSentence(width: string): string {
  return say`A worn spot ${width} of the travel wide leaves enough samples wherever it lies.`;
}

/**
 * Where no dropout can show.
 *
 * @example
 * blindSentence('0 %', '2 %').startsWith('From 0 % to 2 % of the travel') // => true
 */
export function blindSentence(from: string, to: string): string {
  return say`From ${from} to ${to} of the travel the output lies too near the level of a lifted wiper for a dropout to show.`;
}

/**
 * How much of the travel was seen, each way, and what neither way showed often enough.
 *
 * @param seen How many tenths had a clean look opening and closing; the stretches that lacked looks, and how many each place needs.
 *
 * @example
 * coverageSentence({ opening: 10, closing: 9, looks: 1, lacking: [] }) // => 'Of the travel, 10 tenths were seen opening and 9 closing.'
 * coverageSentence({ opening: 8, closing: 0, looks: 1, lacking: [['30 %', '50 %']] }).split('. ')[1] // => 'Neither way showed 30 % to 50 %.'
 */
export function coverageSentence(seen: {
  readonly opening: number;
  readonly closing: number;
  readonly looks: number;
  readonly lacking: readonly (readonly [from: string, to: string])[];
}): string {
  return whole(seen, 'seen', () => {
    const { opening, closing, looks, lacking } = seen;
    const tenths = say`${opening} ${opening === 1 ? 'tenth was' : 'tenths were'} seen opening and ${closing} closing`;
    const places = lacking.map(([from, to]) => say`${from} to ${to}`).join(', ');
    const rest =
      looks === 1
        ? say`Neither way showed ${places}.`
        : say`Seen fewer than ${looks} times: ${places}.`;
    return say`Of the travel, ${tenths}.${lacking.length > 0 ? say` ${rest}` : ''}`;
  });
}

/** What was done to the sensor, as a phrase. */
const testPhrases: Readonly<Record<DeliberateTest, string>> = {
  'harness-flexed': 'flexing the harness',
  'housing-tapped': 'tapping the housing',
  warmed: 'warming the sensor',
};

/**
 * Which tests would tell a connection from the track.
 *
 * @example
 * testsNotDoneSentence(['warmed']) // => 'Not noted in the recording: warming the sensor, with the shaft held still. What then appears tells a connection from the track.'
 */
export function testsNotDoneSentence(tests: readonly DeliberateTest[]): string {
  listOf(codeOf(testPhrases))(tests, 'tests');
  const phrases = tests.map((test) => testPhrases[test]).join(', ');
  return say`Not noted in the recording: ${phrases}, with the shaft held still. What then appears tells a connection from the track.`;
}
