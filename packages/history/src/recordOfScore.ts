import { checkFields, checkScore, checkText, type Score } from '@truesweep/core';
import { roughness, worstPlace } from '@truesweep/jobs';
import type { HistoryRecord } from './historyRecord.js';
import { type RecordFacts, recordOfFacts } from './recordOf.js';

const factRules = {
  sensor: checkText,
  sha256: checkText,
  file: checkText,
  'date?': checkText,
  'note?': checkText,
  'version?': checkText,
};

/**
 * What is kept of a score: as `recordOf` says of a judged recording.
 *
 * @param score As `scoreSweep` gave it.
 * @param facts What the recording is filed by: the sensor's name or serial number, the hash of its bytes (SHA-256, 64 hexadecimal digits) and its file;
 * date, note and version where they are known.
 *
 * @example
 * import { readFile } from 'node:fs/promises';
 * import { identifyRecording, jobCriteria, jobExpectation, readJobRecording } from '@truesweep/jobs';
 * import { loadJob } from '@truesweep/jobs/node';
 * import { scoreSweep } from '@truesweep/core';
 * const job = await loadJob('examples/outboard-sensor.job.json');
 * const bytes = await readFile('examples/recordings/sound.csv');
 * const { sweep, recorder } = readJobRecording(bytes, { file: 'sound.csv' }, job);
 * const score = scoreSweep(sweep, jobExpectation(job), recorder, jobCriteria(job));
 * const { sha256 } = await identifyRecording(bytes);
 * const record = recordOfScore(score, { sensor: 'Port engine', sha256, file: '2026-05-03 sound.csv' });
 * [record.verdict, record.date, record.dateFrom] // => ['pass', '2026-05-03', 'file-name']
 */
export function recordOfScore(score: Score, facts: RecordFacts): HistoryRecord {
  checkScore(score, 'score');
  checkFields(facts, 'facts', factRules);
  const { verdict, causes, checks, quality, closedReadings, findings, abrupt } = score;
  return recordOfFacts(facts, {
    verdict,
    causes,
    checks,
    noise: quality.noise,
    visible: quality.visible,
    hysteresis: closedReadings.hysteresis,
    roughness: roughness(score),
    findings: (abrupt ?? findings).length,
    worst: worstPlace(score),
    recorder: { interval: quality.sampledEvery, resolution: quality.resolution },
  });
}
