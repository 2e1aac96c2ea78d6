import { type Browser, type CDPSession, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, inject, test } from 'vitest';
import { scriptsRun } from '../../browser/openPage.js';
import { type StandInSerial, standInSerial } from '../../browser/standInSerial.js';
import { asDemo, recorderLines, whole, worn } from '../../browser/watchedSweep.js';
import { keeps } from '../keeps.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

interface Measured {
  readonly standIn: StandInSerial;
  /** The begin of each finding that was told, s, and when it was first drawn, ms; undefined before. */
  readonly told: { readonly start: number; drawn?: number }[];
  /** Those that stood at last. */
  latest: readonly number[];
  readonly longTasks: number[];
}

/** A page that records from a stand-in port, and notes when words are drawn and which tasks are long. */
async function recordingPage(): Promise<Page> {
  const page = await browser.newPage({
    viewport: { width: 390, height: 844 },
    serviceWorkers: 'block',
  });
  await standInSerial(page);
  await page.addInitScript(() => {
    const measured = window as unknown as Measured;
    const told: Measured['told'] = [];
    // The page is told of findings through a port of its own.
    const Channel = MessageChannel;
    window.MessageChannel = class extends Channel {
      constructor() {
        super();
        this.port1.addEventListener('message', ({ data }) => {
          if (data.kind !== 'recent') return;
          measured.latest = data.recent.findings.map(({ start }: { start: number }) => start);
          for (const start of measured.latest)
            if (!told.some((one) => Math.abs(one.start - start) < 0.02)) told.push({ start });
        });
      }
    };
    const { fillText } = CanvasRenderingContext2D.prototype;
    CanvasRenderingContext2D.prototype.fillText = function (text, ...place) {
      if (/^\d+ (dropout|spike|step|dead spot|rough)/.test(text))
        for (const one of told) one.drawn ??= performance.now();
      fillText.call(this, text, ...place);
    };
    const longTasks: number[] = [];
    new PerformanceObserver((list) => {
      longTasks.push(...list.getEntries().map(({ duration }) => duration));
    }).observe({ type: 'longtask', buffered: true });
    Object.assign(window, { told, longTasks });
  });
  await page.goto(`${inject('site')}calculators/watch-a-sweep/${asDemo}`);
  await scriptsRun(page);
  await page.getByRole('button', { name: 'Watch with this sensor' }).click();
  await page.selectOption('#baud', '115200');
  await page.getByRole('button', { name: 'Serial port' }).click();
  await page.locator('.live-trace').waitFor();
  await page.waitForTimeout(500);
  return page;
}

const play = (page: Page, { lines, seconds }: ReturnType<typeof recorderLines>, speed: number) =>
  page.evaluate(
    ([text, stamps, times]) => (window as unknown as Measured).standIn.play(text, stamps, times),
    [lines.join(''), seconds, speed] as const,
  );

test.each([1000, 20_000])(
  'a finding is drawn soon after its samples came, at %d samples a second',
  async (rate) => {
    const page = await recordingPage();
    await play(
      page,
      recorderLines({ unit: 'mV', faults: [worn], interval: 1 / rate, movements: whole }),
      1,
    );
    await page.waitForTimeout(1000);
    const delays = await page.evaluate(() => {
      const { standIn, told, latest } = window as unknown as Measured;
      return latest.flatMap((start) => {
        const drawn = told.find((one) => Math.abs(one.start - start) < 0.02)?.drawn;
        const handed = standIn.handedOver.find(([stamp]) => stamp >= start)?.[1];
        return handed === undefined || drawn === undefined ? [] : [drawn - handed];
      });
    });
    const sorted = delays.sort((one, other) => one - other);
    console.log(`delays, ms: ${sorted.map((delay) => delay.toFixed(0)).join(' ')}`);
    const median = sorted[sorted.length >> 1] ?? Number.POSITIVE_INFINITY;
    keeps(`watching ${rate} samples a second: median delay of a finding, ms`, median, {
      side: 'most',
      goal: 150,
      holds: 150,
    });
    await page.close();
  },
  120_000,
);

test('no task is long while 20,000 samples a second are watched on a processor four times slower', async () => {
  const page = await recordingPage();
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const over = play(
    page,
    recorderLines({ unit: 'mV', faults: [worn], interval: 1 / 20_000, movements: whole }),
    1,
  );
  await page.locator('.watched .findings li').first().waitFor();
  // What the stand-in itself takes to begin is no part of it.
  await page.evaluate(() => (window as unknown as Measured).longTasks.splice(0));
  await over;
  const longest = await page.evaluate(() =>
    Math.max(0, ...(window as unknown as Measured).longTasks),
  );
  keeps('watching 20,000 samples a second: longest task, ms', longest, {
    side: 'most',
    goal: 50,
    holds: 50,
  });
  await page.close();
}, 120_000);

/** Minutes of the recording after which memory is measured. */
const measuredAt = [5, 15, 30];
const perSecond = 2000;
/** So many times faster than its stamps say the recorder writes. */
const faster = 30;

test('memory stays flat over half an hour', async () => {
  const page = await recordingPage();
  const { counts } = recorderLines({ unit: 'mV', faults: [worn], interval: 1 / perSecond });
  const megabytes: number[] = [];
  let from = 0;
  for (const minutes of measuredAt) {
    await writeOn(page, counts, from, minutes * 60);
    from = minutes * 60;
    const taken = await memoryOf(page);
    console.log(`after ${minutes} min: ${taken.toFixed(1)} MB in page and workers`);
    megabytes.push(taken);
  }
  const [early = 0, middle = 0, late = 0] = megabytes;
  keeps('memory after 30 min beside that after 15 min', late / middle, {
    side: 'most',
    goal: 1,
    holds: 1.1,
  });
  // The latest million samples fill up after the first minutes.
  keeps('memory after 30 min beside that after 5 min, MB more', late - early, {
    side: 'most',
    goal: 50,
    holds: 70,
  });
  await page.close();
}, 300_000);

/** Has the recorder write the same sweeps again and again, from one time to another, s. */
async function writeOn(
  page: Page,
  counts: readonly number[],
  from: number,
  to: number,
): Promise<void> {
  await page.evaluate(
    async ([rows, begin, end, rate, speed]) => {
      const { standIn } = window as unknown as Measured;
      if (begin === 0) standIn.write('time (us),signal (mV),supply (mV)\n');
      const begun = performance.now();
      for (let i = begin * rate; i < end * rate; ) {
        const due = Math.min(
          end * rate,
          begin * rate + ((performance.now() - begun) / 1000) * speed * rate,
        );
        let text = '';
        for (; i < due; i++)
          text += `${Math.round((1e6 * i) / rate)},${rows[i % rows.length]},4167\n`;
        standIn.write(text);
        await new Promise((done) => setTimeout(done, 20));
      }
      await new Promise((done) => setTimeout(done, 3000));
    },
    [counts, from, to, perSecond, faster] as const,
  );
}

/** What page and workers hold after their garbage was collected, MB. */
async function memoryOf(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  const whole = await browser.newBrowserCDPSession();
  const { targetInfos } = (await whole.send('Target.getTargets')) as {
    targetInfos: { type: string; targetId: string; url: string }[];
  };
  let bytes = await heapOf((method) => session.send(method));
  for (const { type, targetId } of targetInfos) {
    if (type !== 'worker') continue;
    const ask = await attached(whole, targetId);
    bytes += await heapOf(ask);
  }
  await Promise.all([session.detach(), whole.detach()]);
  return bytes / 2 ** 20;
}

type Method = 'HeapProfiler.collectGarbage' | 'Runtime.getHeapUsage';

async function heapOf(ask: (method: Method) => Promise<unknown>): Promise<number> {
  await ask('HeapProfiler.collectGarbage');
  const heap = (await ask('Runtime.getHeapUsage')) as Record<string, number>;
  return (heap.usedSize ?? 0) + (heap.backingStorageSize ?? 0);
}

/** Asks a worker through the browser. */
async function attached(
  whole: CDPSession,
  targetId: string,
): Promise<(method: Method) => Promise<unknown>> {
  const { sessionId } = await whole.send('Target.attachToTarget', { targetId, flatten: false });
  let id = 0;
  return (method) =>
    new Promise((done) => {
      const own = ++id;
      const listen = (told: { sessionId: string; message: string }): void => {
        const answer = JSON.parse(told.message) as { id?: number; result?: unknown };
        if (told.sessionId !== sessionId || answer.id !== own) return;
        whole.off('Target.receivedMessageFromTarget', listen);
        done(answer.result);
      };
      whole.on('Target.receivedMessageFromTarget', listen);
      const message = JSON.stringify({ id: own, method });
      void whole.send('Target.sendMessageToTarget', { sessionId, message });
    });
}
