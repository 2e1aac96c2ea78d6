import { simulateSweep } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import { exampleReport } from '../../../tests/exampleReport.js';
import { fromBase64, toBase64 } from './base64.js';
import { readReport } from './readReport.js';
import { recheckReport } from './recheckReport.js';
import type { Report } from './report.js';
import { reportHtml } from './reportHtml.js';
import { reportMarkdown } from './reportMarkdown.js';
import { storedSweep } from './storedSweep.js';
import { storeReport } from './storeReport.js';

const worn = exampleReport(['worn.csv']);

/** The same report of a sweep of so many samples. */
function longReport(samples: number): Report {
  const { sweep } = simulateSweep({
    circuit: { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} },
    movements: [{ kind: 'hold', seconds: samples / 10_000 }],
    recorder: { interval: 1e-4, noise: 0.002 },
    seed: 5,
  });
  return { ...worn, recordings: [{ ...worn.recordings[0]!, sweep }] };
}

describe('HTML', () => {
  const html = reportHtml(worn);

  test('states verdict, reasons, checks with limits, conditions, identity and cautions', () => {
    const text = html.replace(/<script[\s\S]*<\/script>/, '').replace(/<[^>]+>/g, ' ');
    for (const said of ['Fail', 'Prove leads', 'Closed reading', 'conforms', 'Limiting resistor'])
      expect(text).toContain(said);
    expect(text).toContain(worn.recordings[0]!.sha256);
    expect(text).toContain(`${worn.recordings[0]!.bytes} bytes`);
    expect(text).toContain('service manual');
    expect(html.match(/class="drawing /g)).toHaveLength(4);
    expect(text.replaceAll('\u00a0', ' ')).toContain(
      'closed, at 10 % of the track, it reads 417 mV',
    );
  });

  test('runs no script and fetches nothing', () => {
    expect(html).toContain("default-src 'none'");
    expect(html.match(/<script/g)).toHaveLength(1);
    expect(html).not.toMatch(/\b(src|href)=/);
  });

  test('markup in names, titles and notes is text', () => {
    const evil = '</script><script>alert(1)</script><img src=x onerror=alert(2)>"\'&';
    const report: Report = {
      ...worn,
      writtenAt: evil,
      job: {
        ...worn.job,
        title: evil,
        notes: evil,
        sensor: { ...worn.job.sensor, name: evil },
        instrument: { ...worn.job.instrument, name: evil },
      },
      recordings: [{ ...worn.recordings[0]!, name: evil, howRead: evil }],
    };
    const hostile = reportHtml(report);
    expect(hostile.match(/<script/g)).toHaveLength(1);
    expect(hostile).not.toContain('<img');
    expect(readReport(hostile).job.title).toBe(evil);
    expect(reportMarkdown(report)).not.toMatch(/[^\\]</);
  });

  test('holds what was put in: job, score and samples to the last bit', () => {
    const read = readReport(html);
    expect(read.job).toEqual(worn.job);
    expect(read.recordings[0]!.score).toEqual(
      JSON.parse(JSON.stringify(worn.recordings[0]!.score)),
    );
    const { recordings } = readReport(reportHtml(longReport(9000)));
    expect(storedSweep(recordings[0]!)).toEqual(longReport(9000).recordings[0]!.sweep);
  });

  test('what was done when is kept with the samples', () => {
    const { recordings, ...rest } = longReport(9000);
    const stretches = [{ kind: 'harness-flexed', start: 0.2, end: 0.4 }] as const;
    const [{ sweep, ...recording }] = recordings as [(typeof recordings)[0] & object];
    const html = reportHtml({
      ...rest,
      recordings: [{ ...recording, sweep: { ...sweep, stretches } }],
    });
    expect(storedSweep(readReport(html).recordings[0]!)?.stretches).toEqual(stretches);
  });

  test('rows without a reading are kept with the samples', () => {
    const { recordings, ...rest } = longReport(9000);
    const unread = [{ reading: 'none', rows: 2, after: 10, start: 0.01, end: 0.011 }] as const;
    const [{ sweep, ...recording }] = recordings as [(typeof recordings)[0] & object];
    const html = reportHtml({
      ...rest,
      recordings: [{ ...recording, sweep: { ...sweep, unread } }],
    });
    expect(storedSweep(readReport(html).recordings[0]!)?.unread).toEqual(unread);
  });

  test('of a long sweep it keeps the envelope, and stays under 1 MB', () => {
    const long = reportHtml(longReport(2_000_000));
    expect(long.length).toBeLessThan(1_000_000);
    const [recording] = readReport(long).recordings;
    expect(recording!.samples).toBeUndefined();
    expect(recording!.envelope.low.length).toBeGreaterThan(600);
  });
});

test('what was assumed of the stamps is said in both forms, and only then', () => {
  const [recording] = worn.recordings;
  const { score } = recording!;
  const { quality } = score;
  const coarse: Report = {
    ...worn,
    recordings: [
      {
        ...recording!,
        score: {
          ...score,
          quality: { ...quality, stamps: { ...quality.stamps, clock: 'spread', moved: 0.008 } },
        },
      },
    ],
  };
  for (const written of [reportHtml, reportMarkdown]) {
    expect(written(worn)).not.toContain('Not as stamped');
    expect(written(coarse)).toContain('by up to 8\u00a0ms.');
  }
});

describe('opened again', () => {
  test('samples at hand are scored again, others are shown only', () => {
    const small = exampleReport(['too-slow.csv']);
    expect(recheckReport(readReport(reportHtml(small)))).toEqual([
      { name: 'too-slow.csv', stated: 'inconclusive', again: 'inconclusive' },
    ]);
    const stored = storeReport(longReport(200_000));
    expect(recheckReport(stored)).toEqual([{ name: 'worn.csv', stated: 'fail' }]);
    expect(recheckReport(stored, () => worn.recordings[0]!.sweep)[0]!.again).toBe('fail');
  });

  test('a verdict that was changed by hand is found', () => {
    const html = reportHtml(exampleReport(['too-slow.csv']));
    const forged = html.replaceAll('"verdict":"inconclusive"', '"verdict":"pass"');
    expect(recheckReport(readReport(forged))[0]).toMatchObject({
      stated: 'pass',
      again: 'inconclusive',
    });
  });

  test.each([
    ['<p>no report</p>', 'no-report'],
    ['<script type="application/json" id="truesweep-report">{</script>', 'no-report'],
    [
      '<script id="truesweep-report">{"kind":"truesweep-report","version":9}</script>',
      'newer-version',
    ],
    ['<script id="truesweep-report">{"kind":"truesweep-report","version":1}</script>', 'no-report'],
    ['<script id="truesweep-report">{"kind":"truesweep-report"', 'no-report'],
  ])('%s is refused', (html, code) => {
    expect(() => readReport(html, 'old.html')).toThrow(
      expect.objectContaining({ code, path: 'old.html' }),
    );
  });

  test('damaged samples are refused', () => {
    const stored = storeReport(exampleReport(['too-slow.csv']));
    const [recording] = stored.recordings;
    const broken = { ...recording!, samples: { time: '*', signal: '*' } };
    expect(() => recheckReport({ ...stored, recordings: [broken] })).toThrow(
      expect.objectContaining({ code: 'broken-samples' }),
    );
  });
});

test('Markdown says the same in tables and lists', () => {
  const text = reportMarkdown(worn);
  expect(text).toMatch(/^# Throttle position sensors/);
  expect(text).toContain('**FAIL** Do not put the sensor back');
  expect(text).toContain('| Closed reading |');
  expect(text).toContain(`SHA-256 ${worn.recordings[0]!.sha256}`);
});

test('what it is filed by stands at its head in both forms, comes back, and is text whatever it holds', () => {
  const record = { jobNumber: 'H-17', machine: 'Port <b>engine</b>', by: 'A. B.', customer: ' ' };
  const html = reportHtml({ ...worn, record });
  const head = html.slice(html.indexOf('<header>'), html.indexOf('</header>'));
  for (const said of ['Job number', 'H-17', 'Tested by', 'Port &lt;b'])
    expect(head).toContain(said);
  expect(head).not.toContain('Customer');
  expect(readReport(html).record).toEqual(record);
  expect(readReport(reportHtml(worn))).not.toHaveProperty('record');
  expect(reportMarkdown({ ...worn, record })).toContain('- Job number: H-17');
  expect(() => reportHtml({ ...worn, record: { by: 5 } as never })).toThrow(
    expect.objectContaining({ path: 'report.record.by' }),
  );
});

test('numbers survive base 64 to the last bit', () => {
  const values = Float64Array.of(0, -0, 1 / 3, 5e-324, Number.MAX_VALUE);
  expect(fromBase64(toBase64(values), 'x')).toEqual(values);
});
