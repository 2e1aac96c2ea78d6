import { InputError, type Sweep, scoreSweep } from '@truesweep/core';
import {
  jobCriteria,
  jobExpectation,
  jobRecorder,
  type NamedFile,
  writeJob,
} from '@truesweep/jobs';
import { readReport, type StoredRecording, storedSweep } from '@truesweep/report';
import {
  checkSweepWords,
  recheckSentence,
  reportOpenedSentence,
  verdictLabels,
} from '@truesweep/wording';
import { evidenceOf, type JudgedFiles, workingOf } from './judgeFiles.js';
import { restsOn } from './restsOn.js';
import { shownRecording } from './shownRecording.js';
import { traceOf } from './trace.js';

type Opened = Extract<JudgedFiles, { kind: 'judged' }>;

/**
 * Opens a report: its recordings are judged again by its own job where it keeps their samples, and shown as it states them elsewhere.
 *
 * @throws InputError where there are other files beside it, or it holds no report.
 */
export function openReport(files: readonly NamedFile[]): Opened {
  const [file, another] = files;
  if (!file || another)
    throw new InputError('one-input', file?.name ?? 'files', checkSweepWords.reportAlone);
  const html = new TextDecoder().decode(file.bytes);
  const { job, writtenAt, recordings } = readReport(html, file.name);
  const expected = jobExpectation(job);
  const opened = recordings.map((stored) => {
    const sweep = keptSweep(stored);
    const recorder = stored.recorder ?? jobRecorder(job);
    const score = sweep ? scoreSweep(sweep, expected, recorder, jobCriteria(job)) : stored.score;
    const { name, bytes, sha256, howRead } = stored;
    const recording = { name, bytes, sha256, howRead, recorder, score };
    const trace = traceOf({ ...recording, sweep: sweep ?? drawnSweep(stored) }, expected);
    const again = sweep && verdictLabels[score.verdict];
    const recheck = recheckSentence(verdictLabels[stored.score.verdict], again);
    return { trace, recording, shown: { ...shownRecording(recording, trace, job), recheck } };
  });
  const kept = opened.map(({ recording }) => recording);
  return {
    kind: 'judged',
    judged: {
      title: job.title,
      origin: reportOpenedSentence(writtenAt),
      // A report's recordings may differ in what was done to the sensor when; each names it among its evidence.
      restsOn: restsOn(job, { stretches: [] }),
      recordings: opened.map(({ shown }) => shown),
      jobText: writeJob(job),
    },
    job,
    traces: opened.map(({ trace }) => trace),
    // As it was written: it is not this page's to change.
    report: async () => html,
    working: (index) => workingOf(kept, job, index),
    evidence: (index, width) => evidenceOf(kept, job, index, width),
  };
}

function keptSweep(stored: StoredRecording): Sweep | undefined {
  try {
    return storedSweep(stored);
  } catch {
    throw new InputError('broken-samples', stored.name, checkSweepWords.brokenSamples);
  }
}

/** The lowest and the highest reading of each column, as samples: enough to draw, nothing to judge. */
function drawnSweep({ envelope }: StoredRecording): Sweep {
  const { start, end, columns, column, low, high } = envelope;
  const width = (end - start) / columns;
  const pairs = column.map((at) => start + (at + 0.25) * width);
  return {
    time: Float64Array.from(pairs.flatMap((time) => [time, time + width / 2])),
    signal: Float64Array.from(column.flatMap((_, i) => [low[i] ?? 0, high[i] ?? 0])),
  };
}
