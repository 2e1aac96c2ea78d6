import type { Cause, Finding, Fraction, Seconds, Travel, Verdict, Volts } from '@truesweep/core';

/** A stop: what it read, with the window that it was judged by. */
export interface EndRecord {
  /** What was read, V, any; left out where nothing was, or the stop may never have been reached. */
  readonly volts?: Volts;
  /** Its standard uncertainty, V, 0 or more; left out where none is known. */
  readonly uncertainty?: Volts;
  /** The least that this stop should have read on that hook-up, V, any. */
  readonly low: Volts;
  /** The most that it should have read, V; not below `low`. */
  readonly high: Volts;
}

/** What is kept of one judged recording of a sensor, as plain data. */
export interface HistoryRecord {
  /** What marks a record among other data. */
  readonly kind: 'truesweep-record';
  /** The version of this form. */
  readonly form: 1;
  /** Which sensor: its serial number or name; a text that is not empty. */
  readonly sensor: string;
  /** SHA-256 (FIPS 180-4) over the recording's bytes: 64 hexadecimal digits. */
  readonly recording: string;
  /** When it was recorded: an ISO 8601 date, or date and time; left out where that is not known. */
  readonly date?: string;
  /** Where the date was found: told with the recording, in its file's name, or when it was judged, on a shelf; left out where there is none. */
  readonly dateFrom?: 'told' | 'file-name' | 'judged';
  /** The recording's file, as it was named. */
  readonly file: string;
  /** What was told with it; left out where nothing was. */
  readonly note?: string;
  /** The version of truesweep that judged it; left out where that is not known. */
  readonly version?: string;
  /** What it came to. */
  readonly verdict: Verdict;
  /** The best supported cause; left out where there is none. */
  readonly cause?: Cause;
  /** The closed stop; left out where it had no window. */
  readonly closed?: EndRecord;
  /** The open stop; left out where it had no window. */
  readonly open?: EndRecord;
  /** Standard deviation of the noise, V, 0 or more. */
  readonly noise: Volts;
  /** The smallest departure that counted as visible, V, 0 or more. */
  readonly visible: Volts;
  /** Closed reading after returns by hand less that after returns by the spring, V, any; left out where one of them is missing. */
  readonly hysteresis?: Volts;
  /** How deep the deepest rough patch is, fraction of the span, 0 or more. */
  readonly roughness: Fraction;
  /** How many departures were found: a count, 0 or more. */
  readonly findings: number;
  /** The deepest departure; left out where there is none. */
  readonly worst?: {
    /** What it is. */
    readonly kind: Finding['kind'];
    /** Where: travel, 0 closed to 1 open; left out where that can't be told. */
    readonly travel?: Travel;
    /** How deep, fraction of the span, 0 or more. */
    readonly depthOfSpan: Fraction;
  };
  /** What it was recorded with: only where these are alike can noise be compared. */
  readonly recorder: {
    /** Time between two samples, s, above 0. */
    readonly interval: Seconds;
    /** Its smallest step, V, 0 or more. */
    readonly resolution: Volts;
  };
}
