import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { scoreSweep, simulateSweep } from '@truesweep/core';
import { jobCriteria, jobExpectation, readJob, readJobRecording } from '@truesweep/jobs';
import { verdictLabels } from '@truesweep/wording';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { serialPort } from '../../packages/cli/src/live/serialPort.js';
import { pseudoTerminal, whyNoTerminal } from '../live/pseudoTerminal.js';
import { browserOptions } from './chromium.js';
import { newVisitor, scriptsRun, violationsOf } from './openPage.js';
import { type StandInSerial, standInSerial } from './standInSerial.js';
import { asDemo, benchCircuit, recorderLines, whole, worn } from './watchedSweep.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

const watching = 'calculators/watch-a-sweep/';

/** Opens the page for a visitor with a recorder on a serial port that writes at a rate. */
async function openWithPort(visitor: BrowserContext, rate: number): Promise<Page> {
  const page = await visitor.newPage();
  await standInSerial(page);
  await page.goto(inject('site') + watching + asDemo);
  await scriptsRun(page);
  await page.evaluate((baud) => {
    (window as unknown as { standIn: StandInSerial }).standIn.rate = baud;
  }, rate);
  return page;
}

/** Says that the entries are the bench's own, and chooses the port, whose rate is found or told. */
async function chooseSerial(page: Page, baud?: number): Promise<void> {
  await page.getByRole('button', { name: 'Watch with this sensor' }).click();
  if (baud !== undefined) await page.selectOption('#baud', `${baud}`);
  await page.getByRole('button', { name: 'Serial port' }).click();
}

/** Tells that readings are counts of 12 bits at 5 V, which lines do not. */
async function tellCounts(page: Page): Promise<void> {
  await page.locator('#read-signalUnit').waitFor();
  await page.selectOption('#read-signalUnit', 'counts');
  await page.fill('#read-bits', '12');
  await page.fill('#read-fullScale', '5');
}

/** How much was recorded, s: at first it is told in milliseconds. */
async function secondsOf(page: Page): Promise<number> {
  const [, number, unit] = /^([\d.]+)\s(m?)s,/.exec((await standing(page)) ?? '') ?? [];
  return Number(number ?? 0) / (unit === 'm' ? 1000 : 1);
}

type Lines = ReturnType<typeof recorderLines>;

/** Has the recorder write, some times as fast as its stamps say; resolves at its last line. */
const play = async (
  page: Page,
  { lines, seconds }: Pick<Lines, 'lines' | 'seconds'>,
  speed: number,
): Promise<void> => {
  // What is written before somebody reads is lost.
  await portIsRead(page);
  await page.evaluate(
    ([text, stamps, times]) =>
      (window as unknown as { standIn: StandInSerial }).standIn.play(text, stamps, times),
    [lines.join(''), seconds, speed] as const,
  );
};

async function portIsRead(page: Page): Promise<void> {
  await page.waitForFunction(() =>
    (window as unknown as { standIn: StandInSerial }).standIn.isRead(),
  );
}

const standing = (page: Page) => page.locator('.watched .standing').textContent();

/** What is saved by a press. */
async function savedFiles(page: Page): Promise<ReadonlyMap<string, Buffer>> {
  const saved = new Map<string, Buffer>();
  const reads: Promise<void>[] = [];
  page.on('download', (download) => {
    const read = download.createReadStream().then(buffer);
    reads.push(read.then((bytes) => void saved.set(download.suggestedFilename(), bytes)));
  });
  await page.getByRole('button', { name: 'Save the recording and its job' }).click();
  await expect.poll(() => reads.length).toBe(2);
  await Promise.all(reads);
  return saved;
}

/** What core says of a recording that was saved with its job. */
function scoreOf(saved: ReadonlyMap<string, Buffer>) {
  const [jobName, jobText] = [...saved].find(([name]) => name.endsWith('.json'))!;
  const [name, bytes] = [...saved].find(([other]) => !other.endsWith('.json'))!;
  const job = readJob(`${jobText}`, jobName);
  const listed = job.recordings!.find(({ file }) => file === name)!;
  const { sweep, recorder } = readJobRecording(bytes, listed, job);
  return { sweep, score: scoreSweep(sweep, jobExpectation(job), recorder, jobCriteria(job)) };
}

test('a worn sensor on a port whose rate is found: findings while it is recorded, and the verdict of core afterwards', async () => {
  const visitor = await newVisitor(browser);
  const page = await openWithPort(visitor, 500_000);
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  const recorded = recorderLines({ faults: [worn], isChecked: true });
  await chooseSerial(page);
  const over = play(page, recorded, 1);
  await tellCounts(page);
  await expect.poll(() => standing(page)).toContain('Read at 500000 baud');
  await expect
    .poll(() => page.locator('.watched .findings li').allTextContents())
    .toContainEqual(expect.stringMatching(/^dropout at .*, (39|40|41).% of the travel/));
  expect(await violationsOf(page)).toEqual([]);
  await page.getByLabel('Sound of the reading').check();
  const tap = page.getByRole('button', { name: 'Tapping the housing' });
  await tap.click();
  await expect.poll(() => tap.getAttribute('aria-pressed')).toBe('true');
  await page.waitForTimeout(400);
  await tap.click();
  await expect.poll(() => tap.getAttribute('aria-pressed')).toBe('false');
  await over;
  await expect
    .poll(() => page.locator('.watched .missing').textContent())
    .toMatch(/^Still missing: hold the shaft still and flex the harness and its plug\.$/);
  await expect
    .poll(() => page.locator('.travel-passes').getAttribute('aria-label'))
    .toMatch(/from closed to open: (1?\d, ){9}1?\d; 6 of each/);
  // Politely said to who listens.
  await expect
    .poll(() => page.locator('.watched [role=status]').textContent())
    .toContain('dropout at');
  await page.getByRole('button', { name: 'Stop recording' }).click();
  await page.getByRole('link', { name: 'Judge it' }).waitFor();
  expect(await violationsOf(page)).toEqual([]);
  const saved = await savedFiles(page);
  const { sweep, score } = scoreOf(saved);
  // All that was handed over since the port was read, to the last bit.
  const counts = Array.from(sweep.signal, (volts) => Math.round((volts / 5) * 4096) + 0);
  expect(recorded.counts.slice(-counts.length)).toEqual(counts);
  expect(counts.length).toBeGreaterThan(10_000);
  expect(sweep.stretches?.map(({ kind }) => kind)).toEqual(['housing-tapped']);
  expect(sweep.supply?.[0]).toBeCloseTo(4.167, 2);

  await page.getByRole('link', { name: 'Judge it' }).click();
  expect(score.verdict).toBe('fail');
  await expect
    .poll(() => page.locator('.answer').textContent())
    .toMatch(new RegExp(`${verdictLabels[score.verdict]} ?sweep-.*\\.csv`));
  expect(complaints).toEqual([]);
});

test('a page that is closed while it records offers what it lacks at most the last second of', async () => {
  const visitor = await newVisitor(browser);
  const page = await openWithPort(visitor, 115_200);
  const { lines, seconds } = recorderLines({
    movements: [{ kind: 'hold', seconds: 4 }, ...whole],
  });
  await chooseSerial(page, 115_200);
  void play(page, { lines, seconds }, 1).catch(() => {});
  await tellCounts(page);
  await expect.poll(() => secondsOf(page)).toBeGreaterThan(6);
  // While it runs another page offers nothing of it.
  const other = await openWithPort(visitor, 115_200);
  await other.waitForTimeout(500);
  expect(await other.locator('.offered').count()).toBe(0);
  await other.close();
  const last = await secondsOf(page);
  await page.close();

  const again = await openWithPort(visitor, 115_200);
  await expect
    .poll(() => again.locator('.offered').textContent())
    .toMatch(/A recording of \d\d:\d\d was not finished\./);
  expect(await violationsOf(again)).toEqual([]);
  const { sweep } = scoreOf(await savedFiles(again));
  expect(sweep.time.at(-1)).toBeGreaterThan(last - 1);
  await expect.poll(() => again.locator('.offered').count()).toBe(0);
});

test('what broke off is judged or thrown away', async () => {
  const visitor = await newVisitor(browser);
  const page = await openWithPort(visitor, 115_200);
  await chooseSerial(page, 115_200);
  const over = play(page, recorderLines({ unit: 'mV' }), 6);
  await over;
  await page.waitForTimeout(1000);
  await page.close();
  const again = await openWithPort(visitor, 115_200);
  await again.getByRole('link', { name: 'Judge it' }).click();
  await expect.poll(() => again.locator('.answer').textContent()).toMatch(/sweep-.*\.csv/);
  // Once more by the same address, but offered no more.
  await again.reload();
  await expect.poll(() => again.locator('.answer').textContent()).toMatch(/sweep-.*\.csv/);
  await again.goto(inject('site') + watching);
  await again.waitForTimeout(500);
  expect(await again.locator('.offered').count()).toBe(0);
});

test('a port that is unplugged and plugged in again goes on, with a gap', async () => {
  const visitor = await newVisitor(browser);
  const page = await openWithPort(visitor, 115_200);
  await chooseSerial(page, 115_200);
  const { lines, seconds } = recorderLines({ unit: 'mV', isChecked: true });
  const over = play(page, { lines, seconds }, 2);
  await expect.poll(() => secondsOf(page)).toBeGreaterThan(2);
  await page.evaluate(() => (window as unknown as { standIn: StandInSerial }).standIn.unplug());
  await expect
    .poll(() => page.locator('.watched .refusal').textContent())
    .toContain('The port is gone. Plug it in again');
  await page.waitForTimeout(700);
  await page.evaluate(() => (window as unknown as { standIn: StandInSerial }).standIn.plugIn());
  await expect.poll(() => page.locator('.watched .refusal').count()).toBe(0);
  await over;
  await expect.poll(() => standing(page)).toMatch(/gaps: 1\. Read at 115200 baud/);
  await page.getByRole('button', { name: 'Stop recording' }).click();
  const { sweep } = scoreOf(await savedFiles(page));
  const steps = Array.from(sweep.time.subarray(1), (at, i) => at - sweep.time[i]!);
  expect(Math.max(...steps)).toBeGreaterThan(0.6);
});

test.skipIf(whyNoTerminal())(
  'a recorder at a pseudo-terminal, whose port the page opens through this test: every row comes',
  async () => {
    const folder = await mkdtemp(join(tmpdir(), 'truesweep-watch-'));
    const terminal = await pseudoTerminal(join(folder, 'port'));
    const closed = new AbortController();
    const page = await openWithPort(await newVisitor(browser), 115_200);
    const handOver = async (): Promise<void> => {
      for await (const event of serialPort(terminal.path, 115_200, {})(closed.signal)) {
        if (event.kind !== 'bytes') continue;
        const text = new TextDecoder().decode(event.bytes);
        await page.evaluate((part) => {
          (window as unknown as { standIn: StandInSerial }).standIn.write(part);
        }, text);
      }
    };
    const handing = handOver();
    try {
      await chooseSerial(page, 115_200);
      await portIsRead(page);
      const { lines } = recorderLines({ faults: [worn], unit: 'mV', isChecked: true });
      // Some thousand lines a second.
      for (let at = 0; at < lines.length; at += 100) {
        await terminal.write(lines.slice(at, at + 100).join(''));
        await page.waitForTimeout(20);
      }
      const rows = lines.filter((line) => /^\d/.test(line)).length;
      await expect.poll(() => standing(page)).toContain(`${rows} samples`);
      await expect
        .poll(() => page.locator('.watched .findings li').allTextContents())
        .toContainEqual(expect.stringMatching(/^dropout at/));
      await page.getByRole('button', { name: 'Stop recording' }).click();
      const { sweep, score } = scoreOf(await savedFiles(page));
      expect([sweep.time.length, score.verdict]).toEqual([rows, 'fail']);
    } finally {
      closed.abort();
      await handing;
      await terminal.unplug();
      await rm(folder, { recursive: true });
    }
  },
);

test('a wrong rate that was chosen is said', async () => {
  const visitor = await newVisitor(browser);
  const page = await openWithPort(visitor, 57_600);
  await chooseSerial(page, 9600);
  void play(page, recorderLines({}), 1).catch(() => {});
  await expect
    .poll(() => page.locator('.watched .refusal').textContent())
    .toContain('is no text: most likely the rate is another');
});

test('what spoils a recording is said while it runs', async () => {
  const visitor = await newVisitor(browser);
  const page = await openWithPort(visitor, 115_200);
  await chooseSerial(page, 115_200);
  const { lines, seconds } = recorderLines({
    unit: 'mV',
    movements: [
      { kind: 'hold', seconds: 3 },
      { kind: 'turn', to: 1, seconds: 1 },
      { kind: 'hold', seconds: 0.5 },
      { kind: 'turn', to: 0, seconds: 1 },
      { kind: 'hold', seconds: 0.5 },
      { kind: 'turn', to: 0.8, seconds: 0.8 },
      { kind: 'hold', seconds: 0.4 },
      { kind: 'turn', to: 0, seconds: 0.8 },
      { kind: 'hold', seconds: 2 },
    ],
  });
  const over = play(page, { lines, seconds }, 1);
  await expect
    .poll(() => page.locator('.live-words .hints').allTextContents(), { timeout: 40_000 })
    .toContainEqual(expect.stringContaining('go on to the open stop'));
  await over;
});

test('the result is kept on the shelf with the sensor that it is of', async () => {
  const visitor = await newVisitor(browser);
  const page = await openWithPort(visitor, 115_200);
  await page.locator('.job-entries > summary').click();
  await page.locator('.keep-on-shelf > summary').click();
  await page.locator('.keep-on-shelf').getByLabel('Name').fill('Port engine');
  await page.getByRole('button', { name: 'Keep this sensor on the shelf' }).click();
  await page.getByRole('button', { name: 'Serial port' }).click();
  const over = play(page, recorderLines({ unit: 'mV', faults: [worn] }), 4);
  await over;
  await page.getByRole('button', { name: 'Stop recording' }).click();
  await page.getByRole('button', { name: 'Keep its result on the shelf' }).click();
  await expect
    .poll(() => page.locator('.watched .notice').textContent())
    .toContain('This result is kept with the sensor');
  expect(await page.locator('.watched .verdict-line').textContent()).toContain('Fail');
  await page.goto(`${inject('site')}shelf/`);
  const rows = page.locator('.shelf-sensor tbody tr');
  await expect.poll(() => rows.count()).toBe(1);
  expect(await rows.first().textContent()).toMatch(/Fail.*sweep-.*\.csv/s);
});

test('without serial ports the page says what works instead', async () => {
  const visitor = await newVisitor(browser);
  await visitor.addInitScript(() => {
    Object.defineProperty(Navigator.prototype, 'serial', { value: undefined });
  });
  const page = await visitor.newPage();
  await page.goto(inject('site') + watching);
  await scriptsRun(page);
  await expect
    .poll(() => page.locator('#serial-hint').textContent())
    .toMatch(/opens no serial port.*“truesweep live”.*logger whose file you judge/);
  await page.getByRole('button', { name: 'Watch with this sensor' }).click();
  expect(await page.getByRole('button', { name: 'Serial port' }).isDisabled()).toBe(true);
  expect(await page.getByRole('button', { name: 'Sound input' }).isDisabled()).toBe(false);
});

/** A sound input coupled through a capacitor: samples of a first-order high-pass at 1 Hz, of 5 V at full scale. */
function soundOf(signal: Float64Array, hertz: number): Uint8Array {
  const bytes = new Uint8Array(44 + 2 * signal.length);
  const view = new DataView(bytes.buffer);
  for (const [at, word] of [
    [0, 0x46464952],
    [4, bytes.length - 8],
    [8, 0x45564157],
    [12, 0x20746d66],
    [16, 16],
    [20, 0x10001],
    [24, hertz],
    [28, 2 * hertz],
    [32, 0x100002],
    [36, 0x61746164],
    [40, 2 * signal.length],
  ] as const)
    view.setUint32(at, word, true);
  const keeps = Math.exp((-2 * Math.PI) / hertz);
  let passed = 0;
  for (const [i, volts] of signal.entries()) {
    passed = keeps * (passed + volts - (signal[i - 1] ?? volts));
    view.setInt16(44 + 2 * i, Math.round((passed / 5) * 32_767), true);
  }
  return bytes;
}

test('a sound input shows abrupt departures, and is judged as a sound file with its job', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'truesweep-sound-'));
  const file = join(folder, 'worn.wav');
  const { sweep } = simulateSweep({
    circuit: benchCircuit,
    movements: whole,
    faults: [worn],
    recorder: { interval: 1 / 48_000, noise: 0.001 },
    seed: 4,
  });
  await writeFile(file, soundOf(sweep.signal, 48_000));
  const options = await browserOptions();
  const listener = await chromium.launch({
    ...options,
    args: [
      ...(options.args ?? []),
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
      `--use-file-for-fake-audio-capture=${file}`,
    ],
  });
  try {
    const visitor = await newVisitor(listener);
    const page = await visitor.newPage();
    await page.goto(inject('site') + watching + asDemo);
    await scriptsRun(page);
    await page.getByRole('button', { name: 'Watch with this sensor' }).click();
    await page.getByRole('button', { name: 'Sound input' }).click();
    expect(await page.getByRole('button', { name: 'Begin' }).isDisabled()).toBe(true);
    await page.fill('#read-soundFullScale', '5');
    await page.getByLabel('The microphone bias of this input is off').check();
    expect(await violationsOf(page)).toEqual([]);
    await page.getByRole('button', { name: 'Begin' }).click();
    await expect
      .poll(() => page.locator('.watched .findings li').allTextContents())
      .toContainEqual(expect.stringMatching(/^abrupt departure at/));
    expect(await violationsOf(page)).toEqual([]);
    expect(await page.locator('.watched').textContent()).toContain('A sound input tells no travel');
    await page.getByRole('button', { name: 'Stop recording' }).click();
    await page.getByRole('link', { name: 'Judge it' }).waitFor();
    const { score } = scoreOf(await savedFiles(page));
    expect(score.abrupt?.length).toBeGreaterThan(0);
    await page.getByRole('link', { name: 'Judge it' }).click();
    await expect
      .poll(() => page.locator('.answer').textContent())
      .toMatch(new RegExp(`${verdictLabels[score.verdict]} ?sweep-.*\\.wav`));
  } finally {
    await listener.close();
    await rm(folder, { recursive: true, force: true });
  }
});
