import type {
  Advice,
  CaptureQuality,
  Cause,
  Check,
  CheckCode,
  Finding,
  Fraction,
  Seconds,
  TextPlace,
  Travel,
  Verdict,
  Volts,
} from '@truesweep/core';
import type { DelimitedReading, SoundReading } from '@truesweep/recordings';
import type { RecordingIdentity } from './identifyRecording.js';

/** What a recording is filed by; nothing is judged by it. */
export interface RecordingFacts {
  /** The file as it was named, or what recording it is where bytes came without a file. */
  readonly file: string;
  /** The job's title. */
  readonly job: string;
  /** Which sensor was recorded: what was told with the recording, else the sensor's name in the job. */
  readonly sensor: string;
  /** When it was recorded, as it was told: any text; left out where it was not told. */
  readonly date?: string;
  /** What else was told of it; left out where nothing was. */
  readonly note?: string;
}

/** A reading at a stop. */
export interface EndReading {
  /** What was read, V, any. */
  readonly volts: Volts;
  /** Its standard uncertainty, V, 0 or more; left out where none is known. */
  readonly uncertainty?: Volts;
}

/** The departure that leads farthest from the path. */
export interface WorstPlace {
  /** What it is. */
  readonly kind: Finding['kind'];
  /** When it begins, s, on the recording's clock; any. */
  readonly start: Seconds;
  /** Where the throttle stood, 0 closed to 1 open; left out where the readings tell no place. */
  readonly travel?: Travel;
  /** How far it leads from the path, V, any; its sign is that of the departure. */
  readonly depth: Volts;
  /** The same as a fraction of the span between the closed and the open reading, without sign, 0 or more. */
  readonly depthOfSpan: Fraction;
  /** Passes over this place, 1 or more, and how many of them showed a departure; left out where it stands for itself. */
  readonly spot?: { readonly passes: number; readonly seen: number };
}

/** The check that came nearest to its limit, or the farthest beyond it. */
export interface NearestLimit {
  /** Which comparison it is. */
  readonly check: CheckCode;
  /**
   * How far inside it is, a ratio: 1 in the middle between two limits, or as far from a single limit as that is from zero; 0 at the limit; negative
   * outside.
   */
  readonly margin: number;
}

/** A recording in few columns, for a small picture: every sample lies between the lowest and the highest reading of its column. */
export interface SmallTrace {
  /** Time at the first column's left edge, s; any. */
  readonly start: Seconds;
  /** Time at the last column's right edge, s; after `start`. */
  readonly end: Seconds;
  /** How many equal columns the stretch is parted into, 1 or more. */
  readonly columns: number;
  /** Which of them hold samples, rising from 0: places among the columns. */
  readonly column: readonly number[];
  /** Lowest reading in each of these, V, any, to four digits. */
  readonly low: readonly Volts[];
  /** Highest reading in each of these, V, any, to four digits. */
  readonly high: readonly Volts[];
}

/** What stands in either result. */
interface Result extends RecordingFacts {
  /** The version of truesweep that judged it. */
  readonly version: string;
  /** When it was judged: UTC, ISO 8601. It is no part of the key. */
  readonly judgedAt: string;
}

/** A judged recording as plain data that JSON keeps as it is: what a queue hands back and a history stores. */
export interface JudgedRecording extends Result, RecordingIdentity {
  /**
   * SHA-256 (FIPS 180-4) over the recording's bytes, what the job judges by and how it has the recording read, all limits, and the version: 64
   * hexadecimal digits. Of one key there is one judgement, whatever the names and whenever it is made.
   */
  readonly key: string;
  /** What the recording says of the sensor as hooked up and recorded. */
  readonly verdict: Verdict;
  /** The probability that the verdict is one that the sensor deserves, 0.5 to 0.99; left out where it is inconclusive, and for a recorder coupled through a capacitor. */
  readonly confidence?: Fraction;
  /** The best supported cause first, with its weight, 0 to 1. */
  readonly causes: readonly { readonly cause: Cause; readonly weight: Fraction }[];
  /** What to do next, as codes, the first first. */
  readonly advice: readonly Advice[];
  /** The closed reading; left out where none was found. */
  readonly closed?: EndReading;
  /** The open reading; left out where none was found. */
  readonly open?: EndReading;
  /** Standard deviation of the noise, V, 0 or more. */
  readonly noise: Volts;
  /** The smallest departure that counts as visible, V, 0 or more. */
  readonly visible: Volts;
  /** Where it is worst; left out where nothing departs. */
  readonly worst?: WorstPlace;
  /** Closed reading after returns by hand less that after returns by the spring, V, any; left out where either is missing. */
  readonly hysteresis?: Volts;
  /** How far the deepest rough patch leads from the path, as a fraction of the span between the closed and the open reading, 0 or more; 0 where there is none. */
  readonly roughness: Fraction;
  /** How many departures were found: a count, 0 or more. */
  readonly findings: number;
  /** The check that decides or comes next to it; left out where none has a margin. */
  readonly nearest?: NearestLimit;
  /** Every comparison, in the order of judging. */
  readonly checks: readonly Check[];
  /** How well the recording can show what happened. */
  readonly quality: CaptureQuality;
  /** How the file was read. */
  readonly reading: DelimitedReading | SoundReading;
  /** The recording in small. */
  readonly trace: SmallTrace;
}

/** A recording that could not be judged, as plain data. */
export interface RefusedRecording extends Result, Partial<RecordingIdentity> {
  /** As of a judged recording; left out where it isn't the bytes that are refused, so that another try may come out otherwise. */
  readonly key?: string;
  /** Why. */
  readonly refused: {
    /** Stable name of the kind of mistake. */
    readonly code: string;
    /** The file, or the field of the job, that was wrong. */
    readonly path: string;
    /** Line and column, where the input was text; left out elsewhere. */
    readonly place?: TextPlace;
    /** What was wrong and what would be right. */
    readonly sentence: string;
  };
}

/** What became of a recording. */
export type RecordingResult = JudgedRecording | RefusedRecording;
