import {
  checkFields,
  type FieldRules,
  InputError,
  type LiveSweep,
  liveSweep,
  type Missing,
  missingIn,
  type ProvisionalScore,
  type Score,
  type Seconds,
  type Stretch,
} from '@truesweep/core';
import {
  type DelimitedOptions,
  type LiveReading,
  type LiveSamples,
  liveReader,
  type Samples,
} from '@truesweep/recordings';
import { checkText } from './checkInput.js';
import type { Job } from './job.js';
import { jobCriteria } from './jobCriteria.js';
import { jobExpectation } from './jobExpectation.js';
import { jobRecorder } from './jobRecorder.js';

/** What a recording that runs shows so far, and what it still lacks. */
export interface WatchedSoFar {
  /** All that is kept, judged. */
  readonly score: Score;
  /** What is still asked for, in the order in which it is done best; empty: it is enough. */
  readonly missing: readonly Missing[];
}

/** A sweep that is watched while it is recorded. */
export interface WatchedSweep {
  /**
   * Takes the next bytes of a recorder that writes lines.
   *
   * @param arrived When they came, s, on a clock that runs on; left out where that means nothing.
   * @returns The samples that they completed, and the same as text to save.
   * @throws InputError where the columns can't be told, as `liveReader` does.
   */
  feed(bytes: Uint8Array, arrived?: Seconds): LiveSamples;
  /** Takes the next samples of a recorder that gives such: times in s that never run back, the signal in V. */
  feedSamples(samples: Pick<Samples, 'time' | 'signal'>): void;
  /** Says that bytes were lost here, as where a plug was pulled, and whether what comes next may be half a line; so when left out. */
  lost(isHalfNext?: boolean): void;
  /** Begins a deliberate test at the latest sample, or ends the one that runs; gives the one that runs then. */
  mark(kind: Stretch['kind']): Stretch['kind'] | undefined;
  /** The latest seconds judged by themselves: call it often. Undefined before there are two samples. */
  recent(): ProvisionalScore | undefined;
  /** All that is kept, judged: call it now and then, it takes longer the more there is. Undefined where too little is there to be judged. */
  soFar(): WatchedSoFar | undefined;
  /** Reads what is left of the lines; a test that runs ends with the last sample. */
  end(): LiveSamples;
  /** How the lines are read. */
  reading(): LiveReading;
  /** The deliberate tests that were marked and have ended. */
  stretches(): readonly Stretch[];
}

/** What is known beforehand of what is watched. */
export interface WatchOptions {
  /** How its lines are written; found out when left out. */
  readonly text?: Omit<DelimitedOptions, 'name'>;
  /** What it is called, for errors; `recording` when left out. */
  readonly name?: string;
  /** Whether its first line may be half of one, as of a port; not so when left out. */
  readonly fromMiddle?: boolean;
  /** So many of the latest samples are kept at least, 2¹⁹ or more; all when left out. */
  readonly mostKept?: number;
}

const elsewhere = () => {};
/** What is handed on is looked at there. */
const optionRules: FieldRules = {
  'text?': elsewhere,
  'name?': checkText,
  'fromMiddle?': elsewhere,
  'mostKept?': elsewhere,
};

const kinds: readonly Stretch['kind'][] = [
  'sweep',
  'rest',
  'harness-flexed',
  'housing-tapped',
  'warmed',
];

/**
 * Watches a sweep of a job's sensor while it is recorded: reads its lines, judges the latest seconds, and says what the recording still lacks. It is
 * judged for good as a file, once it is saved.
 *
 * @throws InputError where the hook-up has no single output, or for an option.
 *
 * @example
 * const job = parseJob({
 *   version: 3,
 *   title: 'Spare sensor from the shelf',
 *   sensor: { kind: 'potentiometer', name: 'Outboard throttle sensor', track: 5000 },
 *   hookUp: { source: { volts: 5 }, limiter: 1000 },
 *   instrument: { name: 'Bench logger', inputResistance: '10M', resolution: '1 mV' },
 * });
 * const watched = watchSweep(job);
 * const lines = Array.from({ length: 100 }, (_, i) => `${10 * i};0.5`);
 * watched.feed(new TextEncoder().encode(`time (ms);signal (V)\n${lines.join('\n')}\n`));
 * watched.soFar()?.missing[0] // => { missing: 'sweeps', count: 3 }
 */
export function watchSweep(job: Job, options: WatchOptions = {}): WatchedSweep {
  checkFields(options, 'options', optionRules);
  const { text, name = 'recording', fromMiddle = false, mostKept } = options;
  const reader = liveReader({ ...text, name }, fromMiddle);
  const live: LiveSweep = liveSweep(
    jobExpectation(job),
    jobRecorder(job),
    jobCriteria(job),
    mostKept,
  );
  const stretches: Stretch[] = [];
  let running: { readonly kind: Stretch['kind']; readonly start: Seconds } | undefined;
  let first: Seconds | undefined;
  let last: Seconds | undefined;

  const take = <Taken extends Samples>(samples: Taken): Taken => {
    const { time, signal, supply, unread } = samples;
    live.feed(time, signal, supply, unread);
    first ??= time[0];
    last = time.at(-1) ?? last;
    return samples;
  };

  const endTest = (): void => {
    if (running && last !== undefined && last > running.start) {
      stretches.push({ ...running, end: last });
    }
    running = undefined;
  };

  /** What was marked, the test that runs included. */
  const marked = (): readonly Stretch[] =>
    running && last! > running.start ? [...stretches, { ...running, end: last! }] : stretches;

  return {
    feed: (bytes, arrived) => take(reader.feed(bytes, arrived)),
    feedSamples: (samples) => {
      take(samples);
    },
    lost: reader.lost,
    mark(kind) {
      checkFields({ kind }, 'mark', { kind: kinds });
      const isSame = running?.kind === kind;
      endTest();
      if (!isSame && last !== undefined) running = { kind, start: last };
      return running?.kind;
    },
    recent: () => (last === first ? undefined : live.provisional()),
    soFar() {
      if (last === first) return undefined;
      try {
        const score = live.soFar(marked());
        return { score, missing: missingIn(score) };
      } catch (error) {
        if (error instanceof InputError) return undefined;
        throw error;
      }
    },
    end() {
      const rest = take(reader.end());
      endTest();
      return rest;
    },
    reading: reader.reading,
    stretches: () => stretches,
  };
}
