import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { liveSweep, scoreSweep, straightLine } from '@truesweep/core';
import { test } from 'vitest';
import { fastest } from './fastest.js';
import { keeps } from './keeps.js';
import { keepsRatio } from './keepsRatio.js';
import { expected, longSweep } from './longSweep.js';

const most = 10_000_000;
const chunk = 4096;
const options = { iterations: 5, warmupIterations: 1, time: 0 };

function fedBy(length: number, { time, signal }: ReturnType<typeof longSweep>) {
  const live = liveSweep(expected);
  for (let at = 0; at < time.length; at += length) {
    live.feed(time.subarray(at, at + length), signal.subarray(at, at + length));
  }
  return live.end();
}

/**
 * How far the process's memory rises above what it held, with the sweep in it, before the scoring: the system's mark of
 * the highest resident memory, after a garbage collection, so that what awaits collection meanwhile counts too.
 */
function keepsMemory(name: string, samples: number, seconds: number) {
  setFlagsFromString('--expose-gc');
  const sweep = longSweep(samples, seconds);
  runInNewContext('gc')();
  const before = process.memoryUsage.rss();
  const highest = process.resourceUsage().maxRSS * 1024;
  scoreSweep(sweep, expected);
  const after = process.resourceUsage().maxRSS * 1024;
  // What stays below an earlier mark is less than that mark.
  const extra = Math.max(after, highest) - before;
  keeps(`extra memory over the input's, ${name}`, extra / (samples * 16), {
    side: 'most',
    goal: 2,
    holds: 2.7,
  });
}

/** The exponent of the time's growth over the number of samples, as a straight line through the logarithms. */
function keepsExponent(name: string, samples: readonly number[], seconds: (n: number) => number) {
  const times = samples.map((count) => {
    const sweep = longSweep(count, seconds(count));
    return fastest(() => scoreSweep(sweep, expected), Math.min(10, Math.max(3, 3e6 / count)));
  });
  const line = straightLine(
    samples.map((count) => Math.log(count)),
    times.map((time) => Math.log(time)),
  )!;
  const each = times.map((time, i) => `${samples[i]} in ${(time * 1000).toPrecision(3)} ms`);
  console.log(`${name}: ${each.join(', ')}`);
  keeps(`${name}: exponent`, line.slope, { side: 'most', goal: 1.05, holds: 1.05 });
}

// Memory goes first, the least of it before the most: the mark of the highest never falls. At rates up to 2 kS/s each
// sample is a bin.
test('recordings at 1 kS/s', () => {
  keepsMemory('10 million samples at 500 kS/s', most, 20);
  keepsMemory('10 million samples at 1 kS/s', most, most / 1000);
  keepsExponent('1 kS/s, ever longer', [1e4, 3e4, 1e5, 3e5, 1e6], (count) => count / 1000);
}, 300_000);

test('ten million samples fed live', async ({ bench, expect }) => {
  const sweep = longSweep(most);
  const whole = scoreSweep(sweep, expected);
  expect(whole.findings.length).toBeGreaterThan(0);
  expect(fedBy(chunk, sweep)).toEqual(whole);
  const timed = await bench.compare(
    bench('live, in chunks of 4,096', () => {
      fedBy(chunk, sweep);
    }),
    bench('live, in one chunk', () => {
      fedBy(most, sweep);
    }),
    options,
  );
  keepsRatio(timed.get('live, in chunks of 4,096'), timed.get('live, in one chunk'), {
    side: 'most',
    goal: 1.3,
    holds: 1.3,
  });
}, 300_000);
