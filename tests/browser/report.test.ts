import { reportHtml } from '@truesweep/report';
import axe from 'axe-core';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { exampleReport } from '../exampleReport.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

const html = reportHtml(exampleReport(['worn.csv']));

/** A page that shows a report, and what it complained of and asked for. */
async function opened(text: string, options: Parameters<Browser['newPage']>[0] = {}) {
  const page = await browser.newPage(options);
  const [complaints, requests]: [string[], string[]] = [[], []];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => complaints.push(message.text()));
  page.on('request', (request) => requests.push(request.url()));
  await page.setContent(text, { waitUntil: 'networkidle' });
  return { page, complaints, requests };
}

describe('the HTML report', () => {
  test.each(['light', 'dark'] as const)(
    'is quiet, asks for nothing and is accessible, %s',
    async (colorScheme) => {
      const { page, complaints, requests } = await opened(html, { colorScheme });
      await page.evaluate(axe.source);
      const { violations } = await page.evaluate(() =>
        (window as unknown as { axe: typeof axe }).axe.run(),
      );
      expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
      expect(complaints).toEqual([]);
      expect(requests).toEqual([]);
    },
  );

  test('is no wider than a narrow screen', async () => {
    const { page } = await opened(html, { viewport: { width: 320, height: 640 } });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  });

  test.each(['A4', 'Letter'])('prints to one or two pages of %s', async (format) => {
    const { page } = await opened(html);
    const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
    const pages = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThanOrEqual(1);
    expect(pages).toBeLessThanOrEqual(2);
  });

  test('markup in names and notes stays text', async () => {
    const report = exampleReport(['worn.csv']);
    const evil = '</title><script>document.title="struck"</script><img src=x onerror=alert(1)>';
    const [recording] = report.recordings;
    const hostile = reportHtml({
      ...report,
      job: { ...report.job, title: evil, notes: evil },
      recordings: [{ ...recording!, name: evil, howRead: evil }],
    });
    const { page, complaints, requests } = await opened(hostile);
    expect(await page.title()).toBe(evil);
    expect(await page.locator('img').count()).toBe(0);
    expect(await page.locator('h1').textContent()).toBe(evil);
    expect(complaints).toEqual([]);
    expect(requests).toEqual([]);
  });
});
