import { checkText } from '@truesweep/core';
import { coverageSentence } from './evidenceSentences.js';
import { texts } from './rules.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Words that stand in the drawings only, short enough for a narrow screen; parts are named by `partLabels`.
 *
 * @example
 * drawingWords.track // => 'Track'
 */
export const drawingWords = {
  circuit: 'The sensor on the bench',
  sensor: 'Sensor',
  track: 'Track',
  contact: 'Contact',
  load: 'Load',
  endResidual: 'End residual',
  inside: 'inside',
  limitedTo: 'limit',
  noSingleValue: 'no single value',
  reading: 'Reading',
  closed: 'closed',
  open: 'open',
  curve: 'Expected reading over travel',
  difference: 'Lower by',
  travel: 'Travel',
  time: 'Time',
  trace: 'The recorded sweep',
  travelMap: 'Findings over the travel, pass by pass',
  seen: 'seen',
  passes: 'Passes laid over one another',
  hookUp: 'The hook-up on the bench',
  limiter: 'limiter',
  supply: 'supply',
  ground: 'ground',
  signal: 'signal',
  recorder: 'recorder',
  meter: 'meter',
  setting: 'How the recorder is set',
  volts: 'Volts',
  trigger: 'Trigger',
  square: 'a square',
  direct: 'direct (DC)',
  probe: 'probe',
  terminals: 'Measuring between two terminals',
} as const;

/** What the circuit's drawing shows, for those who don't see it; every quantity written with its unit. */
export interface CircuitFacts {
  /** The source's voltage. */
  readonly source: string;
  /** The limiting resistor. */
  readonly limiter: string;
  /** The track's resistance. */
  readonly track: string;
  /** The wiper's place on the track and the reading at the closed stop. */
  readonly closed: { readonly position: string; readonly reading: string };
  /** The wiper's place on the track and the reading at the open stop. */
  readonly open: { readonly position: string; readonly reading: string };
}

/**
 * The circuit's drawing in a sentence or two.
 *
 * @example
 * circuitSentence({
 *   source: '5 V',
 *   limiter: '1 kΩ',
 *   track: '5 kΩ',
 *   closed: { position: '10 %', reading: '417 mV' },
 *   open: { position: '90 %', reading: '3.75 V' },
 * }).split('; ')[1] // => 'closed, at 10 % of the track, it reads 417 mV'
 */
export function circuitSentence(facts: CircuitFacts): string {
  return whole(facts, 'facts', () => {
    const { source, limiter, track, closed, open } = facts;
    return (
      say`A source of ${source} feeds a track of ${track} through a limiting resistor of ${limiter}. ` +
      say`The wiper goes to the instrument; closed, at ${closed.position} of the track, it reads ${closed.reading}; ` +
      say`open, at ${open.position}, it reads ${open.reading}.`
    );
  });
}

/** What the curve's drawing shows; every quantity written with its unit. */
export interface CurveFacts {
  /** The reading at the closed end of the curve. */
  readonly first: string;
  /** The reading at its open end. */
  readonly last: string;
  /** The window of the closed stop; left out where none is drawn. */
  readonly closed?: { readonly low: string; readonly high: string };
  /** The window of the open stop; left out where none is drawn. */
  readonly open?: { readonly low: string; readonly high: string };
  /** How far it is at most from the curve that it is compared with; left out where it is compared with none. */
  readonly difference?: string;
}

/**
 * The curve's drawing in a sentence or two.
 *
 * @example
 * curveSentence({ first: '417 mV', last: '3.75 V' }) // => 'The reading goes from 417 mV closed to 3.75 V open.'
 */
export function curveSentence(facts: CurveFacts): string {
  return whole(facts, 'facts', () => {
    const { first, last, closed, open, difference } = facts;
    const windows =
      closed && open
        ? say` The window is ${closed.low} to ${closed.high} closed and ${open.low} to ${open.high} open.`
        : '';
    const compared =
      difference === undefined ? '' : say` It is at most ${difference} off the dashed line.`;
    return say`The reading goes from ${first} closed to ${last} open.${windows}${compared}`;
  });
}

/**
 * The trace's drawing in a sentence; every quantity written with its unit.
 *
 * @example
 * traceSentence({ seconds: '12 s', low: '0 V', high: '4 V', findings: 1 }) // => '12 s of signal between 0 V and 4 V; 1 finding is marked.'
 */
export function traceSentence(trace: {
  readonly seconds: string;
  readonly low: string;
  readonly high: string;
  readonly findings: number;
}): string {
  return whole(trace, 'trace', () => {
    const { seconds, low, high, findings } = trace;
    return say`${seconds} of signal between ${low} and ${high}; ${markedWords(findings)}.`;
  });
}

/**
 * The travel map in a sentence or two.
 *
 * @param map The places that several passes showed, each as a percentage of the travel.
 *
 * @example
 * const seen = { opening: 10, closing: 9 };
 * travelMapSentence({ passes: 6, findings: 0, seen, places: [] }).split('. ')[0] // => '6 passes; nothing is marked'
 */
export function travelMapSentence(map: {
  readonly passes: number;
  readonly findings: number;
  /** How many tenths of the travel were seen each way. */
  readonly seen: { readonly opening: number; readonly closing: number };
  readonly places: readonly string[];
}): string {
  return whole(map, 'map', () => {
    const { passes, findings, seen, places } = map;
    texts(places, 'map.places');
    const again =
      places.length > 0 ? say` Several passes showed the same place: ${places.join(', ')}.` : '';
    return say`${passes} passes; ${markedWords(findings)}.${again} ${coverageSentence({ ...seen, looks: 1, lacking: [] })}`;
  });
}

/**
 * The hook-up as it lies on the bench, in a sentence or two; every quantity written with its unit.
 *
 * @example
 * const hookUp = { source: '5 V', limiter: '1 kΩ', track: '5 kΩ', instrument: 'trace' } as const;
 * hookUpPictureSentence(hookUp).includes('through 1 kΩ') // => true
 */
export function hookUpPictureSentence(hookUp: {
  readonly source: string;
  readonly limiter: string;
  readonly track: string;
  readonly instrument: 'trace' | 'digits';
}): string {
  return whole(hookUp, 'hookUp', () => {
    const { source, limiter, track, instrument } = hookUp;
    const watches = instrument === 'trace' ? 'a recorder' : 'a meter';
    return (
      say`A throttle body with its sensor of ${track}. A supply of ${source} feeds the sensor's supply pin through ${limiter}; ` +
      say`its ground pin goes back to the supply; ${watches} watches the signal pin against ground.`
    );
  });
}

/**
 * A recorder's front as it is to be set, in a sentence; every quantity written with its unit.
 *
 * @example
 * const front = { time: '500 ms', volts: '1 V', trigger: '↓ 200 mV', probe: '×10' };
 * settingPictureSentence(front) // => '500 ms and 1 V a square, trigger ↓ 200 mV, coupled directly, probe ×10.'
 */
export function settingPictureSentence(setting: {
  readonly time: string;
  readonly volts: string;
  readonly trigger: string;
  readonly probe: string;
}): string {
  return whole(setting, 'setting', () => {
    const { time, volts, trigger, probe } = setting;
    return say`${time} and ${volts} a square, trigger ${trigger}, coupled directly, probe ${probe}.`;
  });
}

/**
 * The unplugged sensor under an ohmmeter, in a sentence.
 *
 * @example
 * terminalsPictureSentence('closed') // => 'The unplugged sensor with its terminals A, B and C, an ohmmeter between two of them; the throttle is held closed.'
 */
export function terminalsPictureSentence(stop: 'closed' | 'open'): string {
  checkText(stop, 'stop');
  return say`The unplugged sensor with its terminals A, B and C, an ohmmeter between two of them; the throttle is held ${drawingWords[stop]}.`;
}

/**
 * Passes laid over one another, in a sentence.
 *
 * @param passes How many, 0 or more, and how many `findings` are marked.
 *
 * @example
 * passesSentence(6, 1) // => '6 passes over the travel beside the expected curve; 1 finding is marked.'
 */
export function passesSentence(passes: number, findings: number): string {
  const counted = passes === 1 ? '1 pass' : say`${passes} passes`;
  return say`${counted} over the travel beside the expected curve; ${markedWords(findings)}.`;
}

function markedWords(findings: number): string {
  if (findings === 0) return 'nothing is marked';
  return findings === 1 ? '1 finding is marked' : say`${findings} findings are marked`;
}

/**
 * A window as it stands beside its mark.
 *
 * @example
 * windowWords('3.55 V', '3.93 V') // => '3.55 V to 3.93 V'
 */
export function windowWords(low: string, high: string): string {
  return say`${low} to ${high}`;
}
