import { readFileSync } from 'node:fs';
import { judgeReadings, parseAnyJob, type ReadingsJob, readPumpDown } from '@truesweep/jobs';
import { describe, expect, test } from 'vitest';
import { readingsReportHtml } from './readingsReportHtml.js';
import { readingsReportMarkdown } from './readingsReportMarkdown.js';
import { isReadingsReport, readReadingsReport } from './readReadingsReport.js';

const read = (name: string) =>
  parseAnyJob(JSON.parse(readFileSync(`examples/${name}.job.json`, 'utf8'))) as ReadingsJob;
const names = ['coolant-sensor', 'manifold-sensor', 'lean-switch', 'crank-sensor'];
const writtenAt = '2026-05-04T10:00:00Z';

describe('a report of single readings', () => {
  test.each(names)('%s: opens again, and says the same', (name) => {
    const job = read(name);
    const judged = judgeReadings(job);
    const html = readingsReportHtml({
      job,
      writtenAt,
      judged,
      record: { customer: 'A & B <boats>' },
    });
    expect(isReadingsReport(html)).toBe(true);
    const again = readReadingsReport(html);
    expect(again).toEqual(job);
    expect(judgeReadings(again)).toEqual(judged);
    expect(html).toContain('A &amp; B &lt;boats>');
    expect(readingsReportMarkdown({ job, writtenAt, judged })).toContain(
      `**${judged.judgement.verdict.toUpperCase()}**`,
    );
  });

  test('the steps of a pump-down stand in it as readings', () => {
    const time = Float64Array.from({ length: 900 }, (_, i) => i / 50);
    const signal = time.map((t) => (t < 6 ? 4.03 : t < 12 ? 2.53 : 1.31));
    const ports = [
      'open',
      ...[-33_864, -60_955].map((pascals) => ({ pascals, reference: 'gauge' as const })),
    ] as const;
    const told = {
      file: 'pump.csv',
      ports,
      portUncertainty: 400,
      supply: 5.02,
      uncertainty: 0.004,
    };
    const { readings, steps } = readPumpDown({ time, signal }, told);
    const job = { ...read('manifold-sensor'), readings: [], recordings: [told] } as ReadingsJob;
    const judged = judgeReadings(job, readings);
    const pumpDowns = [{ name: 'pump.csv', sweep: { time, signal }, steps }];
    const html = readingsReportHtml({ job, writtenAt, judged, pumpDowns });
    expect(html.match(/<svg/g)).toHaveLength(2);
    const again = judgeReadings(readReadingsReport(html));
    expect(again.judgement.verdict).toBe('pass');
    expect(again.readings).toHaveLength(3);
  });

  test('says the verdict that its readings bear, whatever it was handed', () => {
    const job = read('lean-switch');
    const judged = judgeReadings(job);
    const claimed = {
      ...judged,
      judgement: { ...judged.judgement, verdict: 'pass' },
    } as typeof judged;
    expect(readingsReportHtml({ job, writtenAt, judged: claimed })).toContain('FAIL');
  });

  test('other files are refused', () => {
    expect(() => readReadingsReport('<p>')).toThrow(/holds no report/);
    const job = read('crank-sensor');
    const html = readingsReportHtml({ job, writtenAt, judged: judgeReadings(job) });
    expect(() => readReadingsReport(html.replace('"winding"', '"wending"'))).toThrow();
  });
});
