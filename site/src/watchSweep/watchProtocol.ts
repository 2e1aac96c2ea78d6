import type {
  AbruptDeparture,
  Coverage,
  DeliberateTest,
  Finding,
  Hint,
  Missing,
  Seconds,
  UnitThatFits,
  Volts,
} from '@truesweep/core';
import type { Job } from '@truesweep/jobs';
import type { Look, ReadBy } from '../checkSweep/protocol.js';
import type { KeepTrouble, KeptRecording, Piece } from './recordingStore.js';

/** What is recorded, and by what it is watched. */
export interface WatchPlan {
  /** The recording's own among all that are kept. */
  readonly id: string;
  readonly job: Job;
  readonly read: ReadBy;
  /** When it was begun, ISO 8601. */
  readonly startedAt: string;
}

/** What a page asks of the worker that watches. */
export type WatchAsked =
  /** To tell whether the bytes that come from now on are lines of a recorder: a rate is tried. */
  | { readonly kind: 'try' }
  /** To watch what comes from now on. */
  | { readonly kind: 'begin'; readonly plan: WatchPlan }
  /** The next bytes of a port, and when they came on the page's clock, s. */
  | { readonly kind: 'bytes'; readonly bytes: Uint8Array; readonly arrived: Seconds }
  /** Where the samples of a sound input come, a `Float32Array` at a time, and how many of them a second. */
  | { readonly kind: 'sound'; readonly samples: MessagePort; readonly rate: number }
  /** Bytes were lost here. */
  | { readonly kind: 'lost' }
  | { readonly kind: 'mark'; readonly test: DeliberateTest }
  /** To read the lines otherwise, from the beginning. */
  | { readonly kind: 'read'; readonly read: ReadBy }
  | { readonly kind: 'end' };

/** The latest seconds of a running recording, judged by themselves. */
export interface WatchedRecent {
  readonly findings: readonly (Finding | AbruptDeparture)[];
  /** How many findings there were so far. */
  readonly found: number;
  readonly hints: readonly Hint[];
  /** The latest sample's time, s. */
  readonly latest: Seconds;
}

/** How a recording stands. */
export interface Standing {
  readonly seconds: Seconds;
  readonly samples: number;
  readonly damagedLines: number;
  readonly gaps: number;
  /** Whether something came, and nothing of it is text. */
  readonly isNoText: boolean;
}

/** All that is kept of a recording, judged. */
export interface JudgedSoFar {
  readonly coverage: Coverage;
  readonly looksAskedFor: number;
  readonly missing: readonly Missing[];
  /** The units that the numbers may be in, where they can't be in those that they were taken for. */
  readonly units: readonly UnitThatFits[];
}

/** What the worker that watches tells. */
export type WatchTold =
  /** Whether a rate that is tried is right. */
  | { readonly kind: 'tried'; readonly isRight: boolean }
  /** What must be read at the stops, V; undefined where the input tells no level. */
  | { readonly kind: 'levels'; readonly closed?: Volts; readonly open?: Volts }
  /** The lowest and highest reading of each hundredth of a second from one on, V; NaN where there is none; and the latest reading. */
  | {
      readonly kind: 'columns';
      readonly first: number;
      readonly low: Float32Array;
      readonly high: Float32Array;
      readonly latest: Seconds;
      readonly volts: Volts;
    }
  | { readonly kind: 'recent'; readonly recent: WatchedRecent }
  | { readonly kind: 'standing'; readonly standing: Standing }
  | { readonly kind: 'so-far'; readonly judged: JudgedSoFar }
  /** The test that runs now; undefined where none does. */
  | { readonly kind: 'marked'; readonly test: DeliberateTest | undefined }
  /** The lines don't tell how they are read, or tell it: what was seen of them. */
  | { readonly kind: 'looked'; readonly look: Look; readonly read: ReadBy }
  | { readonly kind: 'not-kept'; readonly trouble: KeepTrouble }
  /** Nothing can be watched with this job. */
  | { readonly kind: 'refused'; readonly refusal: string }
  /** It was stopped: the recording, and of its pieces the last ones, where the browser's storage did not take them. */
  | {
      readonly kind: 'ended';
      readonly standing: Standing;
      readonly recording: KeptRecording;
      readonly rest: readonly Piece[];
    };
