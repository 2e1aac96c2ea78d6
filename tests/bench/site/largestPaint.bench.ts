import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

const rounds = 5;

/** A phone on a boat: 150 ms round trip, 9 Mbit/s, a processor four times slower. */
async function largestPaint(path: string): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: 150,
    downloadThroughput: 9e6 / 8,
    uploadThroughput: 9e6 / 8,
  });
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await page.goto(inject('site') + path, { waitUntil: 'networkidle' });
  const paint = await page.evaluate(
    () =>
      new Promise<number>((done) => {
        new PerformanceObserver((list) => done(list.getEntries().at(-1)?.startTime ?? 0)).observe({
          type: 'largest-contentful-paint',
          buffered: true,
        });
      }),
  );
  await context.close();
  return paint;
}

test.each(['', 'calculators/expected-readings/', 'calculators/check-a-sweep/', 'guided-way/'])(
  'largest contentful paint of “%s”',
  async (path) => {
    const paints: number[] = [];
    for (let round = 0; round < rounds; round++) paints.push(await largestPaint(path));
    const median = paints.sort((a, b) => a - b)[Math.floor(rounds / 2)]!;
    console.log(
      `${path || 'start page'}: largest contentful paint ${(median / 1000).toFixed(2)} s, median of ${rounds} (goal: 1 s)`,
    );
    expect(median).toBeGreaterThan(0);
  },
  120_000,
);
