import { defaultCriteria, type Score } from '@truesweep/core';
import { cautions } from '@truesweep/wording';
import { describe, expect, test } from 'vitest';
import type { JudgedFile } from './judgedFile.js';
import { layOut } from './layOut.js';
import { printCautions } from './printCautions.js';
import { printScore } from './printScore.js';
import type { TextPart } from './textPart.js';

const quality: Score['quality'] = {
  samples: 5000,
  duration: 9.998,
  interval: 0.002,
  jitter: 0,
  longestGap: 0.002,
  gaps: 0,
  repeated: 0,
  sampling: 'picked',
  sampledEvery: 0.002,
  smoothedOver: 0,
  disordered: 0,
  stamps: { clock: 'stamped', moved: 0, pairs: 0, strayed: 0, restarts: 0 },
  resolution: 0.001,
  noise: 0.0015,
  visible: 0.048,
  visibleSetBy: 'span',
  clip: {},
  shortestDropout: 0.004,
  dropoutChance: { one: 1, wanted: 1 },
};

const worn: Score = {
  verdict: 'fail',
  confidence: 0.9731,
  causes: [
    { cause: 'track', weight: 0.75 },
    { cause: 'connection', weight: 0.25 },
  ],
  advice: ['prove-connection', 'replace-sensor'],
  checks: [
    {
      check: 'sample-interval',
      outcome: 'conforms',
      unit: 's',
      measured: 0.002,
      highLimit: 0.0075,
      margin: 0.0055,
      limitFrom: 'criteria',
    },
    {
      check: 'visible-departure',
      outcome: 'conforms',
      unit: '1',
      measured: 0.015,
      highLimit: 0.05,
      margin: 0.035,
      limitFrom: 'criteria',
    },
    {
      check: 'departures',
      outcome: 'fails',
      unit: 'count',
      measured: 2,
      highLimit: 0,
      margin: -2,
      limitFrom: 'criteria',
    },
    {
      check: 'closed-end',
      outcome: 'marginal',
      unit: 'V',
      measured: 0.53,
      lowLimit: 0.314,
      highLimit: 0.523,
      uncertainty: 0.005,
      margin: -0.007,
      limitFrom: 'expected-window',
    },
    {
      check: 'closed-rest',
      outcome: 'not-judged',
      unit: '1',
      highLimit: 0.03,
      limitFrom: 'criteria',
    },
  ],
  findings: [
    {
      kind: 'dropout',
      start: 0.75,
      end: 0.766,
      travel: 0.057,
      depth: -0.585,
      depthOfSpan: 0.18,
      depthOfSource: 0.117,
      went: 'to-rest-level',
      during: 'opening',
    },
    {
      kind: 'spike',
      start: 12.4321,
      end: 12.4341,
      travel: 0.62,
      depth: 0.0612,
      depthOfSpan: 0.019,
      depthOfSource: 0.012,
      went: 'elsewhere',
      during: 'rest',
    },
  ],
  spots: [],
  strokes: [
    { direction: 'opening', start: 0.5, end: 2, from: 0, to: 1 },
    { direction: 'closing', start: 2.5, end: 2.55, from: 1, to: 0 },
  ],
  rests: [],
  snaps: [{ start: 2.5, touch: 2.55, settled: 2.6, from: 1, rebounds: [0.1] }],
  quality,
  couldShow: { blind: [[0, 0.02]], narrowestSpot: 0.003 },
  coverage: {
    opening: [1, 1, 1, 1, 1, 1, 1, 1, 1, 1],
    closing: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
  },
  closedReadings: {},
  testsNotDone: ['harness-flexed', 'housing-tapped', 'warmed'],
  supplyAssumed: true,
  uncertaintyAssumed: true,
  restsOn: { looks: 1, looksAskedFor: 6, snaps: 1, snapsAskedFor: 3, missedChance: 0.5 },
};

const judged: Omit<JudgedFile, 'expected'> = {
  file: 'port-side.csv',
  bytes: 100_000,
  sha256: '0'.repeat(64),
  sweep: { time: Float64Array.of(0, 1), signal: Float64Array.of(1, 1) },
  reading: {
    encoding: 'utf-8',
    delimiter: ';',
    decimal: ',',
    headerLines: 1,
    columns: {
      time: { index: 0, name: 'time', chosenFrom: 'heading', unit: 'ms', unitFrom: 'heading' },
      signal: { index: 2, name: '', chosenFrom: 'place', unit: 'V', unitFrom: 'assumed' },
    },
    rows: 5000,
    withoutReading: 0,
    repeatedHeadings: 0,
    footerLines: 0,
  },
  recorder: {},
  score: worn,
  criteria: defaultCriteria,
};

/** The lines as they stand in a pipe, or at another width. */
const laidOut = (parts: readonly TextPart[], width = 80): readonly string[] =>
  layOut(parts, { width, colour: false }).trimEnd().split('\n');

describe('the whole text', () => {
  const lines = laidOut(printScore(judged));
  const text = lines.join('\n');

  test('begins with the file, the verdict and what it means', () => {
    expect(lines.slice(0, 2)).toEqual([
      'port-side.csv',
      '  FAIL: Do not put the sensor back as it is; the cause says what to mend.',
    ]);
  });

  test('says how sure it is and of what, where that can be told', () => {
    expect(text.replace(/\n +/g, ' ')).toContain(
      'How sure    97\u00a0%, reckoned with modelled recordings, that a reason for it is real: departures.',
    );
    const { confidence: _, ...open } = worn;
    expect(laidOut(printScore({ ...judged, score: open })).join('\n')).not.toContain('How sure');
  });

  test('weighs the causes and numbers the steps', () => {
    expect(text).toMatch(/^ {2}Cause {7}track \(75\u00a0%\)\. The trouble/m);
    expect(text).toMatch(/^ {14}connection \(25\u00a0%\)\. The signal/m);
    expect(text).toMatch(/^ {2}Next {8}1\. Prove leads/m);
    expect(text).toMatch(/^ {14}2\. If the leads/m);
  });

  test('lists the findings in columns of one unit each', () => {
    expect(text).toContain(
      [
        '  Findings        at  lasts  travel    depth  of span  during',
        '  dropout    0.750 s  16 ms   5.7 %  −585 mV     18 %  opening',
        '  spike     12.432 s   2 ms  62.0 %    61 mV      2 %  rest',
      ].join('\n'),
    );
  });

  test('compares what was measured with its limit in one unit', () => {
    expect(text).toContain(
      [
        '  Checks                         measured       limit   margin  outcome',
        '  Sample interval                 2.00 ms   ≤ 7.50 ms  5.50 ms  conforms',
        '  Smallest fault it can show       1.50 %    ≤ 5.00 %   3.50 %  conforms',
        '  Departures                            2         ≤ 0       −2  fails',
        '  Closed reading              530 ± 10 mV  314–523 mV    −7 mV  marginal',
        '  Closed reading scatter                –    ≤ 3.00 %        –  not judged',
      ].join('\n'),
    );
    expect(text).toContain("Limits: closed reading from the hook-up's expected windows;");
  });

  test('says what could be seen, how the file was read, and that the supply was assumed', () => {
    const flat = text.replace(/\n +/g, ' ');
    expect(flat).toContain('Of the travel, 10 tenths were seen opening and 0 closing.');
    expect(flat).toContain('The shortest dropout that surely shows lasts 4\u00a0ms');
    expect(flat).toContain('is 48\u00a0mV (1.5\u00a0% of the span), set by the criteria');
    expect(flat).toContain('Time from column 1 “time” in ms (by its heading)');
    expect(flat).toContain(
      'signal from column 3 (the first that can be it) in V (assumed); 5000 rows',
    );
    expect(flat).toContain('The supply was not recorded');
    expect(flat).toContain('1 opening and 1 closing, 1 of them by the spring with 1 rebound');
  });
});

test('a recorded supply is not said to be assumed', () => {
  const lines = laidOut(printScore({ ...judged, score: { ...worn, supplyAssumed: false } }));
  expect(lines.join('\n')).not.toContain('Supply');
});

test('stamps are spoken of only where they were not taken as they stand', () => {
  const printed = (stamps: Partial<Score['quality']['stamps']>) => {
    const score = { ...worn, quality: { ...quality, stamps: { ...quality.stamps, ...stamps } } };
    return laidOut(printScore({ ...judged, score }))
      .join('\n')
      .replace(/\n +/g, ' ');
  };
  expect(printed({})).not.toContain('Stamps');
  expect(printed({ clock: 'even', moved: 0.001 })).toContain(
    'Stamps      Not as stamped: the samples were taken to lie evenly, 2\u00a0ms apart, up to 1\u00a0ms from',
  );
});

test('in short, the verdict, the cause and the next step stand alone', () => {
  const lines = laidOut(printScore(judged, { short: true }));
  expect(lines).toEqual(laidOut(printScore(judged)).slice(0, lines.length));
  expect(lines.join('\n')).toContain('Next');
  expect(lines.join('\n')).not.toMatch(/Findings|Checks|Movement|Supply/);
});

test('a clean score has no table of findings', () => {
  const text = laidOut(printScore({ ...judged, score: { ...worn, findings: [] } })).join('\n');
  expect(text).not.toContain('Findings');
  expect(text).toContain('Checks');
});

test('of many findings the first are listed and the rest counted', () => {
  const findings = Array.from({ length: 40 }, (_, i) => ({
    ...worn.findings[0]!,
    start: i,
    end: i + 0.016,
  }));
  const lines = laidOut(printScore({ ...judged, score: { ...worn, findings } }));
  expect(lines.filter((line) => line.startsWith('  dropout  '))).toHaveLength(12);
  expect(lines.join('\n')).toContain('and 28 more');
});

test.each([60, 80, 120])('no line is wider than a terminal of %i, whatever the score', (width) => {
  const every: Score = {
    ...worn,
    causes: (
      ['track', 'connection', 'interference', 'ends', 'closed-rest', 'wiring', 'recording'] as const
    ).map((cause) => ({ cause, weight: 1 / 7 })),
    advice: [
      'record-again',
      'record-faster',
      'record-without-smoothing',
      'record-quieter',
      'record-more-returns',
      'change-range',
    ],
    checks: [
      ...worn.checks,
      {
        check: 'visible-departure',
        outcome: 'cannot-tell',
        unit: '1',
        measured: 1.23456,
        highLimit: 0.05,
        margin: -1.18456,
        limitFrom: 'criteria',
      },
      {
        check: 'closed-end',
        outcome: 'cannot-tell',
        unit: 'V',
        measured: -0.123456,
        lowLimit: 0.1111,
        highLimit: 0.2222,
        uncertainty: 0.01,
        margin: -0.234567,
        limitFrom: 'expected-window',
      },
    ],
    findings: (['dropout', 'spike', 'step', 'dead-spot', 'rough'] as const).map((kind) => ({
      ...worn.findings[0]!,
      kind,
      start: 1234.5678,
      end: 1235.9,
      depth: -12.345,
      depthOfSpan: 3.21,
    })),
  };
  const parts = [...printScore({ ...judged, score: every }), ...printCautions()];
  for (const line of laidOut(parts, width)) expect(line.length, line).toBeLessThanOrEqual(width);
});

test('every caution is printed', () => {
  const flat = laidOut(printCautions()).join(' ').replace(/ +/g, ' ');
  for (const caution of Object.values(cautions)) expect(flat).toContain(caution);
});
