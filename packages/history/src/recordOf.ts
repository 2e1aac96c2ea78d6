import {
  type Cause,
  type Check,
  checkReadable,
  type Fraction,
  InputError,
  type Verdict,
  type Volts,
} from '@truesweep/core';
import type { JudgedRecording } from '@truesweep/jobs/node';
import { checkRecord } from './checkRecord.js';
import { dateInName, dateSeconds } from './dates.js';
import type { EndRecord, HistoryRecord } from './historyRecord.js';

/** What a judgement says that a record keeps. */
export interface JudgedFacts {
  readonly verdict: Verdict;
  readonly causes: readonly { readonly cause: Cause; readonly weight: Fraction }[];
  readonly checks: readonly Check[];
  readonly noise: Volts;
  readonly visible: Volts;
  readonly hysteresis?: Volts | undefined;
  readonly roughness: Fraction;
  readonly findings: number;
  readonly worst?: HistoryRecord['worst'] | undefined;
  readonly recorder: HistoryRecord['recorder'];
}

/** What a recording is filed by. */
export interface RecordFacts {
  /** Which sensor: its serial number or name. */
  readonly sensor: string;
  /** SHA-256 over the recording's bytes: 64 hexadecimal digits. */
  readonly sha256: string;
  /** The recording's file. */
  readonly file: string;
  /** When it was recorded, as it was told; not told when left out. */
  readonly date?: string | undefined;
  /** What else was told of it; nothing when left out. */
  readonly note?: string | undefined;
  /** The version of truesweep that judged it; not known when left out. */
  readonly version?: string | undefined;
}

/**
 * What is kept of a judged recording. Its date is the one that was told with it or, where none was that can be read, the ISO 8601 date in the name of its
 * file.
 *
 * @param judged As `judgeOne` or a batch gave it.
 *
 * @example
 * import { judgeOne, loadJob } from '@truesweep/jobs/node';
 * const job = await loadJob('examples/outboard-sensor.job.json');
 * const worn = await judgeOne('examples/recordings/worn.csv', job, { sensor: 'Port engine', date: '2026-05-03' });
 * const { sensor, date, verdict, worst } = recordOf(worn);
 * [sensor, date, verdict, worst.kind] // => ['Port engine', '2026-05-03', 'fail', 'dropout']
 */
export function recordOf(
  judged: Omit<JudgedRecording, 'judgedAt' | 'trace' | 'reading'>,
): HistoryRecord {
  const { quality } = checkedJudged(judged);
  return recordOfFacts(judged, {
    ...judged,
    recorder: { interval: quality.sampledEvery, resolution: quality.resolution },
  });
}

/** What a record is made of besides what is checked in the record itself. */
function checkedJudged<Judged>(judged: Judged): Judged {
  checkReadable(judged, 'judged');
  const { checks, causes, quality, sensor, file } = (judged ?? {}) as unknown as Record<
    string,
    unknown
  >;
  const isWhole =
    Array.isArray(checks) &&
    Array.isArray(causes) &&
    [...checks, ...causes, quality].every((one) => typeof one === 'object' && one !== null) &&
    typeof sensor === 'string' &&
    typeof file === 'string';
  if (isWhole) return judged;
  throw new InputError(
    'unreadable',
    'judged',
    'judged must be a judged recording, as judgeOne or a batch gives it.',
  );
}

/** A record of what was judged and what it is filed by. */
export function recordOfFacts(facts: RecordFacts, judged: JudgedFacts): HistoryRecord {
  const { sensor, sha256, file, date: told, note, version } = facts;
  const { verdict, causes, checks, hysteresis, worst } = judged;
  const isTold = told !== undefined && dateSeconds(told) !== undefined;
  const date = isTold ? told.trim() : dateInName(file);
  const cause = causes[0]?.cause;
  const { closed, open } = endsOf(checks);
  return checkRecord({
    kind: 'truesweep-record',
    form: 1,
    sensor: sensor.trim(),
    recording: sha256,
    ...(date !== undefined && { date, dateFrom: isTold ? 'told' : 'file-name' }),
    file,
    ...(note !== undefined && { note }),
    ...(version !== undefined && { version }),
    verdict,
    ...(cause && { cause }),
    ...(closed && { closed }),
    ...(open && { open }),
    noise: judged.noise,
    visible: judged.visible,
    ...(hysteresis !== undefined && { hysteresis }),
    roughness: judged.roughness,
    findings: judged.findings,
    ...(worst && {
      worst: {
        kind: worst.kind,
        ...(worst.travel !== undefined && { travel: worst.travel }),
        depthOfSpan: worst.depthOfSpan,
      },
    }),
    recorder: judged.recorder,
  });
}

function endsOf(checks: readonly Check[]): Pick<HistoryRecord, 'closed' | 'open'> {
  const [closed, open] = (['closed-end', 'open-end'] as const).map((end) =>
    checks.find(({ check }) => check === end),
  );
  // Positive where the output rises from closed to open.
  const rise =
    (open?.lowLimit ?? 0) +
    (open?.highLimit ?? 0) -
    (closed?.lowLimit ?? 0) -
    (closed?.highLimit ?? 0);
  const [first, last] = [endOf(closed, rise), endOf(open, -rise)];
  return { ...(first && { closed: first }), ...(last && { open: last }) };
}

/**
 * A stop with its window, and its reading but where that lies on the inner side of the window and could not be judged: the throttle may never have come to the
 * stop.
 *
 * @param inner The sign of the way from this stop to the other on the voltage scale.
 */
function endOf(check: Check | undefined, inner: number): EndRecord | undefined {
  const { measured, uncertainty, lowLimit: low, highLimit: high, outcome } = check ?? {};
  if (low === undefined || high === undefined) return undefined;
  if (measured === undefined) return { low, high };
  const isInside = inner > 0 ? measured > high : measured < low;
  if (outcome === 'cannot-tell' && isInside) return { low, high };
  return { volts: measured, ...(uncertainty !== undefined && { uncertainty }), low, high };
}
