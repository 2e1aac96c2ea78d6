import { checkFields, checkReadable, checkText, type FieldRules, listOf } from '@truesweep/core';
import { judgeReadings, parseAnyJob, type ReadingsJob } from '@truesweep/jobs';
import { filingRules } from './checkedReport.js';
import type { ReadingsReport } from './readingsReport.js';

const any = () => {};
const rules: FieldRules = {
  job: any,
  writtenAt: checkText,
  'record?': (value, path) => checkFields(value, path, filingRules),
  judged: {
    kind: ['thermistor', 'pressure', 'two-state', 'winding'],
    judgement: any,
    readings: any,
    'station?': any,
  },
  'pumpDowns?': listOf({ name: checkText, sweep: any, steps: any }),
  'workings?': listOf(any),
};

/**
 * A report of single readings whose job was read; refuses what is none, by path. What it says is judged here once more, so that no page shows a
 * verdict that its own readings don't bear.
 */
export function checkedReadings(report: ReadingsReport): ReadingsReport {
  checkFields(report, 'report', rules);
  checkReadable(report, 'report');
  const job = parseAnyJob(report.job) as ReadingsJob;
  const own = (job.readings ?? []).length;
  // Beyond the job's own come those of pump-downs, which rest on their recordings.
  const judged = own === report.judged.readings.length ? judgeReadings(job) : report.judged;
  return { ...report, job, judged };
}
