import { existsSync, rmSync } from 'node:fs';
import { basename } from 'node:path';
import type { Seconds, Stretch, Sweep } from '@truesweep/core';
import { InputError } from '@truesweep/core';
import { type Job, jobExpectation, watchSweep } from '@truesweep/jobs';
import { saveJob } from '@truesweep/jobs/node';
import type { DelimitedOptions, LiveReading, LiveSamples } from '@truesweep/recordings';
import {
  cannotSaveSentence,
  gapsText,
  nothingCameSentence,
  unitsTakenText,
} from '@truesweep/wording';
import type { ChosenSource } from './chooseSource.js';
import type { LiveState } from './liveState.js';
import { savedRecording } from './savedRecording.js';

/** How a recording is watched and where it is saved. */
export interface WatchPlan {
  readonly job: Job;
  readonly source: ChosenSource;
  /** How its lines are written, as far as it is known. */
  readonly text: DelimitedOptions;
  /** Whether the rate of a serial line was told. */
  readonly isRateTold: boolean;
  /** The recording's file and its job's. */
  readonly file: string;
  readonly jobFile: string;
  /** It ends after so much was recorded, or after so long without anything, s; by itself only where left out. */
  readonly longest?: Seconds;
  readonly idle?: Seconds;
}

/** What was recorded. */
export interface Recorded {
  readonly samples: number;
  readonly reading: LiveReading;
}

/** Who watches. */
export interface Watcher {
  /** Told how it stands, ten times a second. */
  readonly show: (state: LiveState) => void;
  /** Given what ends the recording and what marks a test. */
  readonly control: (end: () => void, mark: (test: Stretch['kind']) => void) => void;
}

/** So much is read at a time, bytes. */
const pieceBytes = 2 ** 13;
/** Of so much recording each part is judged while it runs, s. */
const judgedEvery: Seconds = 2;
/** Told so often, ms. */
const showEvery = 100;
/** What was recorded is judged as a whole so often at most, and no more than this part of the time is spent on it. */
const [judgeEvery, judgePart]: readonly [number, number] = [1000, 0.1];
/** So much is drawn: s. */
const drawn: Seconds = 8;
/** More is not kept for what is shown: samples. */
const mostKept = 2 ** 20;

/**
 * Records what a source gives, line by line, and tells how it stands meanwhile. What came is saved when this returns or throws; then its job too.
 *
 * @throws InputError where nothing came, where a file can't be written, or where the lines' columns can't be told.
 */
export async function watchLive(plan: WatchPlan, watcher: Watcher): Promise<Recorded> {
  const { job, source, text, file, jobFile } = plan;
  refuseJobFile(jobFile);
  const stop = new AbortController();
  const saved = savedRecording(file);
  const watched = watchSweep(job, {
    text,
    name: source.name,
    fromMiddle: source.fromMiddle,
    mostKept,
  });
  const range = rangeOf(job);
  const latest = latestSamples();
  let rate: LiveState['rate'];
  let isLost = false;
  let samples = 0;
  let seconds: Seconds = 0;
  let test: Stretch['kind'] | undefined;
  let isNew = false;
  /** How often it was told how it stands since something came. */
  let shownSince = 0;
  let judgedAt = -Infinity;
  let judgeAgain = 0;
  let recent: ReturnType<typeof watched.recent>;
  let soFar: ReturnType<typeof watched.soFar>;
  let savedJob = Promise.resolve();
  let isJobOurs = false;
  let failure: unknown;

  const take = (taken: LiveSamples): void => {
    saved.append(taken.text);
    const last = taken.time.at(-1);
    if (last === undefined) return;
    if (samples === 0) saveItsJob();
    samples += taken.time.length;
    seconds = last;
    latest.add(taken);
    isNew = true;
    // Sooner than by the clock where more comes than a hand could do: what is judged is the latest seconds.
    if (seconds >= (recent?.judged?.end ?? 0) + judgedEvery) recent = watched.recent();
    if (plan.longest !== undefined && seconds >= plan.longest) stop.abort();
  };

  /** The job with this recording alone, its marks and what was lost of it. */
  const saveItsJob = (): void => {
    const reading = watched.reading();
    const stretches = watched.stretches();
    const { notes = '' } = job;
    const lost = gapsText(reading).trim();
    const told = [notes, unitsTakenText(reading.columns), lost].filter((text) => text !== '');
    const recording = {
      file: basename(file),
      ...(Object.keys(reading.savedAs).length > 0 && { text: reading.savedAs }),
      ...(stretches.length > 0 && { stretches }),
    };
    const whole = {
      ...job,
      ...(told.length > 0 && { notes: told.join('\n') }),
      recordings: [recording],
    };
    savedJob = savedJob.then(async () => {
      await saveJob(jobFile, whole, { overwrite: isJobOurs });
      isJobOurs = true;
    });
    // It is told when the recording ends.
    savedJob.catch(() => {});
  };

  const judge = (): void => {
    if (!isNew) return;
    isNew = false;
    recent = watched.recent() ?? recent;
    const begun = performance.now();
    if (begun < judgedAt + Math.max(judgeEvery, judgeAgain)) return;
    soFar = watched.soFar() ?? soFar;
    judgedAt = performance.now();
    judgeAgain = (judgedAt - begun) / judgePart;
  };

  const show = (): void => {
    judge();
    // Counted, not by the clock: while this program judges nothing can come.
    shownSince += 1;
    if (plan.idle !== undefined && showEvery * shownSince > 1000 * plan.idle) stop.abort();
    const sweep = latest.sweep();
    watcher.show({
      source: source.name,
      ...(rate && { rate }),
      isLost,
      samples,
      seconds,
      reading: watched.reading(),
      ...(sweep && { latest: sweep }),
      range,
      findings: recent?.findings ?? [],
      found: recent?.found ?? 0,
      hints: recent?.hints ?? [],
      ...(soFar && { soFar }),
      ...(test && { test }),
    });
  };

  watcher.control(
    () => stop.abort(),
    (kind) => {
      test = watched.mark(kind);
      saveItsJob();
      isNew = true;
      judgedAt = -Infinity;
    },
  );
  const showing = setInterval(() => {
    try {
      show();
    } catch (error) {
      failure ??= error;
      stop.abort();
    }
  }, showEvery);
  try {
    for await (const event of source.source(stop.signal)) {
      isLost = event.kind === 'lost';
      if (event.kind === 'bytes') {
        shownSince = 0;
        for (const piece of piecesOf(event.bytes)) {
          take(watched.feed(piece, event.arrived));
          if (stop.signal.aborted) break;
        }
      }
      if (event.kind === 'lost') watched.lost();
      if (event.kind === 'begun-anew') watched.lost(false);
      if (event.kind === 'trying' || event.kind === 'rate')
        rate = { baud: event.baud, isTried: event.kind === 'trying' };
      if (stop.signal.aborted) break;
    }
    take(watched.end());
    judgedAt = -Infinity;
    isNew = samples > 0;
    show();
  } finally {
    clearInterval(showing);
    saved.close();
    if (samples > 0) {
      saveItsJob();
      await savedJob.catch((error: unknown) => {
        failure ??= error;
      });
    } else rmSync(file, { force: true });
  }
  if (failure) throw failure;
  const reading = watched.reading();
  if (samples > 0) return { samples, reading };
  throw new InputError(
    'no-numbers',
    source.name,
    nothingCameSentence(reading.damagedLines, plan.isRateTold),
  );
}

/** Refuses a job's file that is there: it may list recordings that nobody else knows of. */
function refuseJobFile(jobFile: string): void {
  if (!existsSync(jobFile)) return;
  throw new InputError('file-exists', jobFile, cannotSaveSentence('EEXIST', 0));
}

/** The readings between which a recording lies: from 0 or the lowest that is expected to the highest. */
function rangeOf(job: Job): LiveState['range'] {
  const { closed, open } = jobExpectation(job).windows;
  return [Math.min(0, closed.low, open.low), Math.max(closed.high, open.high)];
}

function* piecesOf(bytes: Uint8Array): Generator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += pieceBytes) yield bytes.subarray(at, at + pieceBytes);
}

/** The samples of the latest seconds. */
function latestSamples() {
  let pieces: LiveSamples[] = [];
  return {
    add(piece: LiveSamples): void {
      pieces.push(piece);
      const from = piece.time.at(-1)! - drawn;
      const first = pieces.findIndex(({ time }) => (time.at(-1) ?? -Infinity) >= from);
      pieces = pieces.slice(Math.max(0, first));
    },
    sweep(): Sweep | undefined {
      const time = pieces.flatMap((piece) => Array.from(piece.time));
      const signal = pieces.flatMap((piece) => Array.from(piece.signal));
      const end = time.at(-1);
      if (end === undefined || end === time[0]) return undefined;
      const from = time.findIndex((at) => at >= end - drawn);
      return {
        time: Float64Array.from(time.slice(from)),
        signal: Float64Array.from(signal.slice(from)),
      };
    },
  };
}
