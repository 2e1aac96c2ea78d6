import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import axe from 'axe-core';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

const job = 'examples/outboard-sensor.job.json';
const worn = 'examples/recordings/worn.csv';

async function open(
  javaScriptEnabled = true,
): Promise<{ page: Page; asked: string[]; complaints: string[] }> {
  const context = await browser.newContext({ javaScriptEnabled });
  const page = await context.newPage();
  const [asked, complaints]: [string[], string[]] = [[], []];
  page.on('request', (request) => asked.push(request.url()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  await page.goto(`${inject('site')}calculators/check-a-sweep/`);
  if (javaScriptEnabled)
    await page.locator('astro-island:not([ssr])').waitFor({ state: 'attached' });
  return { page, asked, complaints };
}

const given = async (name: string, content: string | Buffer) => ({
  name,
  mimeType: 'text/plain',
  buffer: Buffer.from(content),
});

test('shows what the demo comes to before any script runs', async () => {
  const { page } = await open(false);
  const answer = await page.locator('[role=status]').textContent();
  expect(answer).toMatch(/sound\.csv: Pass.*worn\.csv: Fail.*too-slow\.csv: Inconclusive/s);
});

test('judges a job and its recording in the browser, and asks no other host', async () => {
  const { page, asked, complaints } = await open();
  await page.setInputFiles('input[type=file]', [job, worn]);
  const status = page.locator('[role=status]');
  await expect
    .poll(() => status.textContent(), { timeout: 30_000 })
    .toMatch(/^(?!.*sound\.csv).*worn\.csv: Fail/s);
  const report = page.frameLocator('iframe');
  await expect.poll(() => report.locator('h1').textContent()).toContain('outboards');
  expect(await report.locator('svg').count()).toBeGreaterThan(2);
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('a[download]')]);
  const html = await text(await download.createReadStream());
  expect(html).toContain('worn.csv');
  const foreign = (url: string) =>
    !/^(data|blob|about):/.test(url) && !url.startsWith(inject('site'));
  expect(asked.filter(foreign)).toEqual([]);
  expect(complaints).toEqual([]);
});

test.each([
  ['no job', [['a.csv', '0,1\n1,2\n']], /no job among the files.*no-job/],
  ['no recording', [['a.json', '{}']], /no recording.*nothing-to-score/],
  [
    'a broken job',
    [
      ['a.json', '{ "version": 9 }'],
      ['a.csv', ''],
    ],
    /version 9.*newer-version/,
  ],
] as const)('says what is wrong: %s', async (_, files, sentence) => {
  const { page } = await open();
  const all = await Promise.all(files.map(([name, content]) => given(name, content)));
  await page.setInputFiles('input[type=file]', all);
  await expect.poll(() => page.locator('[role=status]').textContent()).toMatch(sentence);
});

test('a damaged recording is refused with its place, and the next choice is judged', async () => {
  const { page } = await open();
  const jobFile = await given('job.json', await readFile(job));
  await page.setInputFiles('input[type=file]', [
    jobFile,
    await given('bad.csv', 't,V\n0,1\n1,x\n2,1\n'),
  ]);
  const status = page.locator('[role=status]');
  await expect.poll(() => status.textContent()).toMatch(/bad\.csv, line 3, column 3/);
  await page.getByRole('button', { name: /demo/ }).click();
  await expect.poll(() => status.textContent(), { timeout: 30_000 }).toMatch(/worn\.csv: Fail/);
});

test('passes an automatic check of accessibility with a report shown', async () => {
  const { page } = await open();
  await page.setInputFiles('input[type=file]', [job, worn]);
  await page.locator('iframe').waitFor({ timeout: 30_000 });
  await page.evaluate(axe.source);
  const violations = await page.evaluate(async () => {
    const { violations: found } = await (window as unknown as { axe: typeof axe }).axe.run(
      document.querySelector('main')!,
      { iframes: false },
    );
    return found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
  expect(violations).toEqual([]);
});
