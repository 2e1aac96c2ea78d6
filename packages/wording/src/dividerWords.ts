import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Words of the loaded divider that one plays with.
 *
 * @example
 * dividerWords.load // => 'Load from the wiper to common'
 */
export const dividerWords = {
  title: 'Load it and see',
  load: 'Load from the wiper to common',
  position: 'Wiper, up the track',
  limiter: 'Limiting resistor',
  noLimiter: 'none',
  steps: 'With these numbers, step by step',
  off: (value: string, off: string): string => say`${value}: the load takes ${off}`,
} as const;

/** What a loaded divider is told by; every quantity written with its unit. */
export interface DividerFacts {
  /** The source's voltage. */
  readonly source: string;
  /** The limiting resistor. */
  readonly limiter: string;
  /** The track's resistance. */
  readonly track: string;
  /** The load from the wiper to common. */
  readonly load: string;
  /** The track below the wiper. */
  readonly position: string;
  /** The track above it. */
  readonly above: string;
  /** The reading without the load. */
  readonly unloaded: string;
  /** The resistance that the load sees. */
  readonly seen: string;
  /** The reading with the load. */
  readonly loaded: string;
  /** By how much the load lowers it. */
  readonly off: string;
  /** The same, as a part of the source's voltage. */
  readonly part: string;
  /** Where the load lowers the reading most, and by how much. */
  readonly most: { readonly position: string; readonly off: string };
}

/** What is said of a loaded divider. */
export interface DividerSentences {
  /** What the load does. */
  readonly answer: readonly string[];
  /** How that is reckoned: each step's name, the place of its formula on its page, and the numbers put in. */
  readonly steps: readonly {
    readonly what: string;
    readonly formula: string;
    readonly line: string;
  }[];
}

/**
 * What a load does to a reading, and how that is reckoned with its numbers.
 *
 * @example
 * const said = dividerSentences({
 *   ...{ source: '5 V', limiter: '1 kΩ', track: '5 kΩ', load: '10 kΩ', position: '67 %', above: '33 %' },
 *   ...{ unloaded: '2.79 V', seen: '1.48 kΩ', loaded: '2.43 V', off: '360 mV', part: '7.2 %' },
 *   most: { position: '81.7 %', off: '393 mV' },
 * });
 * said.answer[1] // => 'It bends the line most at 81.7 % of the track, by 393 mV.'
 * said.steps[2].line // => '2.79 V · 10 kΩ / (1.48 kΩ + 10 kΩ) = 2.43 V'
 */
export function dividerSentences(facts: DividerFacts): DividerSentences {
  return whole(facts, 'facts', () => {
    const { source, limiter, track, load, position, above, unloaded, seen, loaded, off } = facts;
    const { part, most } = facts;
    const step = (what: string, formula: string, line: string) => ({ what, formula, line });
    return {
      answer: [
        say`At ${position} of the track a load of ${load} takes ${off}, ${part} of the source, off the ${unloaded} that stand there without it: it reads ${loaded}.`,
        say`It bends the line most at ${most.position} of the track, by ${most.off}.`,
      ],
      steps: [
        step(
          'Reading without the load',
          'unloaded-output',
          say`${source} · ${position} · ${track} / (${limiter} + ${track}) = ${unloaded}`,
        ),
        step(
          'Resistance that the load sees, looking back into the wiper',
          'source-resistance',
          say`${position} · ${track} · (${above} · ${track} + ${limiter}) / (${track} + ${limiter}) = ${seen}`,
        ),
        step(
          'Reading with the load',
          'loaded-output',
          say`${unloaded} · ${load} / (${seen} + ${load}) = ${loaded}`,
        ),
        step(
          'What the load takes off it',
          'loaded-output',
          say`${unloaded} · ${seen} / (${seen} + ${load}) = ${off}`,
        ),
      ],
    };
  });
}
